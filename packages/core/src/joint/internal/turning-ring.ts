import type { Ring, StressState } from './thick-ring.js';

/** ρ·ω² in MPa/mm². */
export function spinOf(densityKgPerM3: number, speedRpm: number): number {
  const omega = (speedRpm * Math.PI) / 30;
  return densityKgPerM3 * omega * omega * 1e-12;
}

/**
 * Growth of a diameter [mm] of a turning ring, plane stress.
 *   ring: u = ρω²r·(3+ν)(1−ν)/(8E)·[a² + b² + (1+ν)/(1−ν)·a²b²/r² − (1+ν)/(3+ν)·r²];  solid: u = ρω²r·(1−ν)/(8E)·[(3+ν)b² − (1+ν)r²]
 * @param spin ρ·ω² [MPa/mm²]
 * @source timoshenko-strength-2, rotating discs (held as: memory)
 */
export function turningGrowthMm({ insideMm, outsideMm, youngsMpa: E, poissonRatio: nu }: Ring, spin: number, atMm: number): number {
  const [a2, b2, r] = [(insideMm / 2) ** 2, (outsideMm / 2) ** 2, atMm / 2];
  if (insideMm === 0) return (2 * spin * r * (1 - nu) * ((3 + nu) * b2 - (1 + nu) * r * r)) / (8 * E);
  const shape = a2 + b2 + (((1 + nu) / (1 - nu)) * a2 * b2) / (r * r) - ((1 + nu) / (3 + nu)) * r * r;
  return (2 * spin * r * (3 + nu) * (1 - nu) * shape) / (8 * E);
}

/** Stress of a turning ring at a diameter, without any pressure on its faces. */
export function turningStress({ insideMm, outsideMm, poissonRatio: nu }: Ring, spin: number, atMm: number): StressState {
  const [a2, b2, r2] = [(insideMm / 2) ** 2, (outsideMm / 2) ** 2, (atMm / 2) ** 2];
  const k = (spin * (3 + nu)) / 8;
  const side = ((1 + 3 * nu) / (3 + nu)) * r2;
  if (insideMm === 0) return { hoopMpa: k * (b2 - side), radialMpa: k * (b2 - r2) };
  const bore = (a2 * b2) / r2;
  return { hoopMpa: k * (a2 + b2 + bore - side), radialMpa: k * (a2 + b2 - bore - r2) };
}
