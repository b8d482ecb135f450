import * as z from 'zod/mini';
import { bearingFitting, bearingFittingShape, type BearingFittingInput, type BearingFittingOutput } from '../bearing/index.js';
import { candourFields, choiceField, deciding, defineCalculation, findingField, outputNumber, plainGeometry, spanField, supporting, verdictField, verdictOf, verdicts, wholeNumberField, yesNoField, type Finding, type Span, type WorkingStep } from '../result/index.js';
import { standardTools } from './internal/standard-tools.js';
import { toolStrength } from './internal/tool-strength.js';
import { unknownLengthMm } from './internal/tool-under-push.js';
import { ownTool, type ToolSize } from './internal/tool-size.js';
import { toolField } from './tool-field.js';

const rings = ['inner ring', 'outer ring', 'both rings'] as const;
const text = (label: string) => z.string().check(z.meta({ label, unit: '' }));

const inputField = z.strictObject({
  ...bearingFittingShape,
  ring: z.optional(choiceField(rings, { label: 'ring to push' })),
  toolsAtHand: z.optional(z.array(toolField).check(z.maxLength(1000))),
  includeStandardTubes: z.optional(yesNoField({ label: 'look through the standard tubes and sockets too' })),
  maximumCandidateCount: z.optional(wholeNumberField({ label: 'how many tools to list', unit: '', from: 1, upTo: 200, typical: '12' })),
});

const toolShape = {
  name: text('tool'),
  origin: z.enum(['own', 'standard']).check(z.meta({ label: 'from the scrap box or from a table', unit: '' })),
  outsideMm: spanField('outside diameter', 'mm'),
  insideMm: spanField('inside diameter', 'mm'),
  verdict: verdictField,
  reasons: z.readonly(z.array(findingField)),
  leastMarginMm: outputNumber('least margin, as a radius; below zero it misses by that', 'mm'),
  reserveFactor: z.nullable(outputNumber('how many times the largest push it stands', '')),
};

