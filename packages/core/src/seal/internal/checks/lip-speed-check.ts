import { deciding, outsideTable, source, type HeldMark } from '../../../result/index.js';
import { lipSpeed as table } from '../../../tables/generated/lip-speed.js';
import { markAt } from '../../../tables/table.js';
import type { Check } from '../check-report.js';

export interface SpeedLimit {
  readonly speedMaxMps: number | null;
  readonly speedMaxRpm: number | null;
  readonly source: ReturnType<typeof source>;
}

/** Rows of the speed table for one rubber (or `any`) and shaft. */
function speedLimitsOf(material: string, shaftMm: number): readonly SpeedLimit[] {
  const { columns } = table;
  const found: SpeedLimit[] = [];
  for (let i = 0; i < table.rowCount; i += 1) {
    if (columns.material[i] !== material) continue;
    if (shaftMm <= (columns.shaftOverMm[i] ?? 0) || shaftMm > (columns.shaftUpToMm[i] ?? Infinity)) continue;
    const held: HeldMark = markAt(table, columns.speedMaxMps[i] == null ? 'speedMaxRpm' : 'speedMaxMps', i);
    found.push({ speedMaxMps: columns.speedMaxMps[i] ?? null, speedMaxRpm: columns.speedMaxRpm[i] ?? null, source: source(columns.rowSource[i] ?? table.source, held) });
  }
  return found;
}

/** The strictest bound of a rubber itself, with the source of its row; null where none is at hand. */
export function strictestLimitOf(material: string, shaftMm: number): { readonly speedMaxMps: number; readonly source: SpeedLimit['source'] } | null {
  const bounds = speedLimitsOf(material, shaftMm).flatMap(({ speedMaxMps, source }) => (speedMaxMps === null ? [] : [{ speedMaxMps, source }]));
  return bounds.reduce<(typeof bounds)[number] | null>((low, bound) => (low === null || bound.speedMaxMps < low.speedMaxMps ? bound : low), null);
}

/** The strictest bound of a rubber itself; null where none is at hand. */
export function speedLimitMpsOf(material: string, shaftMm: number): number | null {
  return strictestLimitOf(material, shaftMm)?.speedMaxMps ?? null;
}

/**
 * Does the lip stand the speed? A general limit for elastomer lips (15 m/s; 8 000 rpm on shafts up to 35 mm) decides first;
 * between it and the bound of the rubber itself the seal suits with care.
 */
export const lipSpeedCheck: Check = ({ situation, peripheralSpeedMps }) => {
  const { seal, running } = situation;
  const { speedMaxMps: generalLimit, source: general } = generalLimitOf(seal.shaftMm);
  if (peripheralSpeedMps === null || running?.speedRpm === undefined) {
    return { findings: [deciding('speed-missing', 'unknown', {}, general, 'running.speedRpm')] };
  }
  const strictest = strictestLimitOf(seal.lipMaterial, seal.shaftMm);
  const ownLimitMps = strictest?.speedMaxMps ?? null;
  const numbers = { peripheralSpeedMps, speedRpm: running.speedRpm, generalLimitMps: generalLimit, lipMaterial: seal.lipMaterial, ...(ownLimitMps === null ? {} : { ownLimitMps }) };
  const underGeneral = peripheralSpeedMps <= generalLimit;
  const underOwn = ownLimitMps === null || peripheralSpeedMps <= ownLimitMps;
  if (underGeneral && underOwn) return { findings: [deciding('lip-speed-within', 'good', numbers, general)] };
  if (strictest === null || (!underGeneral && !underOwn)) return { findings: [deciding('lip-speed-over', 'bad', numbers, general)] };
  if (underGeneral) return { findings: [deciding('lip-speed-over-rubber-bound', 'care', numbers, strictest.source)] };
  return { findings: [deciding('lip-speed-over-general', 'care', numbers, strictest.source)] };
};

/**
 * General limit of elastomer lips: 8 000 rpm on shafts up to 35 mm (14.7 m/s there); on thicker shafts the general 15 m/s.
 * Each comes with the source of its own row.
 */
export function generalLimitOf(shaftMm: number): { readonly speedMaxMps: number; readonly source: SpeedLimit['source'] } {
  const rows = speedLimitsOf('any', shaftMm);
  const byRpm = rows.find((row) => row.speedMaxRpm !== null);
  if (byRpm?.speedMaxRpm != null) return { speedMaxMps: (Math.PI * shaftMm * byRpm.speedMaxRpm) / 60_000, source: byRpm.source };
  const byMps = rows.find((row) => row.speedMaxMps !== null);
  if (byMps?.speedMaxMps != null) return { speedMaxMps: byMps.speedMaxMps, source: byMps.source };
  throw outsideTable('the general speed limits of lips', 'seal.shaftMm', shaftMm, { over: 0, unit: 'mm' });
}
