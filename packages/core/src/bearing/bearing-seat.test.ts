import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { seatClasses } from '../tables/generated/seat-classes.js';
import { zoneOfClass } from '../tolerance/index.js';
import { bearingFitting } from './bearing-fitting.js';
import { bearingRemoval } from './bearing-removal.js';
import { bearingSeat } from './bearing-seat.js';
import { seatRepair } from './seat-repair.js';
import type { BearingSeatInput } from './internal/bearing-seat-fields.js';

/*
 * 6203: 17 × 40 × 12. Rings of normal class: bore 0/−8 µm, outside 0/−11 µm (ISO 492); clearance 0 to 9 in group 2, 3 to 18 in N, 11 to 25 in 3 (ISO 5753-1).
 * Seats (ISO 286) at 17 mm: h6 0/−11, k5 +9/+1, k6 +12/+1, n6 +23/+12; at 40 mm: H7 +25/0, J7 +14/−11, N7 −8/−33, P7 −17/−42.
 */
const materials = { shaftMaterial: { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 }, ringMaterial: { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 }, housingMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 } };
const usual: BearingSeatInput = { designation: '6203', shaftClass: 'k5', housingClass: 'H7', ...materials };
const onShaft: BearingSeatInput = { designation: '6203', shaftClass: 'k5', shaftMaterial: materials.shaftMaterial, ringMaterial: materials.ringMaterial };
const inHousing: BearingSeatInput = { designation: '6203', housingClass: 'H7', housingMaterial: materials.housingMaterial, ringMaterial: materials.ringMaterial };
const told = (more: Partial<BearingSeatInput>, from = usual) => bearingSeat.compute({ ...from, ...more }).findings;
const of = (ring: 'inner-ring' | 'outer-ring', more: Partial<BearingSeatInput>) => told(more).filter(({ code }) => code.startsWith(ring)).map(({ code, severity, missing }) => [code, severity, ...(missing === undefined ? [] : [missing])].join(' '));
const find = (code: string, more: Partial<BearingSeatInput>, from = usual) => told(more, from).find((finding) => finding.code === code);

describe('what is not given', () => {
  test('a seat that is not told is asked for', () => {
    expect(find('housing-seat-not-given', {}, onShaft)).toMatchObject({ severity: 'unknown', missing: 'housingReadings', parameters: { outsideMm: 40 } });
    expect(find('shaft-seat-not-given', {}, inHousing)).toMatchObject({ severity: 'unknown', missing: 'shaftReadings', parameters: { boreMm: 17 } });
    expect(told({}).map(({ code }) => code)).not.toContain('shaft-seat-not-given');
  });

  test('without the material of the housing its seat is judged as cast iron, and cannot be told; work with heat is not planned', () => {
    const bare: Partial<BearingSeatInput> = { housingMaterial: undefined };
    expect(find('housing-material-not-given', bare)).toMatchObject({ severity: 'unknown', role: 'deciding', missing: 'housingMaterial' });
    expect(told({}).map(({ code }) => code)).not.toContain('housing-material-not-given');
    expect(told({ ...bare, housingClass: undefined }).map(({ code }) => code)).not.toContain('housing-material-not-given');
    const asIron = bearingSeat.compute({ ...usual, housingMaterial: 'gjl250' });
    expect(bearingSeat.compute({ ...usual, ...bare })).toMatchObject({ verdict: 'cannot tell', housingSeat: asIron.housingSeat });
    const { housingMaterial: _, ...input } = usual;
    for (const plan of [bearingFitting, bearingRemoval]) expect(() => plan.run(input)).toThrow(/housingMaterial: missing/u);
    expect(() => seatRepair.run({ ...input, seat: 'housing' })).toThrow(/housingMaterial: missing/u);
    expect(seatRepair.run({ ...input, seat: 'shaft' }).options.length).toBeGreaterThan(0);
  });

  test('readings that contradict each other are asked for anew', () => {
    const slipped: Partial<BearingSeatInput> = { shaftClass: undefined, shaftReadings: [{ instrument: 'outside-micrometer', valuesMm: [17.005, 1.7005] }] };
    expect(find('readings-contradict', slipped)).toMatchObject({ severity: 'unknown', missing: 'shaftReadings', parameters: { measured: 'measured-shaft-seat', lowMm: 1.7005, highMm: 17.005 } });
    expect(told(slipped).map(({ code }) => code)).not.toContain('shaft-seat-not-given');
    const bored: Partial<BearingSeatInput> = { housingClass: undefined, housingReadings: [{ instrument: 'inside-micrometer-rod', valuesMm: [40.01, 41.5] }] };
    expect(find('readings-contradict', bored)).toMatchObject({ missing: 'housingReadings', parameters: { measured: 'measured-housing-seat' } });
    expect(told(bored).map(({ code }) => code)).not.toContain('housing-seat-not-given');
  });

  test('beyond the table of clearances the fits are judged all the same', () => {
    const large: Partial<BearingSeatInput> = { designation: undefined, boreMm: 260, outsideMm: 400, widthMm: 65 };
    expect(find('clearance-not-listed', large)?.parameters).toEqual({ boreMm: 260 });
    expect(told({}).map(({ code }) => code)).not.toContain('clearance-not-listed');
  });
});

