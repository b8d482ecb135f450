import { partMaterial, type Material } from '../../material/index.js';
import { contradiction, invalidInput, source, type Assumption, type SourceReference, type Span } from '../../result/index.js';
import type { JointInput } from './joint-shape.js';
import { frictionAssumption, tabledFriction } from './press-friction.js';
import { ringCompliance, type Ring, type RingCompliance } from './thick-ring.js';
import { spinOf, turningGrowthMm } from './turning-ring.js';

export const referenceC = 20;

/** A joint as numbers: both rings, what is left of the interference, and the pressure it makes while elastic. */
export interface JointState {
  readonly shaft: Ring;
  readonly hub: Ring;
  readonly shaftMaterial: Material;
  readonly hubMaterial: Material;
  readonly shaftC: number;
  readonly hubC: number;
  readonly smoothingUm: number;
  readonly smoothingSource: SourceReference | null;
  /** Interference gained by temperature; negative: lost. */
  readonly thermalUm: number;
  /** Interference lost by turning. */
  readonly turningUm: number;
  /** What presses; below zero: a gap. */
  readonly effectiveUm: number;
  /** The same over the span of both expansion coefficients. */
  readonly effectiveSpanUm: Span;
  readonly shaftCompliance: RingCompliance;
  readonly hubCompliance: RingCompliance;
  /** Interference [mm] for each MPa. */
  readonly compliance: number;
  readonly contactPressureMpa: number;
  readonly shaftSpin: number;
  readonly hubSpin: number;
  readonly friction: Span | null;
  readonly assumptions: readonly Assumption[];
}

/** Reads a joint. Throws `CalculationError` where its sizes contradict each other. */
export function jointState(input: JointInput): JointState {
  const { jointDiameterMm: d, shaftBoreMm, hubOutsideMm } = input;
  if (shaftBoreMm >= d) throw contradiction(['shaftBoreMm', 'jointDiameterMm'], 'the bore of the shaft must be smaller than the joint');
  if (hubOutsideMm <= d) throw contradiction(['hubOutsideMm', 'jointDiameterMm'], 'the outside of the hub must be larger than the joint');
  const shaftMaterial = partMaterial(input.shaft, input.materials, 'shaft');
  const hubMaterial = partMaterial(input.hub, input.materials, 'hub');
  const shaft: Ring = { insideMm: shaftBoreMm, outsideMm: d, youngsMpa: shaftMaterial.youngsModulusGpa * 1000, poissonRatio: shaftMaterial.poissonRatio };
  const hub: Ring = { insideMm: d, outsideMm: hubOutsideMm, youngsMpa: hubMaterial.youngsModulusGpa * 1000, poissonRatio: hubMaterial.poissonRatio };
  const { shaftC, hubC } = temperaturesOf(input);
  const { smoothingUm, smoothingSource } = smoothingOf(input);
  const thermal = (shaftPerK: number, hubPerK: number) => d * 1000 * (shaftPerK * (shaftC - referenceC) - hubPerK * (hubC - referenceC));
  const [s, h] = [shaftMaterial.expansionPerK, hubMaterial.expansionPerK];
  // Parts of one material expand alike, whatever its coefficient is.
  const isOneMaterial = typeof input.shaft === 'string' && input.shaft === input.hub;
  const thermals = isOneMaterial ? [thermal(s.low, h.low), thermal(s.high, h.high)] : [s.low, s.high].flatMap((one) => [h.low, h.high].map((other) => thermal(one, other)));
  const thermalUm = thermal(s.probable, h.probable);
  const shaftSpin = spinFor(input, shaftMaterial, 'shaft');
  const hubSpin = spinFor(input, hubMaterial, 'hub');
  const turningUm = 1000 * (turningGrowthMm(hub, hubSpin, d) - turningGrowthMm(shaft, shaftSpin, d));
  const rest = input.interferenceUm - smoothingUm - turningUm;
  const effectiveUm = rest + thermalUm;
  const shaftCompliance = ringCompliance(shaft);
  const hubCompliance = ringCompliance(hub);
  const compliance = hubCompliance.insideByInner - shaftCompliance.outsideByOuter;
  const friction = input.frictionCoefficient === undefined ? tabledFriction(hubMaterial, input.seatCondition) : { low: input.frictionCoefficient, high: input.frictionCoefficient };
  return {
    shaft,
    hub,
    shaftMaterial,
    hubMaterial,
    shaftC,
    hubC,
    smoothingUm,
    smoothingSource,
    thermalUm,
    turningUm,
    effectiveUm,
    effectiveSpanUm: { low: rest + Math.min(...thermals), high: rest + Math.max(...thermals) },
    shaftCompliance,
    hubCompliance,
    compliance,
    contactPressureMpa: Math.max(effectiveUm, 0) / 1000 / compliance,
    shaftSpin,
    hubSpin,
    friction,
    assumptions: assumptionsOf(input, friction, shaftC, hubC, shaftMaterial, hubMaterial),
  };
}

