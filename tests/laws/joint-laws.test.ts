import fc from 'fast-check';
import { lusolve, matrix } from 'mathjs';
import { expect, test } from 'vitest';
import { pressJoint, ringStack, type PressJointInput, type RingStackInput } from '@seatwright/core/joint';
import { expectWorkingHolds } from './internal/evaluate-working.js';
import { expectWords } from './internal/expect-words.js';
import { numRuns } from './internal/num-runs.js';

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

const material = fc.oneof(
  fc.constantFrom('steel-c45', 'steel-c20', 'al-a380', 'gjl250', 'bronze-c932', 'ss304', 'mg-az91d', 'ti-6al4v', 'pvc-u'),
  fc
    .record({ e: fc.integer({ min: 2, max: 400 }), nu: fc.integer({ min: 0, max: 49 }), alpha: fc.integer({ min: 1, max: 200 }), yieldMpa: fc.option(fc.integer({ min: 20, max: 2000 }), { nil: undefined }) })
    .map(({ e, nu, alpha, yieldMpa }) => ({ youngsModulusGpa: e, poissonRatio: nu / 100, expansionPerK: alpha * 1e-6, densityKgPerM3: 7000, ...(yieldMpa === undefined ? {} : { yieldMpa }) })),
);

const joints: fc.Arbitrary<PressJointInput> = fc
  .record({
    d: fc.integer({ min: 5, max: 400 }),
    boreShare: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 95 })),
    hubShare: fc.integer({ min: 105, max: 400 }),
    lengthMm: fc.integer({ min: 1, max: 300 }),
    interferenceUm: fc.integer({ min: -50, max: 400 }),
    shaft: material,
    hub: material,
    frictionCoefficient: fc.option(fc.integer({ min: 1, max: 50 }), { nil: undefined }),
    temperatureC: fc.option(fc.integer({ min: -60, max: 250 }), { nil: undefined }),
    speedRpm: fc.option(fc.integer({ min: 0, max: 20_000 }), { nil: undefined }),
    axialLoadN: fc.option(fc.integer({ min: 0, max: 100_000 }), { nil: undefined }),
  })
  .map(({ d, boreShare, hubShare, frictionCoefficient, temperatureC, speedRpm, axialLoadN, ...rest }) => ({
    ...rest,
    jointDiameterMm: d,
    shaftBoreMm: (d * boreShare) / 100,
    hubOutsideMm: (d * hubShare) / 100,
    ...(frictionCoefficient === undefined ? {} : { frictionCoefficient: frictionCoefficient / 100 }),
    ...(temperatureC === undefined ? {} : { temperatureC }),
    ...(speedRpm === undefined ? {} : { speedRpm }),
    ...(axialLoadN === undefined ? {} : { axialLoadN }),
  }));

test('press-joint: no NaN, the schema is met, every code has words, and the working holds', () => {
  fc.assert(
    fc.property(joints, (input) => {
      const output = pressJoint.compute(input);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      expect((pressJoint.output['~standard'].validate(JSON.parse(JSON.stringify(output))) as { readonly issues?: unknown }).issues).toBeUndefined();
      expectWords(output);
      expectWorkingHolds(pressJoint.explain(input, output));
    }),
    { numRuns },
  );
});

const plain = (input: PressJointInput): PressJointInput => {
  const { speedRpm: _speed, temperatureC: _temperature, axialLoadN: _load, ...rest } = input;
  return { ...rest, interferenceUm: Math.max(1, rest.interferenceUm), frictionCoefficient: 0.1 };
};

test('elastic pressure, stress and force are linear in the interference', () => {
  fc.assert(
    fc.property(joints, fc.integer({ min: 2, max: 9 }), (drawn, factor) => {
      const input = plain(drawn);
      const one = pressJoint.compute(input);
      const more = pressJoint.compute({ ...input, interferenceUm: input.interferenceUm * factor });
      for (const key of ['contactPressureMpa', 'hubHoopStressMpa', 'hubVonMisesMpa', 'pressForceN', 'torqueNm', 'hubOutsideGrowthUm'] as const) {
        expect((more[key] ?? 0) / (one[key] ?? 1)).toBeCloseTo(factor, 9);
      }
    }),
    { numRuns },
  );
});

