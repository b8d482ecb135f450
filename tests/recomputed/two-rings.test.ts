import { lusolve } from 'mathjs';
import { expect, test } from 'vitest';
import { pressJoint } from '@seatwright/core/joint';

/**
 * Two rings under interference, warm and turning, without Lamé's formulas: the equation of equilibrium in plane stress,
 *   u″ + u′/r − u/r² = −(1 − ν²)·ρω²·r/E,
 * is integrated step by step (Runge–Kutta of fourth order) from the bore of each ring outward; the four unknown starts follow
 * from four conditions: no stress on the bore and on the outside, one pressure and the right step of u at the joint.
 */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly E: number;
  readonly nu: number;
  /** ρ·ω² in MPa/mm². */
  readonly spin: number;
}

interface State {
  readonly u: number;
  readonly slope: number;
}

const steps = 4000;

function integrate({ from, to, E, nu, spin }: Part, start: State, isLoaded: boolean): State {
  const h = (to - from) / steps;
  const load = isLoaded ? (-(1 - nu * nu) * spin) / E : 0;
  const rate = (r: number, { u, slope }: State): State => ({ u: slope, slope: -slope / r + u / (r * r) + load * r });
  const moved = ({ u, slope }: State, by: State, f: number): State => ({ u: u + f * by.u, slope: slope + f * by.slope });
  let state = start;
  for (let i = 0; i < steps; i += 1) {
    const r = from + i * h;
    const k1 = rate(r, state);
    const k2 = rate(r + h / 2, moved(state, k1, h / 2));
    const k3 = rate(r + h / 2, moved(state, k2, h / 2));
    const k4 = rate(r + h, moved(state, k3, h));
    state = { u: state.u + (h / 6) * (k1.u + 2 * k2.u + 2 * k3.u + k4.u), slope: state.slope + (h / 6) * (k1.slope + 2 * k2.slope + 2 * k3.slope + k4.slope) };
  }
  return state;
}

const radial = ({ E, nu }: Part, r: number, { u, slope }: State) => (E / (1 - nu * nu)) * (slope + (nu * u) / r);
const hoop = ({ E, nu }: Part, r: number, { u, slope }: State) => (E / (1 - nu * nu)) * (u / r + nu * slope);

/** Pressure and hoop stress of the hub at the joint. */
function solved(inner: Part, outer: Part, radialInterference: number): { readonly pressure: number; readonly hubHoop: number; readonly outsideGrowth: number } {
  const unit = [{ u: 1, slope: 0 }, { u: 0, slope: 1 }];
  const none = { u: 0, slope: 0 };
  const [a, b] = [unit.map((start) => ({ start, end: integrate(inner, start, false) })), unit.map((start) => ({ start, end: integrate(outer, start, false) }))];
  const [pa, pb] = [integrate(inner, none, true), integrate(outer, none, true)];
  const R = inner.to;
  const rows = [
    [...a.map(({ start }) => radial(inner, inner.from, start)), 0, 0],
    [0, 0, ...b.map(({ end }) => radial(outer, outer.to, end))],
    [...a.map(({ end }) => radial(inner, R, end)), ...b.map(({ start }) => -radial(outer, R, start))],
    [...a.map(({ end }) => -end.u), ...b.map(({ start }) => start.u)],
  ];
  const right = [0, -radial(outer, outer.to, pb), -radial(inner, R, pa), radialInterference + pa.u];
  const x = (lusolve(rows, right) as number[][]).map((row) => row[0] ?? 0);
  const atJoint = { u: x[2] ?? 0, slope: x[3] ?? 0 };
  const end = b.reduce((sum, { end: state }, i) => ({ u: sum.u + (x[2 + i] ?? 0) * state.u, slope: sum.slope + (x[2 + i] ?? 0) * state.slope }), pb);
  return { pressure: -radial(outer, R, atJoint), hubHoop: hoop(outer, R, atJoint), outsideGrowth: 2000 * end.u };
}

const materials = [
  { E: 207_000, nu: 0.29, alpha: 11.3e-6, density: 7850 },
  { E: 71_000, nu: 0.33, alpha: 21.8e-6, density: 2710 },
  { E: 102_000, nu: 0.26, alpha: 11.4e-6, density: 7190 },
] as const;

const cases = materials.flatMap((shaft) =>
  materials.flatMap((hub) =>
    [
      { bore: 10, joint: 40, outside: 60, um: 80, c: 20, rpm: 0 },
      { bore: 30, joint: 40, outside: 120, um: 60, c: 90, rpm: 0 },
      { bore: 12, joint: 100, outside: 130, um: 200, c: 20, rpm: 6000 },
      { bore: 80, joint: 100, outside: 140, um: 250, c: 60, rpm: 3000 },
    ].map((shape) => ({ shaft, hub, ...shape })),
  ),
);

test.each(cases)('press-joint meets the integrated equation: $bore/$joint/$outside, $um µm, $c °C, $rpm rpm', ({ shaft, hub, bore, joint, outside, um, c, rpm }) => {
  const omega = (rpm * 2 * Math.PI) / 60;
  const part = (from: number, to: number, { E, nu, density }: (typeof materials)[number]): Part => ({ from: from / 2, to: to / 2, E, nu, spin: density * omega * omega * 1e-12 });
  const warm = (joint / 2) * (c - 20) * (shaft.alpha - hub.alpha);
  const expected = solved(part(bore, joint, shaft), part(joint, outside, hub), um / 2000 + warm);
  const stated = ({ E, nu, alpha, density }: (typeof materials)[number]) => ({ youngsModulusGpa: E / 1000, poissonRatio: nu, expansionPerK: alpha, densityKgPerM3: density });
  const found = pressJoint.run({ jointDiameterMm: joint, shaftBoreMm: bore, hubOutsideMm: outside, lengthMm: 20, interferenceUm: um, shaft: stated(shaft), hub: stated(hub), temperatureC: c, speedRpm: rpm });
  expect(found.contactPressureMpa / expected.pressure).toBeCloseTo(1, 7);
  expect(found.hubHoopStressMpa / expected.hubHoop).toBeCloseTo(1, 7);
  expect(found.hubOutsideGrowthUm / expected.outsideGrowth).toBeCloseTo(1, 7);
});
