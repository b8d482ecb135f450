import * as z from 'zod/mini';
import { textField } from '../../result/index.js';
import { dateField } from '../calendar-day.js';

/** What a job sheet is asked with. */
export const sheetQuestionField = z.strictObject({
  workshop: z.unknown().check(z.meta({ label: 'workshop file', unit: '', help: 'a JSON object with "format": "seatwright"; its schema is `seatwright schema workshop-file`' })),
  machine: z.optional(textField({ label: 'name of the machine' })),
  position: z.optional(textField({ label: 'name of the position' })),
  asOfDate: z.optional(dateField({ label: 'day of the work' })),
});

export type SheetQuestion = z.infer<typeof sheetQuestionField>;
