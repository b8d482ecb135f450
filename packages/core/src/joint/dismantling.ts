import * as z from 'zod/mini';
import { deviationField, temperatureField } from '../quantity/index.js';
import { candourFields, defineCalculation, deciding, findingField, outputNumber, plainMechanics, source, supporting, verdictField, verdictOf, type Assumption, type Finding, type SourceReference, type WorkingStep } from '../result/index.js';
import { heatingLimitOf } from './internal/heating-limit.js';
import { jointShape } from './internal/joint-shape.js';
import { jointState, referenceC, type JointState } from './internal/joint-state.js';
import { realPressureMpa } from './internal/real-pressure.js';

const inputField = z.strictObject({
  ...jointShape,
  pressN: z.optional(z.number().check(z.gt(0), z.meta({ label: 'force that the press or puller has', unit: 'N' }))),
  freeGapUm: z.optional(deviationField({ label: 'gap wanted when it comes free by heat', unit: 'µm', from: 0, upTo: 10_000, typical: '20' })),
  hubLimitC: z.optional(temperatureField({ label: 'the hub may be made as hot as', unit: '°C', from: 20, upTo: 1000 })),
});

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const outputField = z.strictObject({
  verdict: verdictField,
  contactPressureMpa: outputNumber('contact pressure', 'MPa'),
  lowForceN: maybe('force to press it apart, friction at its low end', 'N'),
  highForceN: maybe('force to press it apart, friction at its high end and after long standing', 'N'),
  hubFreeC: maybe('temperature of the hub at which it comes free, the shaft still cold', '°C'),
  hubLimitC: maybe('limit of the hub', '°C'),
  isFreeByHeat: z.nullable(z.boolean().check(z.meta({ label: 'it comes free by heat within the limit', unit: '' }))),
  findings: z.readonly(z.array(findingField)),
  cautions: z.readonly(z.array(z.string().check(z.meta({ label: 'caution', unit: '' })))),
  ...candourFields,
});

export type DismantlingInput = z.infer<typeof inputField>;
export type DismantlingOutput = z.infer<typeof outputField>;

/** A joint that has stood long breaks loose harder than it went together: 0.12 in, 0.18 out for a ring on a ground seat. */
const afterStanding = { factor: 1.5, source: source('general-memory', 'memory', 'press-on 0.12, withdrawal 0.18') } as const;
const usualFreeGapUm = 20;

/** What it takes to part a pressed joint: force, or heat on the hub alone.  F = μ·p·π·d·L,  ΔT = (U + gap)/(αo·d)
 * The force counts friction to half as much again as when it went together; the heat counts the low end of the expansion of the hub.
 * @returns forces [N], temperature of the hub [°C], findings, cautions
 * @throws CalculationError invalid-input | contradiction
 * @source plain-mechanics (computed); friction din-7190-2001 (held as: memory)
 * @example dismantling.run({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 30, shaft: 'steel-c45', hub: 'steel-c45', frictionCoefficient: 0.1 }).highForceN?.toFixed(0) // '43896'
 */
