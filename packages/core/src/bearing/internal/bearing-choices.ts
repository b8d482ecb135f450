/** Kinds of bearing whose raceways are estimated. */
export const bearingKinds = ['deep-groove-ball', 'cylindrical-roller'] as const;
export type BearingKind = (typeof bearingKinds)[number];

/** Tolerance classes of ISO 492 that the tables hold. */
export const toleranceClasses = ['Normal', '6', '5'] as const;
export type BearingToleranceClass = (typeof toleranceClasses)[number];

/** Groups of radial clearance of ISO 5753-1. */
export const clearanceGroups = ['2', 'N', '3', '4', '5'] as const;
export type ClearanceGroup = (typeof clearanceGroups)[number];
