import * as z from 'zod/mini';
import { materialField, partMaterial, partMaterialField, type Material } from '../material/index.js';
import { deviationField, lengthField, rotationalSpeedField, temperatureField } from '../quantity/index.js';
import { candourFields, contradiction, defineCalculation, invalidInput, outputNumber, source, type Assumption, type WorkingStep } from '../result/index.js';
import { contactOf } from './internal/contact-set.js';
import { referenceC } from './internal/joint-state.js';
import { ringCompliance, ringStress, together, vonMises, type Ring, type RingCompliance } from './internal/thick-ring.js';
import { spinOf, turningGrowthMm, turningStress } from './internal/turning-ring.js';
import type { Tridiagonal } from './internal/tridiagonal.js';

const longestMm = 100_000;
/** How far, in millionths of a millimetre, the nominal diameters of two neighbours may differ and still be one joint. */
const agreementNm = 1;

const ringField = z.strictObject({
  insideMm: lengthField({ label: 'inside of the ring', unit: 'mm', from: 0, upTo: longestMm, help: '0: a solid cylinder, the innermost alone' }),
  outsideMm: lengthField({ label: 'outside of the ring', unit: 'mm', over: 0, upTo: longestMm }),
  material: partMaterialField,
  temperatureC: z.optional(temperatureField({ label: 'temperature of the ring', unit: '°C', from: -200, upTo: 1000, typical: '20' })),
});

const inputField = z.strictObject({
  rings: z.array(ringField).check(z.minLength(1), z.maxLength(200)),
  interferencesUm: z.array(deviationField({ label: 'interference on the diameter between neighbours, at 20 °C', unit: 'µm', from: -1_000_000, upTo: 1_000_000, help: 'from inside out; clearance: below zero' })).check(z.maxLength(199)),
  lengthMm: z.optional(lengthField({ label: 'length of the stack', unit: 'mm', over: 0, upTo: 10_000 })),
  speedRpm: z.optional(rotationalSpeedField({ label: 'speed', unit: 'rpm', from: 0, upTo: 1_000_000 })),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
});

const jointField = z.strictObject({
  jointDiameterMm: outputNumber('diameter of the joint', 'mm'),
  effectiveInterferenceUm: outputNumber('interference with temperature and turning', 'µm'),
  contactPressureMpa: outputNumber('contact pressure', 'MPa'),
  openGapUm: outputNumber('gap on the diameter', 'µm'),
  contactForceN: z.nullable(outputNumber('pressure times the surface of the joint', 'N')),
});

const ringOutField = z.strictObject({
  boreDisplacementUm: outputNumber('growth of the bore on the diameter, by heat, turning and pressure, against the free ring at 20 °C', 'µm'),
  outsideDisplacementUm: outputNumber('growth of the outside on the diameter, by heat, turning and pressure, against the free ring at 20 °C', 'µm'),
  hoopStressMpa: z.strictObject({ bore: z.nullable(outputNumber('hoop stress at the bore', 'MPa')), outside: outputNumber('hoop stress at the outside', 'MPa') }),
  vonMisesMpa: z.strictObject({ bore: z.nullable(outputNumber('stress of von Mises at the bore; solid: none', 'MPa')), outside: outputNumber('stress of von Mises at the outside', 'MPa') }),
  yields: z.nullable(z.boolean().check(z.meta({ label: 'the ring yields', unit: '' }))),
});

const outputField = z.strictObject({
  joints: z.readonly(z.array(jointField)),
  rings: z.readonly(z.array(ringOutField)),
  ...candourFields,
});

export type RingStackInput = z.infer<typeof inputField>;
export type RingStackOutput = z.infer<typeof outputField>;

/** Any number of rings in each other, as one linear system whose joints push but never pull.  gap = K·p − U ≥ 0,  p ≥ 0,  gap·p = 0
 * Plane stress, equal lengths; K is tridiagonal. Each ring has its own temperature, and all turn together. Neighbours meet on one
 * nominal diameter, given alike to within 1e-6 mm. Growth counts from the free ring at 20 °C, so heat and turning are in it.
 * @returns n − 1 joints with pressure [MPa] and gap [µm]; n rings with the growth of their diameters [µm] and stresses [MPa]
 * @throws CalculationError invalid-input | contradiction
 * @source timoshenko-strength-2, compound cylinders and rotating discs (held as: memory); contact cottle-pang-stone-1992 (held as: memory)
 * @example ringStack.run({ rings: [{ insideMm: 0, outsideMm: 40, material: 'steel-c45' }, { insideMm: 40, outsideMm: 80, material: 'steel-c45' }], interferencesUm: [76] }).joints[0].contactPressureMpa.toFixed(1) // '147.5'
 */
