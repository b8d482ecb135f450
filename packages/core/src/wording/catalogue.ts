/** What a finding says, and what to do about it. `{nameMm}` stands for a parameter, written with its unit. */
export interface FindingWords {
  readonly says: string;
  readonly todo?: string;
}

/** All sentences of one language, by code. Placeholders: `{lipTravelKm}` takes the parameter of that name. */
export interface Catalogue {
  readonly language: string;
  /** How numbers are marked, and what units are called where the language has another name for them: `rpm`, `days` … */
  readonly decimalMark: '.' | ',';
  readonly units: Readonly<Record<string, string>>;
  /** How a calendar day is written, of `{year}`, `{month}` and `{day}`. */
  readonly dayForm: string;
  readonly findings: Readonly<Record<string, FindingWords>>;
  /** Steps of a plan: what the hands do. */
  readonly steps: Readonly<Record<string, string>>;
  readonly cautions: Readonly<Record<string, string>>;
  /** What was not looked at. */
  readonly notChecked: Readonly<Record<string, string>>;
  /** Names of assumed values. */
  readonly assumed: Readonly<Record<string, string>>;
  /** What an assumption changes. */
  readonly effects: Readonly<Record<string, string>>;
  /** Names of readings that can be missing, by path. */
  readonly readings: Readonly<Record<string, string>>;
  /** Headings, column names and single words of sheets and screens. */
  readonly labels: Readonly<Record<string, string>>;
  /** Words that stand for values: `metal-case`, `engine-oil`, `does not suit` … */
  readonly values: Readonly<Record<string, string>>;
  /**
   * What stands in tables, working and errors in English: instruments, materials, sources, clauses, reasons. English needs none.
   * `…` stands for anything: `'pilot hole for …'`.
   */
  readonly names: Readonly<Record<string, string>>;
}

const perRoom = ['findings', 'steps', 'notChecked', 'assumed', 'effects', 'readings', 'values'] as const;
type PerRoom = (typeof perRoom)[number];

/** What one room has to say, of each sort as far as it has any. */
export type RoomWords = { readonly [K in PerRoom]?: Catalogue[K] };

/**
 * The words of all rooms, each sort together; where two rooms know one code, the later one speaks.
 * @internal
 */
export function allTogether(rooms: readonly RoomWords[]): Pick<Catalogue, PerRoom> {
  return Object.fromEntries(perRoom.map((sort) => [sort, Object.assign({}, ...rooms.map((room) => room[sort])) as Catalogue[PerRoom]])) as unknown as Pick<Catalogue, PerRoom>;
}

/** The same words in another language: every one of them, and no other. */
export type SameWords<T> = T extends string ? string : { readonly [K in keyof T]: SameWords<T[K]> };
