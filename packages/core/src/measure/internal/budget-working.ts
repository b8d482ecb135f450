import { source, type WorkingStep } from '../../result/index.js';
import type { BudgetLine, CombinedUncertainty } from '../uncertainty-budget.js';

const gum = (clause: string) => source('jcgm-100-2008', 'memory', clause);

/** Working of a budget: the sum of squares, the effective degrees of freedom, the factor, the product. */
export function budgetWorking(lines: readonly BudgetLine[], combined: CombinedUncertainty): readonly WorkingStep[] {
  const { standardUncertaintyMm: u, effectiveDegreesOfFreedomCount: degrees, coverageFactor: k, expandedUncertaintyMm } = combined;
  const parts = Object.fromEntries(lines.flatMap((line, i) => [[`c${i + 1}`, line.sensitivityFactor], [`u${i + 1}`, line.standardUncertaintyMm]]));
  const steps: WorkingStep[] = [
    {
      kind: 'formula', symbol: 'u', meaning: `combined standard uncertainty: ${lines.map((line, i) => `u${i + 1} ${line.component}`).join(', ')}`,
      formula: `sqrt(${lines.map((_, i) => `(c${i + 1} * u${i + 1})^2`).join(' + ')})`, scope: parts, value: u, unit: 'mm', source: gum('5.1.2'),
    },
  ];
  const counted = lines.flatMap((line, i) => (line.degreesOfFreedomCount === null || line.standardUncertaintyMm === 0 ? [] : [{ line, name: i + 1, count: line.degreesOfFreedomCount }]));
  if (degrees !== null) {
    const scope = Object.fromEntries(counted.flatMap(({ line, name, count }) => [[`c${name}`, line.sensitivityFactor], [`u${name}`, line.standardUncertaintyMm], [`n${name}`, count]]));
    const text = `max(1, floor(u^4 / (${counted.map(({ name }) => `(c${name} * u${name})^4 / n${name}`).join(' + ')}) * (1 + 1e-9)))`;
    steps.push({ kind: 'formula', symbol: 'ν', meaning: 'effective degrees of freedom, cut to a whole number', formula: text, scope: { u, ...scope }, value: degrees, unit: '', source: gum('G.4.1') });
  }
  const why = degrees === null ? 'only stated limits weigh: k = 2 for about 95 %' : `factor of Student's t for 95.45 % and ${degrees} degrees of freedom`;
  return [
    ...steps,
    { kind: 'choice', symbol: 'k', meaning: 'coverage factor', value: k, unit: '', why, source: gum('G.6.4') },
    { kind: 'formula', symbol: 'U', meaning: 'expanded uncertainty', formula: 'k * u', scope: { k, u }, value: expandedUncertaintyMm, unit: 'mm', source: gum('6.2.1') },
  ];
}
