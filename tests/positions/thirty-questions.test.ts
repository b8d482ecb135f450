import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bearingDimensions, bearingFitting, bearingRemoval, bearingSeat, ratingLife, seatRepair } from '@seatwright/core/bearing';
import { disputedPoints, drawInRod, driverSearch, extractionPlan, leakCheck, leakSearch } from '@seatwright/core/handwork';
import { jobSheet, serviceRecord } from '@seatwright/core/job';
import { dismantling, pressJoint } from '@seatwright/core/joint';
import { conformity, measuredSizeCalculation } from '@seatwright/core/measure';
import { lipMaterialsFor, lipSpeed, sealCheck, sealSizes, shelfMatch, wearTrackRemedies } from '@seatwright/core/seal';
import { fit, fitAtTemperature, inchFit, parseFitDesignation, parseZoneDesignation, toleranceZone } from '@seatwright/core/tolerance';
import { refused } from '../laws/internal/refused.js';

/** A winch gearbox whose every reading is known, so that each question changes one thing. */
const place = {
  shaft: { diameterMm: 25, protrusionMm: 40, material: 'steel-c45', readings: [{ instrument: 'outside-micrometer', valuesMm: [24.96, 24.961, 24.958] }] },
  bore: { diameterMm: 40, depthMm: 10, faceDiameterMm: 70, material: 'gjl250', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [40.01, 40.012, 40.008] }] },
  seal: { shaftMm: 25, outsideMm: 40, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', turns: 'either way' },
  seat: { kind: 'flush' },
  lipFacing: 'inward',
  fluidSide: 'inside',
  rotation: 'clockwise',
  wearTrack: { catchesNail: false },
  running: { speedRpm: 1000, fluid: 'engine-oil', fluidTemperatureC: 80, housingTemperatureC: 80 },
};
const ball = { shaftClass: 'k6', housingClass: 'H7', shaftMaterial: 'steel-c45', housingMaterial: 'gjl250', innerRingLoad: 'rotating', outerRingLoad: 'stationary' };
const running = (changed: object) => ({ ...place, running: { ...place.running, ...changed } });
const withSeal = (changed: object, more: object = {}) => ({ ...place, seal: { ...place.seal, ...changed }, ...more });
const codes = ({ findings }: { readonly findings: readonly { readonly severity: string; readonly code: string }[] }) => findings.map(({ severity, code }) => `${severity} ${code}`);