export const ringStack = defineCalculation({
  name: 'ring-stack',
  summary: 'Pressures, gaps, stresses and growth of any number of rings fitted into each other',
  input: inputField,
  output: outputField,
  compute(input): RingStackOutput {
    const stack = stackOf(input);
    const { rings, joints } = stack;
    const { pressures, gaps } = contactOf(stack.matrix, Float64Array.from(joints, (joint) => joint.effectiveMm));
    return {
      joints: joints.map(({ diameterMm, effectiveMm }, j) => ({
        jointDiameterMm: diameterMm,
        effectiveInterferenceUm: effectiveMm * 1000,
        contactPressureMpa: pressures[j] ?? 0,
        openGapUm: (gaps[j] ?? 0) * 1000,
        contactForceN: input.lengthMm === undefined ? null : (pressures[j] ?? 0) * Math.PI * diameterMm * input.lengthMm,
      })),
      rings: rings.map((part, k) => ringResult(part, pressures[k - 1] ?? 0, pressures[k] ?? 0)),
      assumptions: assumptionsOf(rings),
      notChecked: ['edge-pressure', 'form-and-roughness'],
    };
  },
  explain: (input, output) => working(stackOf(input), output),
});

interface StackRing {
  readonly ring: Ring;
  readonly material: Material;
  readonly compliance: RingCompliance;
  readonly temperatureC: number;
  readonly spin: number;
}

interface Stack {
  readonly rings: readonly StackRing[];
  readonly joints: readonly { readonly diameterMm: number; readonly givenUm: number; readonly effectiveMm: number }[];
  readonly matrix: Tridiagonal;
}

function stackOf(input: RingStackInput): Stack {
  const { rings: given, interferencesUm, speedRpm } = input;
  if (interferencesUm.length !== given.length - 1) throw contradiction(['interferencesUm', 'rings'], `${given.length} rings have ${given.length - 1} joints between them, but ${interferencesUm.length} interferences are given`);
  const rings = given.map(({ insideMm, outsideMm, material: stated, temperatureC = referenceC }, k): StackRing => {
    const path = `rings[${k}]`;
    if (insideMm === 0 && k > 0) throw invalidInput(`${path}.insideMm`, insideMm, 'over 0', 'only the innermost ring may be solid');
    if (insideMm >= outsideMm) throw contradiction([`${path}.insideMm`, `${path}.outsideMm`], 'the inside must be smaller than the outside');
    const before = given[k - 1];
    if (before !== undefined && Math.round(Math.abs(before.outsideMm - insideMm) * 1e6) > agreementNm) {
      throw contradiction([`rings[${k - 1}].outsideMm`, `${path}.insideMm`], 'neighbours meet on one nominal diameter; what they differ by goes into interferencesUm');
    }
    const material = partMaterial(stated, input.materials, `${path}.material`);
    const ring = { insideMm, outsideMm, youngsMpa: material.youngsModulusGpa * 1000, poissonRatio: material.poissonRatio };
    return { ring, material, compliance: ringCompliance(ring), temperatureC, spin: spinFor(material, speedRpm, path) };
  });
  const joints = interferencesUm.map((givenUm, j) => {
    const [inner, outer] = pairAt(rings, j);
    const diameterMm = inner.ring.outsideMm;
    return { diameterMm, givenUm, effectiveMm: givenUm / 1000 + freeGrowthMm(inner, diameterMm) - freeGrowthMm(outer, diameterMm) };
  });
  return { rings, joints, matrix: matrixOf(rings, joints.length) };
}

/** The rings on both sides of joint j. */
function pairAt(rings: readonly StackRing[], j: number): readonly [StackRing, StackRing] {
  const [inner, outer] = [rings[j], rings[j + 1]];
  if (inner === undefined || outer === undefined) throw new RangeError(`no joint ${j}`);
  return [inner, outer];
}

function spinFor({ densityKgPerM3 }: Material, speedRpm: number | undefined, path: string): number {
  if (speedRpm === undefined || speedRpm === 0) return 0;
  if (densityKgPerM3 === null) throw invalidInput(`${path}.material.densityKgPerM3`, undefined, 'the density of the material', 'missing; a turning stack needs it');
  return spinOf(densityKgPerM3, speedRpm);
}

