import { describe, expect, expectTypeOf, it } from 'vitest';
import { among } from './among.js';
import type { Held } from './held.js';
import { markAt, rowAt, rowsOf } from './table.js';

const sizes: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: { readonly overMm: readonly number[]; readonly depthMm: readonly (number | null)[]; readonly set: readonly ('one' | 'two')[] };
  readonly marks: { readonly depthMm?: readonly Held[] };
} = {
  id: 'sizes',
  source: 'plain-geometry',
  clause: '',
  held: 'page',
  rowCount: 2,
  columns: { overMm: [0, 10], depthMm: [0.5, null], set: ['one', 'two'] },
  marks: { depthMm: ['memory', 'page'] },
};

describe('rowsOf and rowAt', () => {
  it('turns columns into typed rows', () => {
    expect(rowsOf(sizes)).toEqual([
      { overMm: 0, depthMm: 0.5, set: 'one' },
      { overMm: 10, depthMm: null, set: 'two' },
    ]);
    const row = rowAt(sizes, 1);
    expectTypeOf(row.overMm).toEqualTypeOf<number>();
    expectTypeOf(row.depthMm).toEqualTypeOf<number | null>();
    expectTypeOf(row.set).toEqualTypeOf<'one' | 'two'>();
    expect(row.overMm).toBe(10);
  });

  it('refuses a row that is not there', () => {
    expect(() => rowAt(sizes, 2)).toThrow(RangeError);
    expect(() => rowAt(sizes, -1)).toThrow(RangeError);
    expect(() => rowAt(sizes, 0.5)).toThrow(RangeError);
  });
});

describe('markAt', () => {
  it('gives the mark of the cell where it has one, else that of the table', () => {
    expect(markAt(sizes, 'depthMm', 0)).toBe('memory');
    expect(markAt(sizes, 'depthMm', 1)).toBe('page');
    expect(markAt(sizes, 'overMm', 0)).toBe('page');
    expect(() => markAt(sizes, 'overMm', 5)).toThrow(RangeError);
  });

  it('takes the held column of the row where the table has one', () => {
    const rated = { ...sizes, columns: { ...sizes.columns, held: ['memory', 'practice'] as readonly Held[] }, marks: {} };
    expect(markAt(rated, 'overMm', 1)).toBe('practice');
    expect(markAt(rated, 'held', 0)).toBe('memory');
  });
});

describe('a column by the places of its few values', () => {
  it('takes a letter for each, and two where the letters run out', () => {
    expect(among(['steel', 'copper'], 'aab')).toEqual(['steel', 'steel', 'copper']);
    const many = Array.from({ length: 54 }, (_, i) => i);
    expect(among(many, 'aaabaZbabb')).toEqual([0, 1, 51, 52, 53]);
    expect(among(many.slice(0, 52), 'aZ')).toEqual([0, 51]);
  });
});
