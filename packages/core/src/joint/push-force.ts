import * as z from 'zod/mini';
import { lengthField } from '../quantity/index.js';
import { candourFields, defineCalculation, invalidInput, wholeNumberField, outputNumber, plainMechanics, type Span, type WorkingStep } from '../result/index.js';
import { jointShape } from './internal/joint-shape.js';
import { jointState, type JointState } from './internal/joint-state.js';
import { frictionSource } from './internal/press-friction.js';
import { realPressureMpa } from './internal/real-pressure.js';

const inputField = z.strictObject({
  ...jointShape,
  leadInMm: z.optional(lengthField({ label: 'length of the lead-in, over which the interference grows from nothing', unit: 'mm', from: 0, upTo: 1000, typical: '2' })),
  curvePointCount: z.optional(wholeNumberField({ label: 'points of the curve', unit: '', from: 2, upTo: 2000, typical: '41' })),
});

const outputField = z.strictObject({
  contactPressureMpa: outputNumber('contact pressure', 'MPa'),
  curve: z.readonly(z.array(z.strictObject({ depthMm: outputNumber('pushed in', 'mm'), lowForceN: outputNumber('force at the low end of friction', 'N'), highForceN: outputNumber('force at the high end of friction', 'N') }))),
  lowForceN: outputNumber('largest force, friction at its low end', 'N'),
  highForceN: outputNumber('largest force, friction at its high end', 'N'),
  lowWorkJ: outputNumber('work, friction at its low end', 'J'),
  highWorkJ: outputNumber('work, friction at its high end', 'J'),
  pressN: outputNumber('force the press should have: the high end and a half more', 'N'),
  cautions: z.readonly(z.array(z.string().check(z.meta({ label: 'caution', unit: '' })))),
  ...candourFields,
});

export type PushForceInput = z.infer<typeof inputField>;
export type PushForceOutput = z.infer<typeof outputField>;

const usualPoints = 41;
/** What a press is taken stronger than the estimate: common practice. */
const pressReserve = 1.5;

/** Force over the way while one part is pushed into the other.  F(x) = μ·p·π·d·(engaged length)
 * The interference grows evenly over the lead-in; from there on every millimetre adds the same.
 * @returns n points of force [N] over depth [mm], for both ends of friction; work [J]
 * @throws CalculationError invalid-input (no friction at hand) | contradiction
 * @source plain-mechanics (computed); friction din-7190-2001 (held as: memory)
 * @example pushForce.run({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 30, shaft: 'steel-c45', hub: 'steel-c45', frictionCoefficient: 0.1 }).highForceN.toFixed(0) // '29264'
 */
export const pushForce = defineCalculation({
  name: 'push-force',
  summary: 'Force and work to press one part into the other, over the way',
  input: inputField,
  output: outputField,
  compute(input): PushForceOutput {
    const state = jointState(input);
    const friction = frictionOf(state);
    const leadInMm = leadInOf(input);
    const p = realPressureMpa(state);
    const perMm = Math.PI * input.jointDiameterMm * p;
    const points = input.curvePointCount ?? usualPoints;
    const curve = Array.from({ length: points }, (_, i) => {
      const depthMm = (input.lengthMm * i) / (points - 1);
      const grips = perMm * engagedMm(depthMm, leadInMm);
      return { depthMm, lowForceN: friction.low * grips, highForceN: friction.high * grips };
    });
    const most = perMm * engagedMm(input.lengthMm, leadInMm);
    const work = (perMm * workLengthMm2(input.lengthMm, leadInMm)) / 1000;
    return {
      contactPressureMpa: p,
      curve,
      lowForceN: friction.low * most,
      highForceN: friction.high * most,
      lowWorkJ: friction.low * work,
      highWorkJ: friction.high * work,
      pressN: friction.high * most * pressReserve,
      cautions: ['eye-protection', 'press-straight', 'push-through-the-tight-ring'],
      assumptions: [...state.assumptions, { name: 'press-reserve', value: pressReserve, unit: '', source: { id: 'common-practice', held: 'practice' }, effect: 'which-press' }],
      notChecked: ['edge-pressure', 'form-and-roughness', 'force-to-start-and-tilt'],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const state = jointState(input);
    const friction = frictionOf(state);
    const by = input.frictionCoefficient === undefined ? frictionSource : plainMechanics;
    const scope = { d: input.jointDiameterMm, p: output.contactPressureMpa, mu: friction.high };
    const [L, l] = [input.lengthMm, leadInOf(input)];
    return [
      { kind: 'formula', symbol: 'F', meaning: 'largest force, friction at its high end', formula: 'mu * p * pi * d * (L - l / 2)', scope: { ...scope, L, l }, value: output.highForceN, unit: 'N', source: by },
      { kind: 'formula', symbol: 'W', meaning: 'work, friction at its high end', formula: 'mu * p * pi * d * (L^2 / 2 - l * L / 2 + l^2 / 6) / 1000', scope: { ...scope, L, l }, value: output.highWorkJ, unit: 'J', source: by },
    ];
  },
});

function frictionOf({ friction, hubMaterial }: JointState): Span {
  if (friction === null) throw invalidInput('frictionCoefficient', undefined, 'the friction between shaft and hub', `missing; no friction of a hub of ${hubMaterial.name} is at hand`);
  return friction;
}

function leadInOf({ leadInMm = 0, lengthMm }: PushForceInput): number {
  if (leadInMm > lengthMm) throw invalidInput('leadInMm', leadInMm, `up to the length of the joint, ${lengthMm} mm`);
  return leadInMm;
}

/** Length that counts as gripping with full pressure: over the lead-in the mean is half. */
function engagedMm(depthMm: number, leadInMm: number): number {
  return depthMm <= leadInMm ? (leadInMm === 0 ? 0 : depthMm ** 2 / (2 * leadInMm)) : depthMm - leadInMm / 2;
}

/** Integral of the engaged length over the way. */
function workLengthMm2(lengthMm: number, leadInMm: number): number {
  return lengthMm ** 2 / 2 - (leadInMm * lengthMm) / 2 + leadInMm ** 2 / 6;
}