describe('the seal', () => {
  it('1. The shaft has a groove that my nail catches in. Just a new seal?', () => {
    const worn = { ...place, oldDepthMm: [0, 0, 0, 0], clearBehindMm: 2, wearTrack: { fromFaceMm: 4, widthMm: 0.6, depthMm: 0.1, catchesNail: true } };
    expect(codes(sealCheck.run(worn))).toContain('care track-catches-nail');
    const { verdict, options, refused } = wearTrackRemedies.run(worn);
    expect(verdict).toBe('does not suit');
    expect(options.find(({ kind }) => kind === 'leave it')?.verdict).toBe('does not suit');
    // 10 mm of bore for 7 mm of seal: there are 3 mm to move it inward.
    expect(options.find(({ kind }) => kind === 'lip further in')?.verdict).toBe('suits');
    expect(refused.length).toBeGreaterThan(0);
  });

  it('2. My shaft measures 24.96. Is that still a 25?', () => {
    // h11 at 25 mm: 0 to -130 µm (ISO 286-2), so 24.87 to 25.
    expect(codes(sealCheck.run(place))).toContain('good shaft-in-band');
    const thin = { ...place, shaft: { ...place.shaft, readings: [{ instrument: 'outside-micrometer', valuesMm: [24.85] }] } };
    expect(codes(sealCheck.run(thin))).not.toContain('good shaft-in-band');
  });

  it('3. The bore is 1 3/8 inch and the shaft 3/4: which metric seal?', () => {
    const { isInchLikely, exact } = sealSizes.run({ shaftMm: '3/4 in', boreMm: '1 3/8"' });
    expect([isInchLikely, exact]).toEqual([true, []]);
  });

  it('4. On the shelf: 25x40x7 and 25x42x7. The bore is 40.01.', () => {
    const { candidates, nearMisses } = shelfMatch.run({ ...place, header: ['d', 'D', 'B'], rows: [['25', '40', '7'], ['25', '42', '7']] });
    expect(candidates.map(({ line }) => line)).toEqual([2]);
    expect(nearMisses.map(({ line, outsideOffMm }) => [line, Math.round(outsideOffMm * 100)])).toEqual([[3, 199]]);
  });

  it('5. Engine oil at 140 °C: NBR or FKM?', () => {
    const hot = (lipMaterial: string) => sealCheck.run({ ...withSeal({ lipMaterial }), running: { ...place.running, fluidTemperatureC: 140 } });
    expect(hot('NBR').verdict).toBe('does not suit');
    expect(codes(hot('NBR'))).toContain('bad temperature-over-working-limit');
    expect(hot('FKM').verdict).toBe('suits');
  });

  it('6. Brake fluid: what rubber?', () => {
    const { rubbers } = lipMaterialsFor.run(running({ fluid: 'brake-fluid-glycol' }));
    const of = (name: string) => rubbers.find(({ lipMaterial }) => lipMaterial === name)?.verdict;
    expect([of('EPDM'), of('NBR'), of('FKM')]).toEqual(['suits', 'does not suit', 'does not suit']);
  });

  it('7. The shaft turns both ways, the lip has slanted ribs.', () => {
    expect(codes(sealCheck.run(withSeal({ turns: 'clockwise' }, { rotation: 'both' })))).toContain('bad lip-made-for-other-rotation');
    expect(sealCheck.run(withSeal({}, { rotation: 'both' })).verdict).toBe('suits');
  });

  it('8. Half a bar behind the lip, at 1000 and at 1500 rpm.', () => {
    // DIN 3760: 0.05 MPa up to 1000 rpm and 2.8 m/s, 0.035 MPa up to 2000 rpm and 3.15 m/s.
    expect(codes(sealCheck.run(running({ pressureMpa: '0.5 bar' })))).toContain('good pressure-within');
    expect(codes(sealCheck.run(running({ pressureMpa: '0.5 bar', speedRpm: 1500 })))).toContain('bad pressure-over');
  });

  it('9. An aluminium case that gets 120 °C: does a steel-cased seal stay?', () => {
    const hot = (construction: string) => sealCheck.run({ ...withSeal({ construction, lipMaterial: 'FKM' }), bore: { ...place.bore, material: 'al-a380' }, running: { ...place.running, fluidTemperatureC: 120, housingTemperatureC: 120 } });
    expect(hot('metal-case').verdict).toBe('suits with care');
    expect(codes(hot('metal-case'))).toContain('care case-may-loosen-hot');
    expect(hot('rubber-covered').verdict).toBe('suits');
  });

  it('10. It will run dry.', () => {
    expect(codes(sealCheck.run(running({ runsDry: true })))).toContain('bad lip-runs-dry');
    expect(sealCheck.run({ ...withSeal({ lipMaterial: 'PTFE' }), running: { ...place.running, runsDry: true } }).verdict).toBe('suits');
  });

  it('11. It stands in mud: a plain lip is not said to do.', () => {
    expect(sealCheck.run(place).notChecked).toContain('dirt-from-outside');
    expect(sealCheck.run(withSeal({ hasDustLip: true })).notChecked).not.toContain('dirt-from-outside');
  });

  it('12. How fast does the lip run: 3/4 inch at 1450, and at 25 Hz?', () => {
    // v = π · 19.05 mm · 1450 / 60 000 = 1.4463 m/s; 25 Hz are 1500 rpm: 1.4962 m/s.
    expect(lipSpeed.run({ shaftDiameterMm: '3/4 in', speedRpm: 1450 }).peripheralSpeedMps).toBeCloseTo(1.4463, 4);
    expect(lipSpeed.run({ shaftDiameterMm: '19,05', speedRpm: '25 Hz' }).peripheralSpeedMps).toBeCloseTo(1.4962, 4);
  });

  it('13. Shaft in inches, bore in millimetres, pressure in psi, heat in °F.', () => {
    const mixed = sealCheck.run({ ...running({ pressureMpa: '5 psi', fluidTemperatureC: '212 °F' }), shaft: { diameterMm: '0.984252 in', readings: [{ instrument: 'outside-micrometer', valuesMm: ['0.9827 in'] }] } });
    // 0.9827 in = 24.960 58 mm; 5 psi = 0.034 47 MPa.
    expect(mixed.shaft?.meanMm).toBeCloseTo(24.96058, 5);
    expect(codes(mixed)).toContain('good shaft-in-band');
    expect(mixed.findings.find(({ code }) => code === 'pressure-within')?.parameters['peakMpa'] ?? mixed.findings.find(({ code }) => code === 'pressure-within')?.parameters['pressureMpa']).toBeCloseTo(0.03447, 5);
  });
});

