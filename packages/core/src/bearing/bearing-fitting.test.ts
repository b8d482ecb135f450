import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { bearingFitting, type BearingFittingInput } from './bearing-fitting.js';

/*
 * 6203: 17 × 40 × 12. Largest interference with rings of normal class (bore 0/−8, outside 0/−11 µm): k5 17, m6 26, r6 42 µm on the shaft; H7 0, P7 42 µm in the case.
 * Growth: steel ring and shaft 11.5·10⁻⁶ · 17 mm = 0.1955 µm/K, case 23·10⁻⁶ · 40 mm = 0.92, outer ring 0.46 µm/K.
 * Limits: 120 °C for a bearing, 93 °C for rubber seals in a warm case, 80 °C for a sealed one that is heated itself, −54 °C for one that is chilled; dry ice −78 °C.
 */
const steel = { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 };
const usual: BearingFittingInput = { designation: '6203', shaftClass: 'k5', housingClass: 'H7', shaftMaterial: steel, ringMaterial: steel, housingMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 }, slipInGapUm: 2 };
const look = (more: Partial<BearingFittingInput> = {}) => bearingFitting.compute({ ...usual, ...more });
const way = (seat: 'shaft' | 'housing', more: Partial<BearingFittingInput> = {}) => {
  const found = look(more).ways.find((one) => one.seat === seat);
  if (found === undefined) throw new Error(`no way for the ${seat}`);
  return found;
};
const codes = (more: Partial<BearingFittingInput> = {}) => look(more).findings.map(({ code, severity }) => `${code} ${severity}`);
const steps = (more: Partial<BearingFittingInput> = {}) => look(more).steps.map(({ code }) => code);

describe('onto the shaft', () => {
  test('the bearing is heated until it has its gap', () => {
    const found = way('shaft');
    expect(found).toMatchObject({ way: 'heat the bearing', feasible: true, coldPartC: 20, limitC: 120 });
    expect(found.noGapC).toBeCloseTo(20 + 17 / 0.1955, 9);
    expect(found.warmPartC).toBeCloseTo(20 + 19 / 0.1955, 9);
    expect(codes()[0]).toBe('bearing-heat-gives-the-gap good');
  });

  test('at its limit it may have less gap than wanted', () => {
    const found = way('shaft', { slipInGapUm: 3 });
    expect(found).toMatchObject({ way: 'heat the bearing', feasible: false, warmPartC: 120, coldPartC: 20 });
    expect(found.gapAtLimitUm).toBeCloseTo(100 * 0.1955 - 17, 9);
    expect(codes({ slipInGapUm: 3 })[0]).toBe('bearing-heat-gives-less-gap care');
  });

  test('a sealed one is heated less: the shaft is chilled as well', () => {
    const more = { isSealedOrGreased: true, slipInGapUm: 0 };
    const found = way('shaft', more);
    expect(found).toMatchObject({ way: 'chill too', warmPartC: 80, limitC: 80 });
    // 60 K on the ring, and the other 27 of 87 K on the shaft.
    expect(found.coldPartC).toBeCloseTo(80 - 17 / 0.1955, 6);
    expect(codes(more)[0]).toBe('bearing-heat-and-chill care');
    expect(steps(more).filter((code) => /heat|chill|press/u.test(code))).toEqual(['bearing-in-heat-sealed', 'bearing-in-chill']);
    const chill = look(more).steps.find(({ code }) => code === 'bearing-in-chill');
    // −7 °C: a freezer does it.
    expect(chill).toMatchObject({ parameters: { coldPartC: found.coldPartC }, cautions: [] });
  });

  test('what dry ice does not reach is pressed cold', () => {
    // r6: 42 µm, of which 80 °C gives 11.7: the shaft would have to be some 155 K colder.
    const more = { isSealedOrGreased: true, shaftClass: 'r6', slipInGapUm: 0 };
    expect(way('shaft', more)).toMatchObject({ way: 'press cold', feasible: false, warmPartC: 20, coldPartC: 20, benchTimeS: null });
    expect(codes(more)[0]).toBe('bearing-heat-is-not-enough care');
    const press = look(more).steps.find(({ code }) => code === 'bearing-in-press-on');
    expect(press?.parameters['forceN']).toBe(way('shaft', more).pushForceN.high);
    expect(press?.cautions).toContain('press-straight');
  });

  test('a gap that heat leaves too small is helped by cold only where a temperature was given for it', () => {
    expect(way('shaft', { slipInGapUm: 3 }).way).toBe('heat the bearing');
    const found = way('shaft', { slipInGapUm: 3, coldestPartC: 10 });
    expect(found).toMatchObject({ way: 'chill too', warmPartC: 120 });
    expect(found.coldPartC).toBeCloseTo(120 - 20 / 0.1955, 6);
    // Not cold enough for the gap that is wanted: heat does what it can.
    expect(way('shaft', { slipInGapUm: 30, coldestPartC: 10 })).toMatchObject({ way: 'heat the bearing', coldPartC: 20 });
  });

  // t = m·c/(h·A)·ln((T − 20)/(Tg − 20)), seven tenths of the ring steel, 8 to 25 W/(m²·K).
  test('the time on the bench, by the formula written out', () => {
    const [d, D, B] = [0.017, 0.04, 0.012];
    const massKg = 0.7 * 7850 * (Math.PI / 4) * (D * D - d * d) * B;
    const areaM2 = Math.PI * D * B + Math.PI * d * B + 2 * (Math.PI / 4) * (D * D - d * d);
    const second = (perM2K: number) => ((massKg * 460) / (perM2K * areaM2)) * Math.log(19 / 17);
    const time = way('shaft').benchTimeS;
    expect(time?.low).toBeCloseTo(second(25), 9);
    expect(time?.high).toBeCloseTo(second(8), 9);
    // Without any gap there is no time; a case is not carried about.
    expect(way('shaft', { slipInGapUm: 0 }).benchTimeS).toBeNull();
    expect(way('housing', { housingClass: 'P7' }).benchTimeS).toBeNull();
  });
});

