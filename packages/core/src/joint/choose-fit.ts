import * as z from 'zod/mini';
import { deviationField, forceField, lengthField } from '../quantity/index.js';
import { candourFields, choiceField, contradiction, defineCalculation, noSolution, numberField, wholeNumberField, outputNumber, plainMechanics, yesNoField, source, type WorkingStep } from '../result/index.js';
import { fitsWithin, type FitCandidate } from '../tolerance/index.js';
import { jointShape } from './internal/joint-shape.js';
import { jointState, type JointState } from './internal/joint-state.js';
import { firstFlowPressureMpa } from './internal/plastic-hub.js';

const { shaftBoreMm, hubOutsideMm, lengthMm, shaft, hub, frictionCoefficient, seatCondition, smoothingUm, smoothingRule, shaftRoughnessRzUm, hubRoughnessRzUm, temperatureC, shaftTemperatureC, hubTemperatureC, materials } = jointShape;

const geometryField = z.strictObject({ shaftBoreMm, hubOutsideMm, lengthMm, shaft, hub, frictionCoefficient, seatCondition, smoothingUm, smoothingRule, shaftRoughnessRzUm, hubRoughnessRzUm, temperatureC, shaftTemperatureC, hubTemperatureC, materials });

const inputField = z.strictObject({
  nominalMm: lengthField({ label: 'nominal size', unit: 'mm', over: 0, upTo: 3150 }),
  leastInterferenceUm: z.optional(deviationField({ label: 'interference at the least', unit: 'µm', from: -100_000, upTo: 100_000, help: 'clearance: below zero' })),
  mostInterferenceUm: z.optional(deviationField({ label: 'interference at the most', unit: 'µm', from: -100_000, upTo: 100_000, help: 'clearance: below zero' })),
  leastClearanceUm: z.optional(deviationField({ label: 'clearance at the least', unit: 'µm', from: 0, upTo: 100_000 })),
  mostClearanceUm: z.optional(deviationField({ label: 'clearance at the most', unit: 'µm', from: 0, upTo: 100_000 })),
  joint: z.optional(geometryField),
  torqueNm: z.optional(numberField({ label: 'torque that it must carry', unit: 'N·m', over: 0, upTo: 1e9 })),
  axialForceN: z.optional(forceField({ label: 'axial force that it must carry', unit: 'N', over: 0, upTo: 1e9 })),
  pressLimitN: z.optional(forceField({ label: 'force that the press has', unit: 'N', over: 0, upTo: 1e9 })),
  mustStayTight: z.optional(yesNoField({ label: 'it must be tight at 20 °C and at the temperatures of the joint' })),
  mustStayElastic: z.optional(yesNoField({ label: 'the hub must not begin to flow, at 20 °C and at the temperatures of the joint' })),
  maximumCandidateCount: z.optional(wholeNumberField({ label: 'how many fits to list', unit: '', from: 1, upTo: 200, typical: '10' })),
});

const candidateField = z.strictObject({
  hole: z.string().check(z.meta({ label: 'class of the hole', unit: '' })),
  shaft: z.string().check(z.meta({ label: 'class of the shaft', unit: '' })),
  preference: choiceField(['first', 'second', 'none'], { label: 'preference' }),
  basis: choiceField(['hole-basis', 'shaft-basis', 'none'], { label: 'fit system' }),
  leastInterferenceUm: outputNumber('smallest interference; clearance below zero', 'µm'),
  mostInterferenceUm: outputNumber('largest interference; clearance below zero', 'µm'),
  fitToleranceUm: outputNumber('tolerance of the fit', 'µm'),
  contactPressureLowMpa: z.nullable(outputNumber('contact pressure at the least, at the worse of 20 °C and the temperatures of the joint', 'MPa')),
  contactPressureHighMpa: z.nullable(outputNumber('contact pressure at the most, at 20 °C', 'MPa')),
  torqueNm: z.nullable(outputNumber('torque that it carries at the least', 'N·m')),
  axialForceN: z.nullable(outputNumber('axial force that it carries at the least', 'N')),
  pressForceN: z.nullable(outputNumber('force to press it in at the most', 'N')),
});

