import { commonPractice, plainGeometry, planStep, source, type PlanStep, type SourceReference } from '../../result/index.js';
import { flushOrShoulder, tiltShare } from './final-depth.js';
import { practiceValue } from './practice-value.js';
import type { Seating } from './seating.js';
import { isFixed } from './section.js';
import { wettingSteps } from './wetting-steps.js';
import { withinMm } from './workshop-length.js';

const guideFoil = practiceValue('guide-foil', 'Mm');

const manuals: SourceReference = source('workshop-manuals-1995', 'page', 'oil seals');

/** The work of putting the new seal in, in order, with the cautions beside each step. */
export function seatingSteps(plan: Seating): readonly PlanStep[] {
  return [...before(plan), ...greasing(plan), ...driving(plan), ...proving(plan)];
}

function before(plan: Seating): readonly PlanStep[] {
  const { situation, cutsLip } = plan;
  const { seal, shaft } = situation;
  const isTwoStroke = situation.running?.fluid === 'petrol-oil-mix';
  const steps: PlanStep[] = [
    planStep('in-compare-new-seal', { shaftMm: seal.shaftMm, outsideMm: seal.outsideMm, widthMm: seal.widthMm }, commonPractice, ['makers-manual-first', 'machine-cannot-start', 'never-refit-old-seal']),
    planStep('in-clean-bore-and-shaft', {}, manuals, ['nothing-blown-in', ...(isTwoStroke ? ['crankcase-stays-clean', 'petrol-vapour'] : [])]),
    planStep('in-feel-edges', {}, commonPractice, ['chips-stay-out', 'cut-edges']),
  ];
  if (cutsLip.length > 0) steps.push(...cutsLip.map((part) => guideStep(plan, part)));
  else if (shaft?.leadIn === undefined) steps.push(planStep('in-look-at-shaft-edge', {}, manuals));
  else if (shaft.leadIn.kind === 'none') steps.push(planStep('in-sleeve-over-edge', {}, manuals));
  return steps;
}

/**
 * A foil or sleeve over what could cut the lip. Below the shaft it may be as thick as the shaft: the lip is stretched no further than it will run.
 * Above it, the stretch over the free size of the lip is said beside that on the shaft; no limit of it is published.
 */
function guideStep({ situation, lipFreeMm }: Seating, { part, partMm }: Seating['cutsLip'][number]): PlanStep {
  const { shaftMm } = situation.seal;
  if (partMm + 2 * guideFoil.low <= shaftMm || lipFreeMm === null) return planStep('in-sleeve-over-part', { part, partMm, sleeveUpToMm: Math.max(shaftMm, partMm + 2 * guideFoil.low) }, manuals);
  const sleeveMm = partMm + 2 * guideFoil.low;
  const stretch = (overMm: number) => 100 * (overMm / lipFreeMm - 1);
  return planStep('in-sleeve-over-large-part', { part, partMm, sleeveMm, stretchPercent: stretch(sleeveMm), onShaftPercent: stretch(shaftMm) }, guideFoil.source);
}

function greasing({ situation }: Seating): readonly PlanStep[] {
  const { lipFacing, running, fluidSide } = situation;
  const isTwoStroke = running?.fluid === 'petrol-oil-mix';
  const steps: PlanStep[] = [...wettingSteps(situation)];
  const isRight = lipFacing !== undefined && (fluidSide === undefined || fluidSide === 'both' || (lipFacing === 'inward') === (fluidSide === 'inside'));
  const cautions = isTwoStroke ? ['air-leak-seizes-engine'] : [];
  steps.push(isRight ? planStep('in-lip-faces', { lipFacing }, manuals, cautions) : planStep('in-lip-toward-fluid', {}, manuals, cautions));
  return steps;
}

function driving({ final, situation }: Seating): readonly PlanStep[] {
  const cautions = ['eye-protection', 'no-steel-hammer', 'push-not-lever'];
  const steps: PlanStep[] = [planStep('in-hold-shaft-central', {}, manuals), planStep('in-start-square', {}, manuals)];
  if (final.kind === 'flush') steps.push(planStep('in-drive-flush', {}, flushOrShoulder, cautions));
  else if (final.kind === 'shoulder') steps.push(final.depthMm === null ? planStep('in-drive-to-shoulder', {}, flushOrShoulder, cautions) : planStep('in-drive-to-shoulder-depth', { depthMm: final.depthMm.nominal }, flushOrShoulder, cautions));
  else if (situation.seat?.kind === 'depth' && situation.seat.depthMm < 0) steps.push(planStep('in-drive-standing-out', { outMm: -situation.seat.depthMm }, plainGeometry, cautions));
  else steps.push(planStep('in-drive-to-depth', { depthMm: final.depthMm?.nominal ?? 0 }, plainGeometry, cautions));
  return steps;
}

function proving({ gauge, situation }: Seating): readonly PlanStep[] {
  const { retainedBy, running } = situation;
  const isTwoStroke = running?.fluid === 'petrol-oil-mix';
  const steps: PlanStep[] = [];
  if (gauge !== null) steps.push(planStep('in-measure-four', { ...withinMm(gauge.lowMm, gauge.highMm), largestSpreadMm: withinMm(0, gauge.largestSpreadMm).highMm }, plainGeometry));
  else steps.push(planStep('in-measure-four-alike', { largestSpreadMm: withinMm(0, tiltShare.good * situation.seal.outsideMm).highMm }, plainGeometry));
  steps.push(planStep('in-turn-by-hand', {}, commonPractice, ['machine-cannot-start']));
  if (situation.shaft?.obstacles?.some((obstacle) => !isFixed(obstacle)) === true) steps.push(planStep('in-put-keys-back', {}, commonPractice));
  if (retainedBy === 'circlip') steps.push(planStep('in-refit-circlip', {}, commonPractice, ['eye-protection', 'circlip-flies']));
  else if (retainedBy === 'plate') steps.push(planStep('in-refit-plate', {}, commonPractice));
  else if (retainedBy === 'staking') steps.push(planStep('in-stake-again', {}, commonPractice, ['eye-protection', 'chips-stay-out']));
  steps.push(isTwoStroke ? planStep('in-pressure-test-crankcase', {}, source('engine-service-practice', 'practice'), ['air-leak-seizes-engine', 'petrol-vapour']) : planStep('in-look-for-leaks', {}, commonPractice, ['hot-parts', 'spinning-parts']));
  return steps;
}