describe('into the case', () => {
  test('what does not press slides, even without any gap', () => {
    expect(way('housing')).toMatchObject({ way: 'slides', feasible: true, warmPartC: 20, coldPartC: 20, noGapC: 20, gapAtLimitUm: 0, benchTimeS: null });
    expect(codes()).toContain('outer-ring-slides-in good');
    expect(codes({ shaftClass: 'f6' })).toContain('inner-ring-slides-on good');
    expect(look({ shaftClass: 'f6' }).findings[0]?.parameters).toEqual({ gapUm: 8 });
  });

  test('the case is heated', () => {
    const found = way('housing', { housingClass: 'P7' });
    expect(found).toMatchObject({ way: 'heat the case', feasible: true, limitC: 120 });
    expect(found.noGapC).toBeCloseTo(20 + 42 / 0.92, 9);
    expect(found.warmPartC).toBeCloseTo(20 + 44 / 0.92, 9);
    expect(codes({ housingClass: 'P7' })).toContain('case-heat-gives-the-gap good');
    expect(way('housing', { housingClass: 'P7', isSealedOrGreased: true }).limitC).toBe(93);
  });

  test('where it may not be made so hot, the bearing is chilled as well', () => {
    // 50 °C gives 27.6 of 42 µm: the bearing must lose 14.4 at 0.46 µm/K.
    const more = { housingClass: 'P7', caseLimitC: 50, slipInGapUm: 0 };
    const found = way('housing', more);
    expect(found).toMatchObject({ way: 'chill too', warmPartC: 50, limitC: 50 });
    expect(found.coldPartC).toBeCloseTo(20 - 14.4 / 0.46, 6);
    expect(codes(more)).toContain('case-heat-and-chill care');
    expect(steps({ ...more, shaftClass: 'f6' }).filter((code) => /heat|chill|press/u.test(code))).toEqual(['bearing-in-heat-case', 'bearing-in-chill']);
  });

  test('how cold it may be made binds, and a bearing stands no less than −54 °C', () => {
    const more = { housingClass: 'P7', caseLimitC: 50, slipInGapUm: 0 };
    expect(way('housing', { ...more, coldestPartC: -30 })).toMatchObject({ way: 'chill too', feasible: false });
    // −5 °C takes 11.5 of the 14.4 that are missing.
    expect(way('housing', { ...more, coldestPartC: -5 })).toMatchObject({ way: 'press cold', feasible: false });
    // 25 °C gives 4.6: 37.4 are missing, 81 K.
    expect(way('housing', { ...more, caseLimitC: 25 })).toMatchObject({ way: 'press cold', warmPartC: 20 });
    expect(way('housing', { ...more, caseLimitC: 25, coldestPartC: -150 })).toMatchObject({ way: 'press cold' });
    expect(codes({ ...more, caseLimitC: 25 })).toContain('case-heat-is-not-enough care');
    expect(steps({ ...more, caseLimitC: 25, shaftClass: 'f6' }).filter((code) => /heat|chill|press|slip-in|by-hand/u.test(code))).toEqual(['bearing-in-press-into']);
  });

  test('magnesium is told of', () => {
    const cautions = (housingMaterial: BearingFittingInput['housingMaterial']) => look({ housingClass: 'P7', housingMaterial }).steps.flatMap((step) => step.cautions);
    expect(cautions('mg-az91d')).toContain('magnesium-burns');
    expect(cautions('al-a380')).not.toContain('magnesium-burns');
  });
});

