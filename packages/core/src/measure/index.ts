export { instrumentField, type OwnInstrument } from './instrument-field.js';
export { findInstrument, instrumentCatalogue, type CatalogueInstrument, type Instrument, type Measures } from './find-instrument.js';
export { expandedUncertaintyMm, measuredSize, type MeasuredSize } from './measured-size.js';
export { measuredSizeCalculation } from './measured-size-calculation.js';
export { readingsField, type Readings } from './readings-field.js';
export { normalDensity, normalProbability, normalQuantile } from './normal-distribution.js';
export { studentProbability, studentQuantile } from './student-distribution.js';
export { grubbsCriticalRatio, grubbsOutlier, type GrubbsOutlier } from './grubbs-outlier.js';
