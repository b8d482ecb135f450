import type { Ring } from './thick-ring.js';

/** A hub whose bore has begun to flow. */
export interface PlasticHub {
  readonly contactPressureMpa: number;
  /** Diameter up to which the hub flows. */
  readonly plasticDiameterMm: number;
  readonly isFullyPlastic: boolean;
}

/** Pressure at which the bore of a hub first flows (Tresca).  p = Re·(1 − Q²)/2 with Q = d/D */
export function firstFlowPressureMpa({ insideMm, outsideMm }: Ring, yieldMpa: number): number {
  return (yieldMpa * (1 - (insideMm / outsideMm) ** 2)) / 2;
}

/**
 * Elastic, perfectly plastic hub in plane stress by Tresca: pressure and interference with the flow reaching to the diameter c.
 *   p = Re·[ln(c/d) + (1 − (c/D)²)/2];  U = d·[Re·(c/d)²/Eo − (1 − νo)·p/Eo] + shaft
 * Holds while the hoop stress at the bore is not below zero, p ≤ Re: to D/d = e if the flow goes right through.
 * @source din-7190-2001, elastic-plastic press fits; timoshenko-strength-2 (held as: memory)
 */
function plasticPressureMpa({ insideMm: d, outsideMm: D }: Ring, yieldMpa: number, c: number): number {
  return yieldMpa * (Math.log(c / d) + (1 - (c / D) ** 2) / 2);
}

/** Interference [mm] that the flow to the diameter c takes up; `shaftByOuter`: growth of the shaft for each MPa, negative. */
function plasticInterferenceMm(hub: Ring, yieldMpa: number, shaftByOuter: number, c: number): number {
  const { insideMm: d, youngsMpa: E, poissonRatio: nu } = hub;
  const p = plasticPressureMpa(hub, yieldMpa, c);
  return d * ((yieldMpa * (c / d) ** 2) / E - ((1 - nu) * p) / E) - shaftByOuter * p;
}

/** Largest diameter to which the solution may be taken: the outside, or where the pressure would pass the yield strength. */
function reachOf(hub: Ring, yieldMpa: number): number {
  if (plasticPressureMpa(hub, yieldMpa, hub.outsideMm) <= yieldMpa) return hub.outsideMm;
  return bisect(hub.insideMm, hub.outsideMm, (c) => plasticPressureMpa(hub, yieldMpa, c) - yieldMpa);
}

/** The state under an interference [mm]; null while the hub is elastic or beyond what the solution covers. */
export function plasticHub(hub: Ring, yieldMpa: number, shaftByOuter: number, interferenceMm: number): PlasticHub | null {
  const taken = (c: number) => plasticInterferenceMm(hub, yieldMpa, shaftByOuter, c) - interferenceMm;
  if (taken(hub.insideMm) >= 0) return null;
  const reach = reachOf(hub, yieldMpa);
  if (taken(reach) <= 0) {
    if (reach < hub.outsideMm) return null;
    return { contactPressureMpa: plasticPressureMpa(hub, yieldMpa, reach), plasticDiameterMm: reach, isFullyPlastic: true };
  }
  const c = bisect(hub.insideMm, reach, taken);
  return { contactPressureMpa: plasticPressureMpa(hub, yieldMpa, c), plasticDiameterMm: c, isFullyPlastic: false };
}

/** Root of a rising function between two ends. */
function bisect(from: number, to: number, value: (x: number) => number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i += 1) {
    const middle = (low + high) / 2;
    if (value(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