describe('where to push', () => {
  test.each<[Partial<BearingFittingInput>, string, readonly string[]]>([
    [{}, 'inner ring', ['push-inner-ring note']],
    [{ shaftClass: 'f6', housingClass: 'P7' }, 'outer ring', ['push-outer-ring note']],
    [{ housingClass: 'P7' }, 'both rings', ['push-both-rings note']],
    [{ shaftClass: 'f6' }, 'either', []],
  ])('%j: %s', (more, pushThrough, notes) => {
    expect(look(more).pushThrough).toBe(pushThrough);
    expect(codes(more).filter((code) => code.startsWith('push-'))).toEqual(notes);
  });

  test('what neither presses nor is heated goes in by hand', () => {
    expect(steps({ shaftClass: 'f6' })).toEqual(['bearing-in-compare', 'bearing-in-wash-and-dry', 'bearing-in-push-by-hand', 'bearing-in-hold-while-cooling', 'bearing-in-turn-cold']);
    expect(look({ shaftClass: 'f6' }).throughBallsLoadN).toBeNull();
    expect(steps()).toEqual(['bearing-in-compare', 'bearing-in-wash-and-dry', 'bearing-in-heat-bearing', 'bearing-in-slip-in', 'bearing-in-hold-while-cooling', 'bearing-in-turn-cold']);
    // One ring is pressed cold, the other slides: no hand pushes it home.
    expect(steps({ isSealedOrGreased: true, shaftClass: 'r6' })).not.toContain('bearing-in-push-by-hand');
  });

  test('the driver stands on one ring and clears the other', () => {
    const { innerDriver, outerDriver } = look();
    expect(innerDriver.insideOverMm).toBe(17);
    expect(innerDriver.outsideUpToMm).toBeCloseTo(21.6, 9);
    expect(outerDriver.insideOverMm).toBeCloseTo(35.4, 9);
    expect(outerDriver.outsideUpToMm).toBe(40);
  });

  // Half the axial push counts as static load: P0 = 0.6·Fr + 0.5·Fa (ISO 76).
  test('through the balls it would load them: against the static rating, or never', () => {
    const { throughBallsLoadN } = look();
    const loadN = throughBallsLoadN ?? 0;
    expect(loadN).toBeCloseTo(0.5 * way('shaft').pushForceN.high, 9);
    expect(codes().at(-1)).toBe('never-through-the-balls care');
    expect(codes({ basicStaticLoadRatingN: loadN }).at(-1)).toBe('balls-bear-the-push care');
    expect(codes({ basicStaticLoadRatingN: loadN / 1.001 }).at(-1)).toBe('balls-would-dent care');
    expect(look({ basicStaticLoadRatingN: loadN / 2 }).throughBallsShareRatio).toBeCloseTo(2, 9);
    expect(codes({ shaftClass: 'f6', basicStaticLoadRatingN: 1000 }).filter((code) => code.includes('balls'))).toEqual([]);
  });
});

describe('what stands behind it', () => {
  test('the working of each seat that presses', () => {
    const working = (more: Partial<BearingFittingInput>) => {
      const list = bearingFitting.explain({ ...usual, ...more }, look(more));
      expectWorkingHolds(list);
      return list.map(({ symbol }) => symbol).join(' ');
    };
    expect(working({})).toBe('t_0 F');
    expect(working({ housingClass: 'P7' })).toBe('t_0 F t_0 F');
    expect(working({ shaftClass: 'f6' })).toBe('');
  });

  test('what was assumed', () => {
    const assumed = (more: Partial<BearingFittingInput>) => look(more).assumptions.map(({ name }) => name);
    expect(assumed({})).toEqual(expect.arrayContaining(['raceways-estimated', 'workshop-at-20']));
    expect(assumed({ ambientC: 5 })).not.toContain('workshop-at-20');
    expect(assumed({})).not.toContain('suffix-may-mean-seals');
    expect(assumed({ designation: '6203 TQ7' })).toContain('suffix-may-mean-seals');
    // How cold is only taken for granted where cold is called for, and nobody said it.
    const sealed = { isSealedOrGreased: true, slipInGapUm: 0 };
    expect(look(sealed).assumptions.find(({ name }) => name === 'shaft-chilled-to')).toMatchObject({ value: -78, unit: '°C', source: { held: 'memory' } });
    expect(look({ housingClass: 'P7', caseLimitC: 25, slipInGapUm: 0 }).assumptions.find(({ name }) => name === 'bearing-chilled-to')).toMatchObject({ value: -54, source: { held: 'page' } });
    for (const more of [{}, { ...sealed, coldestPartC: -20 }, { housingClass: 'P7' }]) expect(assumed(more).join()).not.toContain('chilled-to');
    expect(way('shaft', { designation: '6203 TQ7' }).limitC).toBe(80);
    expect(way('shaft', { ambientC: 5 }).noGapC).toBeCloseTo(5 + 17 / 0.1955, 9);
  });

  test('a material of one’s own', () => {
    const material = { id: 'pump-iron', youngsModulusGpa: 110, poissonRatio: 0.25, expansionMinPerK: 10e-6, expansionMaxPerK: 11e-6 };
    expect(way('housing', { housingClass: 'P7', housingMaterial: 'pump-iron', materials: [material] }).noGapC).toBeCloseTo(20 + 42 / 0.4, 9);
  });
});
