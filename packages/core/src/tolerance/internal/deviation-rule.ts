import type { HeldMark } from '../../result/index.js';
import { iso2861HoleDeviations } from '../../tables/generated/iso-286-1-hole-deviations.js';
import { iso2861ShaftDeviations } from '../../tables/generated/iso-286-1-shaft-deviations.js';
import { iso2861StandardTolerances } from '../../tables/generated/iso-286-1-standard-tolerances.js';
import { markAt, type GeneratedTable } from '../../tables/table.js';
import type { ClassName, HoleLetter, PartKind } from './class-names.js';
import { deviationRowOf, toleranceRowOf } from './size-steps.js';

/** A cell that was read. Blank cells have the value `null`. */
export interface Cell {
  readonly table: GeneratedTable;
  readonly column: string;
  readonly row: number;
  readonly valueUm: number | null;
  readonly held: HeldMark;
}

/** Which cells give a class its place, and how they are put together. */
export type DeviationRule =
  /** Half the tolerance either way: JS and js. */
  | { readonly form: 'even' }
  /** The table's value as it stands. */
  | { readonly form: 'plain'; readonly base: Cell }
  /** Holes K to ZC in the finer grades: the table's value and an increment. */
  | { readonly form: 'with-increment'; readonly base: Cell; readonly increment: Cell }
  /** One class for which the standard prints another value than its rule gives. */
  | { readonly form: 'exception'; readonly base: Cell; readonly increment: Cell; readonly printedUm: number; readonly held: HeldMark };

/** Footnotes of the standard: classes that are not used although letter and grade have values. */
export type Exclusion = 'a-b-up-to-1' | 'it14-up-to-1' | 'n-above-it8-up-to-1' | 'j-grade';

/** Grade as a number for comparing: 01 counts as −1. */
export function gradeNumber({ gradePlace }: Pick<ClassName, 'gradePlace'>): number {
  return gradePlace - 1;
}

/** The table of fundamental deviations of a kind. */
export function deviationTableOf(kind: PartKind): GeneratedTable {
  return kind === 'hole' ? iso2861HoleDeviations : iso2861ShaftDeviations;
}

/** The standard tolerance of the grade. */
export function toleranceCell(name: ClassName, step: number): Cell {
  return cellOf(iso2861StandardTolerances, `it${name.grade}Um`, toleranceRowOf(step));
}

/** The footnote that rules a class out at a size step, or null. */
export function exclusionOf(name: ClassName, step: number): Exclusion | null {
  const grade = gradeNumber(name);
  if (name.holeLetter === 'J' && deviationColumnOf(name) === null) return 'j-grade';
  if (step > 0) return null;
  if (name.holeLetter === 'A' || name.holeLetter === 'B') return 'a-b-up-to-1';
  if (grade >= 14) return 'it14-up-to-1';
  return name.kind === 'hole' && name.holeLetter === 'N' && grade > 8 ? 'n-above-it8-up-to-1' : null;
}

/** The rule for a class at a size step; null where the letter has no column for the grade (J and j). */
export function deviationRuleOf(name: ClassName, step: number): DeviationRule | null {
  if (name.holeLetter === 'JS') return { form: 'even' };
  const column = deviationColumnOf(name);
  if (column === null) return null;
  const row = deviationRowOf(step);
  const base = cellOf(deviationTableOf(name.kind), column, row);
  if (!takesIncrement(name) || !hasIncrements(row)) return { form: 'plain', base };
  const increment = cellOf(iso2861HoleDeviations, `deltaIt${name.grade}Um`, row);
  return name.text === 'M6' && isOver250UpTo315(row)
    ? { form: 'exception', base, increment, printedUm: -9, held: 'memory' }
    : { form: 'with-increment', base, increment };
}

/** Holes K to ZC finer than the table of increments reaches: the increment is taken as zero. */
export function isBelowIncrements(name: ClassName, step: number): boolean {
  return name.kind === 'hole' && name.letterPlace >= letterPlaceOfK && gradeNumber(name) < 3 && hasIncrements(deviationRowOf(step));
}

/** Column of the fundamental deviation; null for JS and js, and where J and j are not given in the grade. */
export function deviationColumnOf(name: ClassName): string | null {
  const grade = gradeNumber(name);
  return name.kind === 'hole' ? holeColumn(name.holeLetter, grade) : shaftColumn(name.holeLetter, grade);
}

/** Whether a letter, as written for holes, lies on the material-free side: A to H. */
export function isUpToH(letter: HoleLetter): boolean {
  return letter <= 'H';
}

const letterPlaceOfK = 13;
const letterPlaceOfP = 16;

function holeColumn(letter: HoleLetter, grade: number): string | null {
  if (letter === 'JS') return null;
  if (letter === 'J') return grade >= 6 && grade <= 8 ? `esJ${grade}Um` : null;
  if (letter === 'K' || letter === 'M' || letter === 'N') return `es${letter}${grade <= 8 ? 'UpTo' : 'Above'}It8Um`;
  return `${isUpToH(letter) ? 'ei' : 'es'}${asColumnPart(letter)}Um`;
}

function shaftColumn(letter: HoleLetter, grade: number): string | null {
  if (letter === 'JS') return null;
  if (letter === 'J') return grade === 5 || grade === 6 ? 'eiJ5J6Um' : grade === 7 || grade === 8 ? `eiJ${grade}Um` : null;
  if (letter === 'K') return grade >= 4 && grade <= 7 ? 'eiK4ToK7Um' : 'eiKOtherUm';
  return `${isUpToH(letter) ? 'es' : 'ei'}${asColumnPart(letter)}Um`;
}

/** `CD` as `Cd`, as the columns of the tables are written. */
function asColumnPart(letter: string): string {
  return letter.charAt(0) + letter.slice(1).toLowerCase();
}

function takesIncrement(name: ClassName): boolean {
  const grade = gradeNumber(name);
  if (name.kind !== 'hole' || name.letterPlace < letterPlaceOfK) return false;
  return grade >= 3 && grade <= (name.letterPlace < letterPlaceOfP ? 8 : 7);
}

/** Increments are given over 3 up to and including 500 mm; elsewhere they are zero. */
function hasIncrements(row: number): boolean {
  const { overMm, upToMm } = iso2861HoleDeviations.columns;
  return (overMm[row] ?? 0) >= 3 && (upToMm[row] ?? 0) <= 500;
}

function isOver250UpTo315(row: number): boolean {
  const { overMm, upToMm } = iso2861HoleDeviations.columns;
  return (overMm[row] ?? 0) >= 250 && (upToMm[row] ?? 0) <= 315;
}

function cellOf(table: GeneratedTable, column: string, row: number): Cell {
  const cell = table.columns[column]?.[row];
  const valueUm = typeof cell === 'number' ? cell : null;
  return { table, column, row, valueUm, held: valueUm === null ? 'page' : markAt(table, column, row) };
}
