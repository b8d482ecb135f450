import { describe, expect, test } from 'vitest';
import type { Situation } from './situation-field.js';
import { wearTrackRemedies } from './wear-track.js';

const seal: Situation['seal'] = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const base: Situation = { seal, bore: { depthMm: 12, innerEnd: 'open' }, oldDepthMm: [2], clearBehindMm: 10, wearTrack: { catchesNail: true } };

const look = (more: Partial<Situation>) => wearTrackRemedies.compute({ ...base, ...more });
function remedy(kind: string, more: Partial<Situation> = {}) {
  const option = look(more).options.find((one) => one.kind === kind);
  if (option === undefined) throw new Error(`no ${kind}`);
  return { ...option, codes: option.findings.map(({ code }) => code).join(', '), numbers: option.findings[0]?.parameters };
}

// The usual millimetre: seal-trade-pages. t2 = b + 0.3 and t1 = 0.85 b: DIN 3760.
describe('the lip further out', () => {
  test('seated less deep by the width of the track, and no less than a millimetre', () => {
    expect(remedy('lip further out')).toMatchObject({ verdict: 'suits', moveMm: -1, newDepthMm: 1, spacerMm: null, codes: 'track-left-outward', numbers: { lengthMm: 1, newDepthMm: 1 } });
    expect(remedy('lip further out', { wearTrack: { catchesNail: true, widthMm: 1.5 } })).toMatchObject({ moveMm: -1.5, newDepthMm: 0.5 });
    expect(remedy('lip further out', { oldDepthMm: [1.9, 2.1, 2.3, 2.1] })).toMatchObject({ newDepthMm: 1.1 });
  });

  test('against a shoulder it takes a spacer of that length', () => {
    expect(remedy('lip further out', { bore: { depthMm: 9, innerEnd: 'shoulder' } })).toMatchObject({ codes: 'track-left-by-spacer', spacerMm: 1, verdict: 'suits' });
  });

  test.each([
    [[0], 12, 'track-left-outward, track-move-stands-out', 'suits with care'],
    [[1], 12, 'track-left-outward', 'suits'],
    // 0.85 of 7 mm is 5.95 mm: stood out by 1 mm there are 6 left, by 1.1 only 5.9.
    [[-0.05], 12, 'track-left-outward, track-move-stands-out', 'suits with care'],
    [[-0.06], 12, 'track-move-leaves-bore', 'does not suit'],
    [[0], 5.9, 'track-move-leaves-bore', 'does not suit'],
  ])('from a depth of %o in a bore %d deep: %s', (oldDepthMm, depthMm, codes, verdict) => {
    expect(remedy('lip further out', { oldDepthMm, bore: { depthMm, innerEnd: 'open' } })).toMatchObject({ codes, verdict });
  });

  test('how far it stands out, and how little seat is left', () => {
    expect(remedy('lip further out', { oldDepthMm: [-4] }).numbers).toEqual({ lengthMm: 1, standsOutMm: 5, seatedMm: 2 });
    expect(remedy('lip further out', { oldDepthMm: [-9] }).numbers).toEqual({ lengthMm: 1, standsOutMm: 10, seatedMm: 0 });
    expect(remedy('lip further out', { oldDepthMm: [0], bore: {} })).toMatchObject({ codes: 'track-move-needs-bore-depth', verdict: 'cannot tell' });
    expect(remedy('lip further out', { oldDepthMm: [2], bore: {} })).toMatchObject({ codes: 'track-left-outward' });
  });
});

