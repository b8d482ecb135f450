import * as z from 'zod/mini';
import { bearingFittingShape } from '../bearing/index.js';
import { toolField } from '../handwork/index.js';
import { instrumentField, readingsField } from '../measure/index.js';
import { materialField } from '../material/index.js';
import { forceField, hoursField, lengthField } from '../quantity/index.js';
import { choiceField, numberField, textField, wholeNumberField, yesNoField } from '../result/index.js';
import { boreField, requirementSetField, runningField, sealShape, seatField, shaftField, situationShape, wearTrackField } from '../seal/index.js';
import { dateField } from './calendar-day.js';

const noteField = z.optional(textField({ label: 'note', longest: 4000 }));

/** A seal as one part of a position: its sizes and make, and what it has of its own where seals share a bore. */
export const sealPartField = z.strictObject({
  kind: z.literal('seal').check(z.meta({ label: 'kind of part', unit: '' })),
  name: z.optional(textField({ label: 'name of the part' })),
  ...sealShape,
  seat: z.optional(seatField),
  lipFacing: situationShape.lipFacing,
  /** Where seals share a bore: the fluid that this one keeps, and how it runs where that differs from the position. */
  fluidSide: situationShape.fluidSide,
  running: z.optional(runningField),
  oldDepthMm: situationShape.oldDepthMm,
  clearBehindMm: situationShape.clearBehindMm,
  note: noteField,
});

/** A bearing as one part of a position: its sizes, both seats, load, and what limits heat and pull. */
export const bearingPartField = z.strictObject({
  kind: z.literal('bearing').check(z.meta({ label: 'kind of part', unit: '' })),
  name: z.optional(textField({ label: 'name of the part' })),
  designation: z.optional(textField({ label: 'designation on the ring' })),
  boreMm: z.optional(lengthField({ label: 'bore of the bearing', unit: 'mm', over: 0, upTo: 500 })),
  outsideMm: z.optional(lengthField({ label: 'outside diameter of the bearing', unit: 'mm', over: 0, upTo: 1000 })),
  widthMm: z.optional(lengthField({ label: 'width of the bearing', unit: 'mm', over: 0, upTo: 300 })),
  bearingKind: bearingFittingShape.bearingKind,
  bearingToleranceClass: bearingFittingShape.bearingToleranceClass,
  clearanceGroup: bearingFittingShape.clearanceGroup,
  shaftClass: bearingFittingShape.shaftClass,
  shaftReadings: bearingFittingShape.shaftReadings,
  housingClass: bearingFittingShape.housingClass,
  housingReadings: bearingFittingShape.housingReadings,
  shaftMaterial: z.optional(textField({ label: 'shaft material', help: 'where it is not that of the shaft of the position', typical: 'steel-c45' })),
  housingMaterial: z.optional(textField({ label: 'housing material', help: 'where it is not that of the bore of the position', typical: 'al-a380' })),
  shaftBoreMm: bearingFittingShape.shaftBoreMm,
  housingOutsideMm: bearingFittingShape.housingOutsideMm,
  seatFinish: bearingFittingShape.seatFinish,
  innerRingLoad: bearingFittingShape.innerRingLoad,
  outerRingLoad: bearingFittingShape.outerRingLoad,
  outerRingHeldBy: bearingFittingShape.outerRingHeldBy,
  radialLoadN: bearingFittingShape.radialLoadN,
  basicDynamicLoadRatingN: z.optional(forceField({ label: 'basic dynamic load rating C, as the maker gives it', unit: 'N', over: 0, upTo: 100_000_000 })),
  basicStaticLoadRatingN: bearingFittingShape.basicStaticLoadRatingN,
  isSealedOrGreased: bearingFittingShape.isSealedOrGreased,
  hasPolymerCage: bearingFittingShape.hasPolymerCage,
  slipInGapUm: bearingFittingShape.slipInGapUm,
  caseLimitC: bearingFittingShape.caseLimitC,
  coldestPartC: bearingFittingShape.coldestPartC,
  bearingSpacingMm: bearingFittingShape.bearingSpacingMm,
  isBlindBore: z.optional(yesNoField({ label: 'the bore is blind: nothing reaches behind the bearing' })),
  mustBeReused: z.optional(yesNoField({ label: 'the bearing is to be used again' })),
  note: noteField,
});

