import { describe, expect, it } from 'vitest';
import { driverSearch } from './driver-search.js';

const seal = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', caseThicknessMm: 1, edgeRadiusMm: 1 } as const;
/** Impeller end of a bilge pump: shaft 60 mm out of the housing, M18 on its end. */
const pump = {
  seal,
  shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [20] }], protrusionMm: 60, obstacles: [{ kind: 'thread', diameterMm: 18, fromMm: 40 }] },
  bore: { readings: [{ instrument: 'digital-calliper', valuesMm: [35.02, 35.01] }], leadIn: { lengthMm: 1, angleDeg: 15 }, depthMm: 8.5, innerEnd: 'shoulder' },
  lipFacing: 'inward',
  seat: { kind: 'flush' },
  includeStandardTubes: false,
} as const;
const exact = { outsideToleranceMm: 0.05, wallToleranceMm: 0.05, outOfRoundMm: 0, endSquarenessMm: 0.05 } as const;
const tube = (outsideMm: number, insideMm: number, more: object = {}) => ({ name: 'offcut', kind: 'tube', outsideMm, insideMm, lengthMm: 100, material: 'steel', ...exact, ...more });
const judge = (tool: object, more: object = {}) => {
  const output = driverSearch.run({ ...pump, ...more, toolsAtHand: [tool] });
  const found = output.candidates[0] ?? output.nearMisses[0];
  if (found === undefined) throw new Error('the tool was not judged');
  return { ...found, codes: found.reasons.map(({ code }) => code) };
};

