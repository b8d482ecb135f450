import { deciding, plainMechanics, supporting, type Finding, type Span } from '../../../result/index.js';
import type { Check, CheckContext } from '../check-report.js';

/**
 * Does the pressure push the seal out of its bore?  F = p·π/4·(D² − d²) against what friction holds, cold or hot
 * A blocked breather or an overfilled case makes such pressure where nobody thinks of it.
 */
export const pushedOut: Check = (context) => {
  const { situation, hold } = context;
  const { running, seal, retainedBy, fluidSide, bore } = situation;
  const given = [running?.pressureMpa, running?.pressureLowMpa, running?.pressureHighMpa].filter((value): value is number => value !== undefined);
  const peakMpa = Math.max(0, ...given);
  const isHeldOtherwise = retainedBy === 'circlip' || retainedBy === 'plate' || retainedBy === 'staking';
  const leansOnShoulder = fluidSide === 'outside' && bore?.innerEnd === 'shoulder';
  if (peakMpa === 0 || isHeldOtherwise || leansOnShoulder) return { findings: [] };
  if (hold?.holdingForceN == null) return { findings: [], notChecked: ['pushed-out-by-pressure'] };
  const forceN = (peakMpa * Math.PI * (seal.outsideMm ** 2 - seal.shaftMm ** 2)) / 4;
  const holds = holdsNow(context, hold.holdingForceN);
  const numbers = { peakMpa, forceN, holdLowN: holds.low, holdHighN: holds.high };
  return { findings: [finding(numbers)] };
};

/** The hold with friction at both ends, cut by heat where it takes some. */
function holdsNow({ hold, hot }: CheckContext, cold: Span): Span {
  if (hold === null || hot?.remainingUm == null) return cold;
  const share = (remaining: number, held: number) => (held <= 0 ? 0 : Math.min(1, Math.max(0, remaining / held)));
  return { low: cold.low * share(hot.remainingUm.low, hold.heldUm.low), high: cold.high * share(hot.remainingUm.high, hold.heldUm.high) };
}

function finding(numbers: Readonly<Record<'peakMpa' | 'forceN' | 'holdLowN' | 'holdHighN', number>>): Finding {
  if (numbers.forceN <= numbers.holdLowN) return supporting('pressure-does-not-push-out', 'good', numbers, plainMechanics);
  if (numbers.forceN <= numbers.holdHighN) return deciding('pressure-may-push-out', 'care', numbers, plainMechanics);
  return deciding('pressure-pushes-out', 'bad', numbers, plainMechanics);
}