/** One renewal in the past, with what was measured then. Written once, never changed. */
export const changeField = z.strictObject({
  date: dateField({ label: 'date of the change' }),
  hourMeterHours: z.optional(hoursField({ label: 'hour meter at the change', unit: 'h', from: 0, upTo: 1_000_000 })),
  renewed: choiceField(['seal', 'bearing', 'seal and bearing'], { label: 'what was renewed' }),
  boreReadings: z.optional(z.array(readingsField).check(z.maxLength(20))),
  shaftReadings: z.optional(z.array(readingsField).check(z.maxLength(20))),
  found: z.optional(choiceField(['dry', 'damp', 'leaking'], { label: 'the old seal as it was found' })),
  fitted: z.optional(textField({ label: 'what was fitted: sizes, construction, material' })),
  oldDepthMm: z.optional(z.array(lengthField({ label: 'depth of the old seal below the face', unit: 'mm', from: -50, upTo: 500 })).check(z.maxLength(12))),
  depthMm: z.optional(z.array(lengthField({ label: 'depth of the new seal below the face', unit: 'mm', from: -50, upTo: 500 })).check(z.maxLength(12))),
  note: noteField,
});

const positionField = z.strictObject({
  name: textField({ label: 'name of the position' }),
  onShaft: z.optional(textField({ label: 'shaft that it sits on, where the machine has several' })),
  shaft: z.optional(shaftField),
  bore: z.optional(boreField),
  parts: z.array(z.discriminatedUnion('kind', [sealPartField, bearingPartField])).check(z.minLength(1), z.maxLength(20)),
  running: z.optional(runningField),
  seat: z.optional(seatField),
  wearTrack: z.optional(wearTrackField),
  lipFacing: situationShape.lipFacing,
  fluidSide: situationShape.fluidSide,
  rotation: situationShape.rotation,
  retainedBy: situationShape.retainedBy,
  reachableFrom: situationShape.reachableFrom,
  oldDepthMm: situationShape.oldDepthMm,
  clearBehindMm: situationShape.clearBehindMm,
  behind: situationShape.behind,
  serviceIntervalHours: z.optional(hoursField({ label: 'service interval of this position', unit: 'h', over: 0, upTo: 100_000 })),
  serviceIntervalDays: z.optional(wholeNumberField({ label: 'longest time between renewals of this position', unit: 'days', from: 1, upTo: 36_525 })),
  serviceLipTravelKm: z.optional(numberField({ label: 'longest lip travel between renewals of this position', unit: 'km', over: 0, upTo: 10_000_000 })),
  changes: z.optional(z.array(changeField).check(z.maxLength(1000))),
  note: noteField,
});

const machineField = z.strictObject({
  name: textField({ label: 'name of the machine' }),
  kind: z.optional(choiceField(['small two-stroke', 'four-stroke engine', 'gearbox', 'pump', 'winch', 'other'], { label: 'kind of machine' })),
  hourMeterHours: z.optional(hoursField({ label: 'hour meter now', unit: 'h', from: 0, upTo: 1_000_000 })),
  serviceIntervalHours: z.optional(hoursField({ label: 'service interval of the machine', unit: 'h', over: 0, upTo: 100_000 })),
  serviceIntervalDays: z.optional(wholeNumberField({ label: 'longest time between renewals on the machine', unit: 'days', from: 1, upTo: 36_525 })),
  positions: z.array(positionField).check(z.maxLength(200)),
  note: noteField,
});

/** The workshop file, version 1: one job, a whole workshop, or its backup. */
export const workshopFileField = z.strictObject({
  format: z.literal('seatwright').check(z.meta({ label: 'format', unit: '' })),
  version: z.literal(1).check(z.meta({ label: 'version of the format', unit: '' })),
  name: z.optional(textField({ label: 'name of the workshop' })),
  lengthUnit: z.optional(choiceField(['mm', 'in'], { label: 'unit that lengths are written in' })),
  requirementSet: z.optional(requirementSetField),
  instruments: z.optional(z.array(instrumentField).check(z.maxLength(200))),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
  toolsAtHand: z.optional(z.array(toolField).check(z.maxLength(1000))),
  machines: z.array(machineField).check(z.minLength(1), z.maxLength(1000)),
  note: noteField,
});

export type WorkshopFile = z.infer<typeof workshopFileField>;
export type Machine = WorkshopFile['machines'][number];
export type Position = Machine['positions'][number];
export type SealPart = z.infer<typeof sealPartField>;
export type BearingPart = z.infer<typeof bearingPartField>;
export type Change = z.infer<typeof changeField>;