test('one material and a solid shaft: p = E·U·(1 − (d/D)²)/(2·d)', () => {
  fc.assert(
    fc.property(joints, (drawn) => {
      const input = { ...plain(drawn), shaftBoreMm: 0, hub: drawn.shaft };
      const { contactPressureMpa, hubOutsideGrowthUm } = pressJoint.compute(input);
      const stated = typeof input.shaft === 'string' ? null : input.shaft;
      if (stated === null) return;
      const { jointDiameterMm: d, hubOutsideMm: D, interferenceUm } = input;
      const p = ((stated.youngsModulusGpa * interferenceUm) / d) * (1 - (d / D) ** 2) / 2;
      expect(contactPressureMpa / p).toBeCloseTo(1, 10);
      // Of the interference, the share d/D comes out at the outside of the hub.
      expect(hubOutsideGrowthUm / ((interferenceUm * d) / D)).toBeCloseTo(1, 10);
    }),
    { numRuns },
  );
});

test('warming is worth as much as the interference it adds', () => {
  fc.assert(
    fc.property(joints, fc.integer({ min: -60, max: 200 }), fc.integer({ min: -60, max: 200 }), (drawn, shaftTemperatureC, hubTemperatureC) => {
      const input = plain(drawn);
      const hot = pressJoint.compute({ ...input, shaftTemperatureC, hubTemperatureC });
      const cold = pressJoint.compute({ ...input, interferenceUm: input.interferenceUm + hot.thermalInterferenceUm });
      expect(hot.contactPressureMpa).toBeCloseTo(cold.contactPressureMpa, 7);
    }),
    { numRuns },
  );
});

test('turning is worth as much as the interference it takes, and the loose speed opens the joint', () => {
  fc.assert(
    fc.property(joints, fc.integer({ min: 1, max: 20_000 }), (drawn, speedRpm) => {
      const input = { ...plain(drawn), hub: 'steel-c45', shaft: 'steel-c45' };
      const turning = pressJoint.compute({ ...input, speedRpm });
      const still = pressJoint.compute({ ...input, interferenceUm: input.interferenceUm - turning.turningLossUm });
      expect(turning.contactPressureMpa).toBeCloseTo(still.contactPressureMpa, 7);
      if (turning.looseFromRpm === null || turning.looseFromRpm > 1e6) return;
      const at = pressJoint.compute({ ...input, speedRpm: turning.looseFromRpm });
      expect(Math.abs(at.effectiveInterferenceUm)).toBeLessThan(1e-6 * Math.max(1, input.interferenceUm));
    }),
    { numRuns },
  );
});

test('a thicker hub presses harder, a larger bore in the shaft less', () => {
  fc.assert(
    fc.property(joints, fc.integer({ min: 1, max: 100 }), (drawn, more) => {
      const input = plain(drawn);
      const base = pressJoint.compute(input).contactPressureMpa;
      expect(pressJoint.compute({ ...input, hubOutsideMm: input.hubOutsideMm * (1 + more / 100) }).contactPressureMpa).toBeGreaterThan(base);
      const bore = Math.min(input.jointDiameterMm * 0.99, input.shaftBoreMm + (input.jointDiameterMm * more) / 150);
      expect(pressJoint.compute({ ...input, shaftBoreMm: bore }).contactPressureMpa).toBeLessThanOrEqual(base * (1 + 1e-12));
    }),
    { numRuns },
  );
});

const flowing = (interferenceUm: number, hubOutsideMm = 80) =>
  pressJoint.compute({
    jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm, lengthMm: 40, interferenceUm, frictionCoefficient: 0.1,
    shaft: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5, yieldMpa: 2000 },
    hub: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5, yieldMpa: 300 },
  });

