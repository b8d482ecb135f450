import type { Assumption, Finding, PlanStep, WorkingStep } from '@seatwright/core';
import { assumptionText, english, markedFinding, plainStyle, stepItem, unitOfName, writeFinding, writeValue } from '@seatwright/core/wording';

/** Any output as readable lines: values with their units, findings as sentences, what was assumed and not looked at. */
export function answerText(output: unknown): string {
  return `${linesOf(output, '').join('\n')}\n`;
}

/** Parts of a value take the unit of the field around them: `shaftHoopStressMpa: { bore, surface }`. */
function linesOf(value: unknown, indent: string, around = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${indent}${String(value)}`];
  return Object.entries(value).flatMap(([name, item]) => entryLines(name, item, indent, around));
}

function entryLines(name: string, item: unknown, indent: string, around: string): readonly string[] {
  if (item === undefined || item === null) return [`${indent}${name}: none`];
  if (typeof item === 'number') return [`${indent}${name}: ${writeValue(unitOfName(name) === '' && unitOfName(around) !== '' ? around : name, item)}`];
  if (typeof item === 'string') return [`${indent}${name}: ${english.values[item] ?? item}`];
  if (typeof item !== 'object') return [`${indent}${name}: ${item === true ? 'yes' : 'no'}`];
  if (Array.isArray(item)) {
    if (item.length === 0) return [];
    const table = flatTable(item);
    if (table !== null) return [`${indent}${name}:`, ...tableLines(table, `${indent}  `)];
    return [`${indent}${name}:`, ...item.flatMap((entry: unknown) => listEntry(name, entry, indent))];
  }
  if (isFinding(item)) return [`${indent}${name}: ${markedFinding(item, english, plainStyle)}`];
  if (isStep(item)) return [`${indent}${name}: ${stepItem(item, english, plainStyle).text}`];
  const span = item as { readonly low?: unknown; readonly high?: unknown };
  if (typeof span.low === 'number' && typeof span.high === 'number') return [`${indent}${name}: ${writeValue(name, span.low)} to ${writeValue(name, span.high)}`];
  return [`${indent}${name}:`, ...linesOf(item, `${indent}  `, name)];
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

function tableLines(list: readonly Readonly<Record<string, Cell>>[], indent: string): readonly string[] {
  const names = Object.keys(list[0] ?? {});
  const cell = (name: string, value: Cell) => (typeof value === 'number' ? writeValue(name, value) : value === null ? '-' : typeof value === 'boolean' ? (value ? 'yes' : 'no') : (english.values[value] ?? value));
  const rows = [names, ...list.map((entry) => names.map((name) => cell(name, entry[name] ?? null)))];
  const widths = names.map((_, c) => Math.max(...rows.map((row) => row[c]?.length ?? 0)));
  return rows.map((row) => `${indent}${row.map((text, c) => text.padStart(widths[c] ?? 0)).join('  ')}`);
}

function listEntry(name: string, entry: unknown, indent: string): readonly string[] {
  if (typeof entry === 'string') return [`${indent}  - ${english.notChecked[entry] ?? english.cautions[entry] ?? english.values[entry] ?? entry}`];
  if (isStep(entry)) {
    const { text, below } = stepItem(entry, english, plainStyle);
    return [`${indent}  - ${text}`, ...below.map((line) => `${indent}    ! ${line.text}`)];
  }
  if (isFinding(entry)) {
    const { todo } = writeFinding(entry, english, plainStyle);
    return [`${indent}  - ${markedFinding(entry, english, plainStyle)}`, ...(todo === null ? [] : [`${indent}    -> ${todo}`])];
  }
  if (name === 'assumptions') return [`${indent}  - ${assumptionText(entry as Assumption, english, plainStyle)}`];
  const [first = '', ...rest] = linesOf(entry, `${indent}    `);
  return [`${indent}  - ${first.trimStart()}`, ...rest];
}

function isFinding(value: unknown): value is Finding {
  return typeof value === 'object' && value !== null && 'severity' in value && 'code' in value;
}

function isStep(value: unknown): value is PlanStep {
  return typeof value === 'object' && value !== null && 'cautions' in value && 'code' in value && 'parameters' in value;
}

/** The working, one step a line: symbol = formula (numbers) = value [source]. */
export function workingText(steps: readonly WorkingStep[]): string {
  const lines = steps.map((step) => {
    const clause = step.source.clause === undefined ? '' : `, ${step.source.clause}`;
    const held = step.source.held === 'memory' ? ', from memory (unverified)' : '';
    const how =
      step.kind === 'formula'
        ? `${step.formula}  with ${Object.entries(step.scope).map(([name, number]) => `${name} = ${number}`).join(', ')}`
        : step.kind === 'lookup'
          ? `table ${step.table}, ${step.row}, ${step.column}`
          : step.why;
    return `  ${step.symbol} = ${step.value} ${step.unit}  ${step.meaning}\n      ${how}\n      [${step.source.id}${clause}${held}]`;
  });
  return `\nWorking\n${lines.join('\n')}\n`;
}
