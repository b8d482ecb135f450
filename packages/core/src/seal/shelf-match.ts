import * as z from 'zod/mini';
import { candourFields, choiceField, deciding, defineCalculation, findingField, outputNumber, plainGeometry, supporting, textField, verdictField, verdictOf, verdicts, wholeNumberField, type Finding, type Verdict } from '../result/index.js';
import { halfStandardStepMm } from './internal/half-step.js';
import { shelfColumns, shelfRoles, type ShelfRole } from './internal/shelf-columns.js';
import { readShelfRow, type BadRow, type ShelfSeal } from './internal/shelf-row.js';
import { judgeSeal } from './internal/judge-seal.js';
import { situationShape, type Situation } from './situation-field.js';
import { sizesOf } from './sizes-of.js';

const text = (label: string) => z.string().check(z.meta({ label, unit: '' }));
const roleName = (role: string) => z.optional(textField({ label: `header of the column for ${role}`, longest: 200 }));

const optionShape = {
  unit: z.optional(choiceField(['mm', 'in'], { label: 'unit of sizes without one' })),
  columns: z.optional(z.strictObject({ id: roleName('what the list calls it'), shaft: roleName('the shaft'), outside: roleName('the outside'), width: roleName('the width'), size: roleName('all three sizes'), construction: roleName('the outside, metal or rubber'), lipMaterial: roleName('the rubber of the lip'), dustLip: roleName('the dust lip'), count: roleName('the pieces left'), place: roleName('where it lies') } satisfies Record<ShelfRole, unknown>)),
  bestCount: z.optional(wholeNumberField({ label: 'how many to list', unit: '', from: 1, upTo: 1000, typical: '10' })),
};

const inputField = z.strictObject({
  ...situationShape,
  ...optionShape,
  header: z.array(text('header of a column')).check(z.minLength(1), z.maxLength(200)),
  rows: z.array(z.array(text('cell'))).check(z.maxLength(100_000)),
});

const rowShape = {
  line: outputNumber('line of the list', ''),
  id: text('what the list calls it'),
  place: text('where it lies'),
  pieceCount: z.nullable(outputNumber('pieces', '')),
  shaftMm: outputNumber('shaft marked on the seal', 'mm'),
  outsideMm: outputNumber('outside marked on the seal', 'mm'),
  widthMm: outputNumber('width marked on the seal', 'mm'),
  construction: z.nullable(text('outside of the seal; none: not said')),
  lipMaterial: z.nullable(text('rubber of the lip; none: not said')),
};

const candidateField = z.strictObject({ ...rowShape, verdict: verdictField, reasons: z.readonly(z.array(findingField)) });
const nearMissField = z.strictObject({ ...rowShape, shaftOffMm: outputNumber('its shaft size less the shaft', 'mm'), outsideOffMm: outputNumber('its outside less the bore', 'mm') });

const badRowField = z.strictObject({
  line: outputNumber('line of the list', ''),
  code: choiceField(['row-has-no-size', 'row-cell-not-understood', 'row-size-impossible', 'row-size-likely-inches'], { label: 'why it was skipped' }),
  column: text('column'),
  received: text('what stands there'),
});

const outputField = z.strictObject({
  candidates: z.readonly(z.array(candidateField)),
  nearMisses: z.readonly(z.array(nearMissField)),
  badRows: z.readonly(z.array(badRowField)),
  rowCount: outputNumber('rows looked at', ''),
  suitsCount: outputNumber('rows that suit', ''),
  suitsWithCareCount: outputNumber('rows that suit with care', ''),
  cannotTellCount: outputNumber('rows that nobody can tell', ''),
  doesNotSuitCount: outputNumber('rows that do not suit', ''),
  badRowCount: outputNumber('rows skipped', ''),
  ...candourFields,
});

export type ShelfMatchInput = z.infer<typeof inputField>;
export type ShelfMatchOutput = z.infer<typeof outputField>;
export type ShelfCandidate = ShelfMatchOutput['candidates'][number];
type NearMiss = ShelfMatchOutput['nearMisses'][number];

