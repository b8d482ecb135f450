import { bearingDimensions, bearingFitting, bearingRemoval, bearingSeat, ratingLife, seatClasses, seatRepair } from './bearing/index.js';
import { bearingDriver, disputedPoints, drawInRod, driverSearch, extractionPlan, leakCheck, leakSearch, seatingPlan } from './handwork/index.js';
import { jobSheet, serviceRecord } from './job/index.js';
import { chooseFit, dismantling, joiningTemperature, pressJoint, pushForce, ringStack } from './joint/index.js';
import { materialProperties } from './material/index.js';
import { conformity, fitDistribution, measuredSizeCalculation } from './measure/index.js';
import type { AnyCalculation } from './result/index.js';
import { boreRepair, lipHeat, lipMaterialsFor, lipSpeed, sealCheck, sealSizes, shelfMatch, wearTrackRemedies } from './seal/index.js';
import { fit, fitAtTemperature, identifyClass, inchFit, toleranceZone } from './tolerance/index.js';

/** Every calculation, in the order of the work. The command line, schemas, docs and forms all come from this list. */
export const calculations: readonly AnyCalculation[] = [
  toleranceZone,
  fit,
  fitAtTemperature,
  identifyClass,
  inchFit,
  fitDistribution,
  measuredSizeCalculation,
  conformity,
  pressJoint,
  ringStack,
  joiningTemperature,
  pushForce,
  dismantling,
  chooseFit,
  materialProperties,
  seatClasses,
  bearingSeat,
  bearingFitting,
  bearingRemoval,
  bearingDriver,
  seatRepair,
  ratingLife,
  bearingDimensions,
  lipSpeed,
  lipHeat,
  sealSizes,
  sealCheck,
  shelfMatch,
  lipMaterialsFor,
  boreRepair,
  wearTrackRemedies,
  extractionPlan,
  driverSearch,
  drawInRod,
  seatingPlan,
  leakCheck,
  leakSearch,
  disputedPoints,
  jobSheet,
  serviceRecord,
];

const byName = new Map(calculations.map((calculation) => [calculation.name, calculation]));

/**
 * The calculation of that name, or undefined.
 * @example findCalculation('lip-speed').summary // 'Peripheral speed of the shaft under the seal lip, and how far the lip has slid'
 */
export function findCalculation(name: string): AnyCalculation | undefined {
  return byName.get(name);
}