describe('the lip further in', () => {
  test.each([
    [{}, 'track-left-inward', 'suits'],
    [{ bore: { depthMm: 10, innerEnd: 'open' as const } }, 'track-left-inward', 'suits'],
    [{ bore: { depthMm: 9.9, innerEnd: 'open' as const } }, 'track-move-passes-bore-end', 'does not suit'],
    [{ bore: { depthMm: 12, innerEnd: 'shoulder' as const } }, 'track-move-meets-shoulder', 'does not suit'],
    [{ bore: {} }, 'track-move-needs-bore-depth', 'cannot tell'],
    [{ clearBehindMm: 1.3 }, 'track-left-inward', 'suits'],
    [{ clearBehindMm: 1.29 }, 'track-move-meets-what-is-behind', 'does not suit'],
    [{ clearBehindMm: 2.3, wearTrack: { catchesNail: true, widthMm: 2 } }, 'track-left-inward', 'suits'],
    [{ clearBehindMm: undefined }, 'track-left-inward, track-move-room-behind-unknown', 'suits with care'],
  ])('%o: %s', (more, codes, verdict) => {
    expect(remedy('lip further in', more)).toMatchObject({ codes, verdict });
  });

  test('by how much it would pass the end, and what is behind', () => {
    expect(remedy('lip further in')).toMatchObject({ moveMm: 1, newDepthMm: 3, spacerMm: null });
    expect(remedy('lip further in', { bore: { depthMm: 9.5, innerEnd: 'open' } }).numbers).toEqual({ lengthMm: 1, overMm: 0.5 });
    expect(remedy('lip further in', { clearBehindMm: 1 }).numbers).toEqual({ lengthMm: 1, clearMm: 1 });
  });
});

test('without the depth of the old seal nobody can say where a new one leaves the track', () => {
  for (const kind of ['lip further out', 'lip further in']) expect(remedy(kind, { oldDepthMm: undefined })).toMatchObject({ codes: 'track-needs-old-depth', verdict: 'cannot tell', newDepthMm: null });
});

test('a lip that would run on a keyway or within a millimetre of it does not suit', () => {
  // The track lies 5 mm inside the housing face; moved out by 1 mm the lip runs at 4 mm.
  const at = (fromMm: number, lengthMm?: number) => remedy('lip further out', { wearTrack: { catchesNail: true, fromFaceMm: 5 }, shaft: { obstacles: [{ kind: 'keyway', diameterMm: 20, fromMm, ...(lengthMm === undefined ? {} : { lengthMm }) }] } });
  for (const [fromMm, lengthMm] of [[-4, 1], [-5, undefined], [-3, undefined], [-8, 3], [-8, 4]] as const) expect(at(fromMm, lengthMm)).toMatchObject({ codes: 'track-move-lands-on-part', numbers: { part: 'keyway' } });
  for (const [fromMm, lengthMm] of [[-2.9, 1], [-5.1, undefined], [-8, 2.9]] as const) expect(at(fromMm, lengthMm).codes).toBe('track-left-outward');
});

describe('a thin sleeve', () => {
  // Wall 0.25 to 0.28 mm (held from memory); GB 9877.1: lip interference 0.5 to 1.3 mm over 5 up to 30 mm, 0.8 to 1.7 over 30 up to 60.
  test('the shaft grows by twice its wall, and the lip is stretched by as much', () => {
    const thin = remedy('thin sleeve', { wearTrack: { catchesNail: true } });
    expect(thin.numbers).toEqual({ lowGrowthMm: 0.5, highGrowthMm: 0.56 });
    expect(thin.newShaftMm).toBeCloseTo(20.53, 9);
    expect(thin.newShaftLowerMm).toBeCloseTo(20.5, 9);
    expect(thin.newShaftUpperMm).toBeCloseTo(20.56, 9);
    expect(thin.verdict).toBe('suits with care');
    const lip = thin.findings.find(({ code }) => code === 'thin-sleeve-stretches-lip');
    expect(lip).toMatchObject({ severity: 'note', parameters: { lipLowMm: 1, madeHighMm: 1.3 } });
    expect(Number(lip?.parameters['lipHighMm'])).toBeCloseTo(1.86, 9);
  });

  test.each(['keyway', 'spline', 'cross hole'] as const)('must not cover a %s', (kind) => {
    expect(remedy('thin sleeve', { shaft: { obstacles: [{ kind, diameterMm: 20, fromMm: 2 }] } }).codes).toContain('thin-sleeve-not-over-gaps');
    expect(remedy('thin sleeve', { shaft: { obstacles: [{ kind: 'thread', diameterMm: 18, fromMm: 2 }] } }).codes).not.toContain('thin-sleeve-not-over-gaps');
  });

  test('its bore grips the shaft as measured', () => {
    const thin = remedy('thin sleeve');
    expect(thin.sleeveBoreLowerMm).toBeLessThan(thin.sleeveBoreUpperMm ?? 0);
    expect(thin.sleeveBoreUpperMm).toBeLessThan(20);
    expect(look({}).assumptions).toEqual([expect.objectContaining({ name: 'thin-sleeve-wall', value: 0.25, upToValue: 0.28 })]);
  });
});

