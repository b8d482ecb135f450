// Generated from reference/ by reference/generate.mjs: do not edit.
export { iso2861HoleDeviations } from './iso-286-1-hole-deviations.js';
export { iso2861ShaftDeviations } from './iso-286-1-shaft-deviations.js';
export { iso2861StandardTolerances } from './iso-286-1-standard-tolerances.js';
export { sources } from './sources.js';
