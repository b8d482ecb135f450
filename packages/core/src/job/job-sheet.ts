import * as z from 'zod/mini';
import { bearingFitting, bearingRemoval, bearingSeat, ratingLife } from '../bearing/index.js';
import { bearingDriver, driverSearch, extractionPlan, seatingPlan } from '../handwork/index.js';
import { CalculationError, candourFields, commonPractice, deciding, defineCalculation, findingField, outputNumber, planStep, planStepField, plainGeometry, sourceField, supporting, textField, verdictField, verdictOf, worseVerdict, type Assumption, type Finding, type PlanStep, type Verdict, type WorkingStep } from '../result/index.js';
import { sealCheck, type Situation } from '../seal/index.js';
import { sources as sourceTable } from '../tables/generated/sources.js';
import { dateField } from './calendar-day.js';
import { findPosition } from './find-position.js';
import { nextDue } from './next-due.js';
import { bearingWorking, judgeBearing } from './internal/bearing-outcome.js';
import { betweenSeals } from './internal/several-seals.js';
import { remediesOf } from './internal/remedies.js';
import { readWorkshop } from './read-workshop-file.js';
import { serviceRecord } from './service-record.js';
import { situationOf } from './situation-of.js';
import type { BearingPart, Machine, Position, SealPart, WorkshopFile } from './workshop-file-field.js';

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
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  seat: z.nullable(bearingSeat.output),
  fitting: z.nullable(bearingFitting.output),
  removal: z.nullable(bearingRemoval.output),
  life: z.nullable(ratingLife.output),
  driver: z.nullable(bearingDriver.output),
});

const outputField = z.strictObject({
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
    intervalFrom: z.enum(['position', 'machine', 'lip travel', 'common practice', 'not known']).check(z.meta({ label: 'where the interval comes from', unit: '' })),
    source: sourceField,
    dueAtHours: maybeNumber('hour meter when due again', 'h'),
    sinceLastHours: maybeNumber('hours since the last renewal on record', 'h'),
    remainingHours: maybeNumber('hours until the present part is due', 'h'),
    dueDate: z.nullable(plain('day when due again')),
    lipTravelKm: maybeNumber('lip travel in one interval', 'km'),
    lipTravelSinceLastKm: maybeNumber('lip travel since the last renewal', 'km'),
  }),
  sources: z.readonly(z.array(z.strictObject({ id: plain('source'), title: plain('title'), held: plain('how it is held'), clauses: plain('clauses') }))),
  ...candourFields,
});

export type JobSheetOutput = z.infer<typeof outputField>;
export type SealOutcome = z.infer<typeof sealOutcomeField>;
export type BearingOutcome = z.infer<typeof bearingOutcomeField>;

/** Everything for one position, as one ordered job sheet.
 * @returns verdict, parts with check and plans, the work in order, next due, assumptions, what was not checked, sources
 * @throws CalculationError invalid-input (file, or no such position); a size outside a table becomes a finding instead
 */
