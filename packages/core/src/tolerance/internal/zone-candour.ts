import { source, type Assumption, type Candour } from '../../result/index.js';
import type { ClassName } from './class-names.js';
import { isBelowIncrements } from './deviation-rule.js';
import { sizeStepOf } from './size-steps.js';

const noIncrementBelowIt3: Assumption = Object.freeze({
  name: 'deltaUm',
  value: 0,
  unit: 'µm',
  source: source('iso-286-1-2010', 'memory', 'Tables 2 and 3'),
  effect: 'increment-not-given-below-it3',
});

const nothing: readonly Assumption[] = Object.freeze([]);
const onlyNoIncrement: readonly Assumption[] = Object.freeze([noIncrementBelowIt3]);

/** What a class takes for granted at a size. */
export function zoneAssumptions(name: ClassName, nominalMm: number): Candour['assumptions'] {
  return name.kind === 'hole' && name.gradePlace < 4 && isBelowIncrements(name, sizeStepOf(nominalMm)) ? onlyNoIncrement : nothing;
}
