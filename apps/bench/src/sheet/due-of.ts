import { readWorkshop, serviceRecord } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { fill, wordFor, writeValue } from '@seatwright/core/wording';
import { placeKey, machinePath, placesIn, positionPath, withPlaceAlone, type Place } from '../document/places.js';
import { textAt, type JsonObject } from '../document/raw-document.js';
import { withoutUnfinished } from '../document/without-unfinished.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';

/** When a position is due, in one line. */
export interface Due {
  readonly text: string;
  readonly isOverdue: boolean;
}

/** What is due of each position of a workshop file, and in how many hours. A position without an interval, or one that cannot be read yet, is not told of; it does not hold up the others. */
export function duesOf(file: JsonObject, asOfDate: string): ReadonlyMap<string, Due> {
  return new Map(placesIn(file).flatMap((place): [string, Due][] => {
    const due = dueOf(file, place, asOfDate);
    return due === null ? [] : [[placeKey(place), due]];
  }));
}

function dueOf(file: JsonObject, place: Place, asOfDate: string): Due | null {
  try {
    const workshop = withoutUnfinished(withPlaceAlone(file, place));
    const machine = textAt(file, [...machinePath(place), 'name']);
    const position = textAt(file, [...positionPath(place), 'name']);
    const { overdueHours, overdueDays, dueAtHours, dueDate } = serviceRecord.run({ workshop, machine, position, asOfDate });
    if (overdueHours !== null) return { text: `${words.due.overdue} ${hours(overdueHours)}`, isOverdue: true };
    if (overdueDays !== null) return { text: fill(words.due.overdueSince, { overDayCount: overdueDays }, sentences), isOverdue: true };
    const meterHours = readWorkshop(workshop).workshop.machines[0]?.hourMeterHours;
    const leftHours = dueAtHours === null || meterHours === undefined ? null : dueAtHours - meterHours;
    if (leftHours !== null) return { text: `${words.due.in} ${hours(leftHours)}${dueDate === null ? '' : `, ${words.due.about} ${wordFor(dueDate, sentences)}`}`, isOverdue: false };
    return dueDate === null ? null : { text: `${words.due.due} ${words.due.about} ${wordFor(dueDate, sentences)}`, isOverdue: false };
  } catch (error) {
    if (error instanceof CalculationError) return null;
    throw error;
  }
}

const hours = (value: number) => writeValue('leftHours', value);
