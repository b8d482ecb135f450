import fc from 'fast-check';
import { constructions, fluids, lipMaterials, requirementSets, type Situation } from '@seatwright/core/seal';

const um = (min: number, max: number) => fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((value) => value / 1000);
const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
const sizes = [[6, 16, 7], [10, 22, 7], [20, 35, 7], [25, 40, 7], [45, 62, 8], [80, 100, 10], [150, 180, 15], [240, 270, 15]] as const;

/** Any one seal in any one place, with any of the readings missing. */
export const situations: fc.Arbitrary<Situation> = fc
  .record({
    size: fc.constantFrom(...sizes),
    shaftDeviation: um(-0.9, 0.9),
    boreDeviation: um(-0.7, 0.7),
    hasShaft: fc.boolean(),
    hasBore: fc.boolean(),
    instrument: fc.constantFrom('vernier-calliper-005', 'digital-calliper'),
    construction: fc.constantFrom(...constructions),
    lipMaterial: fc.constantFrom(...lipMaterials),
    turns: optional(fc.constantFrom('either way', 'clockwise', 'counter-clockwise')),
    hasDustLip: optional(fc.boolean()),
    material: optional(fc.constantFrom('gjl250', 'al-a380', 'mg-az91d', 'steel-c45', 'bronze-c932', 'ss304', 'ti-6al4v')),
    depthMm: optional(um(3, 40)),
    innerEnd: optional(fc.constantFrom('shoulder', 'open')),
    boreLeadIn: optional(fc.record({ lengthMm: um(0, 2) })),
    shaftLeadIn: optional(fc.constantFrom({ kind: 'none' }, { kind: 'chamfer', diameterReductionMm: 3 }, { kind: 'chamfer' }, { kind: 'radius', radiusMm: 0.8 })),
    isSplit: optional(fc.boolean()),
    roughnessRaUm: optional(um(0.05, 5)),
    boreRoughnessRaUm: optional(um(0.2, 10)),
    hardnessHrc: optional(fc.integer({ min: 10, max: 65 })),
    leadAngleDeg: optional(um(-0.2, 0.2)),
    runoutMm: optional(um(0, 0.5)),
    offsetMm: optional(um(0, 0.5)),
    speedRpm: optional(fc.integer({ min: 0, max: 20_000 })),
    fluid: optional(fc.constantFrom(...fluids)),
    fluidTemperatureC: optional(fc.integer({ min: -30, max: 260 })),
    housingTemperatureC: optional(fc.integer({ min: -30, max: 200 })),
    coldestC: optional(fc.integer({ min: -60, max: 20 })),
    pressureMpa: optional(um(-0.1, 0.3)),
    pressureLowMpa: optional(um(-0.1, 0)),
    pressureHighMpa: optional(um(0, 0.3)),
    seat: optional(fc.constantFrom({ kind: 'flush' }, { kind: 'shoulder' }, { kind: 'depth', depthMm: 2 })),
    lipFacing: optional(fc.constantFrom('inward', 'outward')),
    fluidSide: optional(fc.constantFrom('inside', 'outside', 'both')),
    rotation: optional(fc.constantFrom('clockwise', 'counter-clockwise', 'both')),
    catchesNail: optional(fc.boolean()),
    retainedBy: optional(fc.constantFrom('nothing', 'circlip', 'plate', 'staking')),
    reachableFrom: optional(fc.constantFrom('outside', 'inside', 'both')),
    clearBehindMm: optional(um(0, 30)),
    protrusionMm: optional(um(-5, 100)),
    oldDepth: optional(um(-1, 10)),
    requirementSet: optional(fc.constantFrom(...requirementSets)),
  })
  .map((r) => {
    const [shaftMm, outsideMm, widthMm] = r.size;
    return withoutGaps({
      shaft: { readings: r.hasShaft ? [{ instrument: r.instrument, valuesMm: [round(shaftMm + r.shaftDeviation)] }] : undefined, roughnessRaUm: r.roughnessRaUm, hardnessHrc: r.hardnessHrc, leadAngleDeg: r.leadAngleDeg, leadIn: r.shaftLeadIn, runoutMm: r.runoutMm, offsetMm: r.offsetMm, protrusionMm: r.protrusionMm },
      bore: { readings: r.hasBore ? [{ instrument: r.instrument, valuesMm: [round(outsideMm + r.boreDeviation)] }] : undefined, material: r.material, depthMm: r.depthMm, innerEnd: r.innerEnd, leadIn: r.boreLeadIn, isSplit: r.isSplit, roughnessRaUm: r.boreRoughnessRaUm },
      seal: { shaftMm, outsideMm, widthMm, construction: r.construction, lipMaterial: r.lipMaterial, turns: r.turns, hasDustLip: r.hasDustLip },
      running: { speedRpm: r.speedRpm, fluid: r.fluid, fluidTemperatureC: r.fluidTemperatureC, housingTemperatureC: r.housingTemperatureC, coldestC: r.coldestC, pressureMpa: r.pressureMpa, pressureLowMpa: r.pressureLowMpa, pressureHighMpa: r.pressureHighMpa },
      seat: r.seat,
      lipFacing: r.lipFacing,
      fluidSide: r.fluidSide,
      rotation: r.rotation,
      wearTrack: r.catchesNail === undefined ? undefined : { catchesNail: r.catchesNail },
      retainedBy: r.retainedBy,
      reachableFrom: r.reachableFrom,
      clearBehindMm: r.clearBehindMm,
      oldDepthMm: r.oldDepth === undefined ? undefined : [r.oldDepth],
      requirementSet: r.requirementSet,
    }) as Situation;
  });

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}

/** Drops what is undefined, so that a missing reading is missing and not `undefined`. */
function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).filter(([, item]) => item !== undefined).map(([key, item]) => [key, withoutGaps(item)]));
}
