import { partMaterial, type Material, type OwnMaterial, type PartMaterial } from '../../material/index.js';
import { trustedSize } from '../../measure/index.js';
import { CalculationError, deciding, invalidInput, readWithin, source, type Assumption, type Finding, type SourceReference, type Span } from '../../result/index.js';
import { partDeviations } from '../../tolerance/index.js';
import { bearingSize, ringDeviations, unmountedClearance } from './bearing-table.js';
import { ringsOf, type BearingRings } from './bearing-rings.js';
import { practiceValue } from './bearing-practice.js';
import type { BearingSeatInput, RingLoad } from './bearing-seat-fields.js';
import { readSuffixes } from './read-suffixes.js';

const usualMaterial = { shaft: 'steel-c45', ring: 'steel-100cr6', housing: 'gjl250' } as const;
/** Wall that counts as thick: the housing is this many times as wide as the seat. */
const thickWallRatio = 10;
const referenceC = 20;
const housingMaterialSource = source('plain-mechanics', 'computed');

/** One seat with the ring on it: deviations from the nominal diameter [µm], materials, smoothing. */
export interface SeatPart {
  readonly where: 'shaft' | 'housing';
  readonly nominalMm: number;
  readonly seat: Span;
  readonly ring: Span;
  readonly ringSource: SourceReference;
  /** True where the sizes were read, not taken from a class. */
  readonly isMeasured: boolean;
  readonly seatMaterial: Material;
  readonly ringMaterial: Material;
  readonly isOneMaterial: boolean;
  /** Both as they were given. */
  readonly given: { readonly seat: PartMaterial; readonly ring: PartMaterial };
  /** Interference times this is what is left after smoothing. */
  readonly keptRatio: number;
  readonly smoothing: { readonly mm: number; readonly source: SourceReference };
}

/** Temperatures of the four parts [°C]; `innerHotterK` is the span that was assumed, and already in the inner ring's ends. */
export interface Temperatures {
  readonly shaftC: number;
  readonly innerC: number;
  readonly outerC: number;
  readonly housingC: number;
}

export interface SeatProblem {
  readonly designation: string | null;
  /** By its suffix; shields rub on nothing. */
  readonly hasRubberSeals: boolean;
  readonly dimensionsSource: SourceReference | null;
  readonly rings: BearingRings;
  readonly shaft: SeatPart | null;
  readonly housing: SeatPart | null;
  /** What is doubtful about the readings of each seat; a seat whose readings cannot be trusted counts as not given. */
  readonly doubts: Readonly<Record<'shaft' | 'housing', readonly Finding[]>>;
  readonly shaftBoreMm: number;
  readonly housingOutsideMm: number;
  readonly clearance: (Span & { readonly source: SourceReference }) | null;
  readonly kind: 'deep-groove-ball' | 'cylindrical-roller';
  /** The two ends of the running state; one and the same where every temperature was given. */
  readonly running: readonly [Temperatures, Temperatures];
  readonly cold: Temperatures | null;
  readonly innerLoad: RingLoad;
  readonly outerLoad: RingLoad;
  readonly materials: readonly OwnMaterial[];
  readonly assumptions: readonly Assumption[];
}

