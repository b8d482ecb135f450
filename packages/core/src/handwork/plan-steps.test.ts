import { describe, expect, test } from 'vitest';
import { pumpToOpen } from '../../../../tests/laws/internal/pump-to-open.js';
import { extractionPlan } from './extraction-plan.js';
import { seatingPlan } from './seating-plan.js';

const { seal } = pumpToOpen;
type Input = Record<string, unknown>;
const petrol = { running: { fluid: 'petrol-oil-mix' } };

describe('taking out', () => {
  const base = pumpToOpen;
  const run = (input: Input = {}) => extractionPlan.run({ ...base, ...input });
  const codes = (input: Input = {}) => run(input).steps.map(({ code }) => code);
  const step = (code: string, input: Input = {}) => run(input).steps.find((one) => one.code === code);

  test('drilled and drawn: every step in its order', () => {
    expect(codes()).toEqual([
      'out-make-safe', 'out-photograph', 'out-lip-facing-noted', 'out-old-depth-noted', 'out-drain-and-clean', 'out-wrap-shaft',
      'out-mark-hole', 'out-catch-chips', 'out-set-drill-stop-both', 'out-drill-two', 'out-clear-chips', 'out-turn-in-screws', 'out-pull-straight-force', 'out-if-screws-strip',
      'out-count-the-parts', 'out-look-at-seats', 'out-scrap-old-seal',
    ]);
    // The stop goes on the drill that is taken.
    expect(codes({ shaft: { ...base.shaft, protrusionMm: 60 } }).slice(7, 10)).toEqual(['out-catch-chips', 'out-long-drill', 'out-set-drill-stop-both']);
    // Flush, both stops are one.
    expect(codes({ oldDepthMm: [0, 0.01, 0, 0] })).toContain('out-set-drill-stop');
    expect(codes({ lipFacing: undefined, oldDepthMm: undefined }).slice(2, 4)).toEqual(['out-note-lip-facing', 'out-measure-old-depth']);
    expect(codes({ oldDepthMm: undefined })).toContain('out-set-drill-stop');
    expect(codes({ bore: {} })).toContain('out-pull-straight');
  });

  test('past a shaft longer than any drill a punch goes through the face, no deeper than the drill would', () => {
    const far = { shaft: { ...base.shaft, protrusionMm: 260 }, running: { fluid: 'petrol-oil-mix' } };
    const { hole, screwCount, findings } = run(far);
    expect(codes(far).slice(6, 10)).toEqual(['out-mark-hole', 'out-close-the-gap', 'out-pierce-face', 'out-turn-in-screws']);
    expect(hole.isPierced).toBe(true);
    expect(step('out-pierce-face', far)?.parameters['holeCount']).toBe(screwCount);
    expect(step('out-pierce-face', far)?.parameters['punchStopMm']).toBeCloseTo(hole.drillStopFromSealFaceMm ?? NaN, 0);
    expect(step('out-pierce-face', far)?.parameters['punchReachMm']).toBeGreaterThanOrEqual(hole.drillReachMm ?? NaN);
    expect(step('out-pierce-face', far)?.cautions).toEqual(['eye-protection', 'petrol-vapour']);
    expect(findings.map(({ code }) => code)).toEqual(expect.arrayContaining(['extraction-no-drill-so-long']));
    // Sixty times the diameter of the drill is as far as one reaches.
    const reachMm = 60 * (hole.drillMm ?? NaN);
    const at = (mm: number) => codes({ shaft: { ...base.shaft, protrusionMm: mm - 1.5 - (hole.drillStopFromSealFaceMm ?? NaN) } });
    expect(at(reachMm - 0.5)).toContain('out-long-drill');
    expect(at(reachMm + 0.5)).toContain('out-pierce-face');
  });

  test('the numbers beside the steps are those of the plan', () => {
    const { hole, screw, screwCount } = run();
    const near = (value: number) => expect.closeTo(value, 0) as number;
    expect(step('out-lip-facing-noted')?.parameters).toEqual({ lipFacing: 'inward' });
    expect(step('out-old-depth-noted')?.parameters).toEqual({ leastDepthMm: 1.4, mostDepthMm: 1.6 });
    expect(step('out-mark-hole')?.parameters).toEqual({ holeCircleRadiusMm: near(hole.holeCircleRadiusMm), fromShaftMm: near(hole.holeCircleRadiusMm - hole.innerLimitRadiusMm) });
    expect(step('out-set-drill-stop-both')?.parameters).toEqual({ drillMm: 1.7, drillStopFromSealFaceMm: near(hole.drillStopFromSealFaceMm ?? NaN), drillStopFromHousingFaceMm: near((hole.drillStopFromSealFaceMm ?? NaN) + 1.5) });
    // Never deeper than computed: what the stop is set to is rounded down.
    expect(Number(step('out-set-drill-stop-both')?.parameters['drillStopFromSealFaceMm'])).toBeLessThanOrEqual((hole.drillStopFromSealFaceMm ?? 0) + 1e-9);
    expect(step('out-set-drill-stop', { oldDepthMm: undefined })?.parameters).toEqual({ drillMm: 1.7, drillStopFromSealFaceMm: near(hole.drillStopFromSealFaceMm ?? NaN) });
    expect(step('out-drill-two')?.parameters).toEqual({ drillMm: 1.7 });
    expect(step('out-turn-in-screws')?.parameters).toMatchObject({ designation: screw?.designation, screwCount });
    expect(Object.keys(step('out-turn-in-screws')?.parameters ?? {})).toEqual(['designation', 'screwCount', 'tipUpToMm', 'lengthFromMm', 'headUpToMm']);
    expect(Object.keys(step('out-pull-straight-force')?.parameters ?? {})).toEqual(['screwCount', 'pullLowN', 'pullHighN']);
    expect(step('out-pull-straight', { bore: {} })?.parameters).toEqual({ screwCount: run({ bore: {} }).screwCount });
  });

  test('a screw keeps its point where nothing lies behind, and loses it where nobody knows what does', () => {
    const narrow = { seal: { ...seal, widthMm: 4 }, lipFacing: 'outward', clearBehindMm: undefined };
    expect(codes({ ...narrow, behind: 'open space' })).toContain('out-turn-in-screws');
    expect(codes({ ...narrow, behind: 'gear' })).not.toContain('out-turn-in-screws');
    // 4.3 mm at the widest (ISO 6194-1: ± 0.3 mm), of which the face takes 1 mm either way, and a point as long as ST 2.2 is thick (2.24 mm).
    const tip = expect.closeTo(4.3 + 2.24, 9) as number;
    expect(run({ ...narrow, behind: 'open space' }).screw).toMatchObject({ tipFromMm: tip, tipUpToMm: tip });
  });

  test('cautions stand beside the step that can hurt, and those of petrol, fluoro rubber and magnesium only there', () => {
    expect(run().steps.filter(({ cautions }) => cautions.length > 0).map(({ code, cautions }) => [code, cautions])).toEqual([
      ['out-make-safe', ['makers-manual-first', 'machine-cannot-start', 'hot-parts', 'spinning-parts']],
      ['out-catch-chips', ['chips-stay-out']],
      ['out-set-drill-stop-both', ['drill-stop-before-drilling']],
      ['out-drill-two', ['eye-protection', 'spinning-parts', 'drill-must-not-plunge']],
      ['out-clear-chips', ['nothing-blown-in']],
      ['out-pull-straight-force', ['eye-protection', 'never-lever-on-shaft-or-bore']],
      ['out-if-screws-strip', ['no-flame-at-seal']],
      ['out-count-the-parts', ['nothing-blown-in']],
      ['out-scrap-old-seal', ['never-refit-old-seal', 'cut-edges']],
    ]);
    expect(step('out-make-safe', petrol)?.cautions).toContain('petrol-vapour');
    expect(step('out-drain-and-clean', petrol)?.cautions).toEqual(['crankcase-stays-clean']);
    expect(step('out-drill-two', petrol)?.cautions).toEqual(['eye-protection', 'spinning-parts', 'drill-must-not-plunge', 'petrol-vapour']);
    expect(step('out-look-at-seats', petrol)?.cautions).toEqual(['crankcase-stays-clean']);
    expect(step('out-photograph', { seal: { ...seal, lipMaterial: 'FKM' } })?.cautions).toEqual(['burnt-fluoro-rubber']);
    const magnesium = run({ bore: { ...base.bore, material: 'mg-az91d' } });
    expect(magnesium.steps.find(({ code }) => code.startsWith('out-drill-'))?.cautions).toContain('magnesium-burns');
    expect(step('out-set-drill-stop', { oldDepthMm: undefined })?.cautions).toEqual(['drill-stop-before-drilling']);
    expect(step('out-pull-straight', { bore: {} })?.cautions).toEqual(['eye-protection', 'never-lever-on-shaft-or-bore']);
  });

  test('what holds it comes off first, and what sits on the shaft', () => {
    const freed = (retainedBy: string | undefined) => run({ retainedBy }).steps.slice(5, 6).map(({ code, cautions }) => [code, cautions])[0];
    expect(freed('circlip')).toEqual(['out-take-off-circlip', ['eye-protection', 'circlip-flies']]);
    expect(freed('plate')).toEqual(['out-take-off-plate', []]);
    expect(freed('staking')).toEqual(['out-free-staking', ['eye-protection', 'chips-stay-out']]);
    expect(freed(undefined)).toEqual(['out-look-for-retainer', []]);
    const on = (kind: string) => codes({ shaft: { ...base.shaft, obstacles: [{ kind, diameterMm: 21, fromMm: 10, lengthMm: 5 }] } });
    for (const kind of ['key', 'sleeve']) expect(on(kind)).toContain('out-take-off-key');
    for (const kind of ['collar', 'thread']) expect(on(kind)).not.toContain('out-take-off-key');
    expect(codes()).not.toContain('out-take-off-key');
    // Off the shaft, it hides no face.
    expect(run({ shaft: { ...base.shaft, obstacles: [{ kind: 'sleeve', diameterMm: 30, fromMm: 1, lengthMm: 5 }] } }).method).toBe('drill and screw');
    expect(run({ shaft: { ...base.shaft, obstacles: [{ kind: 'collar', diameterMm: 30, fromMm: 1, lengthMm: 5 }] } }).method).toBe('pull on the rim');
  });

  test('pushed out, or hooked: through the open side, by the rim, after the face was cleared', () => {
    const pushed = run({ reachableFrom: 'inside' });
    expect(pushed.steps.slice(6, 7)).toMatchObject([{ code: 'out-push-from-inside', cautions: ['eye-protection', 'push-not-lever'] }]);
    expect(Object.keys(pushed.steps[6]?.parameters ?? {})).toEqual(['outsideUpToMm', 'insideOverMm']);
    expect(Number(pushed.steps[6]?.parameters['insideOverMm'])).toBeGreaterThanOrEqual(pushed.pushOutTube?.insideOverMm ?? NaN);
    expect(Number(pushed.steps[6]?.parameters['outsideUpToMm'])).toBeLessThanOrEqual(pushed.pushOutTube?.outsideUpToMm ?? NaN);
    const bore = { ...base.bore, innerEnd: 'shoulder' };
    expect(codes({ reachableFrom: 'inside', bore })).toContain('out-push-past-shoulder');
    expect(codes({ reachableFrom: 'inside', bore: { ...bore, shoulderInsideMm: 30 } })).toContain('out-push-from-inside');
    const hook = (input: Input) => run(input).steps.slice(6, -3).map(({ code, parameters, cautions }) => [code, parameters, cautions]);
    const narrow = { seal: { ...seal, shaftMm: 29 }, shaft: {}, bore: {} };
    expect(hook(narrow)).toEqual([['out-close-the-gap', {}, ['chips-stay-out']], ['out-hook-the-rim', {}, ['eye-protection', 'cut-edges', 'never-lever-on-shaft-or-bore']]]);
    expect(hook({ lipFacing: 'outward', clearBehindMm: 1 }).map(([code]) => code)).toEqual(['out-close-the-gap', 'out-hook-open-side']);
    const covered = hook({ shaft: { obstacles: [{ kind: 'collar', diameterMm: 31, fromMm: 5, lengthMm: 10 }] } });
    expect(covered[0]).toEqual(['out-clear-the-face', { part: 'collar' }, []]);
    expect(covered).toHaveLength(3);
  });
});

