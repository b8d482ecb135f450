import { describe, expect, test } from 'vitest';
import { pumpToOpen } from '../../../../tests/laws/internal/pump-to-open.js';
import { extractionPlan } from './extraction-plan.js';
import { seatingPlan } from './seating-plan.js';

const { seal } = pumpToOpen;
const close = (value: number, digits = 6) => expect.closeTo(value, digits) as number;
type Input = Record<string, unknown>;

describe('where the new seal ends', () => {
  const base = { seal, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 3, behind: 'bearing', requirementSet: 'din-3760', shaft: { leadIn: { kind: 'chamfer' } } };
  /** DIN 3760: width ± 0.2 mm. A vernier's depth rod: 0.07 mm, step 0.05 mm. */
  const depthU = 2 * Math.sqrt(0.07 ** 2 / 3 + 0.05 ** 2 / 12);
  const run = (input: Input) => seatingPlan.run({ ...base, ...input });
  const told = (input: Input, start: RegExp) => run(input).findings.filter(({ code }) => start.test(code)).map(({ code, severity, role, parameters, missing }) => [code, severity, role, parameters, ...(missing === undefined ? [] : [missing])]);
  const place = /^seating-(?:ends|stands|may-stand|bore)/u;

  test('on a shoulder, by the stack: depth less width, ± 0.2 and the reading', () => {
    const at = (depthMm: number) => told({ seat: { kind: 'shoulder' }, bore: { depthMm, innerEnd: 'shoulder' } }, place);
    const u = 0.2 + depthU;
    expect(at(8.5)).toEqual([['seating-ends-on-shoulder', 'good', 'deciding', { lowMm: close(1.5 - u), nominalMm: close(1.5), highMm: close(1.5 + u) }]]);
    expect(at(7.1)).toEqual([['seating-may-stand-out', 'care', 'deciding', { outHighMm: close(u - 0.1), highMm: close(0.1 + u) }]]);
    expect(at(6)).toEqual([['seating-stands-out', 'care', 'deciding', { outLowMm: close(1 - u), outHighMm: close(1 + u) }]]);
    expect(told({ seat: { kind: 'shoulder' } }, place)).toEqual([['seating-bore-depth-missing', 'unknown', 'deciding', { widthMm: 7 }, 'bore.depthMm']]);
  });

  test('flush, at a depth, and standing out as asked', () => {
    expect(told({ seat: { kind: 'flush' } }, place)).toEqual([['seating-ends-flush', 'good', 'deciding', {}]]);
    expect(told({ seat: { kind: 'depth', depthMm: 2 } }, place)).toMatchObject([['seating-ends-at-depth', 'good', 'deciding', { nominalMm: 2 }]]);
    expect(told({ seat: { kind: 'depth', depthMm: -1 } }, place)).toEqual([['seating-stands-out-as-asked', 'note', 'deciding', { outMm: 1 }]]);
  });

  test('a bore that ends too early, for sure or perhaps, and what ends it', () => {
    const at = (depthMm: number, innerEnd?: string) => told({ seat: { kind: 'depth', depthMm: 2 }, bore: { depthMm, ...(innerEnd === undefined ? {} : { innerEnd }) } }, /^seating-bore/u);
    expect(at(8, 'shoulder')).toMatchObject([['seating-bore-too-shallow', 'bad', 'deciding', { end: 'shoulder' }]]);
    expect(at(9)).toMatchObject([['seating-bore-may-be-too-shallow', 'care', 'deciding', { end: 'open' }]]);
    expect(at(10, 'open')).toEqual([]);
    expect(at(6, 'open')).toEqual([]);
    const [[, , , left] = []] = at(9) as unknown as readonly (readonly [string, string, string, Record<string, number>])[];
    expect(left?.['outHighMm']).toBeCloseTo(-(left?.['lowMm'] ?? NaN), 12);
    expect((left?.['lowMm'] ?? 0) < 0 && (left?.['highMm'] ?? 0) > 0).toBe(true);
  });

  test('the room behind: enough, perhaps not, not, not known, and none needed', () => {
    // 3 mm of room from where the old seal sat flush; ± 0.2 mm of width, and what the reading of a depth leaves open.
    const at = (depthMm: number, more: Input = {}) => told({ seat: { kind: 'depth', depthMm }, oldDepthMm: [0, 0, 0, 0], ...more }, /room|behind/u);
    expect(at(2)).toMatchObject([['seating-room-behind', 'good', 'deciding', { behind: 'bearing', roomLowMm: expect.any(Number) as number }]]);
    expect(at(3)).toMatchObject([['seating-may-meet-what-is-behind', 'care', 'deciding', { behind: 'bearing' }]]);
    expect(at(4)).toMatchObject([['seating-meets-what-is-behind', 'bad', 'deciding', { behind: 'bearing' }]]);
    expect(at(2, { behind: 'open space' })).toMatchObject([['seating-room-behind', 'good', 'deciding', { behind: 'part behind' }]]);
    expect(at(2, { clearBehindMm: undefined })).toEqual([['seating-room-behind-unknown', 'unknown', 'supporting', { behind: 'bearing' }, 'clearBehindMm']]);
    expect(at(2, { clearBehindMm: undefined, behind: undefined })).toEqual([['seating-room-behind-unknown', 'unknown', 'supporting', { behind: 'part behind' }, 'clearBehindMm']]);
    expect(at(2, { clearBehindMm: undefined, behind: 'open space' })).toEqual([]);
  });

  test('the lip: away from the fluid, not known, off the old track, and how far it moves', () => {
    const facing = (more: Input) => told(more, /faces|facing/u);
    expect(facing({ lipFacing: undefined })).toEqual([['seating-lip-facing-unknown', 'unknown', 'supporting', {}, 'lipFacing']]);
    for (const fluidSide of ['both', undefined, 'inside']) expect(facing({ fluidSide })).toEqual([]);
    expect(facing({ fluidSide: 'outside' })).toEqual([['seating-lip-faces-away', 'bad', 'deciding', { lipFacing: 'inward', fluidSide: 'outside' }]]);
    expect(facing({ lipFacing: 'outward', fluidSide: 'outside' })).toEqual([]);
    const moves = (depthMm: number, more: Input = {}) => told({ seat: { kind: 'depth', depthMm }, oldDepthMm: [1, 1, 1, 1], ...more }, /moves|track/u);
    expect(moves(1.4)).toEqual([['seating-lip-moves-inward', 'note', 'supporting', { moveMm: close(0.4) }]]);
    expect(told({ seat: { kind: 'depth', depthMm: 1 }, oldDepthMm: [1, 1, 1, 1] }, /runs-as/u)).toEqual([['seating-lip-runs-as-before', 'note', 'supporting', {}]]);
    // A tenth is what a calliper on the bench tells.
    expect(told({ seat: { kind: 'depth', depthMm: 1.04 }, oldDepthMm: [1] }, /runs-as|moves/u)).toEqual([['seating-lip-runs-as-before', 'note', 'supporting', {}]]);
    expect(moves(1.237)).toEqual([['seating-lip-moves-inward', 'note', 'supporting', { moveMm: close(0.24) }]]);
    expect(moves(1)).toEqual([]);
    expect(moves(0.5)).toEqual([['seating-lip-moves-outward', 'note', 'supporting', { moveMm: close(0.5) }]]);
    const worn = { wearTrack: { catchesNail: true } };
    expect(moves(2, worn)).toMatchObject([['seating-lip-leaves-track', 'good', 'deciding', { moveMm: 1, moveWantedMm: 1 }]]);
    expect(moves(0, worn)).toMatchObject([['seating-lip-leaves-track', 'good', 'deciding', { moveMm: 1 }]]);
    expect(moves(1.9, worn)).toMatchObject([['seating-lip-stays-in-track', 'care', 'deciding', { moveMm: close(0.9), moveWantedMm: 1 }]]);
    expect(moves(1.9999, worn)).toMatchObject([['seating-lip-stays-in-track', 'care', 'deciding', { moveMm: 0.99 }]]);
    expect(told({ ...worn }, /track/u)).toEqual([['seating-track-old-depth-missing', 'unknown', 'deciding', { moveWantedMm: 1 }, 'oldDepthMm']]);
    expect(told({ ...worn, seat: { kind: 'shoulder' }, oldDepthMm: [1] }, /track/u)).toEqual([['seating-track-old-depth-missing', 'unknown', 'deciding', { moveWantedMm: 1 }, 'bore.depthMm']]);
    expect(told({}, /track|moves/u)).toEqual([]);
    expect(run({}).notChecked).toEqual(['vent-hole-in-bore', 'seal-edge-chamfer', 'spring-in-place']);
    for (const more of [worn, { oldDepthMm: [1] }]) expect(run(more).notChecked.slice(3)).toEqual(['old-seal-same-design', 'lip-place-in-seal']);
  });

  test('the way in over the shaft: free, with an edge, over a part, past a part that it cannot pass', () => {
    const way = (shaft: Input) => told({ shaft }, /shaft-part|stretch|sleeve|shaft-edge/u);
    expect(way({ leadIn: { kind: 'chamfer' } })).toEqual([]);
    expect(way({})).toEqual([['seating-shaft-edge-unknown', 'unknown', 'supporting', {}, 'shaft.leadIn']]);
    expect(way({ leadIn: { kind: 'none' } })).toEqual([['seating-shaft-edge-sharp', 'care', 'supporting', {}]]);
    const collar = (diameterMm: number) => ({ leadIn: { kind: 'chamfer' }, obstacles: [{ kind: 'collar', diameterMm, fromMm: 5, lengthMm: 10 }] });
    expect(way(collar(24))).toMatchObject([['seating-lip-must-stretch', 'care', 'supporting', { part: 'collar', shaftMm: 20 }]]);
    // What is cut into the shaft is no larger than it, whatever a calliper errs by.
    for (const kind of ['keyway', 'thread', 'circlip groove']) expect(way({ leadIn: { kind: 'chamfer' }, obstacles: [{ kind, diameterMm: 20, fromMm: 5, hasSharpEdge: false }] })).toEqual([]);
    expect(way(collar(32))).toMatchObject([['seating-shaft-part-in-the-way', 'bad', 'deciding', { part: 'collar', shaftMm: 20 }]]);
    const thread = { obstacles: [{ kind: 'thread', diameterMm: 19, fromMm: 10 }] };
    expect(way({ leadIn: { kind: 'none' }, ...thread }).map(([code]) => code)).toEqual(['seating-lip-needs-sleeve']);
    // Each kind that could cut it, the largest first; what is off the shaft cuts nothing.
    const several = { leadIn: { kind: 'chamfer' }, obstacles: [{ kind: 'circlip groove', diameterMm: 19.2, fromMm: 8, lengthMm: 1 }, { kind: 'thread', diameterMm: 19.5, fromMm: 12 }, { kind: 'thread', diameterMm: 19.4, fromMm: 30 }, { kind: 'key', diameterMm: 23, fromMm: 15 }, { kind: 'sleeve', diameterMm: 26, fromMm: 15, hasSharpEdge: true }] };
    expect(way(several).map(([, , , parameters]) => parameters)).toEqual([{ part: 'thread', partMm: 19.5 }, { part: 'circlip groove', partMm: 19.2 }]);
  });
});

