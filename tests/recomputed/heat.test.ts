import { expect, test } from 'vitest';
import { joiningTemperature } from '@seatwright/core/joint';
import { fitAtTemperature } from '@seatwright/core/tolerance';
import { between, drawing } from './internal/drawn.js';

/**
 * Heat by whole numbers: sizes in nanometres, expansion in parts of 10⁹ a kelvin, temperatures in thousandths of a kelvin, all BigInt,
 * so that no digit is lost; and the temperatures at which something happens by halving an interval, without solving anything.
 */
const draw = drawing(1_000_003);
const whole = (low: number, high: number) => Math.round(between(draw, low, high));

/** Growth of a size [nm] in units of 10⁻¹² nm. */
const growth = (sizeNm: number, alphaPer1e9: number, milliK: number): bigint => BigInt(sizeNm) * BigInt(alphaPer1e9) * BigInt(milliK);

const material = (alphaPer1e9: number) => ({ youngsModulusGpa: 100, poissonRatio: 0.3, expansionPerK: Number(`${alphaPer1e9}e-9`) });

test('drawn fits at drawn temperatures: interference gained by heat, by whole numbers', () => {
  for (let i = 0; i < 400; i += 1) {
    const nominal = whole(2, 500);
    const [holeAlpha, shaftAlpha] = [whole(0, 250_000), whole(0, 250_000)];
    const [holeC, shaftC] = [whole(-60, 200), whole(-60, 200)];
    const [holeLow, holeSpan, shaftLow, shaftSpan] = [whole(-60, 60), whole(5, 80), whole(-60, 60), whole(5, 80)];
    const limits = (low: number, span: number) => ({ lowerMm: nominal + low / 1000, upperMm: nominal + (low + span) / 1000 });
    const found = fitAtTemperature.run({ nominalMm: nominal, hole: limits(holeLow, holeSpan), shaft: limits(shaftLow, shaftSpan), holeMaterial: material(holeAlpha), shaftMaterial: material(shaftAlpha), holeTemperatureC: holeC, shaftTemperatureC: shaftC });
    const nm = nominal * 1e6;
    const gained = Number(growth(nm, shaftAlpha, (shaftC - 20) * 1000) - growth(nm, holeAlpha, (holeC - 20) * 1000)) / 1e12 / 1000;
    expect(found.thermalInterferenceUm.low).toBeCloseTo(gained, 7);
    expect(found.thermalInterferenceUm.high).toBeCloseTo(gained, 7);
    expect(found.at20C.leastInterferenceUm).toBeCloseTo(shaftLow - holeLow - holeSpan, 7);
    expect(found.at20C.mostInterferenceUm).toBeCloseTo(shaftLow + shaftSpan - holeLow, 7);
    expect(found.at20C.probableInterferenceUm).toBeCloseTo(shaftLow + shaftSpan / 2 - holeLow - holeSpan / 2, 7);
    expect(found.atTemperature.leastInterferenceUm).toBeCloseTo(shaftLow - holeLow - holeSpan + gained, 7);
    expect(found.atTemperature.mostInterferenceUm).toBeCloseTo(shaftLow + shaftSpan - holeLow + gained, 7);
    const kind = found.atTemperature.leastInterferenceUm > 0 ? 'interference' : found.atTemperature.mostInterferenceUm <= 0 ? 'clearance' : 'transition';
    expect(found.kind).toBe(kind);
    // The growth of each part by its own size instead of the nominal one differs by next to nothing.
    const own = (shaftLow * shaftAlpha * (shaftC - 20) - (holeLow + holeSpan) * holeAlpha * (holeC - 20)) / 1e9;
    expect(Math.abs(own)).toBeLessThan(6);
  }
});

test('a fit that heat loosens: the temperature, by halving an interval of warmer and warmer fits', () => {
  for (let i = 0; i < 25; i += 1) {
    const nominal = whole(10, 200);
    const [holeAlpha, shaftAlpha] = [whole(20_000, 30_000), whole(8000, 14_000)];
    const most = whole(10, 40);
    const input = {
      nominalMm: nominal,
      hole: { lowerMm: nominal - most / 1000, upperMm: nominal - (most - 8) / 1000 },
      shaft: { lowerMm: nominal, upperMm: nominal + 0.005 },
      holeMaterial: material(holeAlpha),
      shaftMaterial: material(shaftAlpha),
    };
    const at = (temperatureC: number) => fitAtTemperature.run({ ...input, temperatureC });
    const looseAt = (which: 'leastInterferenceUm' | 'mostInterferenceUm') => {
      let [tight, loose] = [20, 600];
      if (at(loose).atTemperature[which] > 0) return null;
      for (let step = 0; step < 50; step += 1) {
        const middle = (tight + loose) / 2;
        if (at(middle).atTemperature[which] > 0) tight = middle;
        else loose = middle;
      }
      return loose;
    };
    const { looseFromC } = at(20);
    const [earliest, latest] = [looseAt('leastInterferenceUm'), looseAt('mostInterferenceUm')];
    if (earliest !== null) expect(looseFromC?.earliest).toBeCloseTo(earliest, 6);
    if (latest !== null) expect(looseFromC?.latest).toBeCloseTo(latest, 6);
  }
});

test('how hot for joining: heated just so far, by whole numbers the parts have the clearance that was asked', () => {
  let met = 0;
  for (let i = 0; i < 300; i += 1) {
    const joint = whole(10, 400);
    const [outerAlpha, innerAlpha] = [whole(8000, 30_000), whole(8000, 30_000)];
    const [um, gap, ambient] = [whole(5, joint), whole(1, 60), whole(-10, 35)];
    const found = joiningTemperature.run({ jointDiameterMm: joint, interferenceUm: um, joiningClearanceUm: gap, outerMaterial: material(outerAlpha), innerMaterial: material(innerAlpha), ambientC: ambient, outerLimitC: 400 });
    expect(found.neededGapUm).toBeCloseTo(um + gap, 9);
    if (!found.feasible) continue;
    met += 1;
    const nm = joint * 1e6;
    const milli = (celsius: number) => Math.round((celsius - 20) * 1000);
    const open = Number(growth(nm, outerAlpha, milli(found.outerPartC)) - growth(nm, innerAlpha, milli(found.innerPartC))) / 1e12 / 1000;
    // The temperature was rounded to a thousandth of a kelvin above: at most nm·α·0.0005 of difference.
    if (found.outerPartC > ambient) expect(Math.abs(open - (um + gap))).toBeLessThan(0.01);
    else expect(open).toBeGreaterThanOrEqual(um + gap - 0.01);
  }
  expect(met).toBeGreaterThan(100);
});