describe('out, in, and after', () => {
  it('14. How do I get it out without a mark on shaft or bearing?', () => {
    const { steps } = extractionPlan.run({ ...place, behind: 'bearing', clearBehindMm: 3 });
    const cautions = steps.flatMap((step) => step.cautions);
    for (const caution of ['chips-stay-out', 'drill-stop-before-drilling', 'eye-protection', 'never-lever-on-shaft-or-bore', 'nothing-blown-in', 'never-refit-old-seal']) expect(cautions).toContain(caution);
  });

  it('15. Which of my sockets and pipes drives a seal of 42 outside over a 25 shaft standing out 40?', () => {
    const { candidates, nearMisses } = driverSearch.run({
      ...place, bore: { diameterMm: 42, faceDiameterMm: 70 }, seal: { ...place.seal, outsideMm: 42 }, includeStandardTubes: false,
      toolsAtHand: [
        { name: 'pipe 41.5', kind: 'tube', outsideMm: 41.5, wallMm: 3, lengthMm: 100, material: 'steel' },
        { name: 'pipe 35', kind: 'tube', outsideMm: 35, wallMm: 2, lengthMm: 100, material: 'steel' },
        { name: 'pipe 41.5, short', kind: 'tube', outsideMm: 41.5, wallMm: 3, lengthMm: 30, material: 'steel' },
        { name: 'socket 32', kind: 'socket', outsideMm: 42.5, insideMm: 32, lengthMm: 50, material: 'steel' },
      ],
    });
    expect(candidates.find(({ name }) => name === 'pipe 41.5')?.verdict).toBe('suits');
    expect(nearMisses.map(({ name }) => name)).toEqual(expect.arrayContaining(['pipe 35', 'pipe 41.5, short']));
    // Wider than the bore (42.04), narrower than its mouth: past flush it would bruise the edge.
    expect(candidates.find(({ name }) => name === 'socket 32')).toMatchObject({ role: 'at the edge', verdict: 'cannot tell' });
  });

  it('16. Can I draw it in with a threaded rod? What torque?', () => {
    const m12 = drawInRod.run({ pushForceN: 4600, threads: ['M12'] }).candidates[0];
    // Stress area of M12 (ISO 898-1): 84.3 mm², so 54.6 MPa. With friction 0.08 to 0.20 in thread and washer F·(P/2π + 1.155·µ·d2/2 + µ·Dm/2) lies between 6 and 17 N·m.
    expect(m12?.tensileStressMpa).toBeCloseTo(4600 / 84.3, 0);
    expect(m12?.torqueNm.low).toBeGreaterThan(5);
    expect(m12?.torqueNm.high).toBeLessThan(18);
  });

  it('17. It leaks right after refitting, and the open side looks outward.', () => {
    expect(leakSearch.run({ answers: [{ check: 'which-way-the-lip-faces', outcome: 'away from it' }] }).found.map(({ code }) => code)).toEqual(['suspect-lip-wrong-way-round']);
  });

  it('18. The crankcase of 500 cm³ falls from 0.5 to 0.45 bar in six minutes.', () => {
    // 500 cm³ · 0.05 bar / 1.01325 bar / 6 min = 4.11 cm³/min of free air.
    expect(leakCheck.run({ volumeCm3: 500, startPressureMpa: '0.5 bar', endPressureMpa: '0.45 bar', holdHours: '6 min' }).leakMlPerMin).toBeCloseTo((500 * 0.05) / 1.01325 / 6, 6);
  });

  it('19. When is it due again? Two-stroke, last done at 308 h.', () => {
    const workshop: unknown = JSON.parse(readFileSync(new URL('../../apps/bench/public/samples/outboard-two-stroke.json', import.meta.url), 'utf8'));
    const question = { workshop, position: 'crank, drive side' };
    // 100 h after the last change; the meter stands at 412 h: 4 h over. Renewed now: at 512 h.
    expect(serviceRecord.run(question)).toMatchObject({ dueAtHours: 408, overdueHours: 4 });
    expect(jobSheet.run(question).due.dueAtHours).toBe(512);
  });

  it('20. Lip in or lip out? Grease or dry? The trade argues; every answer has its evidence.', () => {
    const { points } = disputedPoints.run({});
    expect(points.length).toBeGreaterThan(2);
    for (const { evidence } of points) expect(evidence.length).toBeGreaterThan(0);
  });
});

