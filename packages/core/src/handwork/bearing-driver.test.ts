import { expect, test } from 'vitest';
import { bearingFitting } from '../bearing/index.js';
import { bearingDriver } from './bearing-driver.js';

const base = { designation: '6203', includeStandardTubes: false } as const;
const run = (input: Record<string, unknown>) => bearingDriver.run({ ...base, ...input });
const tube = (name: string, outsideMm: number, insideMm: number, more: Record<string, unknown> = {}) => ({ name, kind: 'turned', outsideMm, insideMm, lengthMm: 60, ...more });
/** Raceways by the fitting, walls of both rings between the driver's window; half of a wall must be landed on. */
const { innerDriver, outerDriver } = bearingFitting.run({ designation: '6203' });
const [innerWall, outerWall] = [innerDriver.outsideUpToMm - innerDriver.insideOverMm, outerDriver.outsideUpToMm - outerDriver.insideOverMm];
const inner = { insideOverMm: innerDriver.insideOverMm, insideUpToMm: innerDriver.insideOverMm + innerWall / 2, outsideOverMm: innerDriver.insideOverMm + innerWall / 2, outsideUpToMm: innerDriver.outsideUpToMm };
const outer = { insideOverMm: outerDriver.insideOverMm, insideUpToMm: outerDriver.outsideUpToMm - outerWall / 2, outsideOverMm: outerDriver.outsideUpToMm - outerWall / 2, outsideUpToMm: outerDriver.outsideUpToMm };

test('the window of each ring, and of both together', () => {
  // 6203: bore 17, outside 40 mm.
  expect(inner.insideOverMm).toBeGreaterThanOrEqual(17);
  expect(outer.outsideUpToMm).toBeLessThanOrEqual(40);
  expect(run({ ring: 'inner ring' })).toMatchObject({ ring: 'inner ring', ...inner });
  expect(run({ ring: 'outer ring' })).toMatchObject({ ring: 'outer ring', ...outer });
  expect(run({ ring: 'both rings' })).toMatchObject({ ring: 'both rings', insideOverMm: inner.insideOverMm, insideUpToMm: inner.insideUpToMm, outsideOverMm: outer.outsideOverMm, outsideUpToMm: outer.outsideUpToMm });
});

test('nothing at hand: one to turn, by its measures; the ring is told', () => {
  for (const [ring, code] of [['inner ring', 'push-inner-ring'], ['outer ring', 'push-outer-ring'], ['both rings', 'push-both-rings']] as const) {
    const output = run({ ring });
    expect(output).toMatchObject({ verdict: 'suits with care', candidates: [], nearMisses: [], judgedCount: 0 });
    expect(output.findings).toMatchObject([{ code, severity: 'note' }, { code: 'bearing-driver-to-turn', severity: 'care', parameters: { insideMm: output.insideOverMm, outsideMm: output.outsideUpToMm } }]);
    expect(output.notChecked).toEqual(['driver-end-square', 'seals-and-cage-of-bearing']);
    expect(output.assumptions.map(({ name }) => name)).toEqual(['raceways-estimated', 'landing-on-ring']);
    expect(output.assumptions.at(-1)).toMatchObject({ value: 50, unit: '%', effect: 'which-drivers-serve' });
  }
  // Of no seat anything is known: neither ring is tight.
  expect(run({})).toMatchObject({ ring: 'either', ...outer, findings: [{ code: 'either-ring-may-be-pushed', severity: 'note' }, { code: 'bearing-driver-to-turn' }] });
  expect(bearingDriver.run({ designation: '6203' }).judgedCount).toBeGreaterThan(100);
  expect(bearingDriver.run({ designation: '6203', includeStandardTubes: true }).judgedCount).toBe(bearingDriver.run({ designation: '6203' }).judgedCount);
});

test('margins are of radii, the least decides; a miss says by how much', () => {
  const middle = { outsideMm: (outer.outsideOverMm + outer.outsideUpToMm) / 2, insideMm: (outer.insideOverMm + outer.insideUpToMm) / 2 };
  const one = (outsideMm: number, insideMm: number) => {
    const output = run({ ring: 'outer ring', toolsAtHand: [tube('one', outsideMm, insideMm)] });
    return [...output.candidates, ...output.nearMisses][0];
  };
  const good = one(middle.outsideMm, middle.insideMm);
  expect(good?.verdict).toBe('suits');
  const spans = (tool: ReturnType<typeof one>) => ({ inLow: tool?.insideMm.low ?? NaN, inHigh: tool?.insideMm.high ?? NaN, outLow: tool?.outsideMm.low ?? NaN, outHigh: tool?.outsideMm.high ?? NaN });
  const margins = (tool: ReturnType<typeof one>) => {
    const { inLow, inHigh, outLow, outHigh } = spans(tool);
    return { 'driver-over-shaft-misses': (inLow - outer.insideOverMm) / 2, 'driver-lands-inside-misses': (outer.insideUpToMm - inHigh) / 2, 'driver-reaches-ring-misses': (outLow - outer.outsideOverMm) / 2, 'driver-clear-outside-misses': (outer.outsideUpToMm - outHigh) / 2 };
  };
  for (const tool of [good, one(middle.outsideMm, outer.insideOverMm - 1), one(middle.outsideMm, outer.insideUpToMm + 1), one(outer.outsideOverMm - 1, middle.insideMm - 1), one(outer.outsideUpToMm + 1, middle.insideMm)]) {
    const all = margins(tool);
    expect(tool?.leastMarginMm).toBeCloseTo(Math.min(...Object.values(all)), 9);
    expect(tool?.reasons.map(({ code, severity, parameters }) => [code, severity, Number(Number(parameters['missMm']).toFixed(9))])).toEqual(Object.entries(all).filter(([, mm]) => mm < 0).map(([code, mm]) => [code, 'bad', Number((-mm).toFixed(9))]));
  }
});

