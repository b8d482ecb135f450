import * as z from 'zod/mini';
import { deviationField, forceField, temperatureField } from '../quantity/index.js';
import { yesNoField } from '../result/index.js';
import { bearingSeatShape } from './internal/bearing-seat-fields.js';

/** What fitting a bearing is asked with: its seats, and what limits heat, cold and force. */
export const bearingFittingShape = {
  ...bearingSeatShape,
  ambientC: z.optional(temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -20, upTo: 50 })),
  slipInGapUm: z.optional(deviationField({ label: 'gap wanted while slipping it in, on the diameter', unit: 'µm', from: 0, upTo: 500 })),
  isSealedOrGreased: z.optional(yesNoField({ label: 'the bearing is sealed, or greased for life' })),
  hasPolymerCage: z.optional(yesNoField({ label: 'the cage is of plastic' })),
  caseLimitC: z.optional(temperatureField({ label: 'the case may be made as hot as (paint, seals, alloy)', unit: '°C', from: 20, upTo: 300 })),
  coldestPartC: z.optional(temperatureField({ label: 'the inner part may be made as cold as', unit: '°C', from: -200, upTo: 20 })),
  basicStaticLoadRatingN: z.optional(forceField({ label: 'basic static load rating C0, as the maker gives it', unit: 'N', over: 0, upTo: 100_000_000 })),
};
