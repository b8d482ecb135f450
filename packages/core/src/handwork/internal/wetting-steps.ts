import { commonPractice, planStep, source, type PlanStep, type SourceReference } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import { lipFluid } from '../../tables/generated/lip-fluid.js';

const manuals: SourceReference = source('workshop-manuals-1995', 'page', 'oil seals');

/** What the lip, the space behind it and the outside are wetted with before the seal goes in: not every rubber stands oil, and not every fluid bears it. */
export function wettingSteps({ seal, running }: Pick<Situation, 'seal' | 'running'>): readonly PlanStep[] {
  const isBare = seal.construction === 'metal-case';
  const steps = (between: PlanStep | null, lip: PlanStep, outside: PlanStep) => [...(seal.hasDustLip === true && between !== null ? [between] : []), lip, isBare ? planStep('in-outside-clean', {}, commonPractice) : outside];
  const withOil = planStep('in-outside-film', {}, commonPractice);
  const fluid = running?.fluid;
  if (fluid === 'brake-fluid-glycol') return steps(null, planStep('in-wet-with-brake-fluid', {}, commonPractice), planStep('in-outside-brake-fluid', {}, commonPractice));
  const { lipMaterial } = seal;
  if (lipMaterial === 'PTFE') return steps(null, planStep('in-lip-dry', {}, commonPractice), withOil);
  if (swellsInOil(lipMaterial)) return steps(planStep('in-silicone-between-lips', {}, commonPractice), planStep('in-wet-without-oil', { lipMaterial }, commonPractice), planStep('in-outside-soap', {}, commonPractice));
  return steps(planStep('in-grease-between-lips', {}, manuals), oiled(fluid), withOil);
}

function oiled(fluid: NonNullable<Situation['running']>['fluid']): PlanStep {
  switch (fluid) {
    case undefined:
      return planStep('in-oil-the-lip', {}, manuals);
    case 'grease':
      return planStep('in-grease-the-lip', {}, commonPractice);
    case 'water':
    case 'hot-water':
      return planStep('in-grease-against-water', { fluid }, commonPractice);
    case 'petrol-oil-mix':
      return planStep('in-oil-the-lip-two-stroke', {}, commonPractice);
    default:
      return planStep('in-oil-the-lip-with', { fluid }, manuals);
  }
}

/** Whether a table rates the rubber poor in mineral oil. What it is wetted with instead stands in no table: the steps say that it is practice. */
function swellsInOil(lipMaterial: string): boolean {
  const { material, fluid, rating } = lipFluid.columns;
  return material.some((one, i) => one === lipMaterial && fluid[i] === 'mineral-oil' && rating[i] === 'poor');
}