// The Tribology Handbook: NBR works up to 100 °C.
test.each([['6203-2RS', 100, false], ['6203-2RS', 101, true], ['6203-RS', 101, true], ['6203-ZZ', 120, false], ['6203', 120, false]])('rubber seals that run too hot: %s at %d °C, %s', (designation, temperatureC, isTold) => {
  expect(find('bearing-seals-run-hot', { designation, temperatureC })).toEqual(isTold ? expect.objectContaining({ severity: 'care', parameters: { runningC: temperatureC, limitC: 100 } }) : undefined);
});

describe('the inner ring, on which the load turns', () => {
  test.each<[Partial<BearingSeatInput>, readonly string[]]>([
    [{ shaftClass: 'k5' }, ['inner-ring-stays good']],
    // At most 8 µm of interference, at least 11 of gap; in the middle 1.5 of gap.
    [{ shaftClass: 'h6' }, ['inner-ring-may-creep unknown shaftReadings']],
    [{ shaftClass: 'g6' }, ['inner-ring-may-creep unknown shaftReadings']],
    // f6 −16/−27: no shaft of it presses.
    [{ shaftClass: 'f6' }, ['inner-ring-creeps bad']],
    // Very tight: over a thousandth of the bore, 17 µm. k5 reaches 17, k6 reaches 20.
    [{ shaftClass: 'k6' }, ['inner-ring-stays good', 'inner-ring-very-tight care']],
    [{ shaftClass: 'h6', innerRingLoad: 'stationary' }, ['inner-ring-may-slide good']],
    [{ shaftClass: 'k5', innerRingLoad: 'stationary' }, ['inner-ring-stays good']],
  ])('%j: %j', (more, expected) => {
    expect(of('inner-ring', more)).toEqual(expected);
  });

  test('the gap and the limit are told', () => {
    expect(find('inner-ring-creeps', { shaftClass: 'f6' })?.parameters).toEqual({ leastUm: -27, mostUm: -8, gapUm: 27 });
    expect(find('inner-ring-very-tight', { shaftClass: 'k6' })?.parameters).toEqual({ mostUm: 20, usualUm: 17 });
    expect(find('inner-ring-may-slide', { shaftClass: 'h6', innerRingLoad: 'stationary' })?.parameters).toEqual({ gapUm: 11, runningC: 20 });
  });

  test('stretched more than usual it may crack; stretched twice as much by the loosest pair it is the wrong shaft', () => {
    const measured = (mm: number) => ({ shaftClass: undefined, shaftReadings: [{ instrument: 'outside-micrometer', valuesMm: [mm] }] });
    const at = (mm: number) => told(measured(mm)).filter(({ code }) => code.startsWith('ring-stress')).map(({ code, severity, role }) => `${code} ${severity} ${role}`);
    expect(at(16.99)).toEqual([]);
    expect(at(17.02)).toEqual(['ring-stress-high care supporting']);
    expect(at(17.08)).toEqual(['ring-stress-far-too-high bad deciding']);
    const { parameters } = find('ring-stress-far-too-high', measured(17.08)) ?? {};
    expect(parameters?.['usualMpa']).toBe(127);
    expect(parameters?.['lowMpa']).toBeGreaterThan(254);
    expect(parameters?.['highMpa']).toBeGreaterThan(Number(parameters?.['lowMpa']));
  });

  test('a hollow shaft gives: from half the bore on', () => {
    expect(find('hollow-shaft-gives', { shaftBoreMm: 8.5 })).toBeUndefined();
    expect(find('hollow-shaft-gives', { shaftBoreMm: 8.6 })?.parameters).toEqual({ shaftBoreMm: 8.6 });
  });

  // ΔI = 0.08·√(17·2000/12) = 4.26 µm, more than 0.02·2000/12 = 3.33.
  test('a radial load takes some of the interference', () => {
    const { shaftSeat } = bearingSeat.compute({ ...usual, radialLoadN: 2000 });
    expect(shaftSeat?.interferenceLostToLoadUm).toBeCloseTo(0.08 * Math.sqrt((17 * 2000) / 12), 9);
    expect(bearingSeat.compute({ ...usual, radialLoadN: 6000 }).shaftSeat?.interferenceLostToLoadUm).toBeCloseTo(10, 9);
    expect(bearingSeat.compute({ ...usual, radialLoadN: 2000, innerRingLoad: 'stationary' }).shaftSeat?.interferenceLostToLoadUm).toBe(0);
    // k5 holds 1 µm at the least, and 9 in the middle less 5.7 probable: less than the load takes.
    expect(of('inner-ring', { radialLoadN: 2000 })).toEqual(['inner-ring-may-creep unknown shaftReadings']);
  });
});