/** Everything that a bearing seat is computed from, with what was assumed. Throws `CalculationError`. */
export function seatProblem(input: BearingSeatInput): SeatProblem {
  const assumptions: Assumption[] = [];
  const marked = input.designation === undefined ? null : readSuffixes(input.designation);
  const size = marked === null ? null : bearingSize(marked.basic);
  const kind = input.bearingKind ?? size?.kind ?? 'deep-groove-ball';
  if (input.bearingKind === undefined && size === null) assumptions.push({ name: 'kind-of-bearing', value: kind, unit: '', source: source('common-practice', 'practice'), effect: 'clearance-and-ring-stress' });
  const dimensions = size ?? { boreMm: input.boreMm ?? 0, outsideMm: input.outsideMm ?? 0, widthMm: input.widthMm ?? 0 };
  const rings = ringsOf(dimensions, kind);
  assumptions.push({ name: 'raceways-estimated', value: rings.ringShare * 100, unit: '%', source: rings.raceSource, effect: 'clearance-and-ring-stress' });

  const ringMaterial = materialOr(input, 'ringMaterial', usualMaterial.ring, assumptions, 'bearing-steel');
  const toleranceClass = input.bearingToleranceClass ?? 'Normal';
  if (input.bearingToleranceClass === undefined) assumptions.push({ name: 'bearing-of-normal-class', value: 'Normal', unit: '', source: source('iso-492', 'page'), effect: 'both-fits' });
  const smoothing = input.seatFinish === 'turned' ? practiceValue('smoothing-turned-seat', 'Mm') : practiceValue('smoothing-ground-seat', 'Mm');
  if (input.seatFinish === undefined) assumptions.push({ name: 'seats-are-ground', value: smoothing.low, unit: 'mm', source: smoothing.source, effect: 'interference-that-presses' });

  const doubts: Record<'shaft' | 'housing', readonly Finding[]> = { shaft: [], housing: [] };
  const part = (where: 'shaft' | 'housing'): SeatPart | null => {
    const nominalMm = where === 'shaft' ? dimensions.boreMm : dimensions.outsideMm;
    const { seat, doubts: found } = seatDeviations(input, where, nominalMm);
    doubts[where] = found;
    if (seat === null) return null;
    if (where === 'housing' && input.housingMaterial === undefined) doubts.housing = [...found, deciding('housing-material-not-given', 'unknown', {}, housingMaterialSource, 'housingMaterial')];
    const { low, high, source: ringSource } = ringDeviations(where === 'shaft' ? 'inner' : 'outer', toleranceClass, nominalMm);
    const given = { seat: where === 'shaft' ? (input.shaftMaterial ?? usualMaterial.shaft) : (input.housingMaterial ?? usualMaterial.housing), ring: input.ringMaterial ?? usualMaterial.ring };
    const seatMaterial = where === 'shaft' ? materialOr(input, 'shaftMaterial', usualMaterial.shaft, assumptions, 'shaft-of-steel') : materialOr(input, 'housingMaterial', usualMaterial.housing, assumptions, 'housing-of-cast-iron');
    return {
      where, nominalMm, seat, ring: { low, high }, ringSource, seatMaterial, ringMaterial, given,
      isMeasured: (where === 'shaft' ? input.shaftReadings : input.housingReadings) !== undefined,
      isOneMaterial: typeof given.seat === 'string' && given.seat === given.ring,
      keptRatio: nominalMm / (nominalMm + smoothing.low),
      smoothing: { mm: smoothing.low, source: smoothing.source },
    };
  };
  const shaft = part('shaft');
  const housing = part('housing');
  const shaftBoreMm = input.shaftBoreMm ?? 0;
  if (shaftBoreMm >= dimensions.boreMm) throw invalidInput('shaftBoreMm', shaftBoreMm, `below the bore of the bearing, ${dimensions.boreMm} mm`);
  if (input.housingOutsideMm !== undefined && input.housingOutsideMm <= dimensions.outsideMm) throw invalidInput('housingOutsideMm', input.housingOutsideMm, `over the outside of the bearing, ${dimensions.outsideMm} mm`);
  if (housing !== null && input.housingOutsideMm === undefined) assumptions.push({ name: 'thick-housing', value: thickWallRatio, unit: '', source: source('plain-mechanics', 'computed'), effect: 'clearance-and-ring-stress' });

  const group = input.clearanceGroup ?? marked?.clearanceGroup ?? 'N';
  if (input.clearanceGroup === undefined && (marked === null || (marked.clearanceGroup === 'N' && marked.unknownSuffixes.length > 0))) assumptions.push({ name: 'clearance-group-normal', value: 'N', unit: '', source: source('iso-5753-1', 'page'), effect: 'clearance-while-running' });
  const loads = { inner: input.innerRingLoad ?? 'rotating', outer: input.outerRingLoad ?? 'stationary' } as const;
  if (input.innerRingLoad === undefined || input.outerRingLoad === undefined) assumptions.push({ name: 'load-stands-still', value: `${loads.inner}, ${loads.outer}`, unit: '', source: source('common-practice', 'practice'), effect: 'which-ring-needs-interference' });
  return {
    designation: marked?.basic ?? null,
    hasRubberSeals: marked?.seal === 'seals',
    dimensionsSource: size?.source ?? null,
    rings, shaft, housing, doubts, shaftBoreMm, kind,
    housingOutsideMm: input.housingOutsideMm ?? dimensions.outsideMm * thickWallRatio,
    clearance: clearanceOf(kind, group, dimensions.boreMm),
    running: runningTemperatures(input, assumptions),
    cold: input.coldC === undefined ? null : { shaftC: input.coldC, innerC: input.coldC, outerC: input.coldC, housingC: input.coldC },
    innerLoad: loads.inner,
    outerLoad: loads.outer,
    materials: input.materials ?? [],
    assumptions,
  };
}

