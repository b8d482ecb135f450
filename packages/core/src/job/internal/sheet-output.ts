import * as z from 'zod/mini';
import { bearingFitting, bearingRemoval, bearingSeat, ratingLife } from '../../bearing/index.js';
import { bearingDriver, driverSearch, extractionPlan, seatingPlan } from '../../handwork/index.js';
import { candourFields, findingField, outputNumber, planStepField, sourceField, verdictField } from '../../result/index.js';
import { sealCheck } from '../../seal/index.js';

const plain = (label: string) => z.string().check(z.meta({ label, unit: '' }));
const maybeNumber = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const sealOutcomeField = z.strictObject({
  kind: z.literal('seal'),
  name: plain('part'),
  path: plain('where it stands in the file'),
  situation: z.unknown(),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  check: z.nullable(sealCheck.output),
  extraction: z.nullable(extractionPlan.output),
  driver: z.nullable(driverSearch.output),
  seating: z.nullable(seatingPlan.output),
});

const bearingOutcomeField = z.strictObject({
  kind: z.literal('bearing'),
  name: plain('part'),
  path: plain('where it stands in the file'),
  situation: z.unknown(),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  seat: z.nullable(bearingSeat.output),
  fitting: z.nullable(bearingFitting.output),
  removal: z.nullable(bearingRemoval.output),
  life: z.nullable(ratingLife.output),
  driver: z.nullable(bearingDriver.output),
});

/** A job sheet as data. */
export const jobSheetField = z.strictObject({
  machine: plain('machine'),
  position: plain('position'),
  verdict: verdictField,
  parts: z.readonly(z.array(z.discriminatedUnion('kind', [sealOutcomeField, bearingOutcomeField]))),
  fileFindings: z.readonly(z.array(findingField)),
  /** Path of the deciding reading to take next; null when none is missing. */
  nextReading: z.nullable(plain('reading to take next')),
  blocks: z.strictObject({
    takeOut: z.readonly(z.array(planStepField)),
    putIn: z.readonly(z.array(planStepField)),
    prove: z.readonly(z.array(planStepField)),
  }),
  due: z.strictObject({
    intervalHours: maybeNumber('service interval', 'h'),
    intervalDays: maybeNumber('service interval by the calendar', 'days'),
    intervalFrom: z.enum(['position', 'machine', 'lip travel', 'common practice', 'not known']).check(z.meta({ label: 'where the interval comes from', unit: '' })),
    source: sourceField,
    dueAtHours: maybeNumber('hour meter when due again', 'h'),
    sinceLastHours: maybeNumber('hours since the last renewal on record', 'h'),
    remainingHours: maybeNumber('hours until the present part is due', 'h'),
    remainingDays: maybeNumber('days until the present part is due', 'days'),
    dueDate: z.nullable(plain('day when due again')),
    lipTravelKm: maybeNumber('lip travel in one interval', 'km'),
    lipTravelSinceLastKm: maybeNumber('lip travel since the last renewal', 'km'),
  }),
  sources: z.readonly(z.array(z.strictObject({ id: plain('source'), designation: plain('designation'), title: plain('title'), held: plain('how it is held'), clauses: plain('clauses') }))),
  /** What it was computed with: another edition of the tables may tell another story. */
  libraryVersion: plain('version of the library'),
  tablesEdition: plain('edition of the tables'),
  ...candourFields,
});

export type JobSheetOutput = z.infer<typeof jobSheetField>;
export type SealOutcome = z.infer<typeof sealOutcomeField>;
export type BearingOutcome = z.infer<typeof bearingOutcomeField>;