describe('putting in', () => {
  const base = { seal, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 3, behind: 'bearing', requirementSet: 'din-3760', shaft: { leadIn: { kind: 'chamfer' } } };
  const run = (input: Input = {}) => seatingPlan.run({ ...base, ...input });
  const all = (input: Input = {}) => run(input).steps.map(({ code, parameters, cautions }) => [code, parameters, cautions] as const);
  const step = (code: string, input: Input = {}) => run(input).steps.find((one) => one.code === code);
  const driving = ['eye-protection', 'no-steel-hammer', 'push-not-lever'];

  test('flush: every step with its numbers and cautions', () => {
    expect(all()).toEqual([
      ['in-compare-new-seal', { shaftMm: 20, outsideMm: 35, widthMm: 7 }, ['makers-manual-first', 'machine-cannot-start', 'never-refit-old-seal']],
      ['in-clean-bore-and-shaft', {}, ['nothing-blown-in']],
      ['in-feel-edges', {}, ['chips-stay-out', 'cut-edges']],
      ['in-oil-the-lip', {}, []],
      ['in-outside-clean', {}, []],
      ['in-lip-faces', { lipFacing: 'inward' }, []],
      ['in-hold-shaft-central', {}, []],
      ['in-start-square', {}, []],
      ['in-drive-flush', {}, driving],
      ['in-measure-four', { lowMm: -0.17, highMm: 0.17, largestSpreadMm: 0.17 }, []],
      ['in-turn-by-hand', {}, ['machine-cannot-start']],
      ['in-look-for-leaks', {}, ['hot-parts', 'spinning-parts']],
    ]);
  });

  test('what cuts is covered one by one; keys and sleeves go on again when the seal is in', () => {
    const obstacles = [{ kind: 'thread', diameterMm: 19.5, fromMm: 12 }, { kind: 'circlip groove', diameterMm: 19.2, fromMm: 8, lengthMm: 1 }, { kind: 'key', diameterMm: 23, fromMm: 15 }];
    const steps = all({ shaft: { leadIn: { kind: 'chamfer' }, obstacles } });
    expect(steps.filter(([code]) => code.startsWith('in-sleeve')).map(([, parameters]) => parameters['part'])).toEqual(['thread', 'circlip groove']);
    expect(steps.map(([code]) => code).slice(-3)).toEqual(['in-turn-by-hand', 'in-put-keys-back', 'in-look-for-leaks']);
    expect(all().map(([code]) => code)).not.toContain('in-put-keys-back');
  });

  test('a two-stroke, a dust lip, a rubber cover, a fluid that is known', () => {
    expect(step('in-clean-bore-and-shaft', petrol)?.cautions).toEqual(['nothing-blown-in', 'crankcase-stays-clean', 'petrol-vapour']);
    expect(step('in-lip-faces', petrol)?.cautions).toEqual(['air-leak-seizes-engine']);
    expect(all(petrol).at(-1)).toEqual(['in-pressure-test-crankcase', {}, ['air-leak-seizes-engine', 'petrol-vapour']]);
    expect(step('in-oil-the-lip-with', { running: { fluid: 'gear-oil' } })?.parameters).toEqual({ fluid: 'gear-oil' });
    expect(all({ seal: { ...seal, hasDustLip: true } }).map(([code]) => code).slice(3, 5)).toEqual(['in-grease-between-lips', 'in-oil-the-lip']);
    expect(all().map(([code]) => code)).not.toContain('in-grease-between-lips');
    expect(step('in-outside-film', { seal: { ...seal, construction: 'rubber-covered' } })).toBeDefined();
  });

  // EPDM is rated poor in mineral oil by a published table; that a PTFE lip goes in dry, and a brake bears no oil, is common practice.
  test.each([
    ['NBR', 'petrol-oil-mix', ['in-grease-between-lips', 'in-oil-the-lip-two-stroke', 'in-outside-film']],
    ['NBR', 'grease', ['in-grease-between-lips', 'in-grease-the-lip', 'in-outside-film']],
    ['VMQ', 'engine-oil', ['in-grease-between-lips', 'in-oil-the-lip-with', 'in-outside-film']],
    ['NBR', 'water', ['in-grease-between-lips', 'in-grease-against-water', 'in-outside-film']],
    ['FKM', 'hot-water', ['in-grease-between-lips', 'in-grease-against-water', 'in-outside-film']],
    ['EPDM', undefined, ['in-silicone-between-lips', 'in-wet-without-oil', 'in-outside-soap']],
    ['EPDM', 'hot-water', ['in-silicone-between-lips', 'in-wet-without-oil', 'in-outside-soap']],
    ['EPDM', 'brake-fluid-glycol', ['in-wet-with-brake-fluid', 'in-outside-brake-fluid']],
    ['NBR', 'brake-fluid-glycol', ['in-wet-with-brake-fluid', 'in-outside-brake-fluid']],
    ['PTFE', 'engine-oil', ['in-lip-dry', 'in-outside-film']],
  ] as const)('%s in %s is wetted with what it stands', (lipMaterial, fluid, expected) => {
    const wetted = (construction: string) => all({ seal: { ...seal, lipMaterial, construction, hasDustLip: true }, ...(fluid === undefined ? {} : { running: { fluid } }) }).map(([code]) => code).slice(3, 3 + expected.length);
    expect(wetted('rubber-covered')).toEqual(expected);
    expect(wetted('metal-case')).toEqual([...expected.slice(0, -1), 'in-outside-clean']);
  });

  test('what EPDM is wetted with is said to be practice: no table names it', () => {
    expect(step('in-wet-without-oil', { seal: { ...seal, lipMaterial: 'EPDM' } })).toMatchObject({ parameters: { lipMaterial: 'EPDM' }, source: { held: 'practice' } });
  });

  test('the lip goes as it was noted only where that is right', () => {
    for (const [lipFacing, fluidSide, code] of [['inward', 'inside', 'in-lip-faces'], ['outward', 'outside', 'in-lip-faces'], ['inward', undefined, 'in-lip-faces'], ['outward', 'both', 'in-lip-faces'], ['inward', 'outside', 'in-lip-toward-fluid'], ['outward', 'inside', 'in-lip-toward-fluid'], [undefined, 'inside', 'in-lip-toward-fluid']] as const) {
      expect(all({ lipFacing, fluidSide }).map(([name]) => name).filter((name) => /^in-lip-/u.test(name))).toEqual([code]);
    }
  });

  test('where it ends: shoulder, depth, standing out', () => {
    const drive = (input: Input) => all(input).find(([code]) => /^in-drive-/u.test(code));
    expect(drive({ seat: { kind: 'shoulder' } })).toEqual(['in-drive-to-shoulder', {}, driving]);
    expect(drive({ seat: { kind: 'shoulder' }, bore: { depthMm: 8.5, innerEnd: 'shoulder' } })).toEqual(['in-drive-to-shoulder-depth', { depthMm: expect.closeTo(1.5, 9) as number }, driving]);
    expect(drive({ seat: { kind: 'depth', depthMm: 2 } })).toEqual(['in-drive-to-depth', { depthMm: 2 }, driving]);
    expect(drive({ seat: { kind: 'depth', depthMm: 0 } })).toEqual(['in-drive-to-depth', { depthMm: 0 }, driving]);
    expect(drive({ seat: { kind: 'depth', depthMm: -1.5 } })).toEqual(['in-drive-standing-out', { outMm: 1.5 }, driving]);
    expect(step('in-measure-four-alike', { seat: { kind: 'shoulder' } })?.parameters).toEqual({ largestSpreadMm: 0.17 });
  });

  test('what held it goes back', () => {
    const back = (retainedBy: string) => all({ retainedBy }).at(-2);
    expect(back('circlip')).toEqual(['in-refit-circlip', {}, ['eye-protection', 'circlip-flies']]);
    expect(back('plate')).toEqual(['in-refit-plate', {}, []]);
    expect(back('staking')).toEqual(['in-stake-again', {}, ['eye-protection', 'chips-stay-out']]);
    expect(back('nothing')).toEqual(['in-turn-by-hand', {}, ['machine-cannot-start']]);
  });

  test('over an edge or a part: a foil as thick as the shaft allows; over a larger one what it stretches', () => {
    const third = (shaft: Input) => all({ shaft })[3];
    expect(third({})).toEqual(['in-look-at-shaft-edge', {}, []]);
    expect(third({ leadIn: { kind: 'none' } })).toEqual(['in-sleeve-over-edge', {}, []]);
    expect(third({ leadIn: { kind: 'radius' } })?.[0]).toBe('in-oil-the-lip');
    const over = (diameterMm: number) => third({ leadIn: { kind: 'chamfer' }, obstacles: [{ kind: 'thread', diameterMm, fromMm: 10 }] });
    expect(over(19)).toMatchObject(['in-sleeve-over-part', { part: 'thread', partMm: 19, sleeveUpToMm: 20 }, []]);
    const large = over(22);
    expect(large?.[0]).toBe('in-sleeve-over-large-part');
    const { partMm, sleeveMm, stretchPercent, onShaftPercent } = large?.[1] as Record<string, number>;
    expect(partMm).toBe(22);
    expect(sleeveMm).toBeGreaterThan(22);
    // Both stretches are over the same free lip: 1 + stretch goes as the diameter.
    expect((1 + (stretchPercent ?? NaN) / 100) / (1 + (onShaftPercent ?? NaN) / 100)).toBeCloseTo((sleeveMm ?? NaN) / 20, 9);
  });
});
