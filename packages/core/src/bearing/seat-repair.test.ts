import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { seatRepair, type SeatRepairInput } from './seat-repair.js';

/*
 * 6203: 17 × 40 × 12. Rings of normal class: bore 0/−8 µm, outside 0/−11 µm (ISO 492).
 * Seats (ISO 286): H7 0/+25, G7 +9/+34, H9 0/+62, H12 0/+250 at 40 mm; g6 −6/−17, f6 −16/−27, h6 0/−11, k5 +1/+9, k8 0/+27 at 17 mm.
 */
const housing: SeatRepairInput = { designation: '6203', housingClass: 'H9', housingMaterial: 'al-a380', seat: 'housing' };
const shaft: SeatRepairInput = { designation: '6203', shaftClass: 'h6', seat: 'shaft' };
const look = (input: SeatRepairInput) => seatRepair.compute(input);
const codes = (input: SeatRepairInput) => look(input).findings.map(({ code }) => code);
const optionOf = (input: SeatRepairInput, kind: string) => look(input).options.find((option) => option.kind === kind);
const codesOf = (input: SeatRepairInput, kind: string) => optionOf(input, kind)?.findings.map(({ code, severity }) => `${code} ${severity}`);

describe('whether a seat is loose', () => {
  test.each<[Partial<SeatRepairInput>, number, number, string]>([
    // Under standing load up to the gap that G7 gives, 34 + 11, is as recommended.
    [{ housingClass: 'H7' }, 36, 0, 'seat-needs-no-repair'],
    [{ housingClass: 'G7' }, 45, 9, 'seat-needs-no-repair'],
    [{ housingClass: 'H9' }, 73, 0, 'housing-seat-loose'],
    // A load that turns against the ring bears no gap at all.
    [{ housingClass: 'H7', outerRingLoad: 'rotating' }, 36, 0, 'housing-seat-loose'],
    [{ housingClass: 'H7', outerRingLoad: 'indeterminate' }, 36, 0, 'housing-seat-loose'],
  ])('housing %j: gap up to %d, down to %d µm: %s', (more, mostGapUm, leastGapUm, code) => {
    expect(look({ ...housing, ...more })).toMatchObject({ seat: 'housing', mostGapUm, leastGapUm });
    expect(codes({ ...housing, ...more })).toEqual([code]);
  });

  test.each<[Partial<SeatRepairInput>, number, number, string]>([
    [{ shaftClass: 'g6', innerRingLoad: 'stationary' }, 17, -2, 'seat-needs-no-repair'],
    [{ shaftClass: 'f6', innerRingLoad: 'stationary' }, 27, 8, 'shaft-seat-loose'],
    [{ shaftClass: 'h6' }, 11, -8, 'shaft-seat-loose'],
    [{ shaftClass: 'k5' }, -1, -17, 'seat-needs-no-repair'],
    // At its least it neither presses nor stands off: that is too little for a turning load.
    [{ shaftClass: 'k8' }, 0, -35, 'shaft-seat-loose'],
  ])('shaft %j: gap up to %d, down to %d µm: %s', (more, mostGapUm, leastGapUm, code) => {
    expect(look({ ...shaft, ...more }).mostGapUm).toBeCloseTo(mostGapUm, 9);
    expect(look({ ...shaft, ...more }).leastGapUm).toBeCloseTo(leastGapUm, 9);
    expect(codes({ ...shaft, ...more })).toEqual([code]);
  });

  test('a good seat has nothing to be repaired', () => {
    const output = look({ ...housing, housingClass: 'H7' });
    expect(output.verdict).toBe('suits');
    expect(output.options).toMatchObject([{ kind: 'none needed', sleeveOutsideMm: null, sleeveInsideMm: null, sleeveFit: null }]);
    expect(look(housing).verdict).toBe('does not suit');
  });

  test('the seat must be given', () => {
    expect(() => seatRepair.run({ ...housing, seat: 'shaft' })).toThrow(/the shaft seat was not given/);
    expect(() => seatRepair.run({ ...shaft, seat: 'housing' })).toThrow(/the housing seat was not given/);
  });

  test('the working: largest hole less smallest ring', () => {
    const steps = seatRepair.explain(housing, look(housing));
    expectWorkingHolds(steps);
    expect(steps).toMatchObject([{ symbol: 'g', scope: { ES: 62, ei: -11 }, value: 73, unit: 'µm' }]);
    expect(seatRepair.explain(shaft, look(shaft))).toMatchObject([{ scope: { ES: 0, ei: -11 }, value: 11 }]);
    expect(seatRepair.explain({ ...housing, seat: 'shaft' }, look(housing))).toEqual([]);
  });
});

describe('retaining compound', () => {
  // Common practice: up to 0.15 mm on the diameter.
  test('fills a gap that is narrow enough; under a turning load with a warning', () => {
    expect(codesOf(housing, 'retaining compound')).toEqual(['compound-fills-seat care']);
    expect(optionOf(housing, 'retaining compound')?.findings[0]?.parameters).toEqual({ gapMm: 0.073, limitMm: 0.15 });
    expect(codesOf({ ...housing, outerRingLoad: 'rotating' }, 'retaining compound')).toEqual(['compound-fills-seat care', 'compound-under-turning-load care']);
    expect(codesOf(shaft, 'retaining compound')).toEqual(['compound-fills-seat care', 'compound-under-turning-load care']);
  });

  test('does not fill a wide one', () => {
    expect(codesOf({ ...housing, housingClass: 'H12' }, 'retaining compound')).toEqual(['compound-gap-too-wide bad']);
    expect(optionOf({ ...housing, housingClass: 'H12' }, 'retaining compound')?.findings[0]?.parameters).toEqual({ gapMm: 0.261, limitMm: 0.15 });
  });
});

