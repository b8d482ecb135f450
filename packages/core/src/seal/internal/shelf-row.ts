import { parseLength } from '../../quantity/index.js';
import { CalculationError } from '../../result/index.js';
import type { Construction, LipMaterial } from '../seal-field.js';
import { plainKey, type ShelfColumn, type ShelfColumns } from './shelf-columns.js';

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
  /** Cells beside the size that were not understood. */
  readonly unread: readonly { readonly role: 'lipMaterial' | 'construction' | 'dustLip' | 'count'; readonly column: string; readonly received: string }[];
}

/** Why a row was skipped. */
export interface BadRow {
  readonly line: number;
  readonly code: 'row-has-no-size' | 'row-cell-not-understood' | 'row-size-impossible' | 'row-size-likely-inches';
  readonly column: string;
  readonly received: string;
}

/** Rubbers as shelves write them: ISO 1629 signs, and the plain words, English and German. */
const rubbers: Readonly<Record<string, LipMaterial>> = {
  nbr: 'NBR', nitrile: 'NBR', nitrilerubber: 'NBR', hnbr: 'HNBR', acm: 'ACM', polyacrylate: 'ACM', vmq: 'VMQ', mvq: 'VMQ', silicone: 'VMQ', silikon: 'VMQ', nitril: 'NBR', nitrilkautschuk: 'NBR', polyacrylat: 'ACM', fluorkautschuk: 'FKM',
  fkm: 'FKM', fpm: 'FKM', fluororubber: 'FKM', epdm: 'EPDM', ptfe: 'PTFE',
};

/** Outsides as shelves write them: plain words, English and German, and the letters of DIN 3760 (A rubber, B metal, C metal with inner case; S a dust lip). */
const outsides: Readonly<Record<string, { readonly construction: Construction; readonly hasDustLip?: boolean }>> = {
  metal: { construction: 'metal-case' }, metalcase: { construction: 'metal-case' }, steel: { construction: 'metal-case' }, b: { construction: 'metal-case' }, c: { construction: 'metal-case' },
  metall: { construction: 'metal-case' }, metallmantel: { construction: 'metal-case' }, stahl: { construction: 'metal-case' },
  gummi: { construction: 'rubber-covered' }, gummiummantelt: { construction: 'rubber-covered' }, halbgummi: { construction: 'half-rubber' }, gerillt: { construction: 'rubber-covered-ribbed' },
  bs: { construction: 'metal-case', hasDustLip: true }, cs: { construction: 'metal-case', hasDustLip: true },
  rubber: { construction: 'rubber-covered' }, rubbercovered: { construction: 'rubber-covered' }, a: { construction: 'rubber-covered' }, as: { construction: 'rubber-covered', hasDustLip: true },
  halfrubber: { construction: 'half-rubber' }, rubberandmetal: { construction: 'half-rubber' },
  ribbed: { construction: 'rubber-covered-ribbed' }, rubberribbed: { construction: 'rubber-covered-ribbed' }, rubbercoveredribbed: { construction: 'rubber-covered-ribbed' },
};

const answers: Readonly<Record<string, boolean>> = { yes: true, y: true, true: true, 1: true, x: true, ja: true, j: true, nein: false, no: false, n: false, false: false, 0: false };

/** Reads one row. Without a size it is none; what else was not understood goes with it. Cells beyond the header are left alone. */
export function readShelfRow(cells: readonly string[], line: number, columns: ShelfColumns): ShelfSeal | BadRow {
  const cell = (column: ShelfColumn | undefined) => (column === undefined ? '' : (cells[column.index] ?? '').trim());
  const bad = (code: BadRow['code'], column: string, received: string): BadRow => ({ line, code, column, received: received.slice(0, 60) });
  const sizes = sizesIn(cells, columns);
  if ('column' in sizes) return bad(sizes.received === '' ? 'row-has-no-size' : bareFraction.test(sizes.received) ? 'row-size-likely-inches' : 'row-cell-not-understood', sizes.column, sizes.received);
  const { shaftMm, outsideMm, widthMm } = sizes;
  const sizeText = `${shaftMm} × ${outsideMm} × ${widthMm} mm`;
  const sizeColumn = columns.size?.header ?? columns.shaft?.header ?? '';
  if (shaftMm > 0 && outsideMm > shaftMm && widthMm > 0 && widthMm < narrowestMm) return bad('row-size-likely-inches', sizeColumn, sizeText);
  if (!(shaftMm > 0 && outsideMm > shaftMm && widthMm > 0 && shaftMm <= 500 && outsideMm <= 530 && widthMm <= 60)) return bad('row-size-impossible', sizeColumn, sizeText);
  const unread: { role: ShelfSeal['unread'][number]['role']; column: string; received: string }[] = [];
  const known = <T>(table: Readonly<Record<string, T>>, role: ShelfSeal['unread'][number]['role']): T | null => {
    const text = cell(columns[role]);
    const key = plainKey(text);
    if (text !== '' && Object.hasOwn(table, key)) return table[key] ?? null;
    if (text !== '') unread.push({ role, column: columns[role]?.header ?? '', received: text.slice(0, 60) });
    return null;
  };
  const lipMaterial = known(rubbers, 'lipMaterial');
  const outside = known(outsides, 'construction');
  const dust = known(answers, 'dustLip');
  const count = cell(columns.count);
  const isCount = /^\d{1,9}$/u.test(count);
  if (count !== '' && !isCount) unread.push({ role: 'count', column: columns.count?.header ?? '', received: count.slice(0, 60) });
  return {
    line, shaftMm, outsideMm, widthMm, lipMaterial, unread,
    id: cell(columns.id).slice(0, 120),
    place: cell(columns.place).slice(0, 120),
    construction: outside?.construction ?? null,
    hasDustLip: dust ?? outside?.hasDustLip ?? null,
    pieceCount: isCount ? Number(count) : null,
  };
}

/** A fraction without a unit behind it: nobody says whether it is inches. */
const bareFraction = /^[\d\s.,/⁄x×*]*(?:\d[/⁄](?:2|4|8|16|32|64)(?!\d)|[¼½¾⅐-⅞])[\d\s/⁄¼½¾⅐-⅞.,x×*]*$/u;

/** [mm] Narrower than any seal of the standard lists; what is, was meant in inches. */
const narrowestMm = 2;

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
  const parts = (threeNumbers.exec(received)?.slice(1) ?? received.split(/\s*[x×*]\s*/iu)).map((part) => part ?? '');
  const values = parts.map((part) => lengthMm(part, size.unit));
  const [shaftMm, outsideMm, widthMm] = values;
  if (parts.length !== 3 || shaftMm == null || outsideMm == null || widthMm == null) return { column: size.header, received };
  return { shaftMm, outsideMm, widthMm };
}

/** 20-35-7 or 20/35/7: of three plain numbers, none can be a fraction of the one beside it. */
const threeNumbers = /^(\d{1,3}(?:[.,]\d{1,3})?)\s*[-/–]\s*(\d{1,3}(?:[.,]\d{1,3})?)\s*[-/–]\s*(\d{1,3}(?:[.,]\d{1,3})?)(?:\s*mm)?$/u;

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