test('a flowing hub: begins at Re·(1 − Q²)/2, joins the elastic line there, rises below it, ends at Re·ln(D/d)', () => {
  // U = Re·d·(c/d)²/E for one material and a solid shaft: first flow at Re·d/E = 57.97 µm, right through at four times that.
  const firstUm = (300 * 40) / 207_000 * 1000;
  expect(flowing(firstUm * 0.999).elasticPlastic).toBeNull();
  const just = flowing(firstUm * 1.0001);
  expect(just.elasticPlastic?.contactPressureMpa).toBeCloseTo(112.5, 1);
  expect(just.elasticPlastic?.contactPressureMpa).toBeCloseTo(just.contactPressureMpa, 1);
  let before = 0;
  for (let um = firstUm * 1.01; um < firstUm * 3.99; um += 5) {
    const { elasticPlastic, contactPressureMpa } = flowing(um);
    expect(elasticPlastic?.contactPressureMpa).toBeGreaterThan(before);
    expect(elasticPlastic?.contactPressureMpa).toBeLessThan(contactPressureMpa);
    expect((elasticPlastic?.plasticDiameterMm ?? 0) / 40).toBeCloseTo(Math.sqrt(um / firstUm), 8);
    before = elasticPlastic?.contactPressureMpa ?? Infinity;
  }
  const through = flowing(firstUm * 4.1);
  expect(through.elasticPlastic?.isFullyPlastic).toBe(true);
  expect(through.elasticPlastic?.contactPressureMpa).toBeCloseTo(300 * Math.log(2), 9);
});

test('a hub thicker than e times the joint is followed only to a pressure of its yield strength', () => {
  expect(flowing(150, 200).elasticPlastic?.contactPressureMpa).toBeLessThan(300);
  const far = flowing(5000, 200);
  expect(far.elasticPlastic).toBeNull();
  expect(far.notChecked).toContain('flow-beyond-textbook');
});

test('first yield by von Mises: at that interference the stress is the yield strength', () => {
  fc.assert(
    fc.property(joints, (drawn) => {
      const input = plain(drawn);
      const { firstYieldUm, smoothingUm } = pressJoint.compute(input);
      const yieldOf = (part: PressJointInput['hub']) => (typeof part === 'string' ? null : (part.yieldMpa ?? null));
      const hubYield = yieldOf(input.hub);
      if (firstYieldUm.hub !== null && hubYield !== null && firstYieldUm.hub < 100_000) {
        expect(pressJoint.compute({ ...input, interferenceUm: firstYieldUm.hub + smoothingUm }).hubVonMisesMpa / hubYield).toBeCloseTo(1, 8);
      }
      const shaftYield = yieldOf(input.shaft);
      if (firstYieldUm.shaft !== null && shaftYield !== null && firstYieldUm.shaft < 100_000) {
        expect(pressJoint.compute({ ...input, interferenceUm: firstYieldUm.shaft + smoothingUm }).shaftVonMisesMpa / shaftYield).toBeCloseTo(1, 8);
      }
    }),
    { numRuns },
  );
});

test('both published rules of smoothing, by name', () => {
  const at = (smoothingRule: 'din-7190-2001' | 'din-7190-1-2017') =>
    pressJoint.run({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 60, shaft: 'steel-c45', hub: 'steel-c45', smoothingRule, shaftRoughnessRzUm: 6, hubRoughnessRzUm: 10 });
  expect(at('din-7190-2001').smoothingUm).toBeCloseTo(12.8, 12);
  expect(at('din-7190-1-2017').smoothingUm).toBeCloseTo(6.4, 12);
});

/** Two to eight rings, each joint tight or open, each ring at its own temperature. */
const stacks: fc.Arbitrary<RingStackInput> = fc
  .record({
    inside: fc.oneof(fc.constant(0), fc.integer({ min: 5, max: 40 })),
    walls: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 8 }),
    materials: fc.array(material, { minLength: 8, maxLength: 8 }),
    interferences: fc.array(fc.integer({ min: -150, max: 200 }), { minLength: 7, maxLength: 7 }),
    temperatures: fc.array(fc.integer({ min: -40, max: 200 }), { minLength: 8, maxLength: 8 }),
    isWarm: fc.boolean(),
    speedRpm: fc.option(fc.integer({ min: 0, max: 10_000 }), { nil: undefined }),
  })
  .map(({ inside, walls, materials, interferences, temperatures, isWarm, speedRpm }) => {
    let at = inside;
    const rings = walls.map((wall, k) => {
      const ring = { insideMm: at, outsideMm: at + 2 * wall, material: materials[k] ?? 'steel-c45', ...(isWarm ? { temperatureC: temperatures[k] ?? 20 } : {}) };
      at = ring.outsideMm;
      return ring;
    });
    return { rings, interferencesUm: interferences.slice(0, walls.length - 1), ...(speedRpm === undefined ? {} : { speedRpm }) };
  });