describe('the outer ring', () => {
  test.each<[Partial<BearingSeatInput>, readonly string[]]>([
    [{ housingClass: 'H7' }, ['outer-ring-slides good']],
    [{ housingClass: 'H7', outerRingHeldBy: 'nothing' }, ['outer-ring-slides care']],
    [{ housingClass: 'H7', outerRingHeldBy: 'circlip' }, ['outer-ring-loose-but-held good']],
    // N7 holds 33 µm at the most; aluminium gains 11.5·10⁻⁶ · 40 mm on the ring: 36.8 µm by 80 K, 18.4 by 40 K.
    [{ housingClass: 'N7', temperatureC: 100 }, ['outer-ring-lets-go-hot care']],
    [{ housingClass: 'N7', temperatureC: 60 }, ['outer-ring-may-let-go-hot care']],
    // P7 holds 6 µm at the least, and loses 4.6 by 10 K.
    [{ housingClass: 'P7', temperatureC: 30 }, ['outer-ring-stays good', 'outer-ring-very-tight care']],
    [{ housingClass: 'P7', temperatureC: 60 }, ['outer-ring-may-let-go-hot care', 'outer-ring-very-tight care']],
    [{ housingClass: 'H7', outerRingLoad: 'rotating' }, ['outer-ring-creeps bad']],
    [{ housingClass: 'J7', outerRingLoad: 'rotating' }, ['outer-ring-may-creep unknown housingReadings']],
    // N7 from −3 to 33 µm, middle 15, probable ± √(25² + 11²)/2 = 13.7: hardly loose.
    [{ housingClass: 'N7', outerRingLoad: 'rotating' }, ['outer-ring-hardly-creeps care']],
    [{ housingClass: 'P7', outerRingLoad: 'indeterminate' }, ['outer-ring-stays good', 'outer-ring-very-tight care']],
  ])('%j: %j', (more, expected) => {
    expect(of('outer-ring', more)).toEqual(expected);
  });

  test('the gap and the warmest case are told', () => {
    expect(find('outer-ring-slides', {})?.parameters).toEqual({ gapUm: 36, runningC: 20 });
    expect(find('outer-ring-slides', { temperatureC: 60 })?.parameters).toMatchObject({ runningC: 60 });
    expect(Number(find('outer-ring-slides', { temperatureC: 60 })?.parameters['gapUm'])).toBeCloseTo(36 + 18.4, 9);
  });

  test('a seat that was measured need not be asked for again', () => {
    // An inside micrometer errs by some µm: between them and the ring's 11 µm it may press or not.
    const housingReadings = [{ instrument: 'inside-micrometer-rod', valuesMm: [39.998, 39.999, 39.998, 39.999] }];
    expect(of('outer-ring', { housingClass: undefined, housingReadings, outerRingLoad: 'rotating' })).toEqual(['outer-ring-may-creep care']);
  });
});