describe('the bearing', () => {
  it('21. What is a 6205-2RS C3?', () => {
    const { matches, seal, clearanceGroup } = bearingDimensions.run({ designation: '6205-2RS C3' });
    // ISO 15, series 02: 25 × 52 × 15, corner 1.
    expect(matches[0]).toMatchObject({ boreMm: 25, outsideMm: 52, widthMm: 15, cornerMinMm: 1 });
    expect([seal, clearanceGroup]).toEqual(['seals', '3']);
  });

  it('22. Does it sit on a j6 shaft under a turning load?', () => {
    const { verdict, shaftSeat, unmountedClearanceUm } = bearingSeat.run({ ...ball, shaftClass: 'j6', designation: '6205-2RS C3', temperatureC: 70 });
    // j6 at 25: +9/-4; bore of the ring (ISO 492, Normal): 0/-10. C3 over 24 to 30 mm (ISO 5753-1): 13 to 28 µm.
    expect(shaftSeat?.at20C).toMatchObject({ leastInterferenceUm: -4, mostInterferenceUm: 19 });
    expect(unmountedClearanceUm).toEqual({ low: 13, high: 28 });
    // It may have a gap where the ring must not creep: never "suits".
    expect(['cannot tell', 'does not suit']).toContain(verdict);
  });

  it('23. How hot must a 6205 be to slip onto k6, and may a sealed one be?', () => {
    const open = bearingFitting.run({ ...ball, designation: '6205', ambientC: 20 }).ways.find(({ seat }) => seat === 'shaft');
    // k6 at 25: +15, ring -10: 25 µm. Steel grows 11.5 to 12.5 µm/m per K: 25 / (25 mm · 0.0115…0.0125) = 80 to 87 K over 20 °C.
    expect(open?.noGapC).toBeGreaterThan(100);
    expect(open?.noGapC).toBeLessThan(107);
    expect(open?.limitC).toBeLessThanOrEqual(125);
    const sealed = bearingFitting.run({ ...ball, designation: '6205-2RS', ambientC: 20 }).ways.find(({ seat }) => seat === 'shaft');
    expect(sealed?.limitC).toBeLessThanOrEqual(100);
    expect(sealed?.way).not.toBe('heat the bearing');
    // A suffix that nobody here can read may stand for a seal.
    expect(bearingFitting.run({ ...ball, designation: '6205 TQ7', ambientC: 20 }).ways.find(({ seat }) => seat === 'shaft')?.limitC).toBe(sealed?.limitC);
  });

  it('24. It sits in a blind bore.', () => {
    const { steps } = bearingRemoval.run({ ...ball, designation: '6204', shaftClass: 'h6', housingClass: 'N7', housingMaterial: 'al-a380', isBlindBore: true });
    expect(steps.map(({ code }) => code)).toEqual(expect.arrayContaining(['bearing-out-heat-case', 'bearing-out-blind']));
  });

  it('25. The shaft seat measures 19.98 under a 6204: knurl it?', () => {
    const { verdict, refused, options } = seatRepair.run({ designation: '6204', shaftReadings: [{ instrument: 'outside-micrometer', valuesMm: [19.98, 19.982, 19.981] }], shaftMaterial: 'steel-c45', innerRingLoad: 'rotating', seat: 'shaft' });
    expect(verdict).toBe('does not suit');
    expect(refused).toContain('punched-or-knurled-seat');
    // Turned down to 16 mm the shaft keeps (16/20)³ = 51.2 % of its strength: that is not simply good.
    const sleeve = options.find(({ kind }) => kind === 'sleeve');
    expect(sleeve?.verdict).toBe('suits with care');
    expect(sleeve?.findings[0]?.parameters['strengthPercent']).toBeCloseTo(51.2, 6);
  });

  it('26. Will it last? C = 14 kN, 1.4 kN, 1500 rpm.', () => {
    // (14/1.4)³ = 1000 million turns; / (60 · 1500) = 11 111 h.
    expect(ratingLife.run({ kind: 'ball', basicDynamicLoadRatingN: 14000, equivalentLoadN: 1400, speedRpm: 1500 }).basicRatingLifeHours).toBeCloseTo(1e9 / 90_000, 6);
  });
});

