import * as z from 'zod/mini';
import { temperatureField } from '../quantity/index.js';
import { candourFields, deciding, defineCalculation, findingField, numberField, outputNumber, plainGeometry, spanField, supporting, verdictField, yesNoField, type Assumption, type Finding } from '../result/index.js';
import { situationShape, type Situation } from '../seal/index.js';
import { driverNeedOf, type DriverNeed } from './internal/driver-need.js';
import { driverWorking } from './internal/driver-working.js';
import { missOf, type JudgedTool } from './internal/judge-tool.js';
import { rankTools, type RankedTools } from './internal/rank-tools.js';
import { turnedDriverOf } from './internal/turned-driver.js';
import { toolField, type Tool } from './tool-field.js';

const inputField = z.strictObject({
  ...situationShape,
  toolsAtHand: z.optional(z.array(toolField).check(z.maxLength(1000))),
  includeStandardTubes: z.optional(yesNoField({ label: 'look through the standard tubes and sockets too' })),
  maximumCandidateCount: z.optional(numberField({ label: 'how many tools to list', unit: '', from: 1, upTo: 200, typical: '12' })),
  workshopTemperatureC: z.optional(temperatureField({ label: 'temperature of the workshop', unit: '°C', from: -50, upTo: 60 })),
});

type DriverInput = Situation & {
  readonly toolsAtHand?: readonly Tool[] | undefined;
  readonly includeStandardTubes?: boolean | undefined;
  readonly maximumCandidateCount?: number | undefined;
  readonly workshopTemperatureC?: number | undefined;
};

const text = (label: string) => z.string().check(z.meta({ label, unit: '' }));

const toolShape = {
  name: text('tool'),
  origin: z.enum(['own', 'standard']).check(z.meta({ label: 'from the scrap box or from a table', unit: '' })),
  kind: z.enum(['tube', 'socket', 'turned']).check(z.meta({ label: 'kind of tool', unit: '' })),
  material: z.nullable(text('material')),
  outsideMm: spanField('outside diameter', 'mm'),
  insideMm: spanField('inside diameter', 'mm'),
  verdict: verdictField,
  reasons: z.readonly(z.array(findingField)),
};

const candidateField = z.strictObject({
  ...toolShape,
  role: z.enum(['enters', 'stops at the face', 'at the edge']).check(z.meta({ label: 'how it meets the bore', unit: '' })),
  clearanceToBoreMm: z.nullable(outputNumber('radial clearance in the bore', 'mm')),
  clearanceToShaftMm: z.nullable(outputNumber('radial clearance over the shaft', 'mm')),
  reachOverRimMm: outputNumber('outside beyond the inside of the case wall, as a radius', 'mm'),
  reachOntoFaceMm: outputNumber('inside inward of the edge of the face, as a radius', 'mm'),
  landingMm: z.nullable(outputNumber('reach over the mouth of the bore, as a radius', 'mm')),
  leastMarginMm: outputNumber('least of these margins', 'mm'),
  stressMpa: z.nullable(outputNumber('stress in the wall under the largest push', 'MPa')),
  reserveFactor: z.nullable(outputNumber('how many times the largest push it stands', '')),
});

const nearMissField = z.strictObject({
  ...toolShape,
  dimension: z.nullable(text('dimension that misses by most')),
  missMm: z.nullable(outputNumber('misses by', 'mm')),
});

const requiredField = z.strictObject({
  outsideOverMm: outputNumber('outside at least', 'mm'),
  outsideUpToMm: outputNumber('outside below, to enter the bore', 'mm'),
  insideOverMm: z.nullable(outputNumber('inside over, to clear the shaft', 'mm')),
  insideRimAloneMm: outputNumber('inside from which it bears on the rim alone', 'mm'),
  insideUpToMm: outputNumber('inside up to which it lands on the face', 'mm'),
  lengthOverMm: z.nullable(outputNumber('length over, to clear the end of the shaft', 'mm')),
  flushOutsideOverMm: z.nullable(outputNumber('outside over which it stops at the housing face by itself', 'mm')),
  flushOutsideUpToMm: z.nullable(outputNumber('outside up to the edge of the flat face', 'mm')),
});

const turnedField = z.strictObject({
  form: z.enum(['flat plate', 'stepped collar', 'plain sleeve']).check(z.meta({ label: 'form', unit: '' })),
  outsideMm: outputNumber('outside of the end that pushes', 'mm'),
  outsideClass: text('its ISO 286 class'),
  outsideDeviationMm: spanField('its deviation', 'mm'),
  insideMm: outputNumber('inside', 'mm'),
  insideClass: text('its ISO 286 class'),
  insideDeviationMm: spanField('its deviation', 'mm'),
  insideDepthMm: outputNumber('depth of the inside', 'mm'),
  collarOutsideMm: z.nullable(outputNumber('outside of the collar', 'mm')),
  stepHeightMm: z.nullable(outputNumber('height of the step', 'mm')),
  stepClass: z.nullable(text('its ISO 286 class')),
  stepDeviationMm: z.nullable(spanField('its deviation', 'mm')),
  lengthMm: outputNumber('length', 'mm'),
  faceOutOfSquareUpToMm: outputNumber('end out of square, at most', 'mm'),
  isOpenThrough: z.boolean().check(z.meta({ label: 'open right through', unit: '' })),
});

const outputField = z.strictObject({
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  required: requiredField,
  candidates: z.readonly(z.array(candidateField)),
  candidateCount: outputNumber('tools that may serve, listed or not', ''),
  nearMisses: z.readonly(z.array(nearMissField)),
  nearMissCount: outputNumber('tools that do not serve, listed or not', ''),
  judgedCount: outputNumber('tools looked at', ''),
  turnedDriver: z.nullable(turnedField),
  cautions: z.readonly(z.array(text('caution'))),
  ...candourFields,
});

export type DriverSearchOutput = z.infer<typeof outputField>;

const shownAtMost = 12;

/** Which tube, socket or turned piece drives this seal home: every tool judged worst case both ways.  rim: D − 2·t ≤ outside < bore;  inside > shaft
 * @returns candidates, best first, with margins and reasons; near misses; the window; one driver to turn
 * @throws CalculationError invalid-input | outside-table
 * @source us-army-tm, workshop-manuals-1995 (held as: page); plain-geometry, plain-mechanics; nasa-sp-8007 (held as: memory)
 * @example driverSearch.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).turnedDriver?.insideMm // 27.5
 */
export const driverSearch = defineCalculation({
  name: 'driver-search',
  summary: 'Which tube, socket or turned piece drives the seal home, and which only nearly',
  input: inputField,
  output: outputField,
  compute(input: DriverInput): DriverSearchOutput {
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
  },
  explain(input: DriverInput) {
    const need = driverNeedOf(situationIn(input));
    return driverWorking(need, rankTools(need, stockIn(input)).usable[0] ?? null);
  },
});

function situationIn(input: DriverInput): Situation {
  const { toolsAtHand: _tools, includeStandardTubes: _standard, maximumCandidateCount: _count, workshopTemperatureC: _temperature, ...situation } = input;
  return situation;
}

function stockIn(input: DriverInput): Parameters<typeof rankTools>[1] {
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