export const jobSheet = defineCalculation({
  name: 'job',
  summary: 'Everything for one position as an ordered job sheet: does it suit, take out, put in, when next',
  input: z.strictObject({
    workshop: z.unknown().check(z.meta({ label: 'workshop file', unit: '', help: 'a JSON object with "format": "seatwright"; its schema is `seatwright schema workshop-file`' })),
    machine: z.optional(textField({ label: 'name of the machine' })),
    position: z.optional(textField({ label: 'name of the position' })),
    asOfDate: z.optional(dateField({ label: 'day of the work' })),
  }),
  output: outputField,
  compute(input): JobSheetOutput {
    const { workshop, unknownFields } = readWorkshop(input.workshop);
    const { machine, position, path } = findPosition(workshop, input);
    const parts = position.parts.map((part, i) =>
      part.kind === 'seal' ? sealOutcome(workshop, position, part, `${path}.parts[${i}]`) : bearingOutcome(workshop, machine, position, part, `${path}.parts[${i}]`),
    );
    const seals = parts.filter((part) => part.kind === 'seal');
    const speed = seals.find((seal) => seal.check?.peripheralSpeedMps != null)?.check?.peripheralSpeedMps ?? null;
    const due = nextDue(machine, position, speed, input.asOfDate);
    const record = growthOnRecord({ workshop: input.workshop, machine: machine.name, position: position.name });
    const fileFindings = [
      ...(unknownFields.length === 0 ? [] : [supporting('unknown-fields', 'note', { fields: unknownFields.slice(0, 10).join(', '), fieldCount: unknownFields.length }, commonPractice)]),
      ...record,
    ];
    const bearings = parts.filter((part) => part.kind === 'bearing');
    const outputs = [
      ...seals.flatMap((seal) => [seal.check, seal.extraction, seal.driver, seal.seating]),
      ...bearings.flatMap((bearing) => [bearing.seat, bearing.fitting, bearing.removal, bearing.life, bearing.driver]),
    ].filter((output) => output !== null);
    const notChecked = [...new Set([...outputs.flatMap((output) => output.notChecked), ...(due.intervalHours === null ? ['service-interval'] : []), ...(record.some(({ code }) => forecasts.includes(code)) ? ['wear-goes-on-as-before'] : [])])];
    const blocks = {
      // Seals out before any heat; bearings in, and cold again, before the seals.
      takeOut: [...seals.flatMap((seal) => [...(seal.extraction?.steps ?? [])]), ...bearings.flatMap((bearing) => [...(bearing.removal?.steps ?? [])])],
      putIn: [...[...bearings].reverse().flatMap((bearing) => [...(bearing.fitting?.steps ?? [])]), ...[...seals].reverse().flatMap((seal) => [...(seal.seating?.steps ?? [])])],
      prove: proveSteps(due.dueAtHours),
    };
    const between = betweenSeals(seals);
    const findings = [...parts.flatMap((part) => part.findings), ...between, ...fileFindings];
    return {
      machine: machine.name,
      position: position.name,
      verdict: parts.reduce<Verdict>((worst, part) => worseVerdict(worst, part.verdict), verdictOf(between)),
      parts,
      fileFindings: [...between, ...fileFindings],
      nextReading: findings.find((finding) => finding.severity === 'unknown' && finding.missing !== undefined)?.missing ?? null,
      blocks,
      due,
      sources: sourcesOf(findings, Object.values(blocks).flat(), outputs.flatMap((output) => output.assumptions)),
      assumptions: unique(outputs.flatMap((output) => output.assumptions)),
      notChecked,
    };
  },
  explain(input, output) {
    const { workshop } = readWorkshop(input.workshop);
    const { position } = findPosition(workshop, { machine: output.machine, position: output.position });
    return position.parts.flatMap((part) => (part.kind === 'seal' ? sealWorking(situationOf(workshop, position, part), workshop) : bearingWorking(workshop, position, part, attempt)));
  },
});

function sealWorking(situation: Situation, workshop: WorkshopFile): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  const withTools = workshop.toolsAtHand === undefined ? situation : { ...situation, toolsAtHand: workshop.toolsAtHand };
  const add = <I, O>(calculation: { compute(input: I): O; explain(input: I, output: O): readonly WorkingStep[] }, input: I) => {
    const output = attempt(() => calculation.compute(input));
    if ('value' in output) steps.push(...calculation.explain(input, output.value));
  };
  add(sealCheck, situation);
  add(extractionPlan, situation);
  add(driverSearch, withTools);
  add(seatingPlan, situation);
  return steps;
}

