import type { JobSheetOutput, SealOutcome } from '../job/index.js';
import type { Assumption } from '../result/index.js';
import type { Catalogue } from './catalogue.js';
import { bearingBlocks } from './internal/bearing-blocks.js';
import { driverBlocks } from './internal/driver-blocks.js';
import { sizeBlocks } from './internal/size-blocks.js';
import type { SheetBlock, SheetDocument, SheetItem } from './sheet-document.js';
import { findingItem, heldMark, stepItem, writeFinding } from './write-finding.js';
import { plainStyle, writeValue, type WritingStyle } from './write-value.js';
import { sourceName, wordFor } from './word-for.js';

/**
 * A job sheet in the order of the work, as blocks that any writer can print.
 * @example jobSheetDocument(jobSheet.run({ workshop: { format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] } }), english)[0].text // 'Job sheet: Bilge pump, drive side'
 */
export function jobSheetDocument(output: JobSheetOutput, catalogue: Catalogue, style: WritingStyle = plainStyle): SheetDocument {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const seals = output.parts.filter((part) => part.kind === 'seal');
  const blocks: SheetBlock[] = [
    { kind: 'title', text: `${label('title')}: ${output.machine}, ${output.position}`, under: output.parts.map((part) => part.name).join('; ') },
    verdictBlock(output, catalogue, style),
  ];
  for (const seal of seals) blocks.push(...sealBlocks(seal, catalogue, style, seals.length > 1 ? seal.name : null));
  for (const part of output.parts) {
    if (part.kind === 'bearing') blocks.push(...bearingBlocks(part, catalogue, style));
  }
  if (output.fileFindings.length > 0) blocks.push({ kind: 'list', isNumbered: false, isSmall: false, items: output.fileFindings.map((finding) => findingItem(finding, catalogue, style)) });
  const nameOf = (seal: SealOutcome) => (seals.length > 1 ? seal.name : null);
  blocks.push(...planBlocks(label('takeOut'), output.blocks.takeOut, seals.map((seal) => ({ name: nameOf(seal), findings: seal.extraction?.findings ?? [] })), catalogue, style));
  for (const seal of seals) if (seal.driver !== null) blocks.push({ kind: 'heading', text: `${label('driver')}${suffixOf(nameOf(seal))}` }, ...driverBlocks(seal.driver, catalogue, style));
  blocks.push(...planBlocks(label('putIn'), output.blocks.putIn, seals.map((seal) => ({ name: nameOf(seal), findings: (seal.seating?.findings ?? []).filter((finding) => !seal.findings.includes(finding)) })), catalogue, style));
  blocks.push(...planBlocks(label('prove'), output.blocks.prove, [], catalogue, style));
  blocks.push(
    {
      kind: 'blanks',
      rows: [
        { label: label('boreNow'), count: 3 },
        { label: label('shaftNow'), count: 3 },
        ...(seals.length === 0 ? [] : [{ label: label('depthNow'), count: 4 }]),
        { label: label('hourMeter'), count: 1 },
        { label: label('signing'), count: 2 },
      ],
    },
    { kind: 'heading', text: label('due') },
    { kind: 'paragraph', text: dueText(output, catalogue, style), isSmall: false },
    ...smallPrint(output, catalogue, style),
  );
  return blocks;
}

function verdictBlock(output: JobSheetOutput, catalogue: Catalogue, style: WritingStyle): SheetBlock {
  const decisive = output.parts.flatMap((part) => part.findings).filter((finding) => finding.severity === 'bad' || finding.severity === 'unknown' || finding.severity === 'care');
  const deciding = decisive.filter((finding) => finding.role === 'deciding');
  const because = [...new Set((deciding.length > 0 ? deciding : decisive).map((finding) => writeFinding(finding, catalogue, style).says))].slice(0, 2);
  const next = output.nextReading === null ? null : `${catalogue.labels['wouldDecide'] ?? ''}: ${catalogue.readings[output.nextReading] ?? output.nextReading}.`;
  return { kind: 'verdict', verdict: output.verdict, word: wordFor(output.verdict, catalogue), because, next };
}

function sealBlocks(seal: SealOutcome, catalogue: Catalogue, style: WritingStyle, name: string | null): readonly SheetBlock[] {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const suffix = suffixOf(name);
  const items = seal.findings.map((finding) => findingItem(finding, catalogue, style));
  return [
    ...(seal.check === null ? [] : sizeBlocks(seal, seal.check, catalogue, style, `${label('sizes')}${suffix}`)),
    { kind: 'heading', text: `${label('findings')}${suffix}` },
    { kind: 'list', isNumbered: false, isSmall: false, items },
  ];
}

/** What is to be said before a plan, of the one seal or of each by its name. */
interface Remarks {
  readonly name: string | null;
  readonly findings: JobSheetOutput['fileFindings'];
}

function planBlocks(heading: string, steps: JobSheetOutput['blocks']['takeOut'], remarks: readonly Remarks[], catalogue: Catalogue, style: WritingStyle): readonly SheetBlock[] {
  const shown = remarks.map(({ name, findings }) => ({ name, findings: findings.filter((finding) => finding.severity !== 'good') })).filter(({ findings }) => findings.length > 0);
  if (shown.length === 0 && steps.length === 0) return [];
  return [
    { kind: 'heading', text: heading },
    ...shown.flatMap(({ name, findings }): readonly SheetBlock[] => [
      ...(name === null ? [] : [{ kind: 'paragraph', text: `${name}:`, isSmall: false } as const]),
      { kind: 'list', isNumbered: false, isSmall: false, items: findings.map((finding) => findingItem(finding, catalogue, style)) },
    ]),
    { kind: 'list', isNumbered: true, isSmall: false, items: steps.map((step) => stepItem(step, catalogue, style)) },
  ];
}