const outputField = z.strictObject({
  leastInterferenceUm: z.nullable(outputNumber('interference needed at the least, at 20 °C', 'µm')),
  mostInterferenceUm: z.nullable(outputNumber('interference allowed at the most, at 20 °C', 'µm')),
  leastBecauseOf: z.nullable(choiceField(['as asked', 'load', 'temperature'], { label: 'what sets the least' })),
  mostBecauseOf: z.nullable(choiceField(['as asked', 'press', 'flow of the hub'], { label: 'what sets the most' })),
  candidates: z.readonly(z.array(candidateField)),
  candidateCount: outputNumber('fits that guarantee it', ''),
  consideredCount: outputNumber('fits looked at', ''),
  ...candourFields,
});

export type ChooseFitInput = z.infer<typeof inputField>;
export type ChooseFitOutput = z.infer<typeof outputField>;

const usualCount = 10;

/** Which ISO fits guarantee what is wanted: a window of interference or clearance, a load, a press, a fit that stays tight when hot.
 *   U ≥ 1000·p·K + U_lost with p = F/(μ·π·d·L);  U ≤ 1000·p·K + G with p = F_press/(μ·π·d·L);  U ≤ 1000·p·K − U_gained where the hub begins to flow
 * Loads count the low end of friction, the worse end of the expansion coefficients and the worse of 20 °C and the temperatures of
 * the joint: a joint that heat tightens must hold cold, too. The press counts the high end of friction and 20 °C.
 * @returns the window at 20 °C [µm] and what sets it; fits that keep to it, preferred first, then the easiest to make
 * @throws CalculationError invalid-input | contradiction | outside-table | no-solution (names the nearest)
 * @source iso-286-1-2010 (held as: page); plain-mechanics (computed); preference iso-1829-1975 (held as: memory)
 * @example chooseFit.run({ nominalMm: 25, leastClearanceUm: 7, mostClearanceUm: 41 }).candidates[0].shaft // 'g6'
 */
export const chooseFit = defineCalculation({
  name: 'choose-fit',
  summary: 'ISO fits that guarantee a window of interference or clearance, a load, or a hold when hot',
  input: inputField,
  output: outputField,
  compute(input): ChooseFitOutput {
    const wanted = windowOf(input);
    const { found, nearest, consideredCount } = fitsWithin(input.nominalMm, { leastUm: wanted.least?.um, mostUm: wanted.most?.um });
    if (found.length === 0) throw noSolution(whyNone(wanted, nearest));
    return {
      leastInterferenceUm: wanted.least?.um ?? null,
      mostInterferenceUm: wanted.most?.um ?? null,
      leastBecauseOf: wanted.least?.because ?? null,
      mostBecauseOf: wanted.most?.because ?? null,
      candidates: found.slice(0, input.maximumCandidateCount ?? usualCount).map((fit) => ({ ...shown(fit), ...givesOf(input, wanted.state, fit) })),
      candidateCount: found.length,
      consideredCount,
      assumptions: wanted.state?.assumptions ?? [],
      notChecked: wanted.state === null ? ['fit-away-from-20-c', 'form-and-roughness'] : ['edge-pressure', 'form-and-roughness'],
    };
  },
  explain: (input, output) => working(windowOf(input), input, output),
});

interface End<Because> {
  readonly um: number;
  readonly because: Because;
}

interface Wanted {
  readonly least: End<'as asked' | 'load' | 'temperature'> | null;
  readonly most: End<'as asked' | 'press' | 'flow of the hub'> | null;
  readonly state: JointState | null;
  readonly areaMm2: number;
  readonly loadN: number | null;
}