test('ring-stack: pressure or gap, never both, never below zero; no NaN; the working holds', () => {
  fc.assert(
    fc.property(stacks, (input) => {
      const output = ringStack.compute(input);
      expect(numbersIn(output).every(Number.isFinite)).toBe(true);
      for (const { contactPressureMpa, openGapUm } of output.joints) {
        expect(contactPressureMpa).toBeGreaterThanOrEqual(0);
        expect(openGapUm).toBeGreaterThanOrEqual(0);
        expect(contactPressureMpa * openGapUm).toBe(0);
      }
      expectWorkingHolds(ringStack.explain(input, output));
    }),
    { numRuns },
  );
});

test('ring-stack: neighbours move together where they press: growth of the bore outside less growth inside is the interference at 20 °C', () => {
  fc.assert(
    fc.property(stacks, (input) => {
      const { joints, rings } = ringStack.compute(input);
      joints.forEach(({ openGapUm }, j) => {
        const closes = (rings[j + 1]?.boreDisplacementUm ?? 0) - (rings[j]?.outsideDisplacementUm ?? 0) - (input.interferencesUm[j] ?? 0);
        expect(closes).toBeCloseTo(openGapUm, 6);
      });
    }),
    { numRuns },
  );
});

test('ring-stack: of all sets of pressing joints only the one found is possible (tried one by one, solved by mathjs)', () => {
  fc.assert(
    fc.property(stacks.filter(({ rings }) => rings.length <= 6), (input) => {
      const found = ringStack.compute(input);
      const n = found.joints.length;
      // Columns of the compliance by pressing one joint at a time is not possible from outside; unit interferences give its inverse instead.
      const steps = ringStack.explain(input, found);
      const scopes = steps.filter((step) => step.kind === 'formula' && step.symbol.startsWith('gap_')).map((step) => (step.kind === 'formula' ? step.scope : {}));
      const full = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => (j === i - 1 ? scopes[i]?.['K_b'] : j === i ? scopes[i]?.['K'] : j === i + 1 ? scopes[i]?.['K_a'] : 0) ?? 0));
      const U = scopes.map((scope) => scope['U'] ?? 0);
      const possible: number[][] = [];
      for (let set = 0; set < 2 ** n; set += 1) {
        const isIn = (i: number) => ((set >> i) & 1) === 1;
        const rows = full.map((row, i) => row.map((k, j) => (isIn(i) ? (isIn(j) ? k : 0) : i === j ? 1 : 0)));
        const solved = lusolve(matrix(rows), U.map((u, i) => (isIn(i) ? u : 0))).valueOf() as number[][];
        const p = solved.map((row) => row[0] ?? 0);
        const gap = full.map((row, i) => row.reduce((sum, k, j) => sum + k * (p[j] ?? 0), 0) - (U[i] ?? 0));
        if (p.every((pressure, i) => !isIn(i) || pressure >= -1e-9) && gap.every((g, i) => isIn(i) || g >= -1e-12)) possible.push(p);
      }
      expect(possible.length).toBeGreaterThan(0);
      for (const p of possible) p.forEach((pressure, j) => expect(pressure).toBeCloseTo(found.joints[j]?.contactPressureMpa ?? Number.NaN, 6));
    }),
    { numRuns: Math.min(numRuns, 150) },
  );
});

test('ring-stack of two is press-joint', () => {
  fc.assert(
    fc.property(joints, (drawn) => {
      const input = { ...plain(drawn), ...(drawn.temperatureC === undefined ? {} : { temperatureC: drawn.temperatureC }) };
      const joint = pressJoint.compute(input);
      const t = input.temperatureC === undefined ? {} : { temperatureC: input.temperatureC };
      const stack = ringStack.compute({ rings: [{ insideMm: input.shaftBoreMm, outsideMm: input.jointDiameterMm, material: input.shaft, ...t }, { insideMm: input.jointDiameterMm, outsideMm: input.hubOutsideMm, material: input.hub, ...t }], interferencesUm: [input.interferenceUm] });
      expect(stack.joints[0]?.contactPressureMpa).toBeCloseTo(joint.contactPressureMpa, 8);
      expect(stack.rings[1]?.hoopStressMpa.bore).toBeCloseTo(joint.hubHoopStressMpa, 8);
      expect(stack.rings[0]?.hoopStressMpa.outside).toBeCloseTo(joint.shaftHoopStressMpa.surface, 8);
    }),
    { numRuns },
  );
});