/** Clearance before fitting, or null beyond the table: the fits are computed all the same. */
export function clearanceOf(kind: SeatProblem['kind'], group: Parameters<typeof unmountedClearance>[0], boreMm: number): SeatProblem['clearance'] {
  try {
    return unmountedClearance(group, boreMm, kind);
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'outside-table') return null;
    throw error;
  }
}

function seatDeviations(input: BearingSeatInput, where: 'shaft' | 'housing', nominalMm: number): { readonly seat: Span | null; readonly doubts: readonly Finding[] } {
  const toleranceClass = where === 'shaft' ? input.shaftClass : input.housingClass;
  if (toleranceClass !== undefined) {
    const { lowerUm, upperUm } = partDeviations(toleranceClass, nominalMm, where === 'shaft' ? 'shaft' : 'hole', `${where}Class`);
    return { seat: { low: lowerUm, high: upperUm }, doubts: [] };
  }
  const readings = where === 'shaft' ? input.shaftReadings : input.housingReadings;
  const path = `${where}Readings`;
  const { size, doubts } = readWithin(path, () => trustedSize(readings ?? [], where === 'shaft' ? 'outside' : 'inside', { measured: `measured-${where}-seat`, path }, input.instruments));
  if (size === null) return { seat: null, doubts };
  const um = (sizeMm: number) => Math.round((sizeMm - nominalMm) * 1e9) / 1e6;
  const deviations = { low: um(size.smallestMm - size.expandedUncertaintyMm), high: um(size.largestMm + size.expandedUncertaintyMm) };
  if (Math.max(Math.abs(deviations.low), Math.abs(deviations.high)) > 100 * nominalMm) {
    throw invalidInput(path, size.meanMm, `within a tenth of the ${where === 'shaft' ? 'bore' : 'outside'} of the bearing, ${nominalMm} mm`);
  }
  return { seat: deviations, doubts };
}

function materialOr(input: BearingSeatInput, field: 'shaftMaterial' | 'ringMaterial' | 'housingMaterial', usual: string, assumptions: Assumption[], name: string): Material {
  const material = partMaterial(input[field] ?? usual, input.materials, field);
  if (input[field] === undefined) assumptions.push({ name, value: material.name, unit: '', source: material.source, effect: 'interference-that-presses' });
  return material;
}

/**
 * The same, for work with heat and force: what a case bears, and how far it opens, is not guessed.
 * @throws CalculationError invalid-input (a housing seat without the material of the housing)
 */
export function withHousingMaterial<T extends BearingSeatInput>(input: T): T {
  const hasHousing = input.housingClass !== undefined || input.housingReadings !== undefined;
  if (hasHousing && input.housingMaterial === undefined) throw invalidInput('housingMaterial', undefined, 'a material id, or its numbers', 'missing: what the housing is made of decides how it is warmed, and whether it holds when hot');
  return input;
}

function runningTemperatures(input: BearingSeatInput, assumptions: Assumption[]): SeatProblem['running'] {
  const housingC = input.housingTemperatureC ?? input.temperatureC ?? input.outerRingTemperatureC ?? referenceC;
  const outerC = input.outerRingTemperatureC ?? input.temperatureC ?? housingC;
  const inner = input.innerRingTemperatureC ?? input.shaftTemperatureC;
  const at = (innerC: number): Temperatures => ({ shaftC: input.shaftTemperatureC ?? innerC, innerC, outerC, housingC });
  if (inner !== undefined) return [at(inner), at(inner)];
  if (outerC <= referenceC) return [at(outerC), at(outerC)];
  const hotter = practiceValue('inner-ring-hotter', 'K');
  assumptions.push({ name: 'inner-ring-hotter', value: hotter.low, upToValue: hotter.high, unit: 'K', source: hotter.source, effect: 'clearance-while-running' });
  return [at(outerC + hotter.low), at(outerC + hotter.high)];
}