describe('the clearance that is left', () => {
  const clearance = (more: Partial<BearingSeatInput>) => told(more).filter(({ code }) => code.includes('clearance') || code === 'tight-when-cold').map(({ code, severity }) => `${code} ${severity}`);

  test.each<[Partial<BearingSeatInput>, readonly string[]]>([
    [{ shaftClass: 'h6', clearanceGroup: '3' }, ['keeps-its-clearance good']],
    [{ shaftClass: 'n6', housingClass: 'P7', clearanceGroup: '2' }, ['runs-without-clearance bad']],
  ])('%j: %j', (more, expected) => {
    expect(clearance(more)).toEqual(expected);
  });

  test('each verdict agrees with its numbers', () => {
    const seen = new Set<string>();
    for (const shaftClass of ['h6', 'j6', 'k5', 'k6', 'm6', 'n6']) {
      for (const housingClass of ['H7', 'J7', 'N7', 'P7']) {
        for (const clearanceGroup of ['2', 'N', '3'] as const) {
          const { runningClearanceUm: running, findings } = bearingSeat.compute({ ...usual, shaftClass, housingClass, clearanceGroup });
          if (running === null) throw new Error('no clearance');
          const expected = running.probableHigh < 0 ? 'runs-without-clearance' : running.probableLow < 0 ? 'may-run-without-clearance' : running.min < 0 ? 'clearance-nearly-always' : 'keeps-its-clearance';
          seen.add(expected);
          const finding = findings.find(({ code }) => code === expected);
          expect(finding?.parameters).toMatchObject({ lowUm: running.probableLow, highUm: running.probableHigh });
          if (expected === 'clearance-nearly-always') expect(finding?.parameters['leastUm']).toBe(running.min);
        }
      }
    }
    expect(seen.size).toBe(4);
  });

  test('a case of aluminium closes on the ring in the cold', () => {
    // By 80 K the case loses 36.8 µm on the ring: H7 from −36 to 0 becomes 0.8 to 36.8 of interference.
    expect(clearance({ shaftClass: 'k5', housingClass: 'N7', coldC: -60 }).at(-1)).toBe('tight-when-cold bad');
    expect(clearance({ coldC: 20 })).not.toContain('tight-when-cold bad');
    expect(clearance({ shaftClass: 'h6', clearanceGroup: '3', coldC: 0 })).toEqual(['keeps-its-clearance good']);
  });
});

describe('the working', () => {
  const symbols = (input: BearingSeatInput) => {
    const steps = bearingSeat.explain(input, bearingSeat.compute(input));
    expectWorkingHolds(steps);
    return steps.map(({ symbol }) => symbol).join(' ');
  };
  const races = 'D_i D_e';
  const shaftSteps = 'I_s1 I_s2 U_s I_st p_s g_s';
  const housingSteps = 'I_h1 I_h2 U_h I_ht p_h g_h';

  test('goes from the raceways over both seats to the clearance', () => {
    expect(symbols(usual)).toBe(`${races} ${shaftSteps} ${housingSteps} C_1 C_2 C_m dC_b C_r`);
    expect(symbols({ ...usual, temperatureC: 80, radialLoadN: 2000 })).toBe(`${races} ${shaftSteps} dI_F ${housingSteps} C_1 C_2 C_m dC_b C_r`);
    expect(symbols({ ...usual, radialLoadN: 2000, innerRingLoad: 'stationary' })).toBe(`${races} ${shaftSteps} ${housingSteps} C_1 C_2 C_m dC_b C_r`);
  });

  test('goes as far as something is given', () => {
    expect(symbols(onShaft)).toBe(`${races} ${shaftSteps}`);
    expect(symbols(inHousing)).toBe(`${races} ${housingSteps}`);
    expect(symbols({ ...usual, designation: undefined, boreMm: 260, outsideMm: 400, widthMm: 65 })).toBe(`${races} ${shaftSteps} ${housingSteps}`);
  });

  test('its numbers by hand', () => {
    const steps = bearingSeat.explain(usual, bearingSeat.compute(usual));
    const value = (symbol: string) => steps.find((step) => step.symbol === symbol)?.value;
    // Rings take a fifth of the space between bore and outside, 23 mm.
    expect(value('D_i')).toBeCloseTo(21.6, 9);
    expect(value('D_e')).toBeCloseTo(35.4, 9);
    expect([value('I_s1'), value('I_s2'), value('I_h1'), value('I_h2')]).toEqual([1, 17, -36, 0]);
    // Ground seats keep d/(d + 2) of the interference after smoothing (handbook); a gap stays what it is.
    const keptUm = (9 * 17) / 19;
    expect(value('U_s')).toBeCloseTo(keptUm, 9);
    expect(value('U_h')).toBe(-18);
    expect([value('p_h'), value('C_1'), value('C_2'), value('dC_b')]).toEqual([0, 3, 18, 0]);
    // A solid shaft and a ring of one material: p = E·U/(2·d)·(1 − (d/o)²).
    const pressureMpa = ((206_000 * (keptUm / 1000)) / (2 * 17)) * (1 - (17 / 21.6) ** 2);
    expect(value('p_s')).toBeCloseTo(pressureMpa, 6);
    expect(value('C_m')).toBeCloseTo(10.5 - keptUm * (17 / 21.6), 6);
  });
});

