import { deciding, plainGeometry, supporting, type Assumption, type Finding } from '../../result/index.js';
import type { Situation } from '../../seal/index.js';
import type { DriverSearchOutput } from './driver-output.js';
import type { Tool } from '../tool-field.js';
import { driverNeedOf, type DriverNeed } from './driver-need.js';
import { missOf, type JudgedTool } from './judge-tool.js';
import { rankTools, type RankedTools } from './rank-tools.js';
import { turnedDriverOf } from './turned-driver.js';

export type DriverInput = Situation & {
  readonly toolsAtHand?: readonly Tool[] | undefined;
  readonly includeStandardTubes?: boolean | undefined;
  readonly maximumCandidateCount?: number | undefined;
  readonly workshopTemperatureC?: number | undefined;
};

const shownAtMost = 12;

/** What `driverSearch` answers, apart from its schemas and its working, which a sheet need not fetch. Trusts its input. @internal */
export function searchDrivers(input: DriverInput): DriverSearchOutput {
  const need = driverNeedOf(situationIn(input));
  const ranked = rankTools(need, stockIn(input));
  const shown = input.maximumCandidateCount ?? shownAtMost;
  const candidates = ranked.usable.slice(0, shown);
  const nearMisses = ranked.failing.slice(0, shown);
  return {
    verdict: ranked.usable[0]?.verdict ?? 'does not suit',
    findings: summary(ranked),
    required: requiredOf(need),
    candidates: candidates.map(candidateOf),
    candidateCount: ranked.usable.length,
    nearMisses: nearMisses.map(nearMissOf),
    nearMissCount: ranked.failing.length,
    judgedCount: ranked.judgedCount,
    turnedDriver: turnedDriverOf(need),
    cautions: cautionsFor(candidates),
    assumptions: unlike([...need.assumptions, ...candidates.flatMap(({ tool }) => tool.assumptions)]),
    notChecked: notCheckedFor(need, candidates),
  };
}

export function situationIn(input: DriverInput): Situation {
  const { toolsAtHand: _tools, includeStandardTubes: _standard, maximumCandidateCount: _count, workshopTemperatureC: _temperature, ...situation } = input;
  return situation;
}

export function stockIn(input: DriverInput): Parameters<typeof rankTools>[1] {
  return {
    toolsAtHand: input.toolsAtHand ?? [],
    includeStandardTubes: input.includeStandardTubes ?? true,
    instruments: input.instruments ?? [],
    materials: input.materials ?? [],
    workshopTemperatureC: input.workshopTemperatureC ?? null,
  };
}

function summary({ usable, judgedCount }: RankedTools): readonly Finding[] {
  const best = usable[0];
  if (best === undefined) return [deciding('driver-none-serves', 'care', { judgedCount }, plainGeometry)];
  const usableCount = usable.length;
  if (best.verdict === 'cannot tell') return [supporting('driver-only-doubtful', 'care', { judgedCount, usableCount, name: best.tool.name }, plainGeometry)];
  return [supporting(best.tool.origin === 'own' ? 'driver-found-at-hand' : 'driver-found-in-tables', best.verdict === 'suits' ? 'good' : 'care', { judgedCount, usableCount, name: best.tool.name }, plainGeometry)];
}

function requiredOf(need: DriverNeed): DriverSearchOutput['required'] {
  const mayStayOutside = need.mustEnter === 'no';
  return {
    outsideOverMm: need.rimFromMm,
    outsideUpToMm: need.section.boreMm.low,
    insideOverMm: need.clearOver?.mm ?? null,
    insideRimAloneMm: need.rimAloneFromMm,
    insideUpToMm: need.faceUpToMm,
    lengthOverMm: need.lengthOverMm === null ? null : Math.max(need.lengthOverMm, 0),
    flushOutsideOverMm: mayStayOutside ? need.mouthMm.high : null,
    flushOutsideUpToMm: mayStayOutside ? need.faceDiameterMm : null,
  };
}

function shownTool({ tool, verdict, findings }: JudgedTool) {
  return { name: tool.name, origin: tool.origin, kind: tool.kind, material: tool.material?.id ?? null, outsideMm: tool.outsideMm, insideMm: tool.insideMm, verdict, reasons: findings };
}

function candidateOf(judged: JudgedTool): DriverSearchOutput['candidates'][number] {
  const { role, margins, leastMarginMm, stressMpa, reserveFactor } = judged;
  return {
    ...shownTool(judged),
    role,
    clearanceToBoreMm: margins.toBoreMm,
    clearanceToShaftMm: margins.toShaftMm,
    reachOverRimMm: margins.overRimMm,
    reachOntoFaceMm: margins.ontoFaceMm,
    landingMm: margins.landingMm,
    leastMarginMm,
    stressMpa,
    reserveFactor,
  };
}

function nearMissOf(judged: JudgedTool): DriverSearchOutput['nearMisses'][number] {
  const miss = missOf(judged);
  return { ...shownTool(judged), dimension: miss?.dimension ?? null, missMm: miss?.missMm ?? null };
}

function cautionsFor(candidates: readonly JudgedTool[]): readonly string[] {
  return ['eye-protection', 'push-not-lever', ...(candidates.some(({ tool }) => tool.material?.isBrittleCold === true) ? ['pvc-shatters-cold'] : []), ...(candidates.some(({ tool }) => tool.kind === 'socket') ? ['socket-is-brittle'] : [])];
}

function notCheckedFor(need: DriverNeed, candidates: readonly JudgedTool[]): readonly string[] {
  const list = ['driver-held-off-centre', 'mallet-peaks'];
  if (candidates.some(({ tool }) => tool.endSquarenessMm === null)) list.push('driver-end-square');
  if (need.pushForceN === null || candidates.some(({ tool }) => tool.material === null)) list.push('driver-strength');
  if (need.faceDiameterMm === null) list.push('housing-face-flat');
  return list;
}

/** Each assumption once. */
function unlike(assumptions: readonly Assumption[]): readonly Assumption[] {
  const seen = new Set<string>();
  return assumptions.filter(({ name, value }) => {
    const key = `${name}|${value}`;
    return seen.has(key) ? false : seen.add(key) !== undefined;
  });
}
