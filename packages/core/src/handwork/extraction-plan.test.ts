import { describe, expect, it } from 'vitest';
import { pumpToOpen } from '../../../../tests/laws/internal/pump-to-open.js';
import { extractionPlan } from './extraction-plan.js';

const pump = pumpToOpen;
const { seal } = pump;
const codes = (output: ReturnType<typeof extractionPlan.run>) => output.findings.map(({ code }) => code);
const steps = (output: ReturnType<typeof extractionPlan.run>) => output.steps.map(({ code }) => code);

describe('extraction-plan', () => {
  it('puts the hole midway between the largest shaft and the inside of the case', () => {
    const { hole } = extractionPlan.run(pump);
    const U = 2 * Math.sqrt(0.02 ** 2 / 3 + 0.01 ** 2 / 12);
    const boreU = 2 * Math.sqrt(0.04 ** 2 / 3 + 0.01 ** 2 / 12);
    expect(hole.innerLimitRadiusMm).toBeCloseTo((20 + U) / 2, 9);
    expect(hole.outerLimitRadiusMm).toBeCloseTo((35 - boreU) / 2 - 1, 9);
    expect(hole.holeCircleRadiusMm).toBeCloseTo((hole.innerLimitRadiusMm + hole.outerLimitRadiusMm) / 2, 12);
    expect(hole.wallToShaftMm).toBeCloseTo(hole.wallToCaseMm, 12);
    expect(hole.wallToShaftMm).toBeGreaterThan(2);
  });

  it('takes the pilot of the smallest screw that is probably enough, in the order of the table', () => {
    const { screw, screwCount, hole, method } = extractionPlan.run(pump);
    expect(method).toBe('drill and screw');
    expect(screw).toMatchObject({ designation: 'ST 2.2', pilotMm: 1.7, pitchMm: 0.8, turnsOfBiteRatio: 1.25 });
    expect(hole.drillMm).toBe(1.7);
    expect(screwCount).toBe(2);
  });

  it('sets the stop to face and drill point, and adds the old depth for a stop on the housing', () => {
    const { hole } = extractionPlan.run(pump);
    expect(hole.drillPointMm).toBeCloseTo(0.85 / Math.tan((59 * Math.PI) / 180), 12);
    expect(hole.breakthroughMm).toBeCloseTo(1 + (hole.drillPointMm ?? 0), 12);
    expect(hole.drillStopFromSealFaceMm).toBe(hole.breakthroughMm);
    expect((hole.drillStopFromHousingFaceMm ?? 0) - (hole.drillStopFromSealFaceMm ?? 0)).toBeCloseTo(1.5, 12);
  });

  it('counts the room inside the seal and behind it', () => {
    const output = extractionPlan.run(pump);
    expect(output.hole.roomInSealMm).toBeCloseTo(7 - 0.3 - 1, 12);
    expect(output.hole.roomBehindMm).toBeCloseTo(7.7, 12);
    expect(codes(output)).toContain('extraction-drill-stays-clear');
  });

  it('names the room behind as the missing reading, and decides by it only where the seal gives no room of its own', () => {
    const { clearBehindMm: _, ...unknown } = pump;
    const inward = extractionPlan.run(unknown).findings.find(({ missing }) => missing === 'clearBehindMm');
    expect(inward).toMatchObject({ code: 'extraction-room-behind-unknown-seal-is-wide', role: 'supporting', severity: 'unknown' });
    const outward = extractionPlan.run({ ...unknown, lipFacing: 'outward' });
    expect(outward.findings.find(({ missing }) => missing === 'clearBehindMm')).toMatchObject({ code: 'extraction-room-behind-unknown', role: 'deciding' });
    expect(outward.verdict).toBe('cannot tell');
  });

  it('does not drill toward a bearing that the drill would reach', () => {
    const output = extractionPlan.run({ ...pump, lipFacing: 'outward', clearBehindMm: 1 });
    expect(codes(output)).toContain('extraction-drill-reaches-behind');
    expect(output.method).toBe('pull on the rim');
    expect(steps(output)).toContain('out-hook-open-side');
    expect(steps(output).some((code) => code.startsWith('out-drill-'))).toBe(false);
  });

  it('sees that with the open side out the face lies at the bottom', () => {
    const { hole } = extractionPlan.run({ ...pump, lipFacing: 'outward', clearBehindMm: 5 });
    expect(hole.drillStopFromSealFaceMm).toBeCloseTo(7.3 - 1 + (hole.breakthroughMm ?? 0), 12);
    expect(hole.roomBehindMm).toBe(5);
  });

  it('presses it out from behind where that side can be reached, without drilling', () => {
    const output = extractionPlan.run({ ...pump, reachableFrom: 'both' });
    expect(output.method).toBe('push out from inside');
    expect(output.screw).toBeNull();
    expect(output.pushOutTube?.insideOverMm).toBeCloseTo(20.024, 3);
    expect(steps(output)).toContain('out-push-from-inside');
    expect(steps(output).some((code) => code.startsWith('out-drill-'))).toBe(false);
  });

  it('passes a push-out tube through the hole in the shoulder, or drills where none passes', () => {
    const { bore } = pump;
    expect(extractionPlan.run({ ...pump, reachableFrom: 'inside', bore: { ...bore, shoulderInsideMm: 30 } }).pushOutTube?.outsideUpToMm).toBeCloseTo(29.8, 9);
    const tight = extractionPlan.run({ ...pump, reachableFrom: 'both', bore: { ...bore, shoulderInsideMm: 21.5 } });
    expect(tight.method).toBe('drill and screw');
    expect(codes(tight)).toContain('extraction-no-tube-from-inside');
  });

  it('finds a face too narrow for a drill, and says what else to do', () => {
    const output = extractionPlan.run({ ...pump, seal: { ...seal, shaftMm: 29 }, shaft: {}, bore: {} });
    expect(codes(output)).toContain('extraction-face-too-narrow');
    expect(output.method).toBe('pull on the rim');
    expect(output.feasible).toBe(true);
    expect(steps(output)).toContain('out-hook-the-rim');
  });

  it('works on a narrow 6 × 16 × 7', () => {
    const output = extractionPlan.run({ seal: { ...seal, shaftMm: 6, outsideMm: 16 } });
    expect(output.hole.freeWidthMm).toBeCloseTo(4, 9);
    expect(output.hole.largestDrillMm).toBe(2);
    expect(output.screw?.designation).toBe('ST 2.2');
    expect(output.hole.wallToShaftMm).toBeCloseTo(1.15, 9);
  });

  it('counts a collar over the seal as the inner limit, and one that blocks the way out', () => {
    const withCollar = (diameterMm: number) => extractionPlan.run({ ...pump, shaft: { obstacles: [{ kind: 'collar', diameterMm, fromMm: 5, lengthMm: 10 }] } });
    expect(withCollar(24).hole.innerLimitRadiusMm).toBeGreaterThan(12);
    expect(codes(withCollar(24))).toContain('extraction-seal-scrapes-shaft-part');
    const blocked = withCollar(32);
    expect(codes(blocked)).toContain('extraction-shaft-part-in-the-way');
    expect(codes(blocked)).toContain('extraction-face-covered');
    expect(blocked.feasible).toBe(false);
    expect(blocked.verdict).toBe('does not suit');
  });

  it('asks for a long drill where a long shaft stands in the way of the chuck', () => {
    const output = extractionPlan.run({ ...pump, shaft: { ...pump.shaft, protrusionMm: 60 } });
    expect(output.hole.drillReachMm).toBeCloseTo(60 + 1.5 + (output.hole.drillStopFromSealFaceMm ?? 0), 9);
    expect(steps(output)).toContain('out-long-drill');
    expect(extractionPlan.run({ ...pump, shaft: { protrusionMm: 3 } }).hole.drillReachMm).toBeNull();
  });

  it('warns when the sheet is thinner than one pitch', () => {
    const output = extractionPlan.run({ ...pump, seal: { ...seal, caseThicknessMm: 0.6 } });
    expect(output.screw?.turnsOfBiteRatio).toBeLessThan(1);
    expect(codes(output)).toContain('extraction-sheet-thinner-than-pitch');
  });

  it('has no pull estimate without a bore or with a rubber cover, and says which', () => {
    expect(extractionPlan.run({ seal }).findings.find(({ code }) => code === 'extraction-pull-unknown')?.missing).toBe('bore.readings');
    expect(codes(extractionPlan.run({ ...pump, seal: { ...seal, construction: 'rubber-covered' } }))).toContain('extraction-pull-no-estimate');
  });

  it('takes off what holds the seal first, and asks where nobody looked', () => {
    expect(steps(extractionPlan.run({ ...pump, retainedBy: 'circlip' }))).toContain('out-take-off-circlip');
    expect(steps(extractionPlan.run({ ...pump, retainedBy: 'staking' }))).toContain('out-free-staking');
    const { retainedBy: _, ...unknown } = pump;
    expect(extractionPlan.run(unknown).findings.some(({ missing }) => missing === 'retainedBy')).toBe(true);
  });

  it('does not call a seal tilted when the calliper cannot tell', () => {
    expect(codes(extractionPlan.run({ ...pump, oldDepthMm: [1.4, 1.6] }))).not.toContain('extraction-old-seal-was-tilted');
    expect(codes(extractionPlan.run({ ...pump, oldDepthMm: [1.2, 1.6] }))).toContain('extraction-old-seal-was-tilted');
  });

  it('puts cautions beside the step they belong to, the maker\'s manual once', () => {
    const { steps: plan } = extractionPlan.run({ ...pump, seal: { ...seal, lipMaterial: 'FKM' }, running: { fluid: 'petrol-oil-mix' } });
    expect(plan.filter(({ cautions }) => cautions.includes('makers-manual-first'))).toHaveLength(1);
    expect(plan.find(({ code }) => code === 'out-drill-two')?.cautions).toEqual(['eye-protection', 'spinning-parts', 'drill-must-not-plunge', 'petrol-vapour']);
    expect(plan.find(({ code }) => code === 'out-photograph')?.cautions).toContain('burnt-fluoro-rubber');
    expect(plan.flatMap(({ cautions }) => cautions)).toContain('crankcase-stays-clean');
    const plain = extractionPlan.run(pump).steps.flatMap(({ cautions }) => cautions);
    expect(plain).not.toContain('burnt-fluoro-rubber');
    expect(plain).not.toContain('crankcase-stays-clean');
  });

  it('lists what it took for granted', () => {
    const names = (input: unknown) => extractionPlan.run(input).assumptions.map(({ name }) => name);
    expect(names({ seal: { ...seal, caseThicknessMm: undefined } })).toEqual(expect.arrayContaining(['shaft-as-marked', 'bore-as-marked', 'case-thickness', 'face-thickness', 'lip-facing', 'least-wall', 'case-tensile']));
    expect(names(pump)).not.toContain('shaft-as-marked');
    expect(names({ ...pump, leastWallMm: 1.5 })).not.toContain('least-wall');
  });

  it('takes the same case as the hold of the seal does', () => {
    const { caseThicknessMm: _, ...unmeasured } = seal;
    const thickness = (input: unknown) => extractionPlan.run(input).assumptions.find(({ name }) => name === 'case-thickness');
    expect(thickness({ seal: unmeasured })).toEqual(thickness({ ...pump, seal: unmeasured }));
  });
});

