import { pressJoint } from '@seatwright/core/joint';

/** MPa in one psi. */
export const psi = 6.894757293168e-3;

export const steelOf = (youngsModulusGpa: number, poissonRatio: number, expansionPerK = 1.17e-5) => ({ youngsModulusGpa, poissonRatio, expansionPerK });

/** Nothing that yields or grows: what books call a rigid wheel. */
export const rigid = steelOf(1000, 0, 0);

/** Two cylinders of one steel by their diameters [mm] and diametral interference [µm]. */
export const oneSteel = (shaftBoreMm: number, jointDiameterMm: number, hubOutsideMm: number, interferenceUm: number, steel = steelOf(200, 0.3)) =>
  pressJoint.run({ jointDiameterMm, shaftBoreMm, hubOutsideMm, lengthMm: 10, interferenceUm, shaft: steel, hub: steel });