describe('driver-search', () => {
  it('gives the window of a driver', () => {
    const { required } = driverSearch.run({ ...pump, seal: { ...seal, outsideReadings: [{ instrument: 'outside-micrometer', valuesMm: [35.15] }] } });
    expect(required.outsideOverMm).toBeCloseTo(33.15, 1);
    expect(required.outsideUpToMm).toBeLessThan(35.01);
    expect(required.insideOverMm).toBeGreaterThan(20);
    expect(required.insideRimAloneMm).toBe(27.5);
    expect(required.lengthOverMm).toBe(60);
    expect(required.flushOutsideOverMm).toBeCloseTo(35.02 + 2 * Math.tan(Math.PI / 12), 1);
  });

  it('takes a wide tube as its own stop for a flush seat', () => {
    const wide = judge(tube(42, 29));
    expect(wide).toMatchObject({ verdict: 'suits', role: 'stops at the face', origin: 'own' });
    expect(wide.codes).toContain('driver-stops-at-flush');
  });

  it('does not let a wide tube set a seal below the face', () => {
    expect(judge(tube(42, 29), { seat: { kind: 'depth', depthMm: 3 } })).toMatchObject({ verdict: 'does not suit', dimension: 'outside' });
    expect(judge(tube(42, 29), { seat: { kind: 'shoulder' } }).codes).toContain('driver-does-not-enter-bore');
    expect(judge(tube(34.5, 29), { seat: { kind: 'shoulder' } })).toMatchObject({ verdict: 'suits', role: 'enters' });
  });

  it('says that a wide tube cannot be judged for a shoulder of unknown depth', () => {
    const bore = { readings: pump.bore.readings, leadIn: pump.bore.leadIn };
    const wide = judge(tube(42, 29), { seat: { kind: 'shoulder' }, bore });
    expect(wide.verdict).toBe('cannot tell');
    expect(wide.reasons.find(({ missing }) => missing !== undefined)?.missing).toBe('bore.depthMm');
  });

  it('grades how a tube bears: on the rim, on the bend, inside it', () => {
    expect(judge(tube(34.5, 29)).codes).toContain('driver-bears-on-rim');
    expect(judge(tube(32.5, 28)).codes).toContain('driver-bears-on-bend');
    const small = judge(tube(30, 27.8));
    expect(small).toMatchObject({ verdict: 'does not suit', dimension: 'outside' });
    expect(small.codes).toContain('driver-too-small');
  });

  it('refuses a tube that passes over the seal, and doubts one that lands on its corner', () => {
    expect(judge(tube(42, 36)).codes).toContain('driver-inside-too-large');
    expect(judge(tube(42, 33.8)).codes).toContain('driver-lands-on-corner');
  });

  it('refuses what does not pass over the shaft, by how much', () => {
    const tight = judge(tube(34.5, 19.5));
    expect(tight).toMatchObject({ verdict: 'does not suit', dimension: 'inside' });
    expect('missMm' in tight ? tight.missMm : null).toBeCloseTo(20.0046 - 19.6, 2);
  });

  it('counts a collar over the thread as what has to pass, and no sleeve: that is taken off first', () => {
    const with_ = (kind: string) => ({ shaft: { ...pump.shaft, obstacles: [...pump.shaft.obstacles, { kind, diameterMm: 24, fromMm: 0 }] } });
    const sleeved = with_('collar');
    expect(judge(tube(34.5, 23), with_('sleeve')).codes).not.toContain('driver-does-not-clear-shaft');
    expect(judge(tube(34.5, 23), sleeved).codes).toContain('driver-does-not-clear-shaft');
    expect(judge(tube(34.5, 29), sleeved).verdict).toBe('suits');
  });

  it('prefers the rim alone, and keeps off lip and spring when the open side looks out', () => {
    expect(judge(tube(34.5, 22)).verdict).toBe('suits with care');
    expect(judge(tube(34.5, 22)).codes).toContain('driver-reaches-what-bends');
    expect(judge(tube(34.8, 22), { lipFacing: 'outward' }).codes).toContain('driver-reaches-lip-and-spring');
  });

  it('asks for the length that the shaft needs', () => {
    expect(judge(tube(34.5, 29, { lengthMm: 55 }))).toMatchObject({ verdict: 'does not suit', dimension: 'length', missMm: 5 });
    expect(judge({ ...tube(34.5, 29), lengthMm: undefined }).verdict).toBe('cannot tell');
  });

  it('cannot tell of a socket that is closed behind at an unknown depth', () => {
    const socket = { ...tube(34.5, 29), kind: 'socket', lengthMm: 80 };
    expect(judge(socket).codes).toContain('driver-depth-inside-unknown');
    expect(judge({ ...socket, closedEndDepthMm: 70 }).verdict).toBe('suits');
    expect(judge({ ...socket, closedEndDepthMm: 40 }).codes).toContain('driver-closed-end-too-near');
    expect(judge(socket, { shaft: { protrusionMm: -10 } }).verdict).toBe('suits');
  });

  it('passes a shaft through the flats of a socket, not through its corners', () => {
    const socket = { ...tube(34.5, 22.5), kind: 'socket', lengthMm: 80, closedEndDepthMm: 70 };
    expect(judge(socket).codes).toContain('driver-shaft-too-close-to-call');
  });

  it('needs nothing to pass where the shaft does not reach the driver', () => {
    const blank = judge({ name: 'turned disc', kind: 'turned', outsideMm: 42, ...exact, material: 'steel' }, { shaft: { protrusionMm: -12 } });
    expect(blank.codes).not.toContain('driver-does-not-clear-shaft');
    expect(blank.verdict).toBe('suits with care');
  });

  it('cannot tell where tolerance straddles the bore', () => {
    const doubtful = judge(tube(35, 29, { outsideToleranceMm: 0.3 }), { seat: { kind: 'shoulder' } });
    expect(doubtful.verdict).toBe('cannot tell');
    expect(doubtful.codes).toContain('driver-bore-too-close-to-call');
  });

  it('takes readings of the tool before its marked size, and counts the ovality that they show', () => {
    const read = judge({ ...tube(35, 29), readings: [{ instrument: 'digital-calliper', valuesMm: [34.4, 34.7] }] });
    expect(read.outsideMm.low).toBeCloseTo(34.4 - 0.024, 3);
    expect(read.outsideMm.high).toBeCloseTo(34.7 + 0.024, 3);
  });

  it('judges the wall under the push', () => {
    expect(judge(tube(34.5, 29)).codes).toContain('driver-strong-enough');
    const thin = judge(tube(34.5, 34, { material: 'pe', wallToleranceMm: 0.02 }));
    expect(thin.codes).toContain('driver-gives-way');
  });

  it('calls PVC brittle in a cold workshop only', () => {
    const pvc = tube(34.5, 29, { material: 'pvc-u' });
    expect(judge(pvc, { workshopTemperatureC: 2 }).codes).toContain('driver-pvc-brittle-in-cold');
    expect(judge(pvc, { workshopTemperatureC: 15 }).codes).not.toContain('driver-pvc-brittle-in-cold');
    expect(driverSearch.run({ ...pump, toolsAtHand: [pvc] }).cautions).toContain('pvc-shatters-cold');
  });

  it('grades an end out of square', () => {
    const end = (endSquarenessMm: number) => judge(tube(34.5, 29, { endSquarenessMm })).codes;
    expect(end(0.1)).toContain('driver-end-square');
    expect(end(0.25)).toContain('driver-end-nearly-square');
    expect(end(0.5)).toContain('driver-end-not-square');
  });

  it('ranks own tools before standard ones of the same verdict, and bounds its lists', () => {
    const output = driverSearch.run({ ...pump, includeStandardTubes: true, maximumCandidateCount: 5, toolsAtHand: [tube(42, 29), tube(10, 5)] });
    expect(output.candidates[0]).toMatchObject({ origin: 'own', verdict: 'suits' });
    expect(output.candidates).toHaveLength(5);
    expect(output.nearMisses).toHaveLength(5);
    expect(output.nearMisses[0]?.origin).toBe('own');
    expect(output.candidateCount).toBeGreaterThan(5);
    expect(output.candidateCount + output.nearMissCount).toBe(output.judgedCount);
  });

  it('works on 45 × 62 × 8 and on a narrow 6 × 16 × 7', () => {
    const large = driverSearch.run({ seal: { ...seal, shaftMm: 45, outsideMm: 62, widthMm: 8 } });
    const narrow = driverSearch.run({ seal: { ...seal, shaftMm: 6, outsideMm: 16 } });
    expect(large.candidates[0]?.verdict).toMatch(/^suits/);
    expect(narrow.candidates[0]?.verdict).toMatch(/^suits/);
    expect(narrow.required.insideRimAloneMm).toBe(11);
  });

  it('draws one to turn: a flat plate, a stepped collar or a plain sleeve', () => {
    expect(driverSearch.run(pump).turnedDriver).toMatchObject({ form: 'flat plate', insideMm: 27.5, insideDepthMm: 65 });
    expect(driverSearch.run({ ...pump, seat: { kind: 'depth', depthMm: 2 } }).turnedDriver).toMatchObject({ form: 'stepped collar', stepHeightMm: 2, outsideMm: 34.6 });
    expect(driverSearch.run({ ...pump, seat: { kind: 'shoulder' } }).turnedDriver).toMatchObject({ form: 'plain sleeve', outsideMm: 34.6, collarOutsideMm: null });
  });

  it('has none to turn where a collar leaves no rim', () => {
    expect(driverSearch.run({ ...pump, shaft: { obstacles: [{ kind: 'collar', diameterMm: 34, fromMm: 2 }] } }).turnedDriver).toBeNull();
  });

  it('refuses a tool without a wall and an unknown material, by path', () => {
    expect(() => driverSearch.run({ ...pump, toolsAtHand: [{ name: 'x', kind: 'tube', outsideMm: 30 }] })).toThrow(/toolsAtHand\[0\]\.insideMm/);
    expect(() => driverSearch.run({ ...pump, toolsAtHand: [tube(34, 29, { material: 'cheese' })] })).toThrow(/toolsAtHand\[0\]\.material/);
  });
});
