import { source, supporting, type Finding, type SourceReference } from '../../../result/index.js';
import { surfaceLimits } from '../../../tables/generated/surface-limits.js';
import { markAt } from '../../../tables/table.js';
import type { Check, CheckContext } from '../check-report.js';
import { sealLimits } from '../../../tables/generated/seal-limits.js';
import { sealLimit } from '../seal-limit.js';

interface RoughnessLimit {
  readonly lowerUm: number | null;
  readonly upperUm: number;
  readonly source: SourceReference;
}

function roughnessLimit(set: CheckContext['set'], what: 'shaft-ra' | 'bore-ra', construction: string): RoughnessLimit | null {
  const { columns } = surfaceLimits;
  const wanted = set === 'rma-metric' || set === 'rma-inch' ? ['rma', 'rma-metric', 'din-3760'] : ['din-3760'];
  for (const name of wanted) {
    for (let i = 0; i < surfaceLimits.rowCount; i += 1) {
      const upperUm = columns.upperUm[i];
      if (String(columns.set[i]) !== name || columns.what[i] !== what || upperUm == null) continue;
      const forWhat = String(columns.construction[i] ?? '');
      if (forWhat !== '' && forWhat !== construction) continue;
      return { lowerUm: columns.lowerUm[i] ?? null, upperUm, source: source(columns.rowSource[i] ?? surfaceLimits.source, markAt(surfaceLimits, 'upperUm', i)) };
    }
  }
  return null;
}

/** [HRC] Least hardness of the lip track, and of a fast one (DIN 3760; another reprint asks the second only from 10 m/s). */
const hardness = { slow: sealLimit('track-hardness', 'Hrc'), fast: sealLimit('track-hardness-fast', 'Hrc'), fastFromMps: fastFromMps() };

const leadLimit = sealLimit('lead-angle', 'Deg');

function fastFromMps(): number {
  return sealLimits.columns.fromMps[sealLimits.columns.name.indexOf('track-hardness-fast')] ?? 0;
}

/** Roughness, hardness and lead of the lip track; roughness of the bore. Few benches can measure them: they stand beside the main question. */
export const surfaces: Check = ({ situation, set, peripheralSpeedMps }) => {
  const { shaft, bore, seal } = situation;
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  const shaftLimit = roughnessLimit(set, 'shaft-ra', '');
  if (shaft?.roughnessRaUm === undefined) notChecked.push('shaft-roughness');
  else if (shaftLimit !== null) {
    const numbers = { raText: shaft.roughnessRaUm.toString(), lowerText: String(shaftLimit.lowerUm ?? 0), upperText: String(shaftLimit.upperUm) };
    if (shaft.roughnessRaUm > shaftLimit.upperUm) findings.push(supporting('shaft-too-rough', 'care', numbers, shaftLimit.source));
    else if (shaftLimit.lowerUm !== null && shaft.roughnessRaUm < shaftLimit.lowerUm) findings.push(supporting('shaft-too-smooth', 'care', numbers, shaftLimit.source));
    else findings.push(supporting('shaft-roughness-right', 'good', numbers, shaftLimit.source));
  }
  const { low: leastHrc, source: hardnessSource } = peripheralSpeedMps !== null && peripheralSpeedMps >= hardness.fastFromMps ? hardness.fast : hardness.slow;
  if (shaft?.hardnessHrc === undefined) notChecked.push('shaft-hardness');
  else if (shaft.hardnessHrc < leastHrc) findings.push(supporting('shaft-too-soft', 'care', { hardnessHrc: shaft.hardnessHrc, leastHrc }, hardnessSource));
  else findings.push(supporting('shaft-hard-enough', 'good', { hardnessHrc: shaft.hardnessHrc, leastHrc }, hardnessSource));
  if (shaft?.leadAngleDeg === undefined) notChecked.push('shaft-lead');
  else if (Math.abs(shaft.leadAngleDeg) > leadLimit.high) findings.push(supporting('shaft-has-lead', 'care', { leadAngleDeg: shaft.leadAngleDeg, limitDeg: leadLimit.high }, leadLimit.source));
  if (bore?.roughnessRaUm === undefined) notChecked.push('bore-roughness');
  else {
    const limit = roughnessLimit(set, 'bore-ra', seal.construction === 'metal-case' ? 'metal-case' : 'rubber-covered');
    if (limit !== null) {
      const numbers = { raText: bore.roughnessRaUm.toString(), upperText: String(limit.upperUm) };
      findings.push(supporting(bore.roughnessRaUm > limit.upperUm ? 'bore-too-rough' : 'bore-roughness-right', bore.roughnessRaUm > limit.upperUm ? 'care' : 'good', numbers, limit.source));
    }
  }
  return { findings, notChecked };
};