function suffixOf(name: string | null): string {
  return name === null ? '' : `: ${name}`;
}

function dueText({ due }: JobSheetOutput, catalogue: Catalogue, style: WritingStyle): string {
  const label = (key: string) => catalogue.labels[key] ?? key;
  if (due.intervalHours === null && due.intervalDays === null) return catalogue.notChecked['service-interval'] ?? '';
  const hours = (value: number) => writeValue('valueHours', value, style);
  const days = (value: number, many = 'days') => `${value} ${label(value === 1 ? 'day' : many)}`;
  const parts: string[] = [];
  if (due.intervalHours !== null) parts.push(`${label('dueEvery')} ${hours(due.intervalHours)} (${label('dueFrom')}: ${wordFor(due.intervalFrom, catalogue)})`);
  if (due.intervalDays !== null) parts.push(`${label('dueEvery')} ${days(due.intervalDays)}`);
  if (due.dueAtHours !== null) parts.push(`${label('dueAt')} ${hours(due.dueAtHours)}`);
  if (due.dueDate !== null) parts.push(`${label('dueDay')} ${wordFor(due.dueDate, catalogue)}`);
  if (due.lipTravelKm !== null) parts.push(`${label('lipTravel')} ${writeValue('lipTravelKm', due.lipTravelKm, style)}`);
  const left = [...(due.remainingHours === null ? [] : [{ amount: due.remainingHours, write: hours, late: hours }]), ...(due.remainingDays === null ? [] : [{ amount: due.remainingDays, write: days, late: (value: number) => days(value, 'daysOver') }])];
  return [`${parts.join('; ')}.`, ...left.map(({ amount, write, late }) => (amount >= 0 ? `${write(amount)} ${label('remaining')}.` : `${label('overdue')} ${late(-amount)}.`))].join(' ');
}

function smallPrint(output: JobSheetOutput, catalogue: Catalogue, style: WritingStyle): readonly SheetBlock[] {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const blocks: SheetBlock[] = [];
  if (output.assumptions.length > 0) {
    blocks.push({ kind: 'heading', text: label('assumed') }, list(output.assumptions.map((assumption) => assumptionText(assumption, catalogue, style))));
  }
  if (output.notChecked.length > 0) {
    blocks.push({ kind: 'heading', text: label('notChecked') }, list(output.notChecked.map((code) => catalogue.notChecked[code] ?? code)));
  }
  const marks: Readonly<Record<string, string>> = { memory: label('memoryMark'), practice: label('practiceMark'), computed: label('computedMark'), page: label('pageMark') };
  blocks.push(
    { kind: 'heading', text: label('sources') },
    list(output.sources.map(({ clauses, held, id }) => `${sourceName(id, catalogue)}${clauses === '' ? '' : `: ${clauses.split('; ').map((clause) => wordFor(clause, catalogue)).join('; ')}`}${id === 'common-practice' ? '' : heldMark(marks[held] ?? held)}`)),
    { kind: 'paragraph', text: `${label('advises')} ${editionText(output, catalogue)}`, isSmall: true },
  );
  return blocks;
}

/**
 * What a sheet was computed with, in one line.
 * @example editionText({ libraryVersion: '0.1.0', tablesEdition: '2026.11' }, english) // 'Computed with Seatwright 0.1.0, tables 2026.11.'
 */
export function editionText({ libraryVersion, tablesEdition }: Pick<JobSheetOutput, 'libraryVersion' | 'tablesEdition'>, { labels }: Catalogue): string {
  return (labels['computedWith'] ?? '').replace('{version}', libraryVersion).replace('{edition}', tablesEdition);
}

/**
 * An assumption in one line: "Thickness of the metal case: 0.8 to 1.2 mm; changes force and hold".
 * @example assumptionText({ name: 'workshop-at-20', value: 20, unit: '°C', source: { id: 'common-practice', held: 'practice' }, effect: 'how-hot' }, english, plainStyle) // 'Temperature of the workshop: 20 °C [common practice (no source)]; changes how hot or cold the parts must be.'
 */
export function assumptionText({ name, value, upToValue, unit, source, effect }: Assumption, catalogue: Catalogue, style: WritingStyle): string {
  const word = catalogue.assumed[name] ?? name;
  // Expansion coefficients are written as handbooks do, in micrometres a metre and kelvin.
  const [factor, shownUnit] = unit === '1/K' ? [1e6, 'µm/(m·K)'] : [1, unit];
  const number = (n: number) => writeValue('plain', n * factor, style);
  const shown = typeof value === 'string' ? wordFor(value, catalogue) : upToValue === undefined || upToValue === value ? number(value) : `${number(value)} ${catalogue.labels['to'] ?? ''} ${number(upToValue)}`;
  const held = source.held === 'memory' || source.held === 'practice' ? heldMark(catalogue.labels[`${source.held}Mark`] ?? '') : '';
  return `${word}: ${shown}${shownUnit === '' ? '' : ` ${style.units?.[shownUnit] ?? shownUnit}`}${held}; ${catalogue.labels['changes'] ?? ''} ${catalogue.effects[effect] ?? effect}.`;
}

function list(texts: readonly string[]): SheetBlock {
  return { kind: 'list', isNumbered: false, isSmall: true, items: texts.map((text): SheetItem => ({ text, tone: 'plain', below: [] })) };
}
