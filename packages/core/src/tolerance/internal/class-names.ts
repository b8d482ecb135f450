import { invalidInput, noSuchClass, type CalculationError } from '../../result/index.js';

export type PartKind = 'hole' | 'shaft';

/** Letters of the fundamental deviations in the order of the standard, as written for holes. */
export const holeLetters = [
  'A', 'B', 'C', 'CD', 'D', 'E', 'EF', 'F', 'FG', 'G', 'H', 'J', 'JS', 'K',
  'M', 'N', 'P', 'R', 'S', 'T', 'U', 'V', 'X', 'Y', 'Z', 'ZA', 'ZB', 'ZC',
] as const;

/** Standard tolerance grades from fine to coarse, as written in a class: `H01` is grade 01, `H0` grade 0. */
export const grades = [
  '01', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12', '13', '14', '15', '16', '17', '18',
] as const;

export type HoleLetter = (typeof holeLetters)[number];
type Grade = (typeof grades)[number];

/** A tolerance class as written: `JS7` is letter JS, grade 7, for a hole. */
export interface ClassName {
  readonly text: string;
  readonly kind: PartKind;
  /** As written: small for shafts. */
  readonly letter: string;
  /** The same letter in capitals, whichever the kind. */
  readonly holeLetter: HoleLetter;
  readonly letterPlace: number;
  readonly grade: Grade;
  readonly gradePlace: number;
  /** Place among all class names of both kinds. */
  readonly place: number;
}

/** All spellings: 28 letters by 20 grades, holes first, in the order of the standard. */
export const classNames: readonly ClassName[] = (['hole', 'shaft'] as const).flatMap((kind, kindPlace) =>
  holeLetters.flatMap((holeLetter, letterPlace) =>
    grades.map((grade, gradePlace) => {
      const letter = kind === 'hole' ? holeLetter : holeLetter.toLowerCase();
      const place = (kindPlace * holeLetters.length + letterPlace) * grades.length + gradePlace;
      return { text: `${letter}${grade}`, kind, letter, holeLetter, letterPlace, grade, gradePlace, place };
    }),
  ),
);

const byText = new Map(classNames.map((name) => [name.text, name]));

/** What a class may look like, for messages. */
const understoodClass = 'a letter and a grade such as H7, JS6 (holes) or h6, p6, za10 (shafts)';

/** The class name written in a text; spaces do not count. Throws `CalculationError`. */
export function readClassName(text: string, path: string): ClassName {
  return byText.get(text) ?? byText.get(text.replace(/\s+/gu, '')) ?? refuse(text, path);
}

/** The class of another letter and grade of the same kind, by their places; undefined beyond either end. */
export function classNameAt(kind: PartKind, letterPlace: number, gradePlace: number): ClassName | undefined {
  if (letterPlace < 0 || letterPlace >= holeLetters.length || gradePlace < 0 || gradePlace >= grades.length) return undefined;
  return classNames[((kind === 'hole' ? 0 : 1) * holeLetters.length + letterPlace) * grades.length + gradePlace];
}

function refuse(text: string, path: string): never {
  throw refusal(text, path);
}

function refusal(text: string, path: string): CalculationError {
  const [, letter = '', grade = ''] = /^([A-Za-z]{1,3})(\d{1,3})$/u.exec(text.replace(/\s+/gu, '')) ?? [];
  if (letter === '') return invalidInput(path, text, understoodClass);
  if (/^it$/iu.test(letter)) return invalidInput(path, text, `${understoodClass}; IT${grade} is a grade alone and has no position`);
  const capital = letter.toUpperCase();
  const isHole = letter === capital;
  const hasKnownLetter = (holeLetters as readonly string[]).includes(capital);
  if (hasKnownLetter && !isHole && letter !== letter.toLowerCase()) {
    return invalidInput(path, text, `${capital}${grade} for a hole or ${capital.toLowerCase()}${grade} for a shaft`);
  }
  const isKnownGrade = (grades as readonly string[]).includes(grade);
  if (!isKnownGrade && Number(grade) <= 18) return invalidInput(path, text, understoodClass);
  if (!hasKnownLetter && letter.length > 1) return invalidInput(path, text, understoodClass);
  const usedGrade = isKnownGrade ? grade : '18';
  const usedLetters = hasKnownLetter ? [capital] : lettersBeside(capital);
  const nearest = usedLetters.map((near) => `${isHole ? near : near.toLowerCase()}${usedGrade}`);
  const why = hasKnownLetter ? 'grades run 01, 0, 1 to 18' : `ISO 286 has no letter ${letter}`;
  return noSuchClass(path, text, nearest, why);
}

function lettersBeside(capital: string): readonly string[] {
  const single = holeLetters.filter((letter) => letter.length === 1);
  const after = single.findIndex((letter) => letter > capital);
  return after < 0 ? single.slice(-1) : single.slice(Math.max(0, after - 1), after + 1);
}