describe('what an extraction takes for granted', () => {
  const named = (input: Record<string, unknown>) => extractionPlan.run({ ...pump, ...input }).assumptions.map(({ name }) => name).join(' ');
  const hole = 'least-wall drill-reserve screw-grip thread-shear-share case-tensile';
  const hold = 'case-yield friction-pushing-in friction-holding';

  it('names each thing that was not given, once', () => {
    expect(named({})).toBe(`face-thickness ${hold} ${hole} pull-as-push`);
    expect(named({ seal: { ...seal, caseThicknessMm: undefined } })).toBe(`face-thickness case-thickness ${hold} ${hole} pull-as-push`);
    expect(named({ seal: { ...seal, faceThicknessMm: 1 } })).toBe(`${hold} ${hole} pull-as-push`);
    expect(named({ seal: { ...seal, faceThicknessMm: 1, caseThicknessMm: undefined } })).toBe(`case-thickness ${hold} ${hole} pull-as-push`);
    expect(named({ seal: { ...seal, construction: 'rubber-covered' } })).toBe(`cover-thickness face-thickness ${hole}`);
    expect(named({ bore: {} })).toBe(`bore-as-marked face-thickness ${hole}`);
    expect(named({ shaft: {} })).toBe(`shaft-as-marked face-thickness ${hold} ${hole} pull-as-push`);
    expect(named({ lipFacing: undefined })).toBe(`face-thickness lip-facing ${hold} ${hole} pull-as-push`);
    // Where nothing is drilled nothing of a drill is assumed.
    expect(named({ reachableFrom: 'inside' })).toBe('');
    expect(named({ reachableFrom: 'inside', shaft: {}, bore: {} })).toBe('shaft-as-marked bore-as-marked');
    expect(named({ seal: { ...seal, shaftMm: 29 }, shaft: {}, bore: {} })).toBe('shaft-as-marked bore-as-marked face-thickness least-wall');
  });
});
