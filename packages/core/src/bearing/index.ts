export { bearingDimensions, type BearingDimensionsOutput } from './bearing-dimensions.js';
export { bearingSeat } from './bearing-seat.js';
export type { BearingSeatInput, BearingSeatOutput, RadialClearance, RingLoad, SeatResult } from './internal/bearing-seat-fields.js';
export { ratingLife, type RatingLifeInput, type RatingLifeOutput } from './rating-life.js';
export { seatClasses, type SeatClassesInput, type SeatClassesOutput } from './seat-classes.js';
export { bearingFitting, bearingFittingShape, type BearingFittingInput, type BearingFittingOutput } from './bearing-fitting.js';
export { bearingRemoval, type BearingRemovalInput, type BearingRemovalOutput } from './bearing-removal.js';
export { seatRepair, type SeatRepairInput, type SeatRepairOutput } from './seat-repair.js';
export { bearingSeatShape } from './internal/bearing-seat-fields.js';
