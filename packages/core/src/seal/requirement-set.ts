import { choiceField } from '../result/index.js';

/**
 * Named sets of requirements; never mixed in silence.
 * `iso-6194-1`: ISO 6194-1, with DIN 3760 where ISO is silent (the default).
 */
export const requirementSets = ['iso-6194-1', 'din-3760', 'rma-metric', 'rma-inch'] as const;
export type RequirementSet = (typeof requirementSets)[number];

export const requirementSetField = choiceField(requirementSets, {
  label: 'set of requirements',
  help: 'iso-6194-1 takes DIN 3760 where ISO is silent',
});