function windowOf(input: ChooseFitInput): Wanted {
  const state = input.joint === undefined ? null : jointState({ ...input.joint, jointDiameterMm: input.nominalMm, interferenceUm: 0 });
  const needsJoint = (['torqueNm', 'axialForceN', 'pressLimitN', 'mustStayTight', 'mustStayElastic'] as const).find((name) => input[name] !== undefined && input[name] !== false);
  if (state === null && needsJoint !== undefined) throw contradiction([needsJoint, 'joint'], 'needs the joint: its length, the hub, the bore of the shaft and the materials');
  const areaMm2 = input.joint === undefined ? 0 : Math.PI * input.nominalMm * input.joint.lengthMm;
  const loadN = input.torqueNm === undefined && input.axialForceN === undefined ? null : Math.hypot(input.axialForceN ?? 0, ((input.torqueNm ?? 0) * 2000) / input.nominalMm);
  const least = largest<'as asked' | 'load' | 'temperature'>([asked(input.leastInterferenceUm, input.mostClearanceUm), ...(state === null ? [] : [...forLoad(state, loadN, areaMm2), ...forHeat(input, state)])]);
  const most = smallest<'as asked' | 'press' | 'flow of the hub'>([asked(input.mostInterferenceUm, input.leastClearanceUm), ...(state === null ? [] : [...forPress(input, state, areaMm2), ...forFlow(input, state)])]);
  if (least === null && most === null) throw contradiction(['leastInterferenceUm'], 'say what is wanted: interference or clearance, a load, a press, or a fit that stays tight');
  if (least !== null && most !== null && least.um > most.um) throw noSolution(`at least ${round(least.um)} µm of interference are needed (${least.because}), but at most ${round(most.um)} µm are allowed (${most.because})`);
  return { least, most, state, areaMm2, loadN };
}

function asked(interferenceUm: number | undefined, clearanceUm: number | undefined): End<'as asked'> | null {
  if (interferenceUm !== undefined && clearanceUm !== undefined) throw contradiction(['leastInterferenceUm', 'leastClearanceUm'], 'ask for interference or for clearance at one end, not for both');
  if (interferenceUm !== undefined) return { um: interferenceUm, because: 'as asked' };
  return clearanceUm === undefined ? null : { um: -clearanceUm + 0, because: 'as asked' };
}

/** Interference lost by smoothing and heat at the worse of 20 °C and the temperatures of the joint, at the worse end of the expansion coefficients. */
function lostUm({ effectiveSpanUm, smoothingUm }: JointState): number {
  return Math.max(-effectiveSpanUm.low, smoothingUm);
}

/** Interference gained by heat, less smoothing, at the tighter of 20 °C and the temperatures of the joint, at the tighter end of the expansion coefficients. */
function gainedUm({ effectiveSpanUm, smoothingUm }: JointState): number {
  return Math.max(effectiveSpanUm.high, -smoothingUm);
}

function forLoad(state: JointState, loadN: number | null, areaMm2: number): readonly End<'load'>[] {
  if (loadN === null) return [];
  const { friction } = state;
  if (friction === null) throw contradiction(['joint.frictionCoefficient', 'torqueNm'], 'a load needs a friction, and none of this pair is at hand');
  return [{ um: (1000 * state.compliance * loadN) / (friction.low * areaMm2) + lostUm(state), because: 'load' }];
}

function forHeat({ mustStayTight }: ChooseFitInput, state: JointState): readonly End<'temperature'>[] {
  return mustStayTight === true ? [{ um: lostUm(state), because: 'temperature' }] : [];
}

function forPress({ pressLimitN }: ChooseFitInput, { friction, compliance, smoothingUm: lost }: JointState, areaMm2: number): readonly End<'press'>[] {
  if (pressLimitN === undefined) return [];
  if (friction === null) throw contradiction(['joint.frictionCoefficient', 'pressLimitN'], 'the press needs a friction, and none of this pair is at hand');
  return [{ um: (1000 * compliance * pressLimitN) / (friction.high * areaMm2) + lost, because: 'press' }];
}

function forFlow({ mustStayElastic }: ChooseFitInput, state: JointState): readonly End<'flow of the hub'>[] {
  if (mustStayElastic !== true) return [];
  const { hub: ring, hubMaterial, compliance } = state;
  if (hubMaterial.yieldMpa === null) throw contradiction(['mustStayElastic', 'joint.hub'], `no yield strength of ${hubMaterial.name} is at hand`);
  return [{ um: 1000 * compliance * firstFlowPressureMpa(ring, hubMaterial.yieldMpa) - gainedUm(state), because: 'flow of the hub' }];
}

function largest<B>(ends: readonly (End<B> | null)[]): End<B> | null {
  return ends.reduce((best, end) => (end !== null && (best === null || end.um > best.um) ? end : best), null);
}

function smallest<B>(ends: readonly (End<B> | null)[]): End<B> | null {
  return ends.reduce((best, end) => (end !== null && (best === null || end.um < best.um) ? end : best), null);
}

function shown({ hole, shaft: shaftClass, preference, basis, leastInterferenceUm, mostInterferenceUm, fitToleranceUm }: FitCandidate) {
  return { hole, shaft: shaftClass, preference, basis, leastInterferenceUm, mostInterferenceUm, fitToleranceUm };
}

