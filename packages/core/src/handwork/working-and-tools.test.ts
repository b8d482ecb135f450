import { describe, expect, test } from 'vitest';
import { expectWorkingHolds } from '../../../../tests/laws/internal/evaluate-working.js';
import { pumpToOpen } from '../../../../tests/laws/internal/pump-to-open.js';
import { driverSearch } from './driver-search.js';
import { extractionPlan } from './extraction-plan.js';
import { toolMaterial } from './internal/tool-material.js';
import { seatingPlan } from './seating-plan.js';

type Input = Record<string, unknown>;
const seal = { ...pumpToOpen.seal, edgeRadiusMm: 1 };
const shaft = { readings: [{ instrument: 'outside-micrometer', valuesMm: [20] }], protrusionMm: 60 };
const bore = { readings: [{ instrument: 'digital-calliper', valuesMm: [35.02, 35.01] }], leadIn: { lengthMm: 1, angleDeg: 15 }, depthMm: 8.5, innerEnd: 'shoulder' };
const drive = { seal, shaft, bore, lipFacing: 'inward', seat: { kind: 'flush' }, includeStandardTubes: false };
const tube = (more: Input = {}) => ({ name: 'offcut', kind: 'tube', outsideMm: 34.5, insideMm: 29, lengthMm: 100, material: 'steel', outsideToleranceMm: 0.05, wallToleranceMm: 0.05, outOfRoundMm: 0, endSquarenessMm: 0.05, ...more });

describe('the working of a driver', () => {
  const steps = (more: Input = {}) => {
    const input = driverSearch.input.parse({ ...drive, ...more });
    const found = driverSearch.explain(input, driverSearch.run(input));
    expectWorkingHolds(found);
    return found;
  };
  const symbols = (more: Input = {}) => steps(more).map(({ symbol }) => symbol).join(' ');
  const window = 'D_rim D_bend d_face d_alone B';
  const tool = 'tool m_rim m_face m_shaft m_bore';
  const strength = 'A sigma F_e gamma sigma_w F_y';

  test('the window, then the best tool, then its strength, as far as each is known', () => {
    expect(symbols()).toBe(`${window} d_s L`);
    expect(symbols({ toolsAtHand: [tube()] })).toBe(`${window} d_s L ${tool} ${strength}`);
    expect(symbols({ toolsAtHand: [tube({ material: undefined })] })).toBe(`${window} d_s L ${tool}`);
    // Not measured, nothing holds: no push is known.
    expect(symbols({ toolsAtHand: [tube()], bore: { depthMm: 8.5 } })).toBe(`${window} d_s L ${tool}`);
    expect(symbols({ toolsAtHand: [tube()], shaft: { protrusionMm: -12 } })).toBe(`${window} L tool m_rim m_face m_bore ${strength}`);
    expect(symbols({ shaft: { readings: shaft.readings } })).toBe(`${window} d_s`);
    // Without a depth nobody knows how far the shaft reaches in.
    expect(symbols({ seat: { kind: 'shoulder' }, bore: { readings: bore.readings } })).toBe(`${window} d_s`);
    // What does not serve is no best tool.
    expect(symbols({ toolsAtHand: [tube({ outsideMm: 10, insideMm: 5 })] })).toBe(`${window} d_s L`);
  });

  test('where the bore comes from', () => {
    const why = (more: Input) => steps(more).map((step) => (step.symbol === 'B' && step.kind === 'choice' ? step.why : '')).join('');
    expect(why({})).toBe('smallest reading less the uncertainty');
    expect(why({ bore: { depthMm: 8.5 } })).toBe('not measured: as marked');
  });
});

