export { bearingDimensions, type BearingDimensionsOutput } from './bearing-dimensions.js';
export { bearingSeat } from './bearing-seat.js';
export type { BearingSeatInput, BearingSeatOutput, RadialClearance, RingLoad, SeatResult } from './internal/bearing-seat-fields.js';