/** Growth of a diameter by heat and turning, free of any pressure. */
function freeGrowthMm({ ring, material, temperatureC, spin }: StackRing, atMm: number): number {
  return atMm * material.expansionPerK.probable * (temperatureC - referenceC) + (atMm === 0 ? 0 : turningGrowthMm(ring, spin, atMm));
}

function matrixOf(rings: readonly StackRing[], n: number): Tridiagonal {
  const [below, on, above] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  for (let j = 0; j < n; j += 1) {
    const [inner, outer] = pairAt(rings, j);
    on[j] = outer.compliance.insideByInner - inner.compliance.outsideByOuter;
    if (j > 0) below[j] = -inner.compliance.outsideByInner;
    if (j < n - 1) above[j] = outer.compliance.insideByOuter;
  }
  return { below, on, above };
}

function ringResult(part: StackRing, innerMpa: number, outerMpa: number): RingStackOutput['rings'][number] {
  const { ring, compliance, material, spin } = part;
  const stressAt = (diameterMm: number) => together(ringStress(ring, innerMpa, outerMpa, diameterMm), turningStress(ring, spin, diameterMm));
  const bore = stressAt(ring.insideMm);
  const outside = stressAt(ring.outsideMm);
  const isSolid = ring.insideMm === 0;
  const worstMpa = Math.max(vonMises(bore), vonMises(outside));
  return {
    boreDisplacementUm: 1000 * (compliance.insideByInner * innerMpa + compliance.insideByOuter * outerMpa + freeGrowthMm(part, ring.insideMm)),
    outsideDisplacementUm: 1000 * (compliance.outsideByInner * innerMpa + compliance.outsideByOuter * outerMpa + freeGrowthMm(part, ring.outsideMm)),
    hoopStressMpa: { bore: isSolid ? null : bore.hoopMpa, outside: outside.hoopMpa },
    vonMisesMpa: { bore: isSolid ? null : vonMises(bore), outside: vonMises(outside) },
    yields: material.yieldMpa === null ? null : worstMpa > material.yieldMpa,
  };
}

function assumptionsOf(rings: readonly StackRing[]): readonly Assumption[] {
  const warm = rings.filter(({ material, temperatureC }) => temperatureC !== referenceC && material.expansionPerK.low < material.expansionPerK.high);
  return [...new Map(warm.map(({ material }) => [material.id, material])).values()].map(({ expansionPerK: { low, high }, source: by }) => ({
    name: 'expansion-taken-probable',
    value: low,
    upToValue: high,
    unit: '1/K',
    source: by,
    effect: 'interference-that-presses',
  }));
}

const lame = source('timoshenko-strength-2', 'memory', 'compound cylinders');

function working({ rings, joints, matrix }: Stack, output: RingStackOutput): readonly WorkingStep[] {
  return joints.flatMap(({ givenUm, effectiveMm }, j): readonly WorkingStep[] => {
    const [inner, outer] = pairAt(rings, j);
    const p = (at: number) => output.joints[at]?.contactPressureMpa ?? 0;
    const scope = { K_b: matrix.below[j] ?? 0, K: matrix.on[j] ?? 0, K_a: matrix.above[j] ?? 0, p_b: p(j - 1), p: p(j), p_a: p(j + 1), U: effectiveMm };
    const isOpen = (output.joints[j]?.openGapUm ?? 0) > 0;
    return [
      {
        kind: 'formula',
        symbol: `U_${j + 1}`,
        meaning: 'interference with temperature and turning',
        formula: 'I / 1000 + g_i - g_o',
        scope: { I: givenUm, g_i: freeGrowthMm(inner, inner.ring.outsideMm), g_o: freeGrowthMm(outer, inner.ring.outsideMm) },
        value: effectiveMm,
        unit: 'mm',
        source: lame,
      },
      { kind: 'formula', symbol: `gap_${j + 1}`, meaning: 'gap that is left', formula: 'K_b * p_b + K * p + K_a * p_a - U', scope, value: (output.joints[j]?.openGapUm ?? 0) / 1000, unit: 'mm', source: lame },
      { kind: 'choice', symbol: `p_${j + 1}`, meaning: 'contact pressure', value: p(j), unit: 'MPa', why: isOpen ? 'the joint stands open: nothing presses' : 'the joint is closed: its gap is zero', source: lame },
    ];
  });
}