describe('the working of seating', () => {
  const base = { seal, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 3, behind: 'bearing', requirementSet: 'din-3760', shaft: { leadIn: { kind: 'chamfer' } } };
  const steps = (more: Input = {}) => {
    const input = seatingPlan.input.parse({ ...base, ...more });
    const found = seatingPlan.explain(input, seatingPlan.run(input));
    expectWorkingHolds(found);
    return found;
  };
  const symbols = (more: Input = {}) => steps(more).map(({ symbol }) => symbol).join(' ');

  test('each end, with what is known of the bore, the old place and what lies behind', () => {
    expect(symbols()).toBe('seat h s t_1 e r');
    expect(symbols({ seat: { kind: 'shoulder' } })).toBe('seat t_1');
    expect(symbols({ seat: { kind: 'shoulder' }, oldDepthMm: [1] })).toBe('seat t_1');
    expect(symbols({ seat: { kind: 'shoulder' }, bore: { depthMm: 8.5, innerEnd: 'shoulder' } })).toBe('seat h h_low h_high s t_1 e r');
    expect(symbols({ seat: { kind: 'depth', depthMm: 2 }, oldDepthMm: [1], bore: { depthMm: 12 } })).toBe('seat h s t_1 e l m r');
    expect(symbols({ seat: { kind: 'depth', depthMm: 2 }, bore: { depthMm: 12 } })).toBe('seat h s t_1 e l r');
    expect(symbols({ seat: { kind: 'depth', depthMm: 2 }, clearBehindMm: undefined })).toBe('seat h s t_1 e');
    const why = (more: Input) => steps(more).map((step) => (step.symbol === 'seat' && step.kind === 'choice' ? step.why : '')).join('');
    expect([why({}), why({ seat: { kind: 'flush' } })]).toEqual(['not said: the shoulder if there is one, else flush', 'as asked for']);
  });

  test('the length that grips is the least of all ends: shallow or deep, narrow or wide', () => {
    const least = (more: Input) => steps(more).find(({ symbol }) => symbol === 'e');
    // Standing out by 2 mm a narrow seal grips least; hanging over the end of the bore the deepest does.
    expect(least({ seat: { kind: 'depth', depthMm: -2 }, bore: { leadIn: { lengthMm: 1 } } })).toMatchObject({ scope: { b: expect.closeTo(6.8, 9) as number, c: 1 } });
    expect(least({ seat: { kind: 'depth', depthMm: 6 }, bore: { depthMm: 10, leadIn: { lengthMm: 1 } } })).toMatchObject({ scope: { T: 10, h: expect.any(Number) as number } });
  });
});

describe('the working of taking out', () => {
  const symbols = (more: Input = {}) => {
    const input = extractionPlan.input.parse({ ...pumpToOpen, ...more });
    const found = extractionPlan.explain(input, extractionPlan.run(input));
    expectWorkingHolds(found);
    return found.map(({ symbol }) => symbol).join(' ');
  };
  const hole = 'd r_i r_o r d_limit';
  const drill = 'd_p p g s n';
  const screw = 'P z S_low S_all_low S_high S_all_high';

  test('hole, drill, screw and pull, as far as there are any', () => {
    expect(symbols()).toBe(`${hole} d_max ${drill} s_h m ${screw} F_low F_high`);
    expect(symbols({ oldDepthMm: undefined, clearBehindMm: undefined })).toBe(`${hole} d_max ${drill} ${screw} F_low F_high`);
    expect(symbols({ bore: {} })).toBe(`${hole} d_max ${drill} s_h m ${screw}`);
    expect(symbols({ seal: { ...pumpToOpen.seal, shaftMm: 29 }, shaft: {}, bore: {} })).toBe(hole);
  });
});