describe('sizes, fits and slips', () => {
  it('27. Is 24.998 with a micrometer within h6?', () => {
    // h6 at 25: 24.987 to 25; U = 0.007 leaves nothing to accept: 0.013 - 2 · 0.007 < 0.
    const { decision, conformityProbability } = conformity.run({ measures: 'outside', measuredMm: 24.998, expandedUncertaintyMm: 0.007, nominalMm: 25, toleranceClass: 'h6' });
    expect(decision).toBe('cannot be proven');
    // Normal distribution, s = 0.0035: Φ(0.5714) − Φ(−3.1429) = 0.7161 − 0.0008.
    expect(conformityProbability).toBeCloseTo(0.7153, 4);
    expect(measuredSizeCalculation.run({ measures: 'inside', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: ['1 3/8 in', 34.935] }] }).meanMm).toBeCloseTo(34.93, 9);
  });

  it('28. 25 H7/p6, 3/4 FN2, and N7/h6 in hot aluminium.', () => {
    // ISO 286-2: H7 +21/0, p6 +35/+22. ANSI B4.1, 0.71 to 0.95 in, FN2: hole +0.8/0, shaft +1.9/+1.4 thou.
    expect(fit.run(parseFitDesignation('Ø25H7-p6'))).toMatchObject({ minimumInterferenceUm: 1, maximumInterferenceUm: 35 });
    expect(inchFit.run({ nominalIn: 0.75, fitClass: 'FN2' })).toMatchObject({ maximumThou: -0.6, minimumThou: -1.9 });
    // 47 N7: -8/-33, ring as h6: at most 33 µm. Aluminium outgrows steel by 8 to 12 µm/m per K: 38 to 57 µm over 100 K.
    const hot = fitAtTemperature.run({ nominalMm: 47, hole: 'N7', shaft: 'h6', holeMaterial: 'al-a380', shaftMaterial: 'steel-100cr6', temperatureC: 120 });
    expect(hot.kind).toBe('clearance');
    expect(toleranceZone.run(parseZoneDesignation('47 N7'))).toMatchObject({ upperLimitDeviationUm: -8, lowerLimitDeviationUm: -33 });
  });

  it('29. What force presses a 40 mm steel shaft with 60 µm into an 80 mm steel hub, 40 long, and what takes it off?', () => {
    // Lamé, equal steel: p = E·δ·(D² − d²)/(2·d·D²) = E · 0.06 · 4800 / 512 000; with E from 200 to 215 GPa 112 to 121 MPa.
    const joint = { jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 60, shaft: 'steel-c45', hub: 'steel-c45', smoothingUm: 0 };
    const { contactPressureMpa, hubHoopStressMpa, pressForceN } = pressJoint.run(joint);
    expect(contactPressureMpa).toBeGreaterThan(112);
    expect(contactPressureMpa).toBeLessThan(121);
    // In the bore of the hub: p·(D² + d²)/(D² − d²) = 5/3 p.
    expect(hubHoopStressMpa / contactPressureMpa).toBeCloseTo(5 / 3, 9);
    expect(pressForceN).toBeGreaterThan(0);
    expect(pressJoint.run({ ...joint, frictionCoefficient: 0.1 }).pressForceN).toBeCloseTo(contactPressureMpa * Math.PI * 40 * 40 * 0.1, 3);
    expect(dismantling.run({ ...joint, frictionCoefficient: 0.1 }).verdict).not.toBe('cannot tell');
  });

  it('30. Slips of the pen are named, not guessed.', () => {
    expect(refused(() => bearingDimensions.run({ designation: '62O5' })).message).toMatch(/designation: a letter stands where a digit belongs/);
    expect(refused(() => parseFitDesignation('25 h6/H7')).message).toMatch(/the hole comes first: H7\/h6/);
    expect(refused(() => parseZoneDesignation('25 H7/p6')).message).toMatch(/two classes make a fit/);
    expect(refused(() => toleranceZone.run({ nominalMm: 25, toleranceClass: 'Js7' })).message).toMatch(/JS7 for a hole or js7 for a shaft/);
    expect(refused(() => lipSpeed.run({ shaftDiameterMm: 25, speedRpm: '1,450' })).message).toMatch(/speedRpm: .*thousands or decimals/);
    expect(refused(() => lipSpeed.run({ shaftDiameterMm: '25 bar', speedRpm: 1450 })).message).toMatch(/shaftDiameterMm: "bar" is a unit of pressure/);
    expect(refused(() => sealCheck.run(withSeal({ construction: 'metall-case' }))).message).toMatch(/seal\.construction: expected one of metal-case/);
    expect(refused(() => shelfMatch.run({ ...place, header: ['a', 'b'], rows: [] })).code).toBe('invalid-input');
  });
});