test('three rings of one material: closed form by superposing two fits', () => {
  // Radii a<b<c<e. Shrink the outer two first, then the pair on the inner one, or all at once: one linear system, so the sum of both.
  const steel = { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 1.2e-5 };
  const E = 200_000;
  const fit = (a: number, b: number, e: number, delta: number) => (E * delta * (e * e - b * b) * (b * b - a * a)) / (2 * b ** 3 * (e * e - a * a));
  const radial = (p: number, a: number, b: number, r: number) => ((p * b * b) / (b * b - a * a)) * (1 - (a * a) / (r * r));
  const hubRadial = (p: number, b: number, e: number, r: number) => ((p * b * b) / (e * e - b * b)) * ((e * e) / (r * r) - 1);
  const [a, b, c, e] = [20, 30, 45, 60];
  const [d1, d2] = [0.03, 0.02];
  const p1 = fit(a, b, e, d1) + radial(fit(a, c, e, d2), a, c, b);
  const p2 = fit(a, c, e, d2) + hubRadial(fit(a, b, e, d1), b, e, c);
  const { joints } = ringStack.run({ rings: [{ insideMm: 2 * a, outsideMm: 2 * b, material: steel }, { insideMm: 2 * b, outsideMm: 2 * c, material: steel }, { insideMm: 2 * c, outsideMm: 2 * e, material: steel }], interferencesUm: [2000 * d1, 2000 * d2] });
  expect(joints[0]?.contactPressureMpa).toBeCloseTo(p1, 8);
  expect(joints[1]?.contactPressureMpa).toBeCloseTo(p2, 8);
});

test('ring-stack: every assumption and every gap has words, and the schema is met', () => {
  fc.assert(
    fc.property(stacks, (input) => {
      const output = ringStack.compute(input);
      expect((ringStack.output['~standard'].validate(JSON.parse(JSON.stringify(output))) as { readonly issues?: unknown }).issues).toBeUndefined();
      expectWords(output);
    }),
    { numRuns },
  );
});

test('ring-stack: warming and turning are worth as much as the interference they add', () => {
  fc.assert(
    fc.property(stacks, (input) => {
      const hot = ringStack.compute(input);
      const { speedRpm: _speed, ...still } = input;
      const cold = ringStack.compute({ ...still, rings: input.rings.map(({ temperatureC: _temperature, ...ring }) => ring), interferencesUm: hot.joints.map(({ effectiveInterferenceUm }) => effectiveInterferenceUm) });
      cold.joints.forEach(({ contactPressureMpa, openGapUm }, j) => {
        expect(contactPressureMpa).toBeCloseTo(hot.joints[j]?.contactPressureMpa ?? Number.NaN, 6);
        expect(openGapUm).toBeCloseTo(hot.joints[j]?.openGapUm ?? Number.NaN, 6);
      });
    }),
    { numRuns },
  );
});

test('ring-stack: more interference in one joint lowers no pressure and widens no gap anywhere', () => {
  fc.assert(
    fc.property(stacks, fc.nat(6), fc.integer({ min: 1, max: 100 }), (input, place, more) => {
      const at = place % input.interferencesUm.length;
      const base = ringStack.compute(input);
      const tighter = ringStack.compute({ ...input, interferencesUm: input.interferencesUm.map((um, j) => (j === at ? um + more : um)) });
      base.joints.forEach(({ contactPressureMpa, openGapUm }, j) => {
        const after = tighter.joints[j];
        expect(after?.contactPressureMpa).toBeGreaterThanOrEqual(contactPressureMpa - 1e-8 * Math.max(1, contactPressureMpa));
        expect(after?.openGapUm).toBeLessThanOrEqual(openGapUm + 1e-6);
      });
    }),
    { numRuns },
  );
});