export const dismantling = defineCalculation({
  name: 'dismantling',
  summary: 'Force to press a joint apart, or the heat on the hub that lets it come free',
  input: inputField,
  output: outputField,
  compute(input): DismantlingOutput {
    const state = jointState(input);
    const p = realPressureMpa(state);
    const grip = Math.PI * input.jointDiameterMm * input.lengthMm * p;
    const force = { low: state.friction === null ? null : state.friction.low * grip, high: state.friction === null ? null : state.friction.high * grip * afterStanding.factor };
    const heat = heatOf(input, state);
    const isFreeByHeat = heat.limitC === null ? null : heat.freeC <= heat.limitC;
    const findings = findingsOf(input, state, force, heat, isFreeByHeat);
    return {
      verdict: verdictOf(findings),
      contactPressureMpa: p,
      lowForceN: force.low,
      highForceN: force.high,
      hubFreeC: heat.freeC,
      hubLimitC: heat.limitC,
      isFreeByHeat,
      findings,
      cautions: ['makers-manual-first', 'eye-protection', 'press-straight', 'parts-fly-when-free', 'hot-parts-gloves', 'no-flame-for-heating', 'seals-out-before-heat', 'solvents-washed-off'],
      assumptions: [...state.assumptions, ...assumptionsOf(input, heat)],
      notChecked: ['rust-and-fretting', 'heat-soaks-into-shaft', ...(state.friction === null ? ['friction-of-this-pair'] : [])],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const state = jointState(input);
    const heat = heatOf(input, state);
    const steps: WorkingStep[] = [
      { kind: 'formula', symbol: 't_o', meaning: 'temperature of the hub at which it comes free', formula: 't_h + (max(U, 0) + s) / (1000 * alpha * d)', scope: { t_h: state.hubC, U: state.effectiveUm, s: input.freeGapUm ?? usualFreeGapUm, alpha: state.hubMaterial.expansionPerK.low, d: input.jointDiameterMm }, value: heat.freeC, unit: '°C', source: plainMechanics },
    ];
    if (state.friction !== null && output.highForceN !== null) {
      steps.push({ kind: 'formula', symbol: 'F', meaning: 'force to press it apart, at the most', formula: 'k * mu * p * pi * d * L', scope: { k: afterStanding.factor, mu: state.friction.high, p: output.contactPressureMpa, d: input.jointDiameterMm, L: input.lengthMm }, value: output.highForceN, unit: 'N', source: afterStanding.source });
    }
    return steps;
  },
});

interface Heat {
  readonly freeC: number;
  readonly limitC: number | null;
  readonly limitSource: SourceReference;
}

function heatOf(input: DismantlingInput, state: JointState): Heat {
  const limit = heatingLimitOf(state.hubMaterial);
  const neededUm = Math.max(state.effectiveUm, 0) + (input.freeGapUm ?? usualFreeGapUm);
  return {
    freeC: state.hubC + neededUm / 1000 / (state.hubMaterial.expansionPerK.low * input.jointDiameterMm),
    limitC: input.hubLimitC ?? limit?.lowC ?? null,
    limitSource: input.hubLimitC === undefined && limit !== null ? limit.source : plainMechanics,
  };
}

function assumptionsOf(input: DismantlingInput, { limitC, limitSource }: Heat): readonly Assumption[] {
  const list: Assumption[] = [{ name: 'friction-after-standing', value: afterStanding.factor, unit: '', source: afterStanding.source, effect: 'force-and-grip' }];
  if (input.freeGapUm === undefined) list.push({ name: 'gap-when-free', value: usualFreeGapUm, unit: 'µm', source: { id: 'common-practice', held: 'practice' }, effect: 'how-hot' });
  if (input.hubLimitC === undefined && limitC !== null) list.push({ name: 'heating-limit', value: limitC, unit: '°C', source: limitSource, effect: 'whether-heat-is-enough' });
  return list;
}

function findingsOf(input: DismantlingInput, state: JointState, force: { readonly low: number | null; readonly high: number | null }, heat: Heat, isFreeByHeat: boolean | null): readonly Finding[] {
  if (state.effectiveUm <= 0) return [deciding('joint-already-loose', 'good', { gapUm: 0 - state.effectiveUm }, plainMechanics)];
  const findings: Finding[] = [];
  if (force.low !== null && force.high !== null) {
    const numbers = { lowForceN: force.low, highForceN: force.high };
    const { pressN } = input;
    if (pressN === undefined) findings.push(supporting('parts-by-force', 'note', numbers, plainMechanics));
    else if (pressN >= force.high) findings.push(deciding('press-is-strong-enough', 'good', { ...numbers, pressN }, plainMechanics));
    else findings.push(deciding(pressN < force.low ? 'press-is-too-weak' : 'press-may-be-too-weak', 'care', { ...numbers, pressN }, plainMechanics));
  }
  const warmth = { hubFreeC: heat.freeC, hubLimitC: heat.limitC ?? referenceC };
  if (isFreeByHeat === null) findings.push(supporting('heat-limit-unknown', 'note', { hubFreeC: heat.freeC }, plainMechanics));
  else findings.push(supporting(isFreeByHeat ? 'comes-free-by-heat' : 'does-not-come-free-by-heat', isFreeByHeat ? 'good' : 'note', warmth, heat.limitSource));
  return findings;
}