describe('another size', () => {
  test('a turned sleeve, ground for the next larger seal of the same outside that leaves it a wall of 2 mm', () => {
    const turned = remedy('turned sleeve and larger seal', { seal: { ...seal, shaftMm: 18 } });
    expect(turned).toMatchObject({ verdict: 'suits', codes: 'turned-sleeve-takes-larger-seal', roughnessLowUm: 0.2, roughnessHighUm: 0.8 });
    expect(turned.numbers).toMatchObject({ newShaftMm: turned.newShaftMm, outsideMm: 35, wallMm: ((turned.newShaftMm ?? 0) - 18) / 2 });
    expect(((turned.newShaftMm ?? 0) - 18) / 2).toBeGreaterThanOrEqual(2);
    // ISO 286: h11 of 22 mm is 0 / −0.130.
    expect(turned.newShaftMm).toBe(22);
    expect(turned).toMatchObject({ newShaftLowerMm: 21.87, newShaftUpperMm: 22 });
  });

  test('no larger seal has this outside', () => {
    expect(remedy('turned sleeve and larger seal', { seal: { ...seal, shaftMm: 34, outsideMm: 50 }, oldDepthMm: [2] }).verdict).toMatch(/suit/);
    expect(remedy('turned sleeve and larger seal', { seal: { ...seal, shaftMm: 20, outsideMm: 33 } })).toMatchObject({ codes: 'no-larger-seal-in-bore', verdict: 'does not suit', numbers: { outsideMm: 33, wallMm: 2 } });
  });

  test.each([
    [1, 18, 'regrind-takes-smaller-seal'],
    // The lists have 16 and 18 mm with 35 mm outside, and nothing between.
    [1.001, 16, 'regrind-takes-smaller-seal'],
    [0.9, 18, 'regrind-takes-smaller-seal'],
  ])('ground clean of a groove %d mm deep the shaft takes %d mm', (depthMm, newShaftMm, code) => {
    const ground = remedy('regrind and smaller seal', { wearTrack: { catchesNail: true, depthMm } });
    expect(ground).toMatchObject({ codes: code, newShaftMm, newShaftUpperMm: newShaftMm, verdict: 'suits with care', numbers: { newShaftMm, outsideMm: 35, removedMm: 20 - newShaftMm } });
  });

  test('a groove too deep for any seal of the lists, or not measured', () => {
    expect(remedy('regrind and smaller seal', { wearTrack: { catchesNail: true, depthMm: 8 } })).toMatchObject({ codes: 'no-smaller-seal-in-bore', verdict: 'does not suit', numbers: { outsideMm: 35, cleanMm: 4 } });
    expect(remedy('regrind and smaller seal')).toMatchObject({ codes: 'regrind-needs-groove-depth', verdict: 'cannot tell' });
  });
});

test('the nail decides whether anything must be done, and what suits stands first', () => {
  expect(look({ wearTrack: { catchesNail: false } })).toMatchObject({ verdict: 'suits', options: [{ kind: 'leave it' }, {}, {}, {}, {}, {}] });
  expect(look({ wearTrack: {} }).findings).toMatchObject([{ code: 'track-not-felt', severity: 'unknown', missing: 'wearTrack.catchesNail' }]);
  expect(look({}).options.map(({ kind }) => kind).slice(0, 2)).toEqual(['lip further out', 'lip further in']);
  expect(look({}).options.at(-1)?.kind).toMatch(/leave it|regrind/);
  const order = ['suits', 'suits with care', 'cannot tell', 'does not suit'];
  const verdicts = look({}).options.map(({ verdict }) => order.indexOf(verdict));
  expect(verdicts).toEqual(verdicts.toSorted((a, b) => a - b));
  expect(() => wearTrackRemedies.compute({ seal })).toThrow(/wearTrack.*missing/);
});