export interface ShelfOptions {
  readonly unit?: 'mm' | 'in' | undefined;
  readonly columns?: Readonly<Partial<Record<ShelfRole, string | undefined>>> | undefined;
  readonly bestCount?: number | undefined;
}

/** Takes the rows of a list one by one and keeps only the best: memory does not grow with the list. */
export interface ShelfMatcher {
  /** @param line 1-based line of the list, as an editor counts */
  take(cells: readonly string[], line: number): void;
  result(): ShelfMatchOutput;
}

const usualBestCount = 10;
const badRowsShown = 20;
/** [mm] Sizes that lie no further off are told as near misses. */
const nearReachMm = 6;
const reasonsShown = 4;

/**
 * A matcher for one place and one header.
 * @throws CalculationError invalid-input | contradiction (header), or what the seal check throws of the place itself
 * @example typeof shelfMatcher({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }, ['shaft', 'outside', 'width', 'construction', 'rubber']).take // 'function'
 */
export function shelfMatcher(situation: Situation, header: readonly string[], options: ShelfOptions = {}): ShelfMatcher {
  const given = Object.fromEntries(Object.entries(options.columns ?? {}).filter(([, name]) => name !== undefined));
  const columns = shelfColumns(header, options.unit, given);
  const sizes = sizesOf(situation);
  const shaftMm = sizes.shaft?.meanMm ?? situation.shaft?.diameterMm ?? situation.seal.shaftMm;
  const boreMm = sizes.bore?.meanMm ?? situation.bore?.diameterMm ?? situation.seal.outsideMm;
  const bestCount = options.bestCount ?? usualBestCount;
  const candidates: Ranked[] = [];
  const nearMisses: NearMiss[] = [];
  const badRows: BadRow[] = [];
  const counts: Record<Verdict, number> = { suits: 0, 'suits with care': 0, 'cannot tell': 0, 'does not suit': 0 };
  let [rowCount, badRowCount] = [0, 0];
  return {
    take(cells, line) {
      if (cells.every((cell) => cell.trim() === '')) return;
      rowCount += 1;
      const row = readShelfRow(cells, line, columns);
      if ('code' in row) {
        badRowCount += 1;
        if (badRows.length < badRowsShown) badRows.push(row);
        return;
      }
      const shaftOffMm = settled(row.shaftMm - shaftMm);
      const outsideOffMm = settled(row.outsideMm - boreMm);
      if (Math.abs(shaftOffMm) > halfStandardStepMm || Math.abs(outsideOffMm) > halfStandardStepMm) {
        counts['does not suit'] += 1;
        if (Math.max(Math.abs(shaftOffMm), Math.abs(outsideOffMm)) <= nearReachMm) keep(nearMisses, { ...named(row), shaftOffMm, outsideOffMm }, bestCount, nearer);
        return;
      }
      const judged = judgedRow(situation, row);
      counts[judged.verdict] += 1;
      keep(candidates, judged, bestCount, better);
    },
    result: () => ({
      candidates: candidates.map(({ careCount: _, offMm: __, ...candidate }) => candidate),
      nearMisses: [...nearMisses],
      badRows: [...badRows],
      rowCount,
      suitsCount: counts.suits,
      suitsWithCareCount: counts['suits with care'],
      cannotTellCount: counts['cannot tell'],
      doesNotSuitCount: counts['does not suit'],
      badRowCount,
      assumptions: [],
      notChecked: ['shelf-age-and-storage', 'list-against-shelf'],
    }),
  };
}

/** Which seals on the shelf suit one place: every row of a list judged as the seal check judges it, best first, with reasons.
 * Rows of another size are told apart by size alone and come as near misses; a row whose size cannot be read is named and skipped; another cell that cannot be read makes the row one of which nobody can tell.
 * @returns the best rows with verdict and reasons, near misses [mm], skipped rows, counts
 * @throws CalculationError invalid-input | contradiction (header) | outside-table
 * @source those of the seal check
 * @example shelfMatch.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, header: ['id', 'size', 'material', 'type'], rows: [['A1', '20x35x7', 'NBR', 'metal'], ['A2', '22x35x7', 'NBR', 'metal']] }).nearMisses[0].id // 'A2'
 */