describe('a sleeve', () => {
  // Common practice: a wall of 2 mm at the least. Housing: 40 + 2·2 = 44 mm outside; shaft: 17 − 2·2 = 13 mm inside.
  test('in the housing: its sizes, and a fit that stays tight hot', () => {
    const hot = { ...housing, temperatureC: 80 };
    expect(codesOf(hot, 'sleeve')).toEqual(['sleeve-restores-housing-seat good']);
    const sleeve = optionOf(hot, 'sleeve');
    expect(sleeve).toMatchObject({ sleeveOutsideMm: 44, sleeveInsideMm: 40 });
    expect(sleeve?.findings[0]?.parameters).toMatchObject({ jointMm: 44, seatMm: 40, hotC: 80, fit: sleeve?.sleeveFit });
    expect(sleeve?.sleeveFit).toMatch(/^[A-Z]+\d+\/[a-z]+\d+$/u);
  });

  test('on the shaft: what it leaves of the shaft’s strength', () => {
    expect(codesOf(shaft, 'sleeve')).toEqual(['sleeve-restores-shaft-seat care']);
    expect(optionOf(shaft, 'sleeve')).toMatchObject({ sleeveOutsideMm: 17, sleeveInsideMm: 13 });
    // Bending and twist go with the cube of the diameter where the shaft is solid: (13/17)³; hollow (d⁴ − b⁴)/d.
    expect(Number(optionOf(shaft, 'sleeve')?.findings[0]?.parameters['strengthPercent'])).toBeCloseTo(100 * (13 / 17) ** 3, 9);
    const hollow = optionOf({ ...shaft, shaftBoreMm: 8 }, 'sleeve')?.findings[0]?.parameters['strengthPercent'];
    expect(Number(hollow)).toBeCloseTo((100 * (28_561 - 4096) / 13) / ((83_521 - 4096) / 17), 9);
  });

  test('needs a wall of its own size around it', () => {
    expect(codesOf({ ...housing, housingOutsideMm: 48 }, 'sleeve')).toEqual(['sleeve-leaves-no-wall bad']);
    expect(optionOf({ ...housing, housingOutsideMm: 48 }, 'sleeve')?.findings[0]?.parameters).toEqual({ wallMm: 2, sleeveOutsideMm: 44 });
    expect(optionOf({ ...housing, housingOutsideMm: 42 }, 'sleeve')?.findings[0]?.parameters).toEqual({ wallMm: 0, sleeveOutsideMm: 44 });
    expect(codesOf({ ...housing, housingOutsideMm: 48.1 }, 'sleeve')).not.toContain('sleeve-leaves-no-wall bad');
  });

  test('needs a shaft that is left inside it', () => {
    expect(codesOf({ ...shaft, shaftBoreMm: 9 }, 'sleeve')).toEqual(['sleeve-leaves-too-little-shaft bad']);
    expect(optionOf({ ...shaft, shaftBoreMm: 9 }, 'sleeve')?.findings[0]?.parameters).toEqual({ jointMm: 13 });
    expect(codesOf({ ...shaft, shaftBoreMm: 8.9 }, 'sleeve')).not.toContain('sleeve-leaves-too-little-shaft bad');
  });

  test('of a material of one’s own', () => {
    const material = { id: 'pump-iron', name: 'Iron of the pump', youngsModulusGpa: 110, poissonRatio: 0.25, expansionMinPerK: 10e-6, expansionMaxPerK: 11e-6, yieldMpa: 250 };
    expect(codesOf({ ...housing, housingMaterial: 'pump-iron', materials: [material] }, 'sleeve')).toEqual(['sleeve-restores-housing-seat good']);
    expect(codesOf({ ...shaft, shaftMaterial: 'pump-iron', materials: [material] }, 'sleeve')).toEqual(['sleeve-restores-shaft-seat care']);
  });
});

test('the best repair comes first, plating is for others, and what is no repair is named', () => {
  const output = look(housing);
  expect(output.options.map(({ kind }) => kind)).toEqual(['sleeve', 'retaining compound', 'plating']);
  expect(look({ ...housing, housingClass: 'H12', housingOutsideMm: 48 }).options.map(({ kind, verdict }) => `${kind}: ${verdict}`)).toEqual(['plating: suits with care', 'retaining compound: does not suit', 'sleeve: does not suit']);
  expect(look(shaft).options.map(({ kind }) => kind)).toEqual(['sleeve', 'plating', 'retaining compound']);
  expect(output.refused).toEqual(['punched-or-knurled-seat', 'foil-in-the-seat', 'welded-ring']);
  expect(output.notChecked).toEqual(['compound-against-fluid', 'seat-can-be-machined-here']);
});