describe('a seat looser than any that is recommended', () => {
  // ISO 286 at 40 mm: H8 +39/0, F8 +64/+25, E8 +89/+50, D8 +119/+80; outer ring 0/−11: H8 leaves 50 µm at the most. At 17 mm: g6 −6/−17, f6 −16/−27, e7 −32/−50; bore 0/−8: g6 leaves 17 µm.
  test('the bore is worn where parts of middle size pass the loosest class, surely so where all do', () => {
    for (const housingClass of ['H8', 'G7', 'F8'] as const) expect(of('outer-ring', { housingClass })).toEqual(['outer-ring-slides good']);
    expect(of('outer-ring', { housingClass: 'E8' })).toEqual(['outer-ring-seat-worn care']);
    expect(find('outer-ring-seat-worn', { housingClass: 'E8' })?.parameters).toEqual({ lowUm: 50, highUm: 100, limitUm: 50, toleranceClass: 'H8' });
    expect(of('outer-ring', { housingClass: 'D8' })).toEqual(['outer-ring-seat-worn bad']);
    // What holds it along the shaft does not make it fit.
    expect(of('outer-ring', { housingClass: 'D8', outerRingHeldBy: 'circlip' })).toEqual(['outer-ring-seat-worn bad']);
  });

  test('so is the shaft under a load that stands still on the inner ring', () => {
    const still = { innerRingLoad: 'stationary', outerRingLoad: 'rotating' } as const;
    expect(of('inner-ring', { ...still, shaftClass: 'g6' })).toEqual(['inner-ring-may-slide good']);
    expect(find('inner-ring-seat-worn', { ...still, shaftClass: 'f6' })).toMatchObject({ severity: 'care', parameters: { lowUm: 8, highUm: 27, limitUm: 17, toleranceClass: 'g6' } });
    expect(of('inner-ring', { ...still, shaftClass: 'e7' })).toEqual(['inner-ring-seat-worn bad']);
  });
});

test('no row of the tables recommends a looser class under a load that stands still', () => {
  const { seat, ringLoad, toleranceClass, rowSource } = seatClasses.columns;
  const rows = seat.flatMap((where, i) => (ringLoad[i] === 'stationary' ? [{ where, toleranceClass: toleranceClass[i] ?? '', by: rowSource[i] }] : []));
  for (const nominalMm of [17, 40, 110, 290]) {
    // Of a bore the upper limit decides, of a shaft the lower one.
    const gapUm = (where: string, name: string) => (where === 'housing' ? zoneOfClass({ nominalMm, toleranceClass: name }).upperLimitDeviationUm : -zoneOfClass({ nominalMm, toleranceClass: name }).lowerLimitDeviationUm);
    for (const { where, toleranceClass: name } of rows) expect(gapUm(where, name), `${where} ${name} at ${nominalMm} mm`).toBeLessThanOrEqual(gapUm(where, where === 'housing' ? 'H8' : 'g6'));
  }
  const sourceOf = (name: string) => new Set(rows.flatMap((row) => (row.toleranceClass === name ? [row.by] : [])));
  expect([...sourceOf('H8')]).toEqual([find('outer-ring-seat-worn', { housingClass: 'E8' })?.source.id]);
  expect([...sourceOf('g6')]).toEqual([find('inner-ring-seat-worn', { innerRingLoad: 'stationary', outerRingLoad: 'rotating', shaftClass: 'f6' })?.source.id]);
});

test('what kind of bearing it is is said where only its sizes are given', () => {
  const assumed = (more: Partial<BearingSeatInput>) => bearingSeat.compute({ ...usual, ...more }).assumptions.find(({ name }) => name === 'kind-of-bearing')?.value;
  const sizes = { designation: undefined, boreMm: 17, outsideMm: 40, widthMm: 12 };
  expect(assumed(sizes)).toBe('deep-groove-ball');
  expect(assumed({ ...sizes, bearingKind: 'cylindrical-roller' })).toBeUndefined();
  expect(assumed({})).toBeUndefined();
});