export const shelfMatch = defineCalculation({
  name: 'shelf-match',
  summary: 'Which seals of a list suit one place, best first, and why',
  input: inputField,
  output: outputField,
  compute({ header, rows, unit, columns, bestCount, ...situation }): ShelfMatchOutput {
    const matcher = shelfMatcher(situation, header, { unit, columns, bestCount });
    rows.forEach((row, i) => matcher.take(row, i + 2));
    return matcher.result();
  },
  explain: () => [],
});

interface Ranked extends ShelfCandidate {
  readonly careCount: number;
  readonly offMm: number;
}

function judgedRow(situation: Situation, row: ShelfSeal): Ranked {
  const { seal: wanted } = situation;
  const { outsideReadings: _, caseThicknessMm: __, marking: ___, ...common } = wanted;
  const seal = {
    ...common, shaftMm: row.shaftMm, outsideMm: row.outsideMm, widthMm: row.widthMm,
    construction: row.construction ?? wanted.construction,
    lipMaterial: row.lipMaterial ?? wanted.lipMaterial,
    hasDustLip: row.hasDustLip ?? false,
  };
  const ofList = row.unread.map(({ role, column, received }) => (role === 'lipMaterial' || role === 'construction' ? deciding('list-cell-not-understood', 'unknown', { column, received }, plainGeometry) : supporting('list-cell-left-out', 'note', { column, received }, plainGeometry)));
  const findings: Finding[] = [...ofList, ...judgeSeal({ ...situation, seal }).findings.filter(({ severity }) => severity !== 'good')];
  const isUnsaid = (role: 'lipMaterial' | 'construction') => row[role] === null && !row.unread.some((cell) => cell.role === role);
  if (isUnsaid('construction') || isUnsaid('lipMaterial')) findings.push(supporting('list-does-not-say', 'care', { lipMaterial: seal.lipMaterial }, plainGeometry));
  if (row.widthMm !== wanted.widthMm) findings.push(supporting(row.widthMm > wanted.widthMm ? 'size-wider' : 'size-narrower', 'care', { differenceMm: Math.abs(settled(row.widthMm - wanted.widthMm)), markedMm: row.widthMm }, plainGeometry));
  if (wanted.hasDustLip === true && row.hasDustLip !== true) findings.push(supporting('list-seal-without-dust-lip', 'care', {}, plainGeometry));
  if (row.pieceCount === 0) findings.push(deciding('none-left-on-shelf', 'care', {}, plainGeometry));
  return {
    ...named(row),
    verdict: verdictOf(findings),
    reasons: findings.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity)).slice(0, reasonsShown),
    careCount: findings.filter(({ severity }) => severity !== 'note').length,
    offMm: Math.abs(row.shaftMm - wanted.shaftMm) + Math.abs(row.outsideMm - wanted.outsideMm) + Math.abs(row.widthMm - wanted.widthMm),
  };
}

const order: readonly Finding['severity'][] = ['bad', 'unknown', 'care', 'note', 'good'];

function named({ line, id, place, pieceCount, shaftMm, outsideMm, widthMm, construction, lipMaterial }: ShelfSeal) {
  return { line, id, place, pieceCount, shaftMm, outsideMm, widthMm, construction, lipMaterial };
}

function better(a: Ranked, b: Ranked): number {
  return verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || a.careCount - b.careCount || a.offMm - b.offMm || a.line - b.line;
}

function nearer(a: NearMiss, b: NearMiss): number {
  return Math.abs(a.shaftOffMm) + Math.abs(a.outsideOffMm) - Math.abs(b.shaftOffMm) - Math.abs(b.outsideOffMm) || a.line - b.line;
}

/** Puts one into a list that stays in order and no longer than `most`. */
function keep<T>(list: T[], one: T, most: number, compare: (a: T, b: T) => number): void {
  const last = list[most - 1];
  if (last !== undefined && compare(one, last) >= 0) return;
  let at = list.length;
  while (at > 0 && compare(one, list[at - 1] as T) < 0) at -= 1;
  list.splice(at, 0, one);
  if (list.length > most) list.pop();
}

function settled(mm: number): number {
  return Math.round(mm * 1e6) / 1e6 + 0;
}

export { shelfRoles };
