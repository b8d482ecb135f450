export { fit, type Fit, type FitInput, type FitKind, type FitLimits } from './fit.js';
export { identifyClass, type ClassCandidate, type IdentifiedClasses, type IdentifyClassInput } from './identify-class.js';
export { inchFit, type InchFit, type InchFitInput, type InchFitLimits, type InchLimits } from './inch-fit.js';
export type { PartKind } from './internal/class-names.js';
export type { Preference } from './internal/class-preference.js';
export type { Zone } from './internal/zone.js';
export { parseFitDesignation, type FitDesignation } from './parse-fit-designation.js';
export { parseZoneDesignation, type ZoneDesignation } from './parse-zone-designation.js';
export { toleranceZone, type ToleranceZone, type ToleranceZoneInput } from './tolerance-zone.js';