test('ring-stack: no ring bears more inside its wall than at its bore or outside, still or turning', () => {
  fc.assert(
    fc.property(stacks, fc.integer({ min: 1, max: 99 }), (input, share) => {
      // Any ring cut at any place, the cut held together by what presses there: the new faces bear no more than the old ones.
      const { joints: [joint], rings: [inner, outer] } = ringStack.compute({ ...input, rings: input.rings.slice(0, 2), interferencesUm: [200] });
      const [first, second] = input.rings;
      if (joint === undefined || first === undefined || second === undefined || inner === undefined || outer === undefined || joint.contactPressureMpa === 0) return;
      const cutMm = second.insideMm + ((second.outsideMm - second.insideMm) * share) / 100;
      const cut = ringStack.compute({ ...input, rings: [first, { ...second, outsideMm: cutMm }, { ...second, insideMm: cutMm }], interferencesUm: [200, 0] });
      if (cut.joints[1]?.openGapUm !== 0) return;
      const worst = Math.max(outer.vonMisesMpa.bore ?? 0, outer.vonMisesMpa.outside);
      expect(cut.rings[1]?.vonMisesMpa.outside).toBeLessThanOrEqual(worst * (1 + 1e-6) + 1e-6);
      expect(cut.rings[2]?.vonMisesMpa.bore).toBeLessThanOrEqual(worst * (1 + 1e-6) + 1e-6);
    }),
    { numRuns },
  );
});

test('a ring cut in two with no interference between changes nothing while the cut presses, warm or turning', () => {
  fc.assert(
    fc.property(stacks, fc.nat(7), fc.integer({ min: 1, max: 99 }), (input, place, share) => {
      const at = place % input.rings.length;
      const whole = input.rings[at];
      if (whole === undefined) return;
      const cutMm = whole.insideMm + ((whole.outsideMm - whole.insideMm) * share) / 100;
      const rings = [...input.rings.slice(0, at), { ...whole, outsideMm: cutMm }, { ...whole, insideMm: cutMm }, ...input.rings.slice(at + 1)];
      const parts = ringStack.compute({ ...input, rings, interferencesUm: [...input.interferencesUm.slice(0, at), 0, ...input.interferencesUm.slice(at)] });
      if (parts.joints[at]?.openGapUm !== 0) return;
      const one = ringStack.compute(input);
      const kept = parts.joints.filter((_, j) => j !== at);
      one.joints.forEach(({ contactPressureMpa, openGapUm }, j) => {
        const scale = Math.max(1, contactPressureMpa);
        expect((kept[j]?.contactPressureMpa ?? Number.NaN) / scale).toBeCloseTo(contactPressureMpa / scale, 6);
        expect(kept[j]?.openGapUm).toBeCloseTo(openGapUm, 5);
      });
      expect(parts.rings.at(-1)?.outsideDisplacementUm).toBeCloseTo(one.rings.at(-1)?.outsideDisplacementUm ?? Number.NaN, 5);
      expect(parts.rings[0]?.boreDisplacementUm).toBeCloseTo(one.rings[0]?.boreDisplacementUm ?? Number.NaN, 5);
    }),
    { numRuns },
  );
});

test.each([
  [{ rings: [{ insideMm: 0, outsideMm: 40, material: 'steel-c45' }], interferencesUm: [1] }, /interferencesUm and rings: 1 rings have 0 joints/],
  [{ rings: [{ insideMm: 0, outsideMm: 40, material: 'steel-c45' }, { insideMm: 41, outsideMm: 60, material: 'steel-c45' }], interferencesUm: [1] }, /one nominal diameter/],
  [{ rings: [{ insideMm: 0, outsideMm: 40, material: 'unobtainium' }, { insideMm: 40, outsideMm: 60, material: 'steel-c45' }], interferencesUm: [1] }, /rings\[0\]\.material: unknown material/],
  [{ rings: [{ insideMm: 50, outsideMm: 40, material: 'steel-c45' }], interferencesUm: [] }, /rings\[0\]\.insideMm and rings\[0\]\.outsideMm/],
  [{ rings: [{ insideMm: 0, outsideMm: 40, material: { youngsModulusGpa: 200, poissonRatio: 0.3, expansionPerK: 1e-5 } }, { insideMm: 40, outsideMm: 60, material: 'steel-c45' }], interferencesUm: [1], speedRpm: 100 }, /rings\[0\]\.material\.densityKgPerM3: missing/],
])('ring-stack refuses %j by its field', (input, message) => {
  expect(() => ringStack.run(input)).toThrow(message);
});
