import { commonPractice, deciding, source, supporting, type Assumption, type Finding, type SourceReference } from '../../../result/index.js';
import { lipPressure as table } from '../../../tables/generated/lip-pressure.js';
import { markAt } from '../../../tables/table.js';
import type { Check } from '../check-report.js';

export interface PressureLimit {
  readonly pressureMaxMpa: number;
  readonly set: string;
  readonly source: SourceReference;
}

/**
 * Pressure that a plain lip stands at this speed. DIN 3760's rows end at 5.6 m/s (and 3 000 rpm); beyond them the RMA rows
 * answer, and `set` says so. A faster lip stands no more than a slower one: where the RMA row allows more than DIN's last,
 * DIN's last row stays the bound.
 */
function pressureLimitOf(set: 'din-3760' | 'rma', speedMps: number, speedRpm: number): PressureLimit | null {
  const own = rowFor(set, speedMps, speedRpm);
  if (own !== null || set === 'rma') return own;
  const other = rowFor('rma', speedMps, speedRpm);
  const last = lastDinRow();
  return other !== null && other.pressureMaxMpa < last.pressureMaxMpa ? other : last;
}

/**
 * What a plain lip stands on a shaft at rest, by DIN 3760's rows.
 * @example standingPressureLimit().pressureMaxMpa // 0.05
 */
export function standingPressureLimit(): PressureLimit {
  return rowFor('din-3760', 0, 0) ?? lastDinRow();
}

function lastDinRow(): PressureLimit {
  const { columns } = table;
  let i = -1;
  columns.set.forEach((name, row) => {
    if (name === 'din-3760' && (i < 0 || (columns.pressureMaxMpa[row] ?? 0) < (columns.pressureMaxMpa[i] ?? 0))) i = row;
  });
  return { pressureMaxMpa: columns.pressureMaxMpa[i] ?? 0, set: 'din-3760', source: source('din-3760-1996', markAt(table, 'pressureMaxMpa', i), 'pressure against speed, last row') };
}

function rowFor(set: 'din-3760' | 'rma', speedMps: number, speedRpm: number): PressureLimit | null {
  const { columns } = table;
  let best: PressureLimit | null = null;
  for (let i = 0; i < table.rowCount; i += 1) {
    const pressureMaxMpa = columns.pressureMaxMpa[i];
    if (columns.set[i] !== set || pressureMaxMpa == null) continue;
    const upTo = columns.speedUpToMps[i] ?? Infinity;
    const rpmUpTo = columns.speedMaxRpm[i] ?? Infinity;
    const over = set === 'din-3760' ? -1 : (columns.speedOverMps[i] ?? -1);
    const reaches = speedMps <= upTo && speedRpm <= rpmUpTo && (speedMps > over || (speedMps === 0 && over === 0));
    if (!reaches) continue;
    if (best === null || pressureMaxMpa > best.pressureMaxMpa) {
      best = { pressureMaxMpa, set, source: source(set === 'din-3760' ? 'din-3760-1996' : 'rma-os-1', markAt(table, 'pressureMaxMpa', i), 'pressure against speed') };
    }
  }
  return best;
}

/** Does the lip stand the pressure? Where it swings, the peak decides; the mean is said beside it. */
export const pressure: Check = ({ situation, set, peripheralSpeedMps }) => {
  const { running, seal, lipFacing } = situation;
  const given = [running?.pressureMpa, running?.pressureLowMpa, running?.pressureHighMpa].filter((value): value is number => value !== undefined);
  if (given.length === 0) {
    const assumption: Assumption = { name: 'no-pressure', value: 0, unit: 'MPa', source: commonPractice, effect: 'pressure-limit' };
    return { findings: [], assumptions: [assumption] };
  }
  const peakMpa = given.reduce((peak, value) => (Math.abs(value) > Math.abs(peak) ? value : peak), 0);
  const meanMpa = running?.pressureMpa ?? (running?.pressureLowMpa !== undefined && running.pressureHighMpa !== undefined ? (running.pressureLowMpa + running.pressureHighMpa) / 2 : peakMpa);
  const findings: Finding[] = [];
  const limit: PressureLimit | null =
    seal.ratedPressureMpa !== undefined
      ? { pressureMaxMpa: seal.ratedPressureMpa, set: 'maker', source: source('common-practice', 'practice', "the seal maker's own limit, as given") }
      : peripheralSpeedMps === null || running?.speedRpm === undefined
        ? null
        : pressureLimitOf(set === 'rma-metric' || set === 'rma-inch' ? 'rma' : 'din-3760', peripheralSpeedMps, running.speedRpm);
  const numbers = { peakMpa: Math.abs(peakMpa), meanMpa, ...(limit === null ? {} : { limitMpa: limit.pressureMaxMpa, limitSet: limit.set }) };
  if (limit === null) findings.push(deciding('pressure-limit-unknown', 'unknown', numbers, source('din-3760-1996', 'memory'), 'running.speedRpm'));
  else if (Math.abs(peakMpa) <= limit.pressureMaxMpa) findings.push(deciding('pressure-within', 'good', numbers, limit.source));
  else if (Math.abs(meanMpa) <= limit.pressureMaxMpa) findings.push(deciding('pressure-peak-over', 'care', numbers, limit.source));
  else findings.push(deciding('pressure-over', 'bad', numbers, limit.source));
  const lowest = Math.min(...given);
  const pressureSide = situation.fluidSide ?? 'inside';
  if (lowest < 0) {
    const facesSuction = lipFacing === undefined ? null : (lipFacing === 'inward') === (pressureSide !== 'outside');
    findings.push(supporting('suction-lifts-lip', 'care', { suctionMpa: -lowest, facesSuction: facesSuction === null ? 'not known' : facesSuction ? 'yes' : 'no' }, commonPractice));
  }
  return { findings };
};
