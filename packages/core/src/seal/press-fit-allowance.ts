import { outsideTable, source, type SourceReference } from '../result/index.js';
import { pressFitAllowanceInch as inchTable } from '../tables/generated/press-fit-allowance-inch.js';
import { pressFitAllowance as table } from '../tables/generated/press-fit-allowance.js';
import { markAt } from '../tables/table.js';
import { mmPerInch } from './bore-band.js';
import type { RequirementSet } from './requirement-set.js';
import type { Construction } from './seal-field.js';

/** How much larger than the nominal bore a seal is made. */
export interface PressFitAllowance {
  readonly allowanceMinMm: number;
  readonly allowanceMaxMm: number;
  readonly outOfRoundMaxMm: number | null;
  readonly set: RequirementSet;
  readonly row: string;
  readonly source: SourceReference;
}

/**
 * Allowance of the outside diameter over the nominal bore, by construction and bore.
 * ISO rows come first under `iso-6194-1`; a size or construction that ISO does not give is answered by DIN 3760, and `set` says so.
 * No table gives a half-rubber seal an allowance of its own: its bare half is answered by the rows of a metal case.
 * @param boreMm [mm] nominal bore, over 0, up to and including 500
 * @throws CalculationError outside-table
 * @example pressFitAllowanceOf('iso-6194-1', 'metal-case', 35).allowanceMinMm // 0.08
 */
export function pressFitAllowanceOf(set: RequirementSet, asked: Construction, boreMm: number): PressFitAllowance {
  const construction = asked === 'half-rubber' ? 'metal-case' : asked;
  const found = (set === 'rma-inch' ? inchRowOf(construction, boreMm) : rowOf(set, construction, boreMm)) ?? (set === 'iso-6194-1' ? rowOf('din-3760', construction, boreMm) : undefined);
  if (found !== undefined) return found;
  const uppers = table.columns.upToMm.filter((_, i) => table.columns.set[i] === set && table.columns.construction[i] === construction);
  throw outsideTable(`the press-fit allowances of ${set} for ${construction}`, 'seal.outsideMm', boreMm, { over: 0, upTo: Math.max(0, ...uppers), unit: 'mm' });
}

function rowOf(set: RequirementSet, construction: Construction, boreMm: number): PressFitAllowance | undefined {
  const { columns } = table;
  for (let i = 0; i < table.rowCount; i += 1) {
    const over = columns.overMm[i];
    const upTo = columns.upToMm[i];
    const allowanceMinMm = columns.allowanceMinMm[i];
    const allowanceMaxMm = columns.allowanceMaxMm[i];
    if (columns.set[i] !== set || columns.construction[i] !== construction) continue;
    if (over == null || upTo == null || allowanceMinMm == null || allowanceMaxMm == null) continue;
    if (boreMm <= over || boreMm > upTo) continue;
    return {
      allowanceMinMm,
      allowanceMaxMm,
      outOfRoundMaxMm: columns.outOfRoundMaxMm[i] ?? null,
      set,
      row: `${set}, ${construction}, over ${over} up to ${upTo} mm`,
      source: sourceOfRow(set, markAt(table, 'allowanceMinMm', i)),
    };
  }
  return undefined;
}

function inchRowOf(construction: Construction, boreMm: number): PressFitAllowance | undefined {
  const { columns } = inchTable;
  const boreIn = (boreMm * 5) / 127;
  for (let i = 0; i < inchTable.rowCount; i += 1) {
    const over = columns.overIn[i];
    const upTo = columns.upToIn[i];
    const least = columns.allowanceMinIn[i];
    const most = columns.allowanceMaxIn[i];
    if (columns.construction[i] !== construction || over == null || upTo == null || least == null || most == null) continue;
    if (boreIn <= over || boreIn > upTo) continue;
    const roundIn = columns.outOfRoundMaxIn[i];
    return {
      allowanceMinMm: least * mmPerInch,
      allowanceMaxMm: most * mmPerInch,
      outOfRoundMaxMm: roundIn == null ? null : roundIn * mmPerInch,
      set: 'rma-inch',
      row: `rma-inch, ${construction}, over ${over} up to ${upTo} in`,
      source: source('rma-os-4', markAt(inchTable, 'allowanceMinIn', i), 'press-fit allowance'),
    };
  }
  return undefined;
}

/** The page behind the ISO rows is GB 13871; that it carries ISO's table is from memory, and so is the last row. */
function sourceOfRow(set: RequirementSet, held: SourceReference['held']): SourceReference {
  if (set === 'iso-6194-1' && held === 'page') return source('gb-13871-1992', held, 'press-fit allowance, taken as ISO 6194-1:1982');
  return source(sourceOf[set], held, 'press-fit allowance');
}

const sourceOf: Readonly<Record<RequirementSet, string>> = {
  'iso-6194-1': 'iso-6194-1-2007',
  'din-3760': 'din-3760-1996',
  'rma-metric': 'rma-metric',
  'rma-inch': 'rma-os-4',
};
