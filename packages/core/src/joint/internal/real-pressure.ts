import type { JointState } from './joint-state.js';
import { plasticHub } from './plastic-hub.js';

/** The pressure that is really there: of the flowing hub once it flows, else elastic. */
export function realPressureMpa({ hub, hubMaterial, hubSpin, shaftSpin, shaftCompliance, effectiveUm, contactPressureMpa }: JointState): number {
  if (hubMaterial.yieldMpa === null || hubSpin > 0 || shaftSpin > 0) return contactPressureMpa;
  return plasticHub(hub, hubMaterial.yieldMpa, shaftCompliance.outsideByOuter, effectiveUm / 1000)?.contactPressureMpa ?? contactPressureMpa;
}
