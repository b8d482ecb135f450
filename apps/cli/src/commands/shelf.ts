import { findPosition, readWorkshopFile, situationOf, type SealPart } from '@seatwright/core/job';
import { invalidInput } from '@seatwright/core';
import { shelfMatcher, shelfRoles, type ShelfCandidate, type ShelfMatchOutput, type ShelfMatcher } from '@seatwright/core/seal';
import { fill, markedFinding, styleOf, wordFor, writeValue, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import { catalogueOf } from '../internal/languages.js';
import { listWordsOf } from '../internal/list-words.js';
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
  readonly language?: string;
  readonly json?: boolean;
}

/** Seals of a list that suit one position, best first. */
export async function shelf(file: string, options: Options): Promise<void> {
  const catalogue = await catalogueOf(options.language ?? 'en');
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
  else process.stdout.write(textOf(output, unread, unreadCount, catalogue, styleOf(catalogue, workshop.lengthUnit ?? 'mm')) + `\n${stampLine}`);
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

interface Unread {
  readonly line: number;
  readonly why: string;
}

function textOf(output: ShelfMatchOutput, unread: readonly Unread[], unreadCount: number, catalogue: Catalogue, style: WritingStyle): string {
  const words = listWordsOf(catalogue);
  const say = (template: string, parameters: Readonly<Record<string, number | string>> = {}) => fill(template, parameters, catalogue, style);
  const skippedCount = output.badRowCount + unreadCount;
  const { rowCount, suitsCount, suitsWithCareCount, cannotTellCount, doesNotSuitCount } = output;
  const lines: string[] = [say(words.counts, { rowCount, suitsCount, suitsWithCareCount, cannotTellCount, doesNotSuitCount, skippedCount }), ''];
  if (output.candidates.length === 0) lines.push(words.noneOfSize);
  for (const candidate of output.candidates) {
    lines.push(`${nameOf(candidate, catalogue, style)}: ${wordFor(candidate.verdict, catalogue)}`);
    for (const reason of candidate.reasons) lines.push(`    ${markedFinding(reason, catalogue, style)}`);
  }
  if (output.nearMisses.length > 0) {
    const off = (mm: number) => (mm === 0 ? words.right : `${mm > 0 ? '+' : ''}${writeValue('valueMm', mm, style)}`);
    lines.push('', words.near);
    for (const miss of output.nearMisses) lines.push(`  ${nameOf(miss, catalogue, style)}: ${say(words.shaft, { value: off(miss.shaftOffMm) })}, ${say(words.outside, { value: off(miss.outsideOffMm) })}`);
  }
  if (skippedCount > 0) {
    lines.push('', say(words.skipped, { skippedCount }));
    for (const { code, line, column, received } of output.badRows) lines.push(`  ${say(catalogue.findings[code]?.says ?? code, { line, column, received })}`);
    for (const { line, why } of unread) lines.push(`  ${say(words.unread, { line })}: ${why}.`);
    if (skippedCount > output.badRows.length + unread.length) lines.push('  …');
  }
  lines.push('', words.hint);
  return `${lines.join('\n')}\n`.replaceAll('\u00a0', ' ');
}

function nameOf({ line, id, place, pieceCount, shaftMm, outsideMm, widthMm, lipMaterial, construction }: Omit<ShelfCandidate, 'verdict' | 'reasons'>, catalogue: Catalogue, style: WritingStyle): string {
  const words = listWordsOf(catalogue);
  const number = (mm: number) => writeValue('valueMm', mm, style).replace(/\u00a0.*$/u, '');
  const sizes = `${number(shaftMm)} × ${number(outsideMm)} × ${writeValue('valueMm', widthMm, style)}`;
  const about = [sizes, lipMaterial, construction === null ? null : wordFor(construction, catalogue), pieceCount === null ? null : fill(words.stock, { pieceCount }, catalogue, style), place === '' ? null : place].filter((one) => one !== null);
  return `${fill(words.line, { line }, catalogue, style)}${id === '' ? '' : `, ${id}`} (${about.join(', ')})`;
}
