import * as z from 'zod/mini';
import { forceField } from '../quantity/index.js';
import { candourFields, choiceField, deciding, defineCalculation, findingField, noSolution, numberField, outputNumber, planStep, planStepField, plainGeometry, source, spanField, verdictField, verdictOf, type Assumption, type Finding, type PlanStep, type Span, type WorkingStep } from '../result/index.js';
import { metricThreads as table } from '../tables/generated/metric-threads.js';
import { practiceValue } from './internal/practice-value.js';

const inputField = z.strictObject({
  pushForceN: forceField({ label: 'force that draws the part in, at the most', unit: 'N', over: 0, upTo: 1e6, help: 'of a seal: the high end of the force to push it in' }),
  threads: z.optional(z.array(choiceField(table.columns.designation as unknown as readonly [string, ...string[]], { label: 'thread at hand', typical: 'M10' })).check(z.minLength(1), z.maxLength(20))),
  condition: z.optional(choiceField(['dry', 'oiled'], { label: 'thread and washer dry or oiled', typical: 'oiled' })),
  yieldMpa: z.optional(numberField({ label: 'yield strength of the rod', unit: 'MPa', over: 0, upTo: 2000, typical: '240' })),
  passesMm: z.optional(numberField({ label: 'hole that the rod passes through', unit: 'mm', over: 0, upTo: 500 })),
});

const candidateField = z.strictObject({
  thread: z.string().check(z.meta({ label: 'thread', unit: '' })),
  pitchMm: outputNumber('pitch: what one turn draws in', 'mm'),
  acrossFlatsMm: outputNumber('spanner', 'mm'),
  torqueNm: spanField('torque on the nut at the largest force, low to high friction', 'N·m'),
  tensileStressMpa: outputNumber('tensile stress in the rod', 'MPa'),
  vonMisesMpa: outputNumber('stress of von Mises in the rod, with the twist of the thread', 'MPa'),
  reserveFactor: outputNumber('yield strength over that stress', ''),
  verdict: verdictField,
});

