/** How a printed value came to us. `page`: read on a published page. `page-mirror`: read as its opposite, of the hole or the shaft. `by hand`: worked from a published formula. */
export type How = 'page' | 'page-mirror' | 'memory' | 'by hand';

/** What a check proves. `same page`: our table was typed from it. `another page`: our table was typed from elsewhere. `worked example`: a problem solved in print. */
export type Kind = 'same page' | 'another page' | 'worked example';

/** One printed value, and how this library answers the same question. */
export interface Entry {
  readonly row: string;
  readonly column: string;
  /** As printed: its digits matter. */
  readonly printed: string;
  readonly how: How;
  /** Pages on which the value was seen, where the sheet of facts counts them. */
  readonly pagesSeen?: number;
  /** Our answer by the public interface; one for each place that is asked, such as both ends of a range. */
  readonly ours: () => readonly (number | string | null | undefined)[];
  /** Where this entry differs from its sheet. */
  readonly allowed?: Allowed;
  readonly kind?: Kind;
}

/** By how much our value may differ, and why: never more than what the page itself rounds away. */
export interface Allowed {
  readonly difference: number;
  readonly why: string;
}

/** A run of values from one place of one source. */
export interface Sheet {
  /** Id in `reference/sources.json` or in `works.json` here. */
  readonly work: string;
  /** Table, clause, page or number of the problem. */
  readonly place: string;
  readonly title: string;
  readonly unit: string;
  readonly kind: Kind;
  /** How our value is asked for. */
  readonly asked: string;
  readonly note?: string;
  /** `exactly`: no difference; `printed digits`: half of the last digit printed. */
  readonly allowed: 'exactly' | 'printed digits' | Allowed;
  readonly layout: 'grid' | 'list';
  /** Order of the columns of a grid; left out: as they come. */
  readonly columns?: readonly string[];
  readonly entries: readonly Entry[];
}
