import { findPosition, readWorkshopFile, situationOf, type SealPart } from '@seatwright/core/job';
import { invalidInput } from '@seatwright/core';
import { shelfMatcher, shelfRoles, type ShelfCandidate, type ShelfMatchOutput, type ShelfMatcher } from '@seatwright/core/seal';
import { english, fill, markedFinding, type WritingStyle } from '@seatwright/core/wording';
import { readInput } from '../internal/read-input.js';
import { readRows } from '../internal/read-rows.js';
import { answerJson, stampLine } from '../internal/stamp.js';

interface Options {
  readonly for: string;
  readonly position?: string;
  readonly machine?: string;
  readonly part?: string;
  readonly best?: string;
  readonly unit?: string;
  readonly column?: readonly string[];
  readonly json?: boolean;
}

/** Seals of a list that suit one position, best first. */
export async function shelf(file: string, options: Options): Promise<void> {
  const { workshop } = readWorkshopFile(await readInput(options.for));
  const { position } = findPosition(workshop, options);
  const part = sealOf(position.parts.filter((one): one is SealPart => one.kind === 'seal'), options.part);
  const situation = situationOf(workshop, position, part);
  const bestCount = wholeNumber('--best', options.best ?? '10', 1, 1000);
  const unit = options.unit ?? 'mm';
  if (unit !== 'mm' && unit !== 'in') throw invalidInput('--unit', unit, 'mm or in');
  const columns = columnsOf(options.column ?? []);
  let matcher: ShelfMatcher | null = null;
  const unread: { line: number; why: string }[] = [];
  let unreadCount = 0;
  const onBad = (line: number, why: string) => {
    unreadCount += 1;
    if (unread.length < 20) unread.push({ line, why });
  };
  for await (const { cells, line } of readRows(file, onBad)) {
    if (matcher === null) matcher = shelfMatcher(situation, cells, { bestCount, unit, columns });
    else matcher.take(cells, line);
  }
  if (matcher === null) throw invalidInput('header', undefined, 'a header line, then one seal a line', `${file} is empty`);
  const output = matcher.result();
  if (options.json === true) process.stdout.write(`${answerJson({ ...output, unreadRowCount: unreadCount, unreadRows: unread })}\n`);
  else process.stdout.write(textOf(output, unread, unreadCount, { lengthUnit: workshop.lengthUnit ?? 'mm', decimalMark: '.' }) + `\n${stampLine}`);
}

function sealOf(seals: readonly SealPart[], wanted: string | undefined): SealPart {
  const known = seals.map((seal, i) => seal.name ?? String(i + 1));
  if (seals.length === 0) throw invalidInput('--position', undefined, 'a position with a seal', 'this position has no seal');
  const found = wanted === undefined ? (seals.length === 1 ? seals[0] : undefined) : (seals.find((seal) => seal.name === wanted) ?? seals[Number(wanted) - 1]);
  if (found === undefined) throw invalidInput('--part', wanted, `one of ${known.join(', ')}`, `this position has ${seals.length} seals; say which`);
  return found;
}

function columnsOf(pairs: readonly string[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    pairs.map((pair) => {
      const [role = '', ...rest] = pair.split('=');
      if (!(shelfRoles as readonly string[]).includes(role) || rest.length === 0) throw invalidInput('--column', pair, `role=header, where role is one of ${shelfRoles.join(', ')}`);
      return [role, rest.join('=')];
    }),
  );
}

function wholeNumber(name: string, written: string, from: number, upTo: number): number {
  const value = Number(written);
  if (!Number.isInteger(value) || value < from || value > upTo) throw invalidInput(name, written, `a whole number from ${from} to ${upTo}`);
  return value;
}

function textOf(output: ShelfMatchOutput, unread: readonly { readonly line: number; readonly why: string }[], unreadCount: number, style: WritingStyle): string {
  const lines: string[] = [];
  const rows = (count: number) => `${count} ${count === 1 ? 'row' : 'rows'}`;
  lines.push(`${rows(output.rowCount)}: ${output.suitsCount} suit, ${output.suitsWithCareCount} suit with care, ${output.cannotTellCount} cannot be told, ${output.doesNotSuitCount} do not suit, ${output.badRowCount + unreadCount} skipped.`, '');
  if (output.candidates.length === 0) lines.push('No seal of the list has the size.');
  for (const candidate of output.candidates) {
    lines.push(`${nameOf(candidate)}: ${candidate.verdict}`);
    for (const reason of candidate.reasons) lines.push(`    ${markedFinding(reason, english, style)}`);
  }
  if (output.nearMisses.length > 0) {
    lines.push('', 'Near, but another size:');
    for (const miss of output.nearMisses) lines.push(`  ${nameOf(miss)}: shaft ${off(miss.shaftOffMm)}, outside ${off(miss.outsideOffMm)}`);
  }
  if (output.badRowCount + unreadCount > 0) {
    lines.push('', `Skipped (${output.badRowCount + unreadCount}):`);
    for (const { code, line, column, received } of output.badRows) lines.push(`  ${fill(english.findings[code]?.says ?? code, { line, column, received }, english, style)}`);
    for (const { line, why } of unread) lines.push(`  Line ${line}: ${why}.`);
    if (output.badRowCount + unreadCount > output.badRows.length + unread.length) lines.push('  …');
  }
  lines.push('', 'A list is a hint: measure the seal that you take, and look at its lip.');
  return `${lines.join('\n')}\n`;
}

function nameOf({ line, id, place, pieceCount, shaftMm, outsideMm, widthMm, lipMaterial, construction }: Omit<ShelfCandidate, 'verdict' | 'reasons'>): string {
  const about = [`${shaftMm} × ${outsideMm} × ${widthMm} mm`, lipMaterial, construction, pieceCount === null ? null : `${pieceCount} in stock`, place === '' ? null : place].filter((one) => one !== null);
  return `line ${line}${id === '' ? '' : `, ${id}`} (${about.join(', ')})`;
}

function off(mm: number): string {
  return mm === 0 ? 'right' : `${mm > 0 ? '+' : '−'}${Math.abs(Math.round(mm * 1000) / 1000)} mm`;
}