/** What a fit gives in the joint: at the least at the worse of 20 °C and its temperatures, at the most while it is pressed in at 20 °C. */
function givesOf(input: ChooseFitInput, state: JointState | null, fit: FitCandidate) {
  if (state === null || input.joint === undefined) return { contactPressureLowMpa: null, contactPressureHighMpa: null, torqueNm: null, axialForceN: null, pressForceN: null };
  const areaMm2 = Math.PI * input.nominalMm * input.joint.lengthMm;
  const contactPressureLowMpa = Math.max(fit.leastInterferenceUm - lostUm(state), 0) / 1000 / state.compliance;
  const contactPressureHighMpa = Math.max(fit.mostInterferenceUm - state.smoothingUm, 0) / 1000 / state.compliance;
  const axialForceN = state.friction === null ? null : state.friction.low * areaMm2 * contactPressureLowMpa;
  return {
    contactPressureLowMpa,
    contactPressureHighMpa,
    torqueNm: axialForceN === null ? null : (axialForceN * input.nominalMm) / 2000,
    axialForceN,
    pressForceN: state.friction === null ? null : state.friction.high * areaMm2 * contactPressureHighMpa,
  };
}

function whyNone({ least, most }: Wanted, nearest: readonly FitCandidate[]): string {
  const window = `interference ${least === null ? '' : `from ${round(least.um)} µm (${least.because}) `}${most === null ? '' : `up to ${round(most.um)} µm (${most.because})`}`.trim();
  const names = nearest.slice(0, 3).map(({ hole, shaft: shaftClass, leastInterferenceUm, mostInterferenceUm, missUm }) => `${hole}/${shaftClass} (${leastInterferenceUm} to ${mostInterferenceUm} µm, misses by ${round(missUm)} µm)`);
  return `no ISO fit guarantees ${window}; nearest: ${names.join(', ')}`;
}

function round(um: number): number {
  return Math.round(um * 10) / 10;
}

function working({ least, most, state, areaMm2, loadN }: Wanted, input: ChooseFitInput, output: ChooseFitOutput): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  if (state !== null && least?.because === 'load' && loadN !== null && state.friction !== null) {
    steps.push({ kind: 'formula', symbol: 'U_min', meaning: 'interference needed at the least', formula: '1000 * K * F / (mu * A) + U_lost', scope: { K: state.compliance, F: loadN, mu: state.friction.low, A: areaMm2, U_lost: lostUm(state) }, value: least.um, unit: 'µm', source: plainMechanics });
  } else if (least !== null) steps.push({ kind: 'choice', symbol: 'U_min', meaning: 'interference needed at the least', value: least.um, unit: 'µm', why: least.because, source: plainMechanics });
  if (most !== null) steps.push(mostStep(most, state, areaMm2, input.pressLimitN));
  const best = output.candidates[0];
  if (best !== undefined) {
    steps.push({ kind: 'choice', symbol: 'fit', meaning: 'fit put first', value: `${best.hole}/${best.shaft}`, unit: '', why: `guarantees it; preference ${best.preference}; the widest tolerance of those`, source: source('iso-1829-1975', 'memory', 'selection of tolerance zones') });
  }
  return steps;
}

function mostStep({ um: value, because }: End<'as asked' | 'press' | 'flow of the hub'>, state: JointState | null, areaMm2: number, pressN = 0): WorkingStep {
  const shownAs = { symbol: 'U_max', meaning: 'interference allowed at the most', value, unit: 'µm', source: plainMechanics };
  if (because === 'press' && state !== null && state.friction !== null) {
    return { kind: 'formula', ...shownAs, formula: '1000 * K * F / (mu * A) + G', scope: { K: state.compliance, F: pressN, mu: state.friction.high, A: areaMm2, G: state.smoothingUm } };
  }
  if (because === 'flow of the hub' && state !== null) {
    const p = firstFlowPressureMpa(state.hub, state.hubMaterial.yieldMpa ?? 0);
    return { kind: 'formula', ...shownAs, formula: '1000 * K * p - U_gained', scope: { K: state.compliance, p, U_gained: gainedUm(state) } };
  }
  return { kind: 'choice', ...shownAs, why: because };
}
