export { appendChange, type ChangePlace } from './append-change.js';
export { dateField, dateOf, dayNumberOf, type DayNumber } from './calendar-day.js';
export { findPosition, positionsOf, type FoundPosition } from './find-position.js';
export { jobSheet, type BearingOutcome, type JobSheetOutput, type SealOutcome } from './job-sheet.js';
export { nextDue, smallTwoStrokeIntervalHours, type NextDue } from './next-due.js';
export { readWorkshop, readWorkshopFile, workshopFileVersion, type ReadWorkshopFile } from './read-workshop-file.js';
export { serviceRecord, type ServiceRecordOutput } from './service-record.js';
export { situationOf } from './situation-of.js';
export { bearingPartField, workshopFileField, type BearingPart, type Change, type Machine, type Position, type SealPart, type WorkshopFile } from './workshop-file-field.js';
