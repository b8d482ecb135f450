/** A plain ring; inside 0 is a solid cylinder. Diameters in mm, modulus in MPa. */
export interface Ring {
  readonly insideMm: number;
  readonly outsideMm: number;
  readonly youngsMpa: number;
  readonly poissonRatio: number;
}

/** Growth of a diameter [mm] for each MPa on a face. */
export interface RingCompliance {
  readonly insideByInner: number;
  readonly insideByOuter: number;
  readonly outsideByInner: number;
  readonly outsideByOuter: number;
}

/**
 * Elastic growth of a thick ring in plane stress (Lamé).  u = [(1 − ν)·A·r + (1 + ν)·B/r]/E
 * A solid cylinder has no inner face: its first three terms are zero.
 * @source timoshenko-strength-2, thick-walled cylinders (held as: memory)
 * @example ringCompliance({ insideMm: 0, outsideMm: 40, youngsMpa: 200000, poissonRatio: 0.3 }).outsideByOuter.toFixed(6) // '-0.000140'
 */
export function ringCompliance({ insideMm: d, outsideMm: D, youngsMpa: E, poissonRatio: nu }: Ring): RingCompliance {
  if (d === 0) return { insideByInner: 0, insideByOuter: 0, outsideByInner: 0, outsideByOuter: (-D * (1 - nu)) / E };
  const net = E * (D * D - d * d);
  return {
    insideByInner: (d * ((1 - nu) * d * d + (1 + nu) * D * D)) / net,
    insideByOuter: (-2 * d * D * D) / net,
    outsideByInner: (2 * d * d * D) / net,
    outsideByOuter: (-D * ((1 - nu) * D * D + (1 + nu) * d * d)) / net,
  };
}

/** Hoop and radial stress [MPa] at one diameter; tension positive. */
export interface StressState {
  readonly hoopMpa: number;
  readonly radialMpa: number;
}

/** Stress in a ring under an inner and an outer pressure at a diameter; a solid cylinder bears the outer pressure alone. */
export function ringStress({ insideMm: d, outsideMm: D }: Ring, innerMpa: number, outerMpa: number, atMm: number): StressState {
  if (d === 0) return { hoopMpa: -outerMpa, radialMpa: -outerMpa };
  const net = D * D - d * d;
  const a = (innerMpa * d * d - outerMpa * D * D) / net;
  const b = ((innerMpa - outerMpa) * d * d * D * D) / net / (atMm * atMm);
  return { hoopMpa: a + b, radialMpa: a - b };
}

/** Added stresses; a ring under fit and rotation bears both. */
export function together(one: StressState, other: StressState): StressState {
  return { hoopMpa: one.hoopMpa + other.hoopMpa, radialMpa: one.radialMpa + other.radialMpa };
}

/** Equivalent stress of von Mises in plane stress.  √(σt² − σt·σr + σr²) */
export function vonMises({ hoopMpa: t, radialMpa: r }: StressState): number {
  return Math.sqrt(Math.max(0, t * t - t * r + r * r));
}

/** Equivalent stress of Tresca in plane stress: the largest difference of σt, σr and nothing. */
export function tresca({ hoopMpa: t, radialMpa: r }: StressState): number {
  return Math.max(Math.abs(t - r), Math.abs(t), Math.abs(r));
}