const outputField = z.strictObject({
  verdict: verdictField,
  candidates: z.readonly(z.array(candidateField)),
  steps: z.readonly(z.array(planStepField)),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type DrawInRodInput = z.infer<typeof inputField>;
export type DrawInRodOutput = z.infer<typeof outputField>;

interface Thread {
  readonly designation: string;
  readonly majorMm: number;
  readonly pitchMm: number;
  readonly stressAreaMm2: number;
  readonly acrossFlatsMm: number;
  readonly washerOutsideMm: number;
}

const threads: readonly Thread[] = table.columns.designation.map((designation, i) => ({
  designation,
  majorMm: table.columns.majorMm[i] ?? 0,
  pitchMm: table.columns.pitchMm[i] ?? 0,
  stressAreaMm2: table.columns.stressAreaMm2[i] ?? 0,
  acrossFlatsMm: table.columns.acrossFlatsMm[i] ?? 0,
  washerOutsideMm: table.columns.washerOutsideMm[i] ?? 0,
}));

const friction = { dry: practiceValue('thread-friction-dry', 'Coefficient'), oiled: practiceValue('thread-friction-oiled', 'Coefficient') } as const;
const rodYield = practiceValue('rod-yield', 'Mpa');
const rodReserve = practiceValue('rod-reserve', 'Factor');
const bolted = source('vdi-2230', 'memory', 'tightening torque');

/** A threaded rod, a nut and washers that draw a part in without a blow.  T = F·(P/(2π) + μ·d2/(2·cos 30°) + μ·Dkm/2)
 * The rod bears the pull and the twist of its thread: σv = √(σ² + 3·τ²). The nut turns, the rod is held.
 * @returns threads with torque [N·m], stress [MPa] and reserve; the smallest that serves first; the work with its cautions
 * @throws CalculationError invalid-input | no-solution (no thread passes the hole)
 * @source vdi-2230, iso-898-1 (held as: memory); plain-mechanics
 * @example drawInRod.run({ pushForceN: 2200, threads: ['M10'] }).candidates[0].torqueNm.high.toFixed(1) // '6.7'
 */
export const drawInRod = defineCalculation({
  name: 'draw-in-rod',
  summary: 'Which threaded rod and nut draw a part in, and what torque the nut takes',
  input: inputField,
  output: outputField,
  compute(input): DrawInRodOutput {
    const judged = threadsFor(input).map((thread) => judge(thread, input));
    const isStrong = ({ reserveFactor }: Candidate) => reserveFactor >= rodReserve.low;
    const candidates = judged.some(isStrong) ? judged.toSorted((a, b) => Number(isStrong(b)) - Number(isStrong(a))) : judged.toSorted((a, b) => b.reserveFactor - a.reserveFactor);
    const [best] = candidates;
    const findings = best === undefined ? [] : [finding(best, input)];
    return {
      verdict: verdictOf(findings),
      candidates,
      steps: best === undefined ? [] : stepsFor(best),
      findings,
      assumptions: assumptionsOf(input),
      notChecked: ['rod-bends', 'thread-strips-in-soft-nut'],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const [best] = output.candidates;
    const thread = threads.find(({ designation }) => designation === best?.thread);
    if (best === undefined || thread === undefined) return [];
    const { high: mu } = frictionOf(input);
    const scope = { F: input.pushForceN, P: thread.pitchMm, d: thread.majorMm, mu, s: thread.acrossFlatsMm };
    return [
      { kind: 'formula', symbol: 'T', meaning: 'torque on the nut, friction at its high end', formula: 'F * (P / (2 * pi) + mu * (d - 0.649519 * P) / (2 * cos(pi / 6)) + mu * (d + s) / 4) / 1000', scope, value: best.torqueNm.high, unit: 'N·m', source: bolted },
      { kind: 'formula', symbol: 'sigma', meaning: 'tensile stress in the rod', formula: 'F / A', scope: { F: input.pushForceN, A: thread.stressAreaMm2 }, value: best.tensileStressMpa, unit: 'MPa', source: source(table.source, table.held, 'stress area') },
    ];
  },
});

type Candidate = DrawInRodOutput['candidates'][number];

function threadsFor({ threads: atHand, passesMm }: DrawInRodInput): readonly Thread[] {
  const found = threads.filter(({ designation, majorMm }) => (atHand === undefined || atHand.includes(designation)) && (passesMm === undefined || majorMm < passesMm));
  if (found.length === 0) throw noSolution(`no thread ${atHand === undefined ? 'of the table' : `of ${atHand.join(', ')}`} passes a hole of ${passesMm ?? 0} mm`);
  return found;
}

function frictionOf({ condition }: DrawInRodInput): Span {
  return condition === undefined ? { low: friction.oiled.low, high: friction.dry.high } : friction[condition];
}

/** Torque in the thread alone [N·mm]; the nut's face adds its own. */
function threadTorque({ majorMm: d, pitchMm: P }: Thread, forceN: number, mu: number): number {
  return forceN * (P / (2 * Math.PI) + (mu * (d - 0.649519 * P)) / (2 * Math.cos(Math.PI / 6)));
}

function judge(thread: Thread, input: DrawInRodInput): Candidate {
  const { pushForceN: forceN } = input;
  const span = frictionOf(input);
  // The nut bears on a ring from the rod to its flats: mean diameter (d + s)/2.
  const torque = (mu: number) => (threadTorque(thread, forceN, mu) + (forceN * mu * (thread.majorMm + thread.acrossFlatsMm)) / 4) / 1000;
  const tensileStressMpa = forceN / thread.stressAreaMm2;
  const coreMm = Math.sqrt((4 * thread.stressAreaMm2) / Math.PI);
  const shearMpa = (16 * threadTorque(thread, forceN, span.high)) / (Math.PI * coreMm ** 3);
  const vonMisesMpa = Math.sqrt(tensileStressMpa ** 2 + 3 * shearMpa ** 2);
  const reserveFactor = (input.yieldMpa ?? rodYield.low) / vonMisesMpa;
  return {
    thread: thread.designation,
    pitchMm: thread.pitchMm,
    acrossFlatsMm: thread.acrossFlatsMm,
    torqueNm: { low: torque(span.low), high: torque(span.high) },
    tensileStressMpa,
    vonMisesMpa,
    reserveFactor,
    verdict: reserveFactor >= rodReserve.low ? 'suits' : reserveFactor >= 1 ? 'suits with care' : 'does not suit',
  };
}

function finding({ thread, reserveFactor, torqueNm }: Candidate, { pushForceN }: DrawInRodInput): Finding {
  const numbers = { thread, reserveFactor, wantedFactor: rodReserve.low, lowTorqueNm: torqueNm.low, highTorqueNm: torqueNm.high, pushForceN };
  if (reserveFactor >= rodReserve.low) return deciding('rod-draws-it-in', 'good', numbers, bolted);
  return deciding(reserveFactor >= 1 ? 'rod-barely-draws-it-in' : 'rod-too-weak', reserveFactor >= 1 ? 'care' : 'bad', numbers, bolted);
}

function stepsFor({ thread, pitchMm, acrossFlatsMm, torqueNm }: Candidate): readonly PlanStep[] {
  return [
    planStep('draw-set-up', { thread }, plainGeometry, ['makers-manual-first', 'machine-cannot-start']),
    planStep('draw-oil-thread', {}, bolted),
    planStep('draw-line-up', {}, plainGeometry),
    planStep('draw-turn-nut', { acrossFlatsMm, pitchMm, lowTorqueNm: torqueNm.low, highTorqueNm: torqueNm.high }, bolted, ['eye-protection', 'rod-snaps']),
    planStep('draw-stop', { highTorqueNm: torqueNm.high }, bolted),
  ];
}

function assumptionsOf(input: DrawInRodInput): readonly Assumption[] {
  const span = frictionOf(input);
  const list: Assumption[] = [{ name: 'thread-friction', value: span.low, upToValue: span.high, unit: '', source: friction.oiled.source, effect: 'nut-torque' }];
  if (input.yieldMpa === undefined) list.push({ name: 'rod-yield', value: rodYield.low, unit: 'MPa', source: rodYield.source, effect: 'rod-strength' });
  list.push({ name: 'rod-reserve', value: rodReserve.low, unit: '', source: rodReserve.source, effect: 'rod-strength' });
  return list;
}