function temperaturesOf({ temperatureC, shaftTemperatureC, hubTemperatureC }: JointInput): { readonly shaftC: number; readonly hubC: number } {
  if (temperatureC !== undefined && (shaftTemperatureC !== undefined || hubTemperatureC !== undefined)) {
    throw contradiction(['temperatureC', shaftTemperatureC === undefined ? 'hubTemperatureC' : 'shaftTemperatureC'], 'give one temperature for both parts, or one for each');
  }
  return { shaftC: shaftTemperatureC ?? temperatureC ?? referenceC, hubC: hubTemperatureC ?? temperatureC ?? referenceC };
}

const smoothingShares = { 'din-7190-2001': 0.8, 'din-7190-1-2017': 0.4 } as const;

/** Smoothing as given, or by one of the two published rules.  G = 0.8·(RzA + RzI) or 0.4·(RzA + RzI) */
function smoothingOf({ smoothingUm, smoothingRule, shaftRoughnessRzUm, hubRoughnessRzUm }: JointInput): { readonly smoothingUm: number; readonly smoothingSource: SourceReference | null } {
  if (smoothingRule === undefined) {
    if (shaftRoughnessRzUm !== undefined || hubRoughnessRzUm !== undefined) throw invalidInput('smoothingRule', smoothingRule, 'din-7190-2001 or din-7190-1-2017', 'roughness is given, but not the rule that uses it');
    return { smoothingUm: smoothingUm ?? 0, smoothingSource: null };
  }
  if (smoothingUm !== undefined) throw contradiction(['smoothingUm', 'smoothingRule'], 'give the smoothing or the rule for it, not both');
  if (shaftRoughnessRzUm === undefined) throw invalidInput('shaftRoughnessRzUm', undefined, 'the roughness Rz of the shaft', 'missing; the rule needs it');
  if (hubRoughnessRzUm === undefined) throw invalidInput('hubRoughnessRzUm', undefined, 'the roughness Rz of the hub', 'missing; the rule needs it');
  return { smoothingUm: smoothingShares[smoothingRule] * (shaftRoughnessRzUm + hubRoughnessRzUm), smoothingSource: source(smoothingRule, 'memory', 'smoothing') };
}

function spinFor({ speedRpm }: JointInput, { densityKgPerM3 }: Material, path: string): number {
  if (speedRpm === undefined || speedRpm === 0) return 0;
  if (densityKgPerM3 === null) throw invalidInput(`${path}.densityKgPerM3`, undefined, 'the density of the material', 'missing; a turning joint needs it');
  return spinOf(densityKgPerM3, speedRpm);
}

function assumptionsOf(input: JointInput, friction: Span | null, shaftC: number, hubC: number, shaft: Material, hub: Material): readonly Assumption[] {
  const list: Assumption[] = [];
  if (input.frictionCoefficient === undefined && friction !== null) list.push(frictionAssumption(friction));
  if (input.smoothingUm === undefined && input.smoothingRule === undefined) list.push({ name: 'smoothing', value: 0, unit: 'µm', source: source('common-practice', 'practice'), effect: 'interference-that-presses' });
  for (const [name, material, c] of [['expansion-of-shaft', shaft, shaftC], ['expansion-of-hub', hub, hubC]] as const) {
    const { low, high } = material.expansionPerK;
    if (c !== referenceC && low < high) list.push({ name, value: low, upToValue: high, unit: '1/K', source: material.source, effect: 'interference-that-presses' });
  }
  return list;
}