describe('a tool over the shaft', () => {
  const told = (tool: Input, more: Input = {}) => {
    const output = driverSearch.run({ ...drive, ...more, toolsAtHand: [tube(tool)] });
    const found = output.candidates[0] ?? output.nearMisses[0];
    return (found?.reasons ?? []).filter(({ code }) => /shaft|long-enough|length|longer|closed-end|depth-inside|too-short/u.test(code)).map(({ code, severity, parameters, missing }) => [code, severity, parameters, ...(missing === undefined ? [] : [missing])]);
  };
  const over = run(drive).required.insideOverMm ?? NaN;
  function run(input: Input) { return driverSearch.run(input); }

  test('clears it, barely, or not; and is long enough, or misses by so much', () => {
    expect(told({})).toMatchObject([['driver-clears-shaft', 'good', { clearanceMm: expect.any(Number) as number }], ['driver-long-enough', 'good', { lengthMm: 100, lengthOverMm: 60 }]]);
    // Inside 20.2 ± 0.15 with a wall tolerance of 0.05 and an outside of 0.05: something between nothing and a scrape.
    const barely = told({ insideMm: 20.2 }).find(([code]) => code === 'driver-clears-shaft-barely');
    expect(barely?.[1]).toBe('care');
    expect(Number((barely?.[2] as Record<string, number>)['clearanceMm'])).toBeGreaterThan(0);
    expect(told({ insideMm: over - 0.2 }).map(([code]) => code)).toContain('driver-does-not-clear-shaft');
    expect(told({ lengthMm: 60 })).toContainEqual(['driver-too-short', 'bad', expect.objectContaining({ missMm: 0 }) as unknown]);
    expect(told({ lengthMm: 55 })).toContainEqual(['driver-too-short', 'bad', expect.objectContaining({ missMm: 5, lengthMm: 55, lengthOverMm: 60 }) as unknown]);
    expect(told({ lengthMm: 60.1 })).toContainEqual(['driver-long-enough', 'good', { lengthMm: 60.1, lengthOverMm: 60 }]);
  });

  test('a closed end must lie beyond what reaches in; a shaft that is not known is asked for', () => {
    const socket = { kind: 'socket', lengthMm: 80 };
    expect(told({ ...socket, closedEndDepthMm: 70 })).toContainEqual(['driver-long-enough', 'good', { lengthMm: 70, lengthOverMm: 60 }]);
    expect(told({ ...socket, closedEndDepthMm: 40 })).toContainEqual(['driver-closed-end-too-near', 'bad', { lengthMm: 40, lengthOverMm: 60, missMm: 20 }]);
    expect(told({ ...socket, closedEndDepthMm: 60 })).toContainEqual(['driver-closed-end-too-near', 'bad', { lengthMm: 60, lengthOverMm: 60, missMm: 0 }]);
    const unknown = told({}, { shaft: { readings: shaft.readings } });
    expect(unknown).toContainEqual(['driver-length-against-shaft', 'unknown', {}, 'shaft.protrusionMm']);
  });
});

describe('what a tool is made of', () => {
  test('workshop words stand for the weakest of their family; case does not matter', () => {
    expect(['steel', 'Copper', 'brass', 'aluminium', 'PVC', 'pe'].map((word) => toolMaterial(word).id)).toEqual(['steel-c20', 'cu-etp', 'brass-cuzn30', 'al-alsi9cu3', 'pvc-u', 'pe-hd']);
    expect(['steel', 'pvc', 'pe', 'al-6061-t6'].map((word) => [toolMaterial(word).isPlastic, toolMaterial(word).isBrittleCold])).toEqual([[false, false], [true, true], [true, false], [false, false]]);
    expect(toolMaterial('pvc').wantedReserveFactor).toBeGreaterThan(toolMaterial('steel').wantedReserveFactor);
    expect(toolMaterial('steel').youngsModulusMpa).toBeGreaterThan(190_000);
    expect(toolMaterial('steel').strengthSource.id).not.toBe('common-practice');
  });

  test('one of the workshop file is taken as it says; below 10 GPa it counts as a plastic, without a strength nothing is known of it', () => {
    const own = (id: string, youngsModulusGpa: number, more: Input = {}) => ({ id, youngsModulusGpa, poissonRatio: 0.3, expansionMinPerK: 1e-5, expansionMaxPerK: 1e-5, ...more });
    const list = [own('resin', 9.9, { yieldMpa: 60 }), own('glass filled', 10), own('steel', 200, { yieldMpa: 700 })];
    expect(toolMaterial('resin', list)).toMatchObject({ id: 'resin', isPlastic: true, strengthMpa: 60, youngsModulusMpa: 9900, strengthSource: { id: 'common-practice' }, wantedReserveFactor: toolMaterial('pe').wantedReserveFactor, isBrittleCold: false });
    expect(toolMaterial('glass filled', list)).toMatchObject({ isPlastic: false, strengthMpa: null, wantedReserveFactor: toolMaterial('steel').wantedReserveFactor });
    // The own one comes before the workshop word.
    expect(toolMaterial('steel', list)).toMatchObject({ id: 'steel', strengthMpa: 700 });
    expect(() => toolMaterial('cheese', list, 'toolsAtHand[0].material')).toThrow(/^toolsAtHand\[0\]\.material/u);
  });
});
