import { expect, test } from 'vitest';
import { pressJoint, ringStack } from '@seatwright/core/joint';
import { between, drawing, oneOf } from './internal/drawn.js';
import { solvedRings, type Part } from './internal/finite-rings.js';

const draw = drawing(281);
const stacks = Array.from({ length: 120 }, (_, number) => {
  const count = 1 + Math.floor(draw() * 5);
  const isSolid = draw() < 0.3;
  let diameter = isSolid ? 0 : between(draw, 5, 200);
  const parts: Part[] = Array.from({ length: count }, () => {
    const inside = diameter;
    diameter = inside === 0 ? between(draw, 10, 100) : inside * between(draw, 1.05, 2.2);
    return { inside, outside: diameter, E: between(draw, 3000, 210_000), nu: between(draw, 0.2, 0.42), alpha: between(draw, 5e-6, 1.5e-4), density: between(draw, 900, 9000), warm: draw() < 0.5 ? 0 : between(draw, -60, 150), yieldMpa: between(draw, 50, 600) };
  });
  const interferences = parts.slice(1).map(({ inside }) => inside * between(draw, -0.6, 1.6));
  return { number, parts, interferences, speedRpm: oneOf(draw, [0, 0, 500, 3000, 8000]) };
});

const near = (found: number, expected: number, scale: number) => expect(Math.abs(found - expected)).toBeLessThan(2e-6 * scale + 1e-6 * Math.abs(expected));

test('drawn stacks of one to five rings: pressure, gap, growth and stress as by finite elements', () => {
  let [open, closed] = [0, 0];
  for (const { parts, interferences, speedRpm } of stacks) {
    const expected = solvedRings(parts, interferences, (speedRpm * Math.PI) / 30);
    const found = ringStack.run({
      rings: parts.map(({ inside, outside, E, nu, alpha, density, warm, yieldMpa }) => ({
        insideMm: inside,
        outsideMm: outside,
        temperatureC: 20 + warm,
        material: { youngsModulusGpa: E / 1000, poissonRatio: nu, expansionPerK: alpha, densityKgPerM3: density, yieldMpa },
      })),
      interferencesUm: interferences,
      speedRpm,
    });
    const stress = Math.max(1, ...expected.hoopBore.map(Math.abs), ...expected.hoopOutside.map(Math.abs));
    const growth = Math.max(1, ...expected.boreUm.map(Math.abs), ...expected.outsideUm.map(Math.abs));
    found.joints.forEach(({ contactPressureMpa, openGapUm }, j) => {
      near(contactPressureMpa, expected.pressures[j] ?? 0, stress);
      near(openGapUm, expected.gapsUm[j] ?? 0, growth);
      if (contactPressureMpa > 0) closed += 1;
      else open += 1;
    });
    found.rings.forEach((ring, k) => {
      near(ring.boreDisplacementUm, expected.boreUm[k] ?? 0, growth);
      near(ring.outsideDisplacementUm, expected.outsideUm[k] ?? 0, growth);
      if (ring.hoopStressMpa.bore !== null) near(ring.hoopStressMpa.bore, expected.hoopBore[k] ?? 0, stress);
      near(ring.hoopStressMpa.outside, expected.hoopOutside[k] ?? 0, stress);
      // von Mises in plane stress, from the two principal stresses.
      const mises = (a: number, b: number) => Math.sqrt(((a - b) ** 2 + a ** 2 + b ** 2) / 2);
      near(ring.vonMisesMpa.outside, mises(expected.hoopOutside[k] ?? 0, -(expected.pressures[k] ?? 0)), stress);
      if (ring.vonMisesMpa.bore !== null) near(ring.vonMisesMpa.bore, mises(expected.hoopBore[k] ?? 0, -(k === 0 ? 0 : (expected.pressures[k - 1] ?? 0))), stress);
    });
  }
  expect(open).toBeGreaterThan(30);
  expect(closed).toBeGreaterThan(100);
});

test('drawn press joints: the same two rings, as by finite elements; force and torque by adding up small patches', () => {
  const pick = drawing(7190);
  for (let i = 0; i < 120; i += 1) {
    const joint = between(pick, 5, 400);
    const bore = pick() < 0.4 ? 0 : joint * between(pick, 0.1, 0.9);
    const outside = joint * between(pick, 1.1, 3);
    const [shaft, hub] = [0, 1].map(() => ({ E: between(pick, 3000, 210_000), nu: between(pick, 0.2, 0.42), alpha: between(pick, 5e-6, 1e-4), density: between(pick, 900, 9000) }));
    if (shaft === undefined || hub === undefined) continue;
    const [shaftC, hubC] = [between(pick, -20, 140), between(pick, -20, 140)];
    const um = joint * between(pick, 0.2, 3);
    const speedRpm = oneOf(pick, [0, 0, 1500, 4000]);
    const part = (inside: number, to: number, { E, nu, alpha, density }: typeof shaft, warm: number): Part => ({ inside, outside: to, E, nu, alpha, density, warm, yieldMpa: 1000 });
    const { pressures } = solvedRings([part(bore, joint, shaft, shaftC - 20), part(joint, outside, hub, hubC - 20)], [um], (speedRpm * Math.PI) / 30);
    const stated = ({ E, nu, alpha, density }: typeof shaft) => ({ youngsModulusGpa: E / 1000, poissonRatio: nu, expansionPerK: alpha, densityKgPerM3: density, yieldMpa: 5000 });
    const lengthMm = between(pick, 2, 200);
    const found = pressJoint.run({ jointDiameterMm: joint, shaftBoreMm: bore, hubOutsideMm: outside, lengthMm, interferenceUm: um, shaft: stated(shaft), hub: stated(hub), shaftTemperatureC: shaftC, hubTemperatureC: hubC, speedRpm, frictionCoefficient: 0.15 });
    const pressure = pressures[0] ?? 0;
    near(found.contactPressureMpa, pressure, Math.max(1, pressure));
    let [force, torque] = [0, 0];
    for (let patch = 0; patch < 360; patch += 1) {
      const area = ((joint / 2) * (2 * Math.PI) * lengthMm) / 360;
      force += 0.15 * found.contactPressureMpa * area;
      torque += (0.15 * found.contactPressureMpa * area * (joint / 2)) / 1000;
    }
    near(found.axialForceN ?? Number.NaN, force, Math.max(1, force));
    near(found.torqueNm ?? Number.NaN, torque, Math.max(1, torque));
  }
});
