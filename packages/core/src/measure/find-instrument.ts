import { snapMm } from '../quantity/index.js';
import { invalidInput, outsideTable, source, type SourceReference } from '../result/index.js';
import { instruments as table } from '../tables/generated/instruments.js';
import { markAt } from '../tables/table.js';
import type { OwnInstrument } from './instrument-field.js';

export type Measures = 'outside' | 'inside' | 'depth';

/** An instrument for one size: its step and its maximum permissible error there. */
export interface Instrument {
  readonly id: string;
  readonly name: string;
  readonly measures: Measures;
  readonly resolutionMm: number;
  readonly permissibleErrorMm: number;
  readonly source: SourceReference;
}

/** An instrument of the catalogue, with the sizes it reaches. */
export interface CatalogueInstrument extends Instrument {
  readonly overMm: number;
  readonly upToMm: number;
  readonly costRankCount: number;
}

const measuresWords: readonly string[] = ['outside', 'inside', 'depth'];

const catalogue: readonly CatalogueInstrument[] = table.columns.instrument.flatMap((id, i) => {
  const measures = table.columns.measures[i] ?? '';
  const overMm = table.columns.overMm[i];
  const upToMm = table.columns.upToMm[i];
  const resolutionMm = table.columns.resolutionMm[i];
  const permissibleErrorMm = table.columns.permissibleErrorMm[i];
  if (!measuresWords.includes(measures) || overMm == null || upToMm == null || resolutionMm == null || permissibleErrorMm == null) return [];
  return [
    {
      id,
      name: table.columns.name[i] ?? id,
      measures: measures as Measures,
      overMm,
      upToMm,
      resolutionMm,
      permissibleErrorMm,
      costRankCount: table.columns.costRank[i] ?? 9,
      source: source(table.columns.rowSource[i] || table.source, markAt(table, 'permissibleErrorMm', i)),
    },
  ];
});

/**
 * Every instrument of the catalogue, a row a size range.
 * @example instrumentCatalogue().every(({ permissibleErrorMm }) => permissibleErrorMm > 0) // true
 */
export function instrumentCatalogue(): readonly CatalogueInstrument[] {
  return catalogue;
}

/**
 * The instrument of that id for a size: the workshop's own first, then the catalogue.
 * A family name stands for the instrument that measures this way: `digital-calliper` is `digital-calliper-inside` in a bore.
 * @param id catalogue id, family name, or id of an own instrument
 * @param measures what is measured with it
 * @param sizeMm [mm] size measured
 * @throws CalculationError invalid-input (unknown, or measures something else) | outside-table (size out of its range)
 * @example findInstrument('inside-micrometer-rod', 'inside', 35).measures // 'inside'
 */
export function findInstrument(id: string, measures: Measures, sizeMm: number, own: readonly OwnInstrument[] = []): Instrument {
  const mine = own.find((instrument) => instrument.id === id && instrument.measures === measures) ?? own.find((instrument) => instrument.id === id);
  if (mine !== undefined) {
    if (mine.measures !== measures) throw invalidInput('instrument', id, `an instrument that measures ${measures}`, `measures ${mine.measures}, not ${measures}`);
    return { ...mine, name: mine.name ?? mine.id, source: source('common-practice', 'practice', 'stated in the workshop file') };
  }
  const rows = rowsOf(id, measures);
  if (rows.length === 0) {
    const known = [...new Set(catalogue.filter((row) => row.measures === measures).map((row) => row.id))];
    throw invalidInput('instrument', id, `one of ${known.join(', ')}`, `unknown instrument; known for this are ${known.join(', ')}`);
  }
  const right = rows.filter((row) => row.measures === measures);
  if (right.length === 0) throw invalidInput('instrument', id, `an instrument that measures ${measures}`, `measures ${rows[0]?.measures ?? 'otherwise'}, not ${measures}`);
  // A mean of decimal readings may miss the limit of a row by a hair.
  const settledMm = snapMm(sizeMm);
  const row = right.find((candidate) => settledMm > candidate.overMm && settledMm <= candidate.upToMm);
  if (row === undefined) {
    const { overMm, upToMm } = instrumentReach(id, measures);
    throw outsideTable(`the range of ${id}`, 'sizeMm', sizeMm, { over: overMm, upTo: upToMm, unit: 'mm' });
  }
  return row;
}

/**
 * Sizes that an instrument of the catalogue reaches, all its rows together.
 * @internal
 */
export function instrumentReach(id: string, measures: Measures): { readonly name: string; readonly overMm: number; readonly upToMm: number } {
  const rows = rowsOf(id, measures).filter((row) => row.measures === measures);
  return { name: rows[0]?.name ?? id, overMm: Math.min(...rows.map(({ overMm }) => overMm)), upToMm: Math.max(...rows.map(({ upToMm }) => upToMm)) };
}

/** A family name stands for the instrument that measures this way. */
function rowsOf(id: string, measures: Measures): readonly CatalogueInstrument[] {
  return catalogue.filter((row) => row.id === id || (row.measures === measures && row.id.replace(`-${measures}`, '') === id));
}
