import { readFileSync } from 'node:fs';
import { allSheets } from './all-sheets.js';
import { outcomeOf, type Outcome } from './outcome.js';
import type { Entry, How, Kind, Sheet } from './sheet.js';

interface Work {
  readonly designation?: string;
  readonly title: string;
  readonly publisher?: string;
  readonly year?: number;
}

interface Checked {
  readonly sheet: Sheet;
  readonly entry: Entry;
  readonly outcome: Outcome;
}

const json = (path: string) => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')) as Readonly<Record<string, Work>>;
const works = { ...json('../../../reference/sources.json'), ...json('../works.json') };
const misprintsPage = readFileSync(new URL('../../../reference/misprints.md', import.meta.url), 'utf8');

const kinds: readonly Kind[] = ['same page', 'another page', 'worked example'];
const proves: Readonly<Record<Kind, string>> = {
  'same page': 'Our table was typed from this page. Finds wrong typing only in so far as the two were typed apart; proves that the right row and column are found, ranges at both of their ends, and that the rules of the standard (Δ, grades, exceptions, sums) lead back to what is printed.',
  'another page': 'Our table was typed from elsewhere, or our value follows from a rule. Proves the value too.',
  'worked example': 'A problem solved in print, with inputs and answer. Proves formula, units and the values behind it.',
};
const apart: Readonly<Record<Exclude<How, 'page'>, string>> = {
  'page-mirror': 'Seen in print with the opposite sign, as the deviation of the hole or of the shaft. Not counted.',
  memory: 'Recalled from the named work, no page at hand. Not counted: they show that two memories agree, no more.',
  'by hand': 'No printed answer: the formula of the named work, worked by hand at a point. Not counted.',
};

const kindOf = ({ sheet, entry }: Checked) => entry.kind ?? sheet.kind;
const isPublished = ({ entry }: Checked) => entry.how === 'page';
const titleOf = (id: string) => {
  const work = works[id];
  if (work === undefined) throw new Error(`tests/published: the work "${id}" stands neither in reference/sources.json nor in works.json`);
  return [work.designation, work.title, work.publisher, work.year].filter((part) => part !== undefined).join(', ');
};

/** Every entry with what came of it. */
function checkedEntries(): readonly Checked[] {
  return allSheets.flatMap((sheet) => sheet.entries.map((entry) => ({ sheet, entry, outcome: outcomeOf(entry, sheet) })));
}

/** The page `reference/CHECKS.md`. */
export function checksPage(): string {
  const all = checkedEntries();
  const published = all.filter(isPublished);
  const workIds = [...new Set(published.map(({ sheet }) => sheet.work))];
  return [
    '# Published values checked',
    '',
    '<!-- Written by `node reference/checks.mjs` from tests/published: do not edit. -->',
    '',
    `**${published.length} values that were read on published pages** are compared with this library at every run of the tests, each with what it prints for the same question. No expected value was computed by our own code. ${all.length - published.length} further values are held from memory, by mirror or worked by hand; they stand [apart](#held-otherwise) and are not counted. How to add one: DEVELOPERS.md, "How to add a published value".`,
    '',
    table(['kind of check', 'values', 'what it proves'], kinds.map((kind) => [kind, count(published, (one) => kindOf(one) === kind), proves[kind]])),
    '',
    '**How to read it.** In a grid each cell is the printed value; our value is the same, difference 0, unless the cell says `printed → ours`. A range, "over … up to and including …", was asked at both of its ends. Where a page rounds, our value may differ by half of its last digit; every larger allowance names its reason.',
    '',
    '## Sources',
    '',
    table(
      ['source', 'values', ...kinds, 'seen on two pages or more', 'largest difference'],
      workIds.map((id) => {
        const own = published.filter(({ sheet }) => sheet.work === id);
        return [`[${titleOf(id)}](#${anchorOf(id)})`, own.length, ...kinds.map((kind) => count(own, (one) => kindOf(one) === kind) || '–'), count(own, ({ entry }) => (entry.pagesSeen ?? 1) > 1) || '–', largest(own)];
      }),
    ),
    ...workIds.flatMap((id) => ['', `## ${anchorOf(id)}`, '', `${titleOf(id)}.`, ...sheetsOf(published.filter(({ sheet }) => sheet.work === id), '###')]),
    '',
    '## Held otherwise',
    ...(Object.keys(apart) as Exclude<How, 'page'>[]).flatMap((how) => {
      const own = all.filter(({ entry }) => entry.how === how);
      return own.length === 0 ? [] : ['', `### ${how} (${own.length})`, '', apart[how], ...sheetsOf(own, '####')];
    }),
    '',
    '## Misprints',
    '',
    'Printed values that are not taken over, and why; from [misprints.md](misprints.md), which also lists the cells that are kept against a rule.',
    '',
    ...misprintsPage.split('## Misprints in sources, not taken over')[1]?.trim().split('\n') ?? [],
    '',
  ].join('\n');
}

