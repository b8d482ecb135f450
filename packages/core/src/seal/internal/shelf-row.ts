import { parseLength } from '../../quantity/index.js';
import { CalculationError } from '../../result/index.js';
import type { Construction, LipMaterial } from '../seal-field.js';
import type { ShelfColumn, ShelfColumns } from './shelf-columns.js';

/** One seal on the shelf, as its row says. Null: the row does not say. */
export interface ShelfSeal {
  readonly line: number;
  readonly id: string;
  readonly place: string;
  readonly shaftMm: number;
  readonly outsideMm: number;
  readonly widthMm: number;
  readonly construction: Construction | null;
  readonly lipMaterial: LipMaterial | null;
  readonly hasDustLip: boolean | null;
  readonly pieceCount: number | null;
}

/** Why a row was skipped. */
export interface BadRow {
  readonly line: number;
  readonly code: 'row-has-no-size' | 'row-cell-not-understood' | 'row-size-impossible';
  readonly column: string;
  readonly received: string;
}

/** Rubbers as shelves write them: ISO 1629 signs, and the plain words. */
const rubbers: Readonly<Record<string, LipMaterial>> = {
  nbr: 'NBR', nitrile: 'NBR', nitrilerubber: 'NBR', hnbr: 'HNBR', acm: 'ACM', polyacrylate: 'ACM', vmq: 'VMQ', mvq: 'VMQ', silicone: 'VMQ',
  fkm: 'FKM', fpm: 'FKM', fluororubber: 'FKM', epdm: 'EPDM', ptfe: 'PTFE',
};

/** Outsides as shelves write them: plain words, and the letters of DIN 3760 (A rubber, B metal, C metal with inner case; S a dust lip). */
const outsides: Readonly<Record<string, { readonly construction: Construction; readonly hasDustLip?: boolean }>> = {
  metal: { construction: 'metal-case' }, metalcase: { construction: 'metal-case' }, steel: { construction: 'metal-case' }, b: { construction: 'metal-case' }, c: { construction: 'metal-case' },
  bs: { construction: 'metal-case', hasDustLip: true }, cs: { construction: 'metal-case', hasDustLip: true },
  rubber: { construction: 'rubber-covered' }, rubbercovered: { construction: 'rubber-covered' }, a: { construction: 'rubber-covered' }, as: { construction: 'rubber-covered', hasDustLip: true },
  halfrubber: { construction: 'half-rubber' }, rubberandmetal: { construction: 'half-rubber' },
  ribbed: { construction: 'rubber-covered-ribbed' }, rubberribbed: { construction: 'rubber-covered-ribbed' }, rubbercoveredribbed: { construction: 'rubber-covered-ribbed' },
};

const answers: Readonly<Record<string, boolean>> = { yes: true, y: true, true: true, 1: true, x: true, no: false, n: false, false: false, 0: false };

/** Reads one row; says what was not understood. Cells beyond the header are left alone. */
export function readShelfRow(cells: readonly string[], line: number, columns: ShelfColumns): ShelfSeal | BadRow {
  const cell = (column: ShelfColumn | undefined) => (column === undefined ? '' : (cells[column.index] ?? '').trim());
  const bad = (code: BadRow['code'], column: string, received: string): BadRow => ({ line, code, column, received: received.slice(0, 60) });
  const sizes = sizesIn(cells, columns);
  if ('column' in sizes) return bad(sizes.received === '' ? 'row-has-no-size' : 'row-cell-not-understood', sizes.column, sizes.received);
  const { shaftMm, outsideMm, widthMm } = sizes;
  if (!(shaftMm > 0 && outsideMm > shaftMm && widthMm > 0 && shaftMm <= 500 && outsideMm <= 530 && widthMm <= 60)) return bad('row-size-impossible', columns.size?.header ?? columns.shaft?.header ?? '', `${shaftMm} × ${outsideMm} × ${widthMm} mm`);
  const key = (text: string) => text.toLowerCase().replaceAll(/[^a-z0-9]/gu, '');
  const known = <T>(table: Readonly<Record<string, T>>, text: string): T | null | undefined => (text === '' ? null : Object.hasOwn(table, key(text)) ? table[key(text)] : undefined);
  const lipMaterial = known(rubbers, cell(columns.lipMaterial));
  if (lipMaterial === undefined) return bad('row-cell-not-understood', columns.lipMaterial?.header ?? '', cell(columns.lipMaterial));
  const outside = known(outsides, cell(columns.construction));
  if (outside === undefined) return bad('row-cell-not-understood', columns.construction?.header ?? '', cell(columns.construction));
  const dust = known(answers, cell(columns.dustLip));
  if (dust === undefined) return bad('row-cell-not-understood', columns.dustLip?.header ?? '', cell(columns.dustLip));
  const count = cell(columns.count);
  if (count !== '' && !/^\d{1,9}$/u.test(count)) return bad('row-cell-not-understood', columns.count?.header ?? '', count);
  return {
    line, shaftMm, outsideMm, widthMm, lipMaterial,
    id: cell(columns.id).slice(0, 120),
    place: cell(columns.place).slice(0, 120),
    construction: outside?.construction ?? null,
    hasDustLip: dust ?? outside?.hasDustLip ?? null,
    pieceCount: count === '' ? null : Number(count),
  };
}

type Sizes = { readonly shaftMm: number; readonly outsideMm: number; readonly widthMm: number };

function sizesIn(cells: readonly string[], columns: ShelfColumns): Sizes | { readonly column: string; readonly received: string } {
  const { shaft, outside, width, size } = columns;
  if (shaft !== undefined && outside !== undefined && width !== undefined) {
    const values = [shaft, outside, width].map((column) => lengthMm((cells[column.index] ?? '').trim(), column.unit));
    const wrong = [shaft, outside, width].find((_, i) => values[i] === null);
    if (wrong === undefined) return { shaftMm: values[0] ?? 0, outsideMm: values[1] ?? 0, widthMm: values[2] ?? 0 };
    if (size === undefined) return { column: wrong.header, received: (cells[wrong.index] ?? '').trim() };
  }
  if (size === undefined) return { column: '', received: '' };
  const received = (cells[size.index] ?? '').trim();
  const parts = received.split(/\s*[x×*]\s*/iu);
  const values = parts.map((part) => lengthMm(part, size.unit));
  const [shaftMm, outsideMm, widthMm] = values;
  if (parts.length !== 3 || shaftMm == null || outsideMm == null || widthMm == null) return { column: size.header, received };
  return { shaftMm, outsideMm, widthMm };
}

const plainNumber = /^\d{1,5}(?:[.,]\d{1,6})?$/u;

/** A length of a cell; null where it is none. Plain numbers need no lexer. */
function lengthMm(text: string, unit: 'mm' | 'in'): number | null {
  if (unit === 'mm' && plainNumber.test(text)) return Number(text.replace(',', '.'));
  if (text === '' || text.length > 40) return null;
  try {
    return parseLength(text, { defaultUnit: unit }).valueMm;
  } catch (error) {
    if (error instanceof CalculationError) return null;
    throw error;
  }
}
