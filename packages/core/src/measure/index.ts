export { instrumentField, type OwnInstrument } from './instrument-field.js';
export { fitDistribution, type FitDistributionOutput } from './fit-distribution.js';
export { findInstrument, instrumentCatalogue, type CatalogueInstrument, type Instrument, type Measures } from './find-instrument.js';
export { expandedUncertaintyMm, measuredSize, type MeasuredSize } from './measured-size.js';
export { measuredSizeCalculation } from './measured-size-calculation.js';
export { partSpreadField, type PartSpreadInput } from './part-spread-field.js';
export { readingsField, type Readings } from './readings-field.js';