function sheetsOf(own: readonly Checked[], heading: string): readonly string[] {
  return [...new Set(own.map(({ sheet }) => sheet))].flatMap((sheet) => {
    const entries = own.filter((one) => one.sheet === sheet);
    const seen = count(entries, ({ entry }) => (entry.pagesSeen ?? 1) > 1);
    const work = heading === '####' ? `${sheet.work}, ` : '';
    return [
      '',
      `${heading} ${work}${sheet.place}`,
      '',
      `${sheet.title}${sheet.unit === '' ? '' : ` [${sheet.unit}]`}. ${entries.length} value${entries.length === 1 ? '' : 's'}${heading === '####' ? '' : `, ${kindsOf(entries)}`}${seen === 0 ? '' : `, ${seen} of them seen on two pages or more`}. Asked: ${sheet.asked}.${sheet.note === undefined ? '' : ` ${sheet.note}`}`,
      '',
      sheet.layout === 'grid' ? grid(entries, sheet.columns) : list(entries),
    ];
  });
}

/** `same page`, or how many of each kind. */
function kindsOf(entries: readonly Checked[]): string {
  const present = kinds.filter((kind) => entries.some((one) => kindOf(one) === kind));
  return present.length === 1 ? (present[0] ?? '') : present.map((kind) => `${count(entries, (one) => kindOf(one) === kind)} ${kind}`).join(', ');
}

function grid(entries: readonly Checked[], order?: readonly string[]): string {
  const present = [...new Set(entries.map(({ entry }) => entry.column))];
  const columns = order?.filter((column) => present.includes(column)) ?? present;
  const rows = [...new Set(entries.map(({ entry }) => entry.row))];
  const cells = new Map(entries.map((one) => [`${one.entry.row}\n${one.entry.column}`, cellOf(one)]));
  if (cells.size !== entries.length) throw new Error(`tests/published: two entries in one cell of ${entries[0]?.sheet.title ?? ''}`);
  return table(['', ...columns], rows.map((row) => [row, ...columns.map((column) => cells.get(`${row}\n${column}`) ?? '')]));
}

function list(entries: readonly Checked[]): string {
  return table(
    ['case', 'what', 'printed', 'ours', 'difference', 'allowed', 'why'],
    entries.map(({ entry, outcome }) => [entry.row, entry.column, entry.printed, outcome.ours, short(outcome.difference), short(outcome.allowed.difference), outcome.allowed.why]),
  );
}

const cellOf = ({ entry, outcome }: Checked) => (outcome.difference === 0 ? entry.printed : `${entry.printed} → ${outcome.ours}`);
const short = (value: number | null) => (value === null ? 'differs' : String(Number(value.toPrecision(3))));
const count = (entries: readonly Checked[], is: (one: Checked) => boolean) => entries.filter(is).length;
const anchorOf = (id: string) => id;
const table = (header: readonly string[], rows: readonly (readonly (string | number)[])[]) => [header, header.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

/** The largest difference of a source, with its unit and place. */
function largest(entries: readonly Checked[]): string {
  const worst = entries.reduce<Checked | null>((before, one) => (Math.abs(one.outcome.difference ?? Infinity) > Math.abs(before?.outcome.difference ?? 0) ? one : before), null);
  if (worst === null) return '0';
  const unit = worst.sheet.unit === '' ? '' : ` [${worst.sheet.unit}]`;
  return `${short(worst.outcome.difference)} of ${worst.entry.printed}${unit} (${worst.entry.row}, ${worst.entry.column})`;
}
