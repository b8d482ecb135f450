import type * as z from 'zod/mini';
import { commonPractice, libraryVersion, planStep, plainGeometry, supporting, tablesEdition, verdictOf, worseVerdict, type Assumption, type Finding, type PlanStep, type Verdict } from '../../result/index.js';
import { sourceDesignations, sourceTitles } from '../../tables/generated/source-titles.js';
import { findPosition, type FoundPosition } from '../find-position.js';
import { nextDue } from '../next-due.js';
import { readWorkshop } from '../read-workshop-file.js';
import { recordOf } from '../service-record.js';
import { sealsInOrder } from '../situation-of.js';
import type { BearingPart, Machine, Position, WorkshopFile } from '../workshop-file-field.js';
import { attempt } from './attempt.js';
import type { InSteps } from './in-steps.js';
import { sealOutcome, type Remedies } from './seal-outcome.js';
import { betweenSeals } from './several-seals.js';
import type { BearingOutcome, JobSheetOutput, SealOutcome } from './sheet-output.js';
import { putInSteps, takeOutSteps } from './steps-of-seals.js';
import type { sheetQuestionField } from './sheet-question-field.js';

/** Who is asked for what not every sheet needs: handed in, so that a page with seals alone need not fetch it. */
export interface Experts {
  readonly bearing: (workshop: WorkshopFile, machine: Machine, position: Position, part: BearingPart, path: string) => InSteps<BearingOutcome>;
  readonly remedies: Remedies;
}

/** One position as one ordered job sheet, in steps that each take a small part of the time. */
export function* composeSheet(input: z.infer<typeof sheetQuestionField>, experts: Experts): InSteps<JobSheetOutput> {
  const { workshop, unknownFields: unknownInFile } = readWorkshop(input.workshop);
  const found = findPosition(workshop, input);
  const { machine, position, path } = found;
  const unknownFields = unknownInFile.filter((field) => !isOfAnotherPlace(field, path));
  const parts: (SealOutcome | BearingOutcome)[] = [];
  for (const [i, part] of position.parts.entries()) {
    yield;
    parts.push(part.kind === 'seal' ? yield* sealOutcome(workshop, position, part, `${path}.parts[${i}]`, experts.remedies) : yield* experts.bearing(workshop, machine, position, part, `${path}.parts[${i}]`));
  }
  yield;
  const order = sealsInOrder(workshop, position).map(({ part }) => `${path}.parts[${position.parts.indexOf(part)}]`);
  const seals = parts.filter((part) => part.kind === 'seal').sort((a, b) => order.indexOf(a.path) - order.indexOf(b.path));
  const speed = seals.find((seal) => seal.check?.peripheralSpeedMps != null)?.check?.peripheralSpeedMps ?? null;
  const due = nextDue(machine, position, speed, input.asOfDate);
  const record = growthOnRecord(workshop, found, input.asOfDate);
  const fileFindings = [
    ...(unknownFields.length === 0 ? [] : [supporting('unknown-fields', 'note', { fields: unknownFields.slice(0, 10).join(', '), fieldCount: unknownFields.length }, commonPractice)]),
    ...record,
  ];
  const bearings = parts.filter((part) => part.kind === 'bearing');
  const outputs = [
    ...seals.flatMap((seal) => [seal.check, seal.extraction, seal.driver, seal.seating]),
    ...bearings.flatMap((bearing) => [bearing.seat, bearing.fitting, bearing.removal, bearing.life, bearing.driver]),
  ].filter((output) => output !== null);
  const notChecked = [...new Set([...outputs.flatMap((output) => output.notChecked), ...(due.intervalHours === null && due.intervalDays === null ? ['service-interval'] : []), ...(record.some(({ code }) => forecasts.includes(code)) ? ['wear-goes-on-as-before'] : [])])];
  const blocks = {
    // Seals out before any heat; bearings in, and cold again, before the seals.
    takeOut: [...takeOutSteps(seals), ...bearings.flatMap((bearing) => [...(bearing.removal?.steps ?? [])])],
    putIn: [...[...bearings].reverse().flatMap((bearing) => [...(bearing.fitting?.steps ?? [])]), ...putInSteps(seals)],
    prove: proveSteps(due.dueAtHours, seals.length > 0),
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
    libraryVersion,
    tablesEdition,
  };
}

/** Whether a field of the file belongs to another machine or position than the one on the sheet. */
function isOfAnotherPlace(field: string, path: string): boolean {
  const place = /^machines\[\d+\](\.positions\[\d+\])?/.exec(field)?.[0];
  return place !== undefined && place !== path && !path.startsWith(`${place}.`);
}

/** Findings that look ahead: they hold only while the wear goes on as before. */
const forecasts: readonly string[] = ['bore-lasts', 'bore-may-leave-limit', 'bore-leaves-limit'];

/** What the record says of the bore, or why it could not be read; how long it is overdue stands with the next due date. */
function growthOnRecord(workshop: WorkshopFile, found: FoundPosition, asOfDate: string | undefined): readonly Finding[] {
  const record = attempt(() => recordOf(workshop, found, asOfDate === undefined ? {} : { asOfDate }));
  if ('error' in record) return [supporting('could-not-compute', 'unknown', { what: 'service-record', reason: record.error.message }, plainGeometry)];
  return record.value.findings.filter(({ code }) => code.startsWith('bore-') || code.startsWith('hour-meter-') || code === 'day-before-record');
}

function proveSteps(dueAtHours: number | null, hasSeal: boolean): readonly PlanStep[] {
  return [
    planStep(hasSeal ? 'prove-turn-by-hand' : 'prove-turn-bearing', {}, commonPractice, ['spinning-parts']),
    planStep(hasSeal ? 'prove-run-warm' : 'prove-run-bearing', {}, commonPractice, ['hot-parts', 'spinning-parts']),
    planStep(hasSeal ? 'prove-write-down' : 'prove-write-down-seats', dueAtHours === null ? {} : { dueAtHours }, commonPractice),
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
  return [...used].map(([id, { held, clauses }]) => ({ id, designation: sourceDesignations[id] ?? '', title: sourceTitles[id] ?? id, held, clauses: [...clauses].join('; ') }));
}
