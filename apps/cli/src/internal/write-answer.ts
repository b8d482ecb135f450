import type { Assumption, Finding, jsonSchemasOf, PlanStep, SourceReference, WorkingStep } from '@seatwright/core';
import { assumptionText, english, markedFinding, plainStyle, stepItem, unitOfName, sourceName, wordFor, writeFinding, writeValue, type Catalogue } from '@seatwright/core/wording';
import { answerLabels, type AnswerLabels } from './answer-labels.js';

/** Any output as readable lines: values by their labels with units, findings as sentences, what was assumed and not looked at. */
export function answerText(output: unknown, calculation: Parameters<typeof jsonSchemasOf>[0]): string {
  return `${linesOf(output, '', answerLabels(calculation)).join('\n')}\n`;
}

/** Parts of a value take the unit of the field around them: `shaftHoopStressMpa: { bore, surface }`. */
function linesOf(value: unknown, indent: string, labels: AnswerLabels, around = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${indent}${String(value)}`];
  return Object.entries(value).flatMap(([name, item]) => entryLines(name, item, indent, labels, around));
}

function entryLines(name: string, item: unknown, indent: string, labels: AnswerLabels, around: string): readonly string[] {
  const label = labels.labelOf(name);
  const within = labels.within(name);
  if (item === undefined || item === null) return [`${indent}${label}: none`];
  if (typeof item === 'number') return [`${indent}${label}: ${writeValue(unitOfName(name) === '' && unitOfName(around) !== '' ? around : name, item)}`];
  if (typeof item === 'string') return [`${indent}${label}: ${name === 'held' ? heldWords(item) : wordOf(item)}`];
  if (typeof item !== 'object') return [`${indent}${label}: ${item === true ? 'yes' : 'no'}`];
  if (Array.isArray(item)) {
    if (item.length === 0) return [];
    const table = flatTable(item);
    if (table !== null) return [`${indent}${label}:`, ...tableLines(table, `${indent}  `, within)];
    return [`${indent}${label}:`, ...item.flatMap((entry: unknown) => listEntry(name, entry, indent, within))];
  }
  if (isFinding(item)) return [`${indent}${label}: ${findingText(item)}`];
  if (isStep(item)) return [`${indent}${label}: ${stepItem(item, english, plainStyle).text}`];
  if (isSource(item)) return [`${indent}${label}: ${[item.id, item.clause].filter((part) => part !== undefined && part !== '').join(', ')} (${heldWords(item.held)})`];
  const span = item as { readonly low?: unknown; readonly high?: unknown };
  if (typeof span.low === 'number' && typeof span.high === 'number') return [`${indent}${label}: ${writeValue(name, span.low)} to ${writeValue(name, span.high)}`];
  return [`${indent}${label}:`, ...linesOf(item, `${indent}  `, within, name)];
}

function wordOf(code: string): string {
  return Object.hasOwn(english.values, code) ? (english.values[code] ?? code) : code;
}

function heldWords(held: string): string {
  return english.labels[`${held}Mark`] ?? held;
}

const signs: Readonly<Record<Finding['severity'], string>> = { good: '[ok]', note: '[i]', care: '[!]', unknown: '[?]', bad: '[X]' };

function findingText(finding: Finding): string {
  return `${signs[finding.severity]} ${markedFinding(finding, english, plainStyle)}`;
}

const longEnoughForTable = 4;

/** Many entries of the same plain numbers and words read better side by side. */
function flatTable(list: readonly unknown[]): readonly Readonly<Record<string, Cell>>[] | null {
  const [first] = list;
  if (list.length < longEnoughForTable || typeof first !== 'object' || first === null) return null;
  const names = Object.keys(first).join();
  const isAlike = (entry: unknown) => typeof entry === 'object' && entry !== null && Object.keys(entry).join() === names && !('severity' in entry) && Object.values(entry).every((cell) => cell === null || ['number', 'string', 'boolean'].includes(typeof cell));
  return list.every(isAlike) ? (list as readonly Readonly<Record<string, Cell>>[]) : null;
}

type Cell = number | string | boolean | null;

function tableLines(list: readonly Readonly<Record<string, Cell>>[], indent: string, labels: AnswerLabels): readonly string[] {
  const names = Object.keys(list[0] ?? {});
  const cell = (name: string, value: Cell) => (typeof value === 'number' ? writeValue(name, value) : value === null ? '-' : typeof value === 'boolean' ? (value ? 'yes' : 'no') : wordOf(value));
  const rows = [names.map((name) => labels.labelOf(name)), ...list.map((entry) => names.map((name) => cell(name, entry[name] ?? null)))];
  const widths = names.map((_, c) => Math.max(...rows.map((row) => row[c]?.length ?? 0)));
  return rows.map((row) => `${indent}${row.map((text, c) => text.padStart(widths[c] ?? 0)).join('  ')}`);
}

function listEntry(name: string, entry: unknown, indent: string, labels: AnswerLabels): readonly string[] {
  if (typeof entry === 'string') return [`${indent}  - ${english.notChecked[entry] ?? english.cautions[entry] ?? wordOf(entry)}`];
  if (isStep(entry)) {
    const { text, below } = stepItem(entry, english, plainStyle);
    return [`${indent}  - ${text}`, ...below.map((line) => `${indent}    ! ${line.text}`)];
  }
  if (isFinding(entry)) {
    const { todo } = writeFinding(entry, english, plainStyle);
    return [`${indent}  - ${findingText(entry)}`, ...(todo === null ? [] : [`${indent}    -> ${todo}`])];
  }
  if (name === 'assumptions') return [`${indent}  - ${assumptionText(entry as Assumption, english, plainStyle)}`];
  const [first = '', ...rest] = linesOf(entry, `${indent}    `, labels);
  return [`${indent}  - ${first.trimStart()}`, ...rest];
}

function isFinding(value: unknown): value is Finding {
  return typeof value === 'object' && value !== null && 'severity' in value && 'code' in value;
}

function isSource(value: object): value is SourceReference {
  return 'id' in value && 'held' in value && Object.keys(value).every((name) => ['id', 'held', 'clause'].includes(name));
}

function isStep(value: unknown): value is PlanStep {
  return typeof value === 'object' && value !== null && 'cautions' in value && 'code' in value && 'parameters' in value;
}

/** The working, one step a line: symbol = formula (numbers) = value [source]. */
export function workingText(steps: readonly WorkingStep[], catalogue: Catalogue = english): string {
  const { labels } = catalogue;
  const lines = steps.map((step) => {
    const clause = step.source.clause === undefined ? '' : `, ${wordFor(step.source.clause, catalogue)}`;
    const held = step.source.held === 'memory' ? `, ${labels['memoryMark'] ?? ''}` : '';
    const how =
      step.kind === 'formula'
        ? `${step.formula}  ${labels['with'] ?? ''} ${Object.entries(step.scope).map(([name, number]) => `${name} = ${number}`).join(', ')}`
        : step.kind === 'lookup'
          ? `${labels['table'] ?? ''} ${step.table}, ${step.row}, ${step.column}`
          : wordFor(step.why, catalogue);
    return `  ${step.symbol} = ${typeof step.value === 'string' ? wordFor(step.value, catalogue) : step.value} ${step.unit}  ${wordFor(step.meaning, catalogue)}\n      ${how}\n      [${sourceName(step.source.id, catalogue)}${clause}${held}]`;
  });
  return `\n${labels['working'] ?? ''}\n${lines.join('\n')}\n`;
}
