import { describe, expect, it } from 'vitest';
import { seatingPlan } from './seating-plan.js';

const seal = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } as const;
const base = { seal, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 3, behind: 'bearing', requirementSet: 'din-3760', shaft: { leadIn: { kind: 'chamfer' } } } as const;
const shoulder = { ...base, seat: { kind: 'shoulder' }, bore: { depthMm: 8.5, innerEnd: 'shoulder', leadIn: { lengthMm: 1 } } } as const;
const codes = (output: ReturnType<typeof seatingPlan.run>) => output.findings.map(({ code }) => code);
const steps = (output: ReturnType<typeof seatingPlan.run>) => output.steps.map(({ code }) => code);
/** Vernier calliper's depth rod: permissible error 0.07 mm, step 0.05 mm. */
const depthU = 2 * Math.sqrt(0.07 ** 2 / 3 + 0.05 ** 2 / 12);

describe('seating-plan', () => {
  it('stacks bore depth, width, its tolerance and the reading on a shoulder', () => {
    const { faceDepthMm, gauge } = seatingPlan.run(shoulder);
    expect(faceDepthMm?.nominal).toBeCloseTo(1.5, 12);
    expect(faceDepthMm?.low).toBeCloseTo(1.5 - 0.2 - depthU, 12);
    expect(faceDepthMm?.high).toBeCloseTo(1.5 + 0.2 + depthU, 12);
    expect(gauge).toMatchObject({ pointCount: 4, largestSpreadMm: expect.closeTo(0.175, 9) as number });
    expect(gauge?.lowMm).toBe(faceDepthMm?.low);
  });

  it('seats flush where nothing is said and there is no shoulder, and lists that', () => {
    const output = seatingPlan.run(base);
    expect(output.seat).toBe('flush');
    expect(output.gauge).toMatchObject({ targetMm: 0, lowMm: expect.closeTo(-0.175, 9) as number, highMm: expect.closeTo(0.175, 9) as number });
    expect(output.assumptions.map(({ name }) => name)).toContain('seat-kind');
    expect(seatingPlan.run({ ...base, bore: { innerEnd: 'shoulder', depthMm: 9 } }).seat).toBe('shoulder');
  });

  it('cannot tell where the seal ends on a shoulder of unknown depth', () => {
    const output = seatingPlan.run({ ...base, seat: { kind: 'shoulder' } });
    expect(output.verdict).toBe('cannot tell');
    expect(output.findings.find(({ missing }) => missing === 'bore.depthMm')?.code).toBe('seating-bore-depth-missing');
    expect(steps(output)).toContain('in-measure-four-alike');
  });

  it('finds a seal that stands out, or may', () => {
    const at = (depthMm: number) => codes(seatingPlan.run({ ...shoulder, bore: { ...shoulder.bore, depthMm } }));
    expect(at(6)).toContain('seating-stands-out');
    expect(at(7)).toContain('seating-may-stand-out');
    expect(at(8.5)).toContain('seating-ends-on-shoulder');
  });

  it('finds a bore that ends before the seal is where it should be', () => {
    const at = (depthMm: number) => codes(seatingPlan.run({ ...base, seat: { kind: 'depth', depthMm: 2 }, bore: { depthMm, innerEnd: 'shoulder' } }));
    expect(at(8)).toContain('seating-bore-too-shallow');
    expect(at(9)).toContain('seating-bore-may-be-too-shallow');
    expect(at(10)).toEqual(expect.not.arrayContaining(['seating-bore-too-shallow', 'seating-bore-may-be-too-shallow']));
  });

  it('asks for 0.85 of the width in plain bore', () => {
    const output = seatingPlan.run({ ...base, seat: { kind: 'flush' }, bore: { leadIn: { lengthMm: 1 } } });
    expect(output.leastEngagedMm).toBeCloseTo(5.95, 12);
    expect(output.engagedMm).toEqual({ low: expect.closeTo(5.8, 9) as number, nominal: expect.closeTo(6, 9) as number, high: expect.closeTo(6.2, 9) as number });
    expect(codes(output)).toContain('seating-grips-long-enough');
    const short = seatingPlan.run({ ...base, seat: { kind: 'flush' }, bore: { leadIn: { lengthMm: 1.2 } } });
    expect(short.findings.find(({ code }) => code === 'seating-grips-short')).toMatchObject({ severity: 'care', role: 'deciding', parameters: { engagedMm: expect.closeTo(5.8, 9) as number } });
    expect(codes(seatingPlan.run(shoulder))).toContain('seating-grips-long-enough');
  });

  it('keeps the room behind, counted from where the old seal sat', () => {
    const output = seatingPlan.run({ ...base, seat: { kind: 'depth', depthMm: 3 }, oldDepthMm: [1, 1] });
    expect(output.roomBehindMm?.low).toBeCloseTo(3 + 1 - 3 - 0.2, 12);
    expect(output.moveMm).toBeCloseTo(2, 12);
    expect(codes(seatingPlan.run({ ...base, seat: { kind: 'depth', depthMm: 5 }, oldDepthMm: [1] }))).toContain('seating-meets-what-is-behind');
  });

  it('compares faces where a nail catches in the old track', () => {
    const at = (depthMm: number, more: object = {}) => codes(seatingPlan.run({ ...base, seat: { kind: 'depth', depthMm }, oldDepthMm: [0, 0, 0, 0], wearTrack: { catchesNail: true, ...more } }));
    expect(at(0.5)).toContain('seating-lip-stays-in-track');
    expect(at(1)).toContain('seating-lip-leaves-track');
    expect(at(1, { widthMm: 1.4 })).toContain('seating-lip-stays-in-track');
    const { findings } = seatingPlan.run({ ...base, wearTrack: { catchesNail: true } });
    expect(findings.find(({ code }) => code === 'seating-track-old-depth-missing')?.missing).toBe('oldDepthMm');
  });

  it('protects the lip over a thread, a sharp edge and a bare shaft end', () => {
    const over = (obstacle: object) => seatingPlan.run({ ...base, shaft: { leadIn: { kind: 'chamfer' }, obstacles: [{ kind: 'thread', diameterMm: 19, fromMm: 10, ...obstacle }] } });
    expect(over({}).needsLipSleeve).toBe(true);
    expect(steps(over({}))).toContain('in-sleeve-over-part');
    expect(over({ diameterMm: 12 }).needsLipSleeve).toBe(false);
    expect(over({ hasSharpEdge: false }).needsLipSleeve).toBe(false);
    expect(over({ kind: 'step', hasSharpEdge: true }).needsLipSleeve).toBe(true);
    expect(over({ fromMm: -40, lengthMm: 10 }).needsLipSleeve).toBe(false);
    expect(steps(seatingPlan.run({ ...base, shaft: { leadIn: { kind: 'none' } } }))).toContain('in-sleeve-over-edge');
    expect(steps(seatingPlan.run({ ...base, shaft: {} }))).toContain('in-look-at-shaft-edge');
  });

  it('turns the lip toward the fluid', () => {
    expect(codes(seatingPlan.run({ ...base, lipFacing: 'outward' }))).toContain('seating-lip-faces-away');
    expect(steps(seatingPlan.run({ ...base, lipFacing: 'outward' }))).toContain('in-lip-toward-fluid');
    expect(steps(seatingPlan.run(base))).toContain('in-lip-faces');
  });

  it('tests a two-stroke crankcase with pressure and suction', () => {
    const plan = seatingPlan.run({ ...base, running: { fluid: 'petrol-oil-mix' } }).steps;
    expect(plan.map(({ code }) => code)).toContain('in-pressure-test-crankcase');
    expect(plan.find(({ code }) => code === 'in-lip-faces')?.cautions).toContain('air-leak-seizes-engine');
    expect(steps(seatingPlan.run(base))).toContain('in-look-for-leaks');
  });

  it('refits what held the old seal', () => {
    expect(steps(seatingPlan.run({ ...base, retainedBy: 'circlip' }))).toContain('in-refit-circlip');
    expect(steps(seatingPlan.run({ ...base, retainedBy: 'nothing' })).filter((code) => code.startsWith('in-refit'))).toEqual([]);
  });

  it('does not pass a lip over a collar that is far too large', () => {
    const over = (diameterMm: number) => codes(seatingPlan.run({ ...base, shaft: { obstacles: [{ kind: 'collar', diameterMm, fromMm: 2 }] } }));
    expect(over(30)).toContain('seating-shaft-part-in-the-way');
    expect(over(22)).toContain('seating-lip-must-stretch');
  });
});
