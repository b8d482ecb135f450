import * as z from 'zod/mini';
import { choiceField, outputNumber } from '../../result/index.js';
import { budgetComponents } from '../uncertainty-budget.js';

/** Schema of one line of an uncertainty budget. */
export const budgetField = z.strictObject({
  component: choiceField(budgetComponents, { label: 'component' }),
  instrument: z.nullable(z.string().check(z.meta({ label: 'instrument', unit: '' }))),
  standardUncertaintyMm: outputNumber('standard uncertainty of the component', 'mm'),
  distribution: choiceField(['rectangular', 'normal'], { label: 'distribution' }),
  sensitivityFactor: outputNumber('how far the size follows it', ''),
  degreesOfFreedomCount: z.nullable(outputNumber('degrees of freedom; null for infinitely many', '')),
});
