import { expect, test } from 'vitest';
import { pressJoint, ringStack } from '@seatwright/core/joint';
import { between, drawing, oneOf } from './internal/drawn.js';

/**
 * Any number of rings in each other without Lamé's formulas: finite elements along the radius (plane stress, linear elements,
 * two Gauss points), heat as free strain, turning as body force. Which joints touch is found by trying every pattern of
 * open and closed until all closed ones press and all open ones gape. Two meshes give the error, which is taken off (Richardson).
 */
interface Part {
  readonly inside: number;
  readonly outside: number;
  readonly E: number;
  readonly nu: number;
  readonly alpha: number;
  readonly density: number;
  readonly warm: number;
  readonly yieldMpa: number;
}

interface Answer {
  readonly pressures: readonly number[];
  readonly gapsUm: readonly number[];
  /** Displacement on the diameter [µm] and stresses [MPa] at bore and outside of each ring. */
  readonly boreUm: readonly number[];
  readonly outsideUm: readonly number[];
  readonly hoopBore: readonly number[];
  readonly hoopOutside: readonly number[];
}

/** Radial displacements [mm] with these joints closed, node by node of each ring; and the force per radian that holds each ring's bore. */
function displaced(parts: readonly Part[], interferences: readonly number[], closed: readonly boolean[], omega: number, count: number) {
  const size = parts.length * (count + 1);
  const diagonal = new Array<number>(size).fill(0);
  const beside = new Array<number>(size).fill(0);
  const load = new Array<number>(size).fill(0);
  const elements = parts.map(({ inside, outside, E, nu, alpha, density, warm }, k) => {
    const h = (outside - inside) / 2 / count;
    const factor = E / (1 - nu * nu);
    return Array.from({ length: count }, (_, i) => {
      const r1 = inside / 2 + i * h;
      const stiff = [0, 0, 0];
      const force = [0, 0];
      for (const gauss of [-1, 1]) {
        const s = 0.5 + gauss / (2 * Math.sqrt(3));
        const r = r1 + s * h;
        const shape = [1 - s, s] as const;
        const radial = [-1 / h, 1 / h] as const;
        const hoop = [shape[0] / r, shape[1] / r] as const;
        const weight = (r * h) / 2;
        const term = (a: 0 | 1, b: 0 | 1) => factor * (radial[a] * radial[b] + hoop[a] * hoop[b] + nu * (radial[a] * hoop[b] + hoop[a] * radial[b])) * weight;
        stiff[0] = (stiff[0] ?? 0) + term(0, 0);
        stiff[1] = (stiff[1] ?? 0) + term(0, 1);
        stiff[2] = (stiff[2] ?? 0) + term(1, 1);
        for (const a of [0, 1] as const) {
          force[a] = (force[a] ?? 0) + weight * (factor * (1 + nu) * alpha * warm * (radial[a] + hoop[a]) + density * 1e-12 * omega * omega * r * shape[a]);
        }
      }
      return { node: k * (count + 1) + i, stiff, force };
    });
  });
  for (const { node, stiff, force } of elements.flat()) {
    diagonal[node] = (diagonal[node] ?? 0) + (stiff[0] ?? 0);
    diagonal[node + 1] = (diagonal[node + 1] ?? 0) + (stiff[2] ?? 0);
    beside[node] = (beside[node] ?? 0) + (stiff[1] ?? 0);
    load[node] = (load[node] ?? 0) + (force[0] ?? 0);
    load[node + 1] = (load[node + 1] ?? 0) + (force[1] ?? 0);
  }
  // A closed joint is a very short spring of no length: force P and displacement step are unknowns of one more equation, taken out here
  // by giving both nodes one displacement, the outer one larger by the interference.
  const order: number[][] = [];
  const step = new Array<number>(size).fill(0);
  parts.forEach((_, k) => {
    for (let i = 0; i <= count; i += 1) {
      const node = k * (count + 1) + i;
      if (i === 0 && k > 0 && closed[k - 1] === true) {
        order.at(-1)?.push(node);
        step[node] = (interferences[k - 1] ?? 0) / 2000;
      } else order.push([node]);
    }
  });
  const main = order.map((nodes) => nodes.reduce((sum, node) => sum + (diagonal[node] ?? 0), 0));
  const right = order.map((nodes) => nodes.reduce((sum, node) => sum + (load[node] ?? 0) - (diagonal[node] ?? 0) * (step[node] ?? 0), 0));
  // The neighbour outward of a stepped node carries its share of the step too.
  const off = order.map((nodes) => beside[nodes.at(-1) ?? 0] ?? 0);
  order.forEach((nodes, i) => {
    const last = nodes.at(-1) ?? 0;
    if (i + 1 < order.length && (step[last] ?? 0) !== 0) right[i + 1] = (right[i + 1] ?? 0) - (beside[last] ?? 0) * (step[last] ?? 0);
  });
  if (parts[0]?.inside === 0) {
    // Nothing moves on the axis.
    main[0] = 1;
    right[0] = 0;
    off[0] = 0;
  }
  const cut = off.map((value, i) => (i + 1 < order.length ? value : 0));
  for (let i = 1; i < order.length; i += 1) {
    const f = (cut[i - 1] ?? 0) / (main[i - 1] ?? 1);
    main[i] = (main[i] ?? 0) - f * (cut[i - 1] ?? 0);
    right[i] = (right[i] ?? 0) - f * (right[i - 1] ?? 0);
  }
  const solution = new Array<number>(order.length).fill(0);
  for (let i = order.length - 1; i >= 0; i -= 1) solution[i] = ((right[i] ?? 0) - (cut[i] ?? 0) * (solution[i + 1] ?? 0)) / (main[i] ?? 1);
  const u = new Array<number>(size).fill(0);
  order.forEach((nodes, i) => nodes.forEach((node) => (u[node] = (solution[i] ?? 0) + (step[node] ?? 0))));
  /** Force that the ring needs at its bore to stand still, per radian and mm of length: what its first element does not carry. */
  const boreForce = parts.map((_, k) => {
    const first = elements[k]?.[0];
    const node = first?.node ?? 0;
    return (first?.stiff[0] ?? 0) * (u[node] ?? 0) + (first?.stiff[1] ?? 0) * (u[node + 1] ?? 0) - (first?.force[0] ?? 0);
  });
  return { u, boreForce };
}

