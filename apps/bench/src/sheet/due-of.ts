import { positionsOf, readWorkshop, serviceRecord } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { english, fill, writeValue } from '@seatwright/core/wording';
import type { JsonObject } from '../document/raw-document.js';
import { withoutUnfinished } from '../document/without-unfinished.js';
import { words } from '../words.js';

/** What of a workshop file is due next, in one line; '' where nothing is, or the file cannot be read yet. */
export function dueOf(file: JsonObject, asOfDate: string): string {
  try {
    const workshop = withoutUnfinished(file);
    const all = positionsOf(readWorkshop(workshop).workshop).flatMap(({ machine, position }) => {
      const { overdueHours, overdueDays, dueAtHours, dueDate } = serviceRecord.run({ workshop, machine: machine.name, position: position.name, asOfDate });
      const name = machine.positions.length === 1 ? machine.name : `${machine.name}, ${position.name}`;
      const leftHours = dueAtHours === null || machine.hourMeterHours === undefined ? null : dueAtHours - machine.hourMeterHours;
      if (overdueHours !== null) return [{ urgency: -1e9 - overdueHours, text: `${name}: ${words.due.overdue} ${hours(overdueHours)}` }];
      if (overdueDays !== null) return [{ urgency: -1e8 - overdueDays, text: `${name}: ${fill(words.due.overdueSince, { overDayCount: overdueDays }, english)}` }];
      if (leftHours !== null) return [{ urgency: leftHours, text: `${name}: ${words.due.in} ${hours(leftHours)}${dueDate === null ? '' : `, ${words.due.about} ${dueDate}`}` }];
      return dueDate === null ? [] : [{ urgency: 1e6, text: `${name}: ${words.due.about} ${dueDate}` }];
    });
    return all.sort((a, b) => a.urgency - b.urgency)[0]?.text ?? '';
  } catch (error) {
    if (error instanceof CalculationError) return '';
    throw error;
  }
}

const hours = (value: number) => writeValue('leftHours', value);