test('best first: what suits, own before standard, the widest margin; near misses from the nearest on; no more than asked for', () => {
  const [wide, tight] = [(outer.outsideOverMm + outer.outsideUpToMm) / 2, outer.outsideUpToMm - 0.3];
  const insideMm = (outer.insideOverMm + outer.insideUpToMm) / 2;
  const toolsAtHand = [tube('far', 60, insideMm), tube('tight', tight, insideMm), tube('near', outer.outsideUpToMm + 0.5, insideMm), tube('b wide', wide, insideMm), tube('a wide', wide, insideMm)];
  const output = bearingDriver.run({ designation: '6203', ring: 'outer ring', toolsAtHand });
  expect(output.candidates.filter(({ origin }) => origin === 'own').map(({ name }) => name)).toEqual(['a wide', 'b wide', 'tight']);
  expect(output.candidates.slice(0, 3).every(({ origin }) => origin === 'own')).toBe(true);
  const misses = output.nearMisses.map(({ leastMarginMm }) => leastMarginMm);
  expect(misses).toEqual(misses.toSorted((a, b) => b - a));
  expect(output.candidates.every(({ verdict }) => verdict !== 'does not suit')).toBe(true);
  expect(output.nearMisses.every(({ verdict }) => verdict === 'does not suit')).toBe(true);
  expect([output.candidates.length <= 12, output.nearMisses.length]).toEqual([true, 12]);
  const few = bearingDriver.run({ designation: '6203', ring: 'outer ring', toolsAtHand, maximumCandidateCount: 2 });
  expect([few.candidates.map(({ name }) => name), few.nearMisses.length]).toEqual([['a wide', 'b wide'], 2]);
  expect(few.findings[1]).toMatchObject({ code: 'bearing-driver-found', severity: 'good' });
  expect(Number(few.findings[1]?.parameters['toolCount'])).toBeGreaterThanOrEqual(3);
  expect(run({ ring: 'outer ring', toolsAtHand }).findings[1]).toMatchObject({ code: 'bearing-driver-found', parameters: { toolCount: 3 } });
});

test('it must stand the push of the seats that are tight; of a loose ring nothing is asked', () => {
  const insideMm = (inner.insideOverMm + inner.insideUpToMm) / 2;
  const outsideMm = (inner.outsideOverMm + inner.outsideUpToMm) / 2;
  const push = (ring: string, more: Record<string, unknown>) => {
    const output = run({ shaftClass: 'k6', housingClass: 'P7', housingMaterial: 'steel-c45', ring, toolsAtHand: [tube('one', outsideMm, insideMm, more)] });
    return [...output.candidates, ...output.nearMisses][0];
  };
  const steel = push('inner ring', { material: 'steel' });
  const plastic = push('inner ring', { material: 'pe' });
  expect(steel?.reserveFactor).toBeGreaterThan(plastic?.reserveFactor ?? Infinity);
  const ways = bearingFitting.run({ designation: '6203', shaftClass: 'k6', housingClass: 'P7', housingMaterial: 'steel-c45' }).ways;
  const force = (seat: string) => ways.filter((way) => way.seat === seat).reduce((sum, { pushForceN }) => sum + pushForceN.high, 0);
  // The same tool on either ring: what it stands is one force, so the reserves go as the pushes.
  const both = push('both rings', { material: 'steel' });
  expect((steel?.reserveFactor ?? NaN) * force('shaft')).toBeCloseTo((both?.reserveFactor ?? NaN) * (force('shaft') + force('housing')), 3);
  const outerRing = push('outer ring', { material: 'steel' });
  expect((outerRing?.reserveFactor ?? NaN) * force('housing')).toBeCloseTo((steel?.reserveFactor ?? NaN) * force('shaft'), 3);
  expect(push('inner ring', {})?.reserveFactor).toBeNull();
  const loose = run({ shaftClass: 'f6', ring: 'inner ring', toolsAtHand: [tube('one', outsideMm, insideMm, { material: 'pe' })] });
  expect([...loose.candidates, ...loose.nearMisses][0]?.reserveFactor).toBeNull();
});

test('the working names the window', () => {
  const input = bearingDriver.input.parse({ ...base, ring: 'outer ring' });
  const output = bearingDriver.run(input);
  expect(bearingDriver.explain(input, output)).toMatchObject([
    { kind: 'choice', symbol: 'd_i', value: output.insideOverMm, unit: 'mm', why: 'pushes on the outer ring' },
    { kind: 'choice', symbol: 'd_o', value: output.outsideUpToMm, unit: 'mm', why: 'pushes on the outer ring' },
  ]);
});