function solvedOnce(parts: readonly Part[], interferences: readonly number[], omega: number, count: number): Answer {
  const joints = interferences.length;
  for (let pattern = 0; pattern < 2 ** joints; pattern += 1) {
    const closed = interferences.map((_, j) => (pattern >> j) % 2 === 1);
    const { u, boreForce } = displaced(parts, interferences, closed, omega, count);
    const at = (k: number, i: number) => u[k * (count + 1) + i] ?? 0;
    const pressures = interferences.map((_, j) => (closed[j] === true ? (boreForce[j + 1] ?? 0) / ((parts[j + 1]?.inside ?? 0) / 2) : 0));
    const gapsUm = interferences.map((um, j) => (closed[j] === true ? 0 : 2000 * (at(j + 1, 0) - at(j, count)) - um));
    if (pressures.some((p) => p < 0) || gapsUm.some((gap) => gap < 0)) continue;
    const inner = (k: number) => (k === 0 ? 0 : (pressures[k - 1] ?? 0));
    const outer = (k: number) => (k < joints ? (pressures[k] ?? 0) : 0);
    const hoop = ({ E, nu, alpha, warm }: Part, u: number, r: number, radial: number) => E * (u / r - alpha * warm) + nu * radial;
    return {
      pressures,
      gapsUm,
      boreUm: parts.map((_, k) => 2000 * at(k, 0)),
      outsideUm: parts.map((_, k) => 2000 * at(k, count)),
      hoopBore: parts.map((part, k) => (part.inside === 0 ? 0 : hoop(part, at(k, 0), part.inside / 2, -inner(k)))),
      hoopOutside: parts.map((part, k) => hoop(part, at(k, count), part.outside / 2, -outer(k))),
    };
  }
  throw new Error('no pattern of joints holds');
}

function solved(parts: readonly Part[], interferences: readonly number[], omega: number): Answer {
  const coarse = solvedOnce(parts, interferences, omega, 100);
  const fine = solvedOnce(parts, interferences, omega, 200);
  const better = (name: keyof Answer) => fine[name].map((value, i) => value + (value - (coarse[name][i] ?? 0)) / 3);
  return { pressures: better('pressures'), gapsUm: better('gapsUm'), boreUm: better('boreUm'), outsideUm: better('outsideUm'), hoopBore: better('hoopBore'), hoopOutside: better('hoopOutside') };
}

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
    const expected = solved(parts, interferences, (speedRpm * Math.PI) / 30);
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
    const { pressures } = solved([part(bore, joint, shaft, shaftC - 20), part(joint, outside, hub, hubC - 20)], [um], (speedRpm * Math.PI) / 30);
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