describe('how the old seal comes out', () => {
  const base = pumpToOpen;
  const run = (input: Input = {}) => extractionPlan.run({ ...base, ...input });
  const told = (input: Input, start: RegExp) => run(input).findings.filter(({ code }) => start.test(code)).map(({ code, severity, role, parameters, missing }) => [code, severity, role, parameters, ...(missing === undefined ? [] : [missing])]);

  test('the hole: its drill, circle and walls; a face too narrow, or covered by a part of the shaft', () => {
    const { hole } = run();
    const wallMm = ((hole.freeWidthMm ?? NaN) - 1.7) / 2;
    expect(told({}, /hole-fits/u)).toMatchObject([['extraction-hole-fits', 'good', 'deciding', { drillMm: 1.7, leastWallMm: 1, holeCircleRadiusMm: close(hole.holeCircleRadiusMm, 0), wallMm: close(wallMm, 0) }]]);
    const narrow = { seal: { ...seal, shaftMm: 29 }, shaft: {}, bore: {} };
    expect(told(narrow, /face-/u)).toMatchObject([['extraction-face-too-narrow', 'care', 'deciding', { freeWidthMm: close(run(narrow).hole.freeWidthMm), leastWallMm: 1 }]]);
    expect(told({ ...narrow, seal: { ...seal, shaftMm: 34 } }, /face-/u)).toMatchObject([['extraction-face-too-narrow', 'care', 'deciding', { freeWidthMm: 0 }]]);
    const covered = { shaft: { obstacles: [{ kind: 'collar', diameterMm: 31, fromMm: 5, lengthMm: 10 }] } };
    expect(told(covered, /face-/u)).toMatchObject([['extraction-face-covered', 'care', 'deciding', { part: 'collar', leastWallMm: 1, partMm: close(2 * run(covered).hole.innerLimitRadiusMm) }]]);
  });

  test('what lies behind: kept clear of, reached, not known, or open', () => {
    const behind = (more: Input) => told(more, /behind|stays-clear/u);
    const { hole } = run();
    expect(behind({})).toMatchObject([['extraction-drill-stays-clear', 'good', 'deciding', { behind: 'bearing', roomBehindMm: close(7.7), roomNeededMm: close((hole.drillPointMm ?? NaN) + 1) }]]);
    expect(behind({ lipFacing: 'outward', clearBehindMm: 1 })).toMatchObject([['extraction-drill-reaches-behind', 'care', 'deciding', { roomBehindMm: 1, behind: 'bearing' }]]);
    // A seal that is hooked out meets no screw and no chuck.
    const hooked = { lipFacing: 'outward', clearBehindMm: 1 };
    expect(told(hooked, /screw|chuck/u)).toEqual([]);
    expect(run(hooked).assumptions.map(({ name }) => name)).toEqual(expect.not.arrayContaining(['screw-grip', 'case-tensile']));
    expect(behind({ lipFacing: 'outward', clearBehindMm: 3 }).map(([code]) => code)).toEqual(['extraction-drill-stays-clear', 'extraction-screw-point-meets-behind']);
    expect(behind({ clearBehindMm: undefined, behind: 'open space', lipFacing: 'outward' }).map(([code]) => code)).toContain('extraction-open-space-behind');
    expect(behind({ clearBehindMm: undefined, behind: undefined, lipFacing: 'outward' })).toContainEqual(['extraction-room-behind-unknown', 'unknown', 'deciding', expect.objectContaining({ behind: 'part behind', roomInSealMm: 0 }) as unknown, 'clearBehindMm']);
  });

  test('from inside: a tube pushes it out, or none passes', () => {
    expect(told({ reachableFrom: 'inside' }, /push-out|no-tube/u)).toMatchObject([['extraction-push-out', 'good', 'deciding', { insideOverMm: close(20.0209, 1) }]]);
    const tight = { reachableFrom: 'both', bore: { ...base.bore, shoulderInsideMm: 21.5 } };
    expect(told(tight, /push-out|no-tube/u)).toMatchObject([['extraction-no-tube-from-inside', 'care', 'supporting', { insideOverMm: expect.any(Number) as number }]]);
    expect(told({ ...tight, reachableFrom: 'inside' }, /push-out|no-tube/u)).toHaveLength(1);
    expect(told({ ...tight, reachableFrom: 'outside' }, /push-out|no-tube/u)).toEqual([]);
    expect(run({ reachableFrom: 'inside' }).notChecked).toEqual(expect.not.arrayContaining(['drill-wander']));
    expect(run().notChecked).toEqual(expect.arrayContaining(['stuck-seal-needs-more', 'drill-wander', 'rubber-on-back-of-face']));
  });

  test('what the screws hold against what the seal asks for', () => {
    const pull = (more: Input = {}) => told(more, /^extraction-(?:screws|pull|sheet)/u);
    const [[code, severity, , numbers] = []] = pull() as unknown as readonly (readonly [string, string, string, Record<string, number>])[];
    const { stripLowN = NaN, stripHighN = NaN, pullLowN = NaN, pullHighN = NaN } = numbers ?? {};
    expect([code, severity]).toEqual(stripLowN >= pullHighN ? ['extraction-screws-hold', 'good'] : stripHighN < pullLowN ? ['extraction-screws-fall-short', 'bad'] : [expect.stringMatching(/^extraction-screws-(?:probably-hold|fall-short)$/u), 'care']);
    expect(pull({ bore: {} })).toMatchObject([['extraction-pull-unknown', 'unknown', 'supporting', { designation: 'ST 2.2', screwCount: 2 }, 'bore.readings']]);
    // A rubber cover's hold nobody has an estimate for.
    expect(pull({ seal: { ...seal, construction: 'rubber-covered' } }).map(([name, how, role]) => [name, how, role])).toContainEqual(['extraction-pull-no-estimate', 'care', 'supporting']);
    // 0.5 mm of sheet is less than the pitch of 0.8 mm.
    expect(pull({ seal: { ...seal, caseThicknessMm: 0.5 } })).toContainEqual(['extraction-sheet-thinner-than-pitch', 'care', 'supporting', { sheetMm: close(0.5), pitchMm: 0.8, designation: 'ST 2.2' }]);
    expect(pull({ seal: { ...seal, caseThicknessMm: 0.8 } }).map(([name]) => name)).not.toContain('extraction-sheet-thinner-than-pitch');
  });

  test('what holds it besides, and how it sat', () => {
    expect(told({ retainedBy: undefined }, /retainer/u)).toEqual([['extraction-retainer-unknown', 'unknown', 'supporting', {}, 'retainedBy']]);
    expect(told({}, /retainer/u)).toEqual([]);
    expect(told({ retainedBy: 'circlip' }, /retainer/u)).toEqual([['extraction-retainer-first', 'note', 'supporting', { retainedBy: 'circlip' }]]);
    expect(told({ oldDepthMm: undefined }, /old-/u)).toEqual([['extraction-old-depth-missing', 'unknown', 'supporting', {}, 'oldDepthMm']]);
    // Half a per cent of 35 mm are 0.175 mm; a vernier's depth rod leaves 0.086 mm open.
    expect(told({ oldDepthMm: [1, 1.26] }, /old-/u)).toEqual([]);
    expect(told({ oldDepthMm: [1, 1.27] }, /old-/u)).toEqual([['extraction-old-seal-was-tilted', 'care', 'supporting', { spreadMm: close(0.27), limitMm: close(0.175) }]]);
    expect(told({ lipFacing: undefined }, /lip-facing/u)).toEqual([['extraction-lip-facing-unknown', 'unknown', 'supporting', {}, 'lipFacing']]);
    expect(told({ shaft: { obstacles: [{ kind: 'collar', diameterMm: 24, fromMm: 5, lengthMm: 10 }] } }, /scrapes|in-the-way/u)).toMatchObject([['extraction-seal-scrapes-shaft-part', 'note', 'supporting', { part: 'collar' }]]);
    expect(told({ shaft: { obstacles: [{ kind: 'keyway', diameterMm: 20, fromMm: 5, lengthMm: 10 }] } }, /scrapes|in-the-way/u)).toEqual([]);
    expect(told({ shaft: { obstacles: [{ kind: 'collar', diameterMm: 32, fromMm: 5, lengthMm: 10 }] } }, /scrapes|in-the-way/u)).toMatchObject([['extraction-shaft-part-in-the-way', 'bad', 'deciding', { part: 'collar', shaftMm: 20 }]]);
  });
});
