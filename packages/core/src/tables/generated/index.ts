// Generated from reference/ by reference/generate.mjs: do not edit.
export { instruments } from './instruments.js';
export { iso2861HoleDeviations } from './iso-286-1-hole-deviations.js';
export { iso2861ShaftDeviations } from './iso-286-1-shaft-deviations.js';
export { iso2861StandardTolerances } from './iso-286-1-standard-tolerances.js';
export { materials } from './materials.js';
export { squares } from './squares.js';
export { sources } from './sources.js';