function sealOutcome(workshop: WorkshopFile, position: Position, part: SealPart, path: string): SealOutcome {
  const situation = situationOf(workshop, position, part);
  const errors: Finding[] = [];
  const tried = <T>(what: string, compute: () => T): T | null => {
    const result = attempt(compute);
    if ('value' in result) return result.value;
    if (!errors.some((finding) => finding.parameters['reason'] === result.error.message)) {
      errors.push(deciding('could-not-compute', 'unknown', { what, reason: result.error.message }, plainGeometry));
    }
    return null;
  };
  const check = tried('seal-check', () => sealCheck.compute(situation));
  const extraction = tried('extraction-plan', () => extractionPlan.compute(situation));
  const driver = tried('driver-search', () => driverSearch.compute(workshop.toolsAtHand === undefined ? situation : { ...situation, toolsAtHand: workshop.toolsAtHand }));
  const seating = tried('seating-plan', () => seatingPlan.compute(situation));
  // Where the new seal would end belongs to the question whether it suits; how it is got there does not.
  const ofPlace = (seating?.findings ?? []).filter(({ role, severity }) => role === 'deciding' && (severity === 'care' || severity === 'bad'));
  const remedies = check === null ? [] : remediesOf(situation, check, attempt);
  const findings = [...(check?.findings ?? []), ...ofPlace, ...remedies, ...errors];
  return { kind: 'seal', name: part.name ?? `${part.shaftMm} × ${part.outsideMm} × ${part.widthMm}`, path, situation, verdict: verdictOf(findings), findings, check, extraction, driver, seating };
}

function bearingOutcome(workshop: WorkshopFile, machine: Machine, position: Position, part: BearingPart, path: string): BearingOutcome {
  return { kind: 'bearing', name: part.name ?? part.designation ?? 'bearing', path, ...judgeBearing(workshop, machine, position, part, attempt) };
}

function attempt<T>(compute: () => T): { readonly value: T } | { readonly error: CalculationError } {
  try {
    return { value: compute() };
  } catch (error) {
    if (error instanceof CalculationError) return { error };
    throw error;
  }
}

/** Findings that look ahead: they hold only while the wear goes on as before. */
const forecasts: readonly string[] = ['bore-lasts', 'bore-may-leave-limit', 'bore-leaves-limit'];

/** What the record says of the bore, or why it could not be read; how long it is overdue stands with the next due date. */
function growthOnRecord(input: { readonly workshop: unknown; readonly machine: string; readonly position: string }): readonly Finding[] {
  const record = attempt(() => serviceRecord.compute(input));
  if ('error' in record) return [supporting('could-not-compute', 'unknown', { what: 'service-record', reason: record.error.message }, plainGeometry)];
  return record.value.findings.filter(({ code }) => code.startsWith('bore-') || code === 'hour-meter-behind-record');
}

function proveSteps(dueAtHours: number | null): readonly PlanStep[] {
  return [
    planStep('prove-turn-by-hand', {}, commonPractice, ['spinning-parts']),
    planStep('prove-run-warm', {}, commonPractice, ['hot-parts', 'spinning-parts']),
    planStep('prove-write-down', dueAtHours === null ? {} : { dueAtHours }, commonPractice),
  ];
}

function unique(assumptions: readonly Assumption[]): readonly Assumption[] {
  const seen = new Set<string>();
  return assumptions.filter(({ name, value, upToValue }) => {
    const key = `${name} ${value} ${upToValue ?? ''}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function sourcesOf(findings: readonly Finding[], steps: readonly PlanStep[], assumptions: readonly Assumption[]): JobSheetOutput['sources'] {
  const used = new Map<string, { held: string; clauses: Set<string> }>();
  for (const { source } of [...findings, ...steps, ...assumptions]) {
    const entry = used.get(source.id) ?? { held: source.held, clauses: new Set<string>() };
    if (source.clause !== undefined) entry.clauses.add(source.clause);
    if (source.held === 'memory') entry.held = 'memory';
    used.set(source.id, entry);
  }
  return [...used].map(([id, { held, clauses }]) => ({ id, title: sourceTable[id]?.title ?? id, held, clauses: [...clauses].join('; ') }));
}
