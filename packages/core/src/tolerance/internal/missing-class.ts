import { noSuchClass, type CalculationError } from '../../result/index.js';
import { iso2861ShaftDeviations } from '../../tables/generated/iso-286-1-shaft-deviations.js';
import { classLimitsAt } from './class-limits.js';
import { classNameAt, grades, holeLetters, type ClassName } from './class-names.js';
import { deviationColumnOf, deviationTableOf, exclusionOf, gradeNumber, toleranceCell } from './deviation-rule.js';
import { rangeText } from './size-steps.js';

/** The error for a class that the standard does not give at a size: why not, and the nearest that it gives. */
export function missingClass(name: ClassName, step: number, path: string): CalculationError {
  return noSuchClass(path, name.text, nearestClasses(name, step), reasonFor(name, step));
}

/**
 * Nearest given classes: the same letter in finer and coarser grades, the letters to either side in the same grade.
 * Where neither the letter nor the grade is given at all, the same is asked of the nearest grade that answers.
 */
function nearestClasses(name: ClassName, step: number): readonly string[] {
  for (let by = 0; by < grades.length; by += 1) {
    const finer = nearestInGrade(name, name.gradePlace - by, step);
    if (finer.length > 0) return finer;
    const coarser = nearestInGrade(name, name.gradePlace + by, step);
    if (coarser.length > 0) return coarser;
  }
  return [];
}

function nearestInGrade({ kind, letterPlace }: ClassName, grade: number, step: number): readonly string[] {
  return [
    firstGiven(step, grades.length, (by) => classNameAt(kind, letterPlace, grade - by)),
    firstGiven(step, grades.length, (by) => classNameAt(kind, letterPlace, grade + by)),
    firstGiven(step, holeLetters.length, (by) => classNameAt(kind, letterPlace - by, grade)),
    firstGiven(step, holeLetters.length, (by) => classNameAt(kind, letterPlace + by, grade)),
  ].flatMap((near) => (near === undefined ? [] : [near.text]));
}

function firstGiven(step: number, count: number, at: (by: number) => ClassName | undefined): ClassName | undefined {
  for (let by = 1; by < count; by += 1) {
    const name = at(by);
    if (name !== undefined && classLimitsAt(name, step) !== null) return name;
  }
  return undefined;
}

function reasonFor(name: ClassName, step: number): string {
  const exclusion = exclusionOf(name, step);
  switch (exclusion) {
    case 'a-b-up-to-1':
      return `${name.letter} is not used up to and including 1 mm`;
    case 'it14-up-to-1':
      return 'grades 14 to 18 are not used up to and including 1 mm';
    case 'n-above-it8-up-to-1':
      return 'N above grade 8 is not used up to and including 1 mm';
    case 'j-grade':
      return name.kind === 'hole' ? 'J is given in grades 6, 7 and 8 only' : 'j is given in grades 5 to 8 only';
    case null:
  }
  const column = deviationColumnOf(name);
  const given = column === null ? '' : givenRange(name, column);
  if (column !== null && !isGivenAt(name, column, step)) {
    return `${letterWithGrades(name)} is given ${given} only`;
  }
  return toleranceCell(name, step).valueUm === null
    ? `grade ${name.grade} is given up to and including 500 mm only`
    : 'the standard does not give it for this size';
}

function isGivenAt(name: ClassName, column: string, step: number): boolean {
  return typeof deviationTableOf(name.kind).columns[column]?.[Math.max(0, step - 1)] === 'number';
}

/** J, j, K and k have values of their own for some grades: the reason names them. */
function letterWithGrades(name: ClassName): string {
  if (name.holeLetter === 'J') return name.text;
  return name.kind === 'hole' && name.holeLetter === 'K' && gradeNumber(name) > 8 ? 'K above grade 8' : name.letter;
}

function givenRange(name: ClassName, column: string): string {
  const cells = deviationTableOf(name.kind).columns[column] ?? [];
  const { overMm, upToMm } = iso2861ShaftDeviations.columns;
  const first = cells.findIndex((cell) => cell !== null);
  const last = cells.findLastIndex((cell) => cell !== null);
  return rangeText(overMm[first], upToMm[last]);
}
