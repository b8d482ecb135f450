export { bearingDriver, type BearingDriverOutput } from './bearing-driver.js';
export { disputedPoints, type DisputedPointsOutput } from './disputed-points.js';
export { drawInRod, type DrawInRodInput, type DrawInRodOutput } from './draw-in-rod.js';
export { driverSearch, type DriverSearchOutput } from './driver-search.js';
export { extractionPlan, type ExtractionPlanOutput } from './extraction-plan.js';
export { leakCheck, type LeakCheckInput, type LeakCheckOutput } from './leak-check.js';
export { leakSearch, type LeakSearchInput, type LeakSearchOutput } from './leak-search.js';
export { seatingPlan, type SeatingPlanOutput } from './seating-plan.js';
export { toolField, type Tool } from './tool-field.js';