const outputField = z.strictObject({
  verdict: verdictField,
  ring: choiceField([...rings, 'either'], { label: 'ring to push' }),
  insideOverMm: outputNumber('inside over', 'mm'),
  insideUpToMm: outputNumber('inside up to', 'mm'),
  outsideOverMm: outputNumber('outside over', 'mm'),
  outsideUpToMm: outputNumber('outside up to', 'mm'),
  candidates: z.readonly(z.array(z.strictObject(toolShape))),
  nearMisses: z.readonly(z.array(z.strictObject(toolShape))),
  judgedCount: outputNumber('tools looked at', ''),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

type Input = BearingFittingInput & { readonly ring?: (typeof rings)[number] | undefined; readonly toolsAtHand?: z.infer<typeof inputField>['toolsAtHand']; readonly includeStandardTubes?: boolean | undefined; readonly maximumCandidateCount?: number | undefined };
export type BearingDriverOutput = z.infer<typeof outputField>;
type Judged = BearingDriverOutput['candidates'][number];

interface Need {
  readonly ring: BearingDriverOutput['ring'];
  readonly insideOverMm: number;
  readonly insideUpToMm: number;
  readonly outsideOverMm: number;
  readonly outsideUpToMm: number;
}

const shownCount = 12;
/** Share of a ring's wall that the driver must at least land on: half. */
const landingShare = 0.5;

/** Which tube or socket pushes a bearing home through the ring that is tight, worst case both ways.
 * Inner ring: inside over the shaft, outside below its raceway. Outer ring: outside below the bore, inside over its raceway. It must land on
 * half of the ring's wall, and stand the push of a cold fit: squash, bending over and wrinkling of the thinnest tube that the bands allow. Both rings: it must bear on both, as a flat plate does; a tube seldom can.
 * @returns the window, tools best first with margins and reasons, near misses
 * @throws CalculationError invalid-input | no-such-class | outside-table
 * @source plain-geometry; raceways bearing-handbook-reprints (held as: page, good to about 5 %)
 * @example bearingDriver.run({ designation: '6203', ring: 'outer ring' }).insideOverMm.toFixed(1) // '35.4'
 */
export const bearingDriver = defineCalculation({
  name: 'bearing-driver',
  summary: 'Which tube or socket pushes a bearing home through the right ring',
  input: inputField,
  output: outputField,
  compute(input: Input): BearingDriverOutput {
    const { need, fitting } = needOf(input);
    const own = (input.toolsAtHand ?? []).map((tool, at) => ownTool(tool, at, input.instruments, input.materials));
    const tools = input.includeStandardTubes === false ? own : [...own, ...standardTools()];
    const pushN = pushForceOf(fitting, need.ring);
    const judged = tools.map((tool) => judge(tool, need, pushN)).toSorted((a, b) => verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || Number(b.origin === 'own') - Number(a.origin === 'own') || b.leastMarginMm - a.leastMarginMm || (a.name < b.name ? -1 : 1));
    const most = input.maximumCandidateCount ?? shownCount;
    const usable = judged.filter(({ verdict }) => verdict !== 'does not suit');
    const findings: readonly Finding[] = [need.ring === 'either' ? supporting('either-ring-may-be-pushed', 'note', {}, plainGeometry) : supporting(`push-${need.ring.replace(' ', '-')}`, 'note', {}, plainGeometry), usable.length > 0 ? deciding('bearing-driver-found', 'good', { toolCount: usable.length }, plainGeometry) : deciding('bearing-driver-to-turn', 'care', { insideMm: need.insideOverMm, outsideMm: need.outsideUpToMm }, plainGeometry)];
    return {
      verdict: verdictOf(findings),
      ...need,
      candidates: usable.slice(0, most),
      nearMisses: judged.filter(({ verdict }) => verdict === 'does not suit').toSorted((a, b) => b.leastMarginMm - a.leastMarginMm).slice(0, most),
      judgedCount: judged.length,
      findings,
      assumptions: [...fitting.assumptions.filter(({ name }) => name === 'raceways-estimated'), { name: 'landing-on-ring', value: landingShare * 100, unit: '%', source: { id: 'common-practice', held: 'practice' }, effect: 'which-drivers-serve' }],
      notChecked: ['driver-end-square', 'seals-and-cage-of-bearing'],
    };
  },
  explain: (_, output): readonly WorkingStep[] => [
    { kind: 'choice', symbol: 'd_i', meaning: 'inside of the driver, over', value: output.insideOverMm, unit: 'mm', why: `pushes on the ${output.ring}`, source: plainGeometry },
    { kind: 'choice', symbol: 'd_o', meaning: 'outside of the driver, up to', value: output.outsideUpToMm, unit: 'mm', why: `pushes on the ${output.ring}`, source: plainGeometry },
  ],
});

function needOf(input: Input) {
  const { ring: asked, toolsAtHand: _, includeStandardTubes: __, maximumCandidateCount: ___, ...rest } = input;
  const fitting = bearingFitting.compute(rest);
  const ring = asked ?? fitting.pushThrough;
  const { innerDriver, outerDriver } = fitting;
  const innerWall = innerDriver.outsideUpToMm - innerDriver.insideOverMm;
  const outerWall = outerDriver.outsideUpToMm - outerDriver.insideOverMm;
  const inner = { insideOverMm: innerDriver.insideOverMm, insideUpToMm: innerDriver.insideOverMm + (1 - landingShare) * innerWall, outsideOverMm: innerDriver.insideOverMm + landingShare * innerWall, outsideUpToMm: innerDriver.outsideUpToMm };
  const outer = { insideOverMm: outerDriver.insideOverMm, insideUpToMm: outerDriver.outsideUpToMm - landingShare * outerWall, outsideOverMm: outerDriver.outsideUpToMm - (1 - landingShare) * outerWall, outsideUpToMm: outerDriver.outsideUpToMm };
  const both = { insideOverMm: inner.insideOverMm, insideUpToMm: inner.insideUpToMm, outsideOverMm: outer.outsideOverMm, outsideUpToMm: outer.outsideUpToMm };
  const need: Need = { ring, ...(ring === 'inner ring' ? inner : ring === 'outer ring' || ring === 'either' ? outer : both) };
  return { need, fitting };
}

/** Every size at its worst: the least margin decides. */
/** The largest push that the tight rings may ask for, cold. */
function pushForceOf({ ways }: BearingFittingOutput, ring: BearingDriverOutput['ring']): Span {
  const forces = ways.filter(({ seat }) => ring === 'both rings' || (ring === 'inner ring') === (seat === 'shaft')).map(({ pushForceN }) => pushForceN);
  return { low: forces.reduce((sum, { low }) => sum + low, 0), high: forces.reduce((sum, { high }) => sum + high, 0) };
}

function judge(tool: ToolSize, need: Need, pushN: Span): Judged {
  const margins = {
    'driver-over-shaft': (tool.passageMm.low - need.insideOverMm) / 2,
    'driver-lands-inside': (need.insideUpToMm - tool.insideMm.high) / 2,
    'driver-reaches-ring': (tool.outsideMm.low - need.outsideOverMm) / 2,
    'driver-clear-outside': (need.outsideUpToMm - tool.outsideMm.high) / 2,
  };
  const reasons: Finding[] = Object.entries(margins).filter(([, mm]) => mm < 0).map(([code, mm]) => deciding(`${code}-misses`, 'bad', { missMm: -mm }, plainGeometry));
  const strength = tool.material === null ? null : toolStrength(tool, tool.material, tool.lengthMm ?? unknownLengthMm);
  const reserveFactor = strength === null || pushN.high === 0 ? null : Math.min(1e6, strength.collapseForceN / pushN.high);
  if (strength !== null && reserveFactor !== null && tool.material !== null && reserveFactor < tool.material.wantedReserveFactor) {
    const numbers = { pushHighN: pushN.high, collapseN: strength.collapseForceN, reserveFactor };
    reasons.push(strength.collapseForceN < pushN.low ? deciding('bearing-driver-gives-way', 'bad', numbers, plainGeometry) : deciding('bearing-driver-may-give-way', 'care', numbers, plainGeometry));
  }
  return { reserveFactor, name: tool.name, origin: tool.origin, outsideMm: tool.outsideMm, insideMm: tool.insideMm, verdict: verdictOf(reasons), reasons, leastMarginMm: Math.min(...Object.values(margins)) };
}
