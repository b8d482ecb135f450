import { describe, expect, test } from 'vitest';
import { shelfMatch, shelfMatcher, type ShelfMatchInput, type ShelfOptions } from './shelf-match.js';
import { standardSizes } from '../tables/generated/standard-sizes.js';
import type { Situation } from './situation-field.js';

const place: Situation = { seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } };
const header = ['part', 'shaft', 'outside', 'width', 'rubber', 'type', 'dust lip', 'qty', 'bin'];
const list = (rows: readonly (readonly string[])[], more: Partial<ShelfMatchInput> = {}, names: readonly string[] = header) => shelfMatch.run({ ...place, header: [...names], rows: rows.map((row) => [...row]), ...more });
const row = (cells: readonly string[], names: readonly string[] = header, more: Partial<ShelfMatchInput> = {}) => {
  const { candidates, badRows, nearMisses } = list([cells], more, names);
  return candidates[0] ?? badRows[0] ?? nearMisses[0];
};
const plain = ['A1', '20', '35', '7', 'NBR', 'metal', '', '3', 'drawer 4'];
const withCell = (at: number, text: string) => plain.map((cell, i) => (i === at ? text : cell));

describe('what a row says', () => {
  test('all of it is told again', () => {
    expect(row(plain)).toMatchObject({ line: 2, id: 'A1', place: 'drawer 4', pieceCount: 3, shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' });
    expect(row([' A1 ', ' 20 ', '35 mm', '7,0', ' nbr ', ' Metal case ', ' ', '', ' '])).toMatchObject({ id: 'A1', place: '', pieceCount: null, shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' });
  });

  // ISO 1629 signs and plain words.
  test.each([
    ['nitrile', 'NBR'], ['Nitrile rubber', 'NBR'], ['HNBR', 'HNBR'], ['ACM', 'ACM'], ['polyacrylate', 'ACM'], ['VMQ', 'VMQ'], ['MVQ', 'VMQ'], ['silicone', 'VMQ'],
    ['FKM', 'FKM'], ['FPM', 'FKM'], ['fluoro-rubber', 'FKM'], ['EPDM', 'EPDM'], ['PTFE', 'PTFE'], ['', null],
  ])('rubber %s: %s', (text, lipMaterial) => {
    expect(row(withCell(4, text))).toMatchObject({ lipMaterial });
  });

  // Letters of DIN 3760: A rubber, B metal, C metal with an inner case; S a dust lip.
  test.each([
    ['metal', 'metal-case'], ['steel', 'metal-case'], ['B', 'metal-case'], ['C', 'metal-case'], ['BS', 'metal-case'], ['CS', 'metal-case'],
    ['rubber', 'rubber-covered'], ['rubber covered', 'rubber-covered'], ['A', 'rubber-covered'], ['AS', 'rubber-covered'],
    ['half rubber', 'half-rubber'], ['rubber and metal', 'half-rubber'], ['ribbed', 'rubber-covered-ribbed'], ['rubber-ribbed', 'rubber-covered-ribbed'], ['rubber covered, ribbed', 'rubber-covered-ribbed'], ['', null],
  ])('outside %s: %s', (text, construction) => {
    expect(row(withCell(5, text))).toMatchObject({ construction });
  });

  test.each<[number, string, string]>([[1, 'abc', 'shaft'], [2, '3 5', 'outside'], [3, 'x', 'width']])('size in cell %d "%s" is not understood, and named', (at, received, column) => {
    expect(row(withCell(at, received))).toEqual({ line: 2, code: 'row-cell-not-understood', column, received });
  });

  test.each<[number, string, string]>([[4, 'wood', 'rubber'], [4, '!', 'rubber'], [5, 'Z', 'type'], [5, 'toString', 'type']])('cell %d "%s": nobody can tell what the seal is made of, and why stands there', (at, received, column) => {
    const found = list([withCell(at, received)]).candidates[0];
    expect(found?.verdict).toBe('cannot tell');
    expect(found?.reasons.find(({ code }) => code === 'list-cell-not-understood')).toMatchObject({ severity: 'unknown', role: 'deciding', parameters: { column, received } });
    // The one cell is told once, and not as one that was left empty.
    expect(found?.reasons.map(({ code }) => code)).not.toContain('list-does-not-say');
  });

  test.each<[number, string, string]>([[6, 'maybe', 'dust lip'], [7, '3.5', 'qty'], [7, '-1', 'qty'], [7, '1234567890', 'qty']])('cell %d "%s" is left out, with a note', (at, received, column) => {
    const { place: situation, more } = { place, more: { bore: { material: 'gjl250', readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.01] }] }, shaft: { readings: [{ instrument: 'outside-micrometer', valuesMm: [19.98] }] } } };
    const found = shelfMatch.run({ ...situation, ...more, header, rows: [withCell(at, received)] }).candidates[0];
    expect(found).toMatchObject({ pieceCount: at === 7 ? null : 3 });
    expect(found?.reasons.find(({ code }) => code === 'list-cell-left-out')).toMatchObject({ severity: 'note', parameters: { column, received } });
  });

  test('German lists are read as English ones, umlauts or none', () => {
    const german = ['Bezeichnung', 'Welle', 'Außendurchmesser', 'Breite', 'Werkstoff', 'Ausführung', 'Staublippe', 'Stück', 'Lagerplatz'];
    const cells = ['A1', '20', '35', '7,0', 'Nitril', 'Gummi', 'ja', '3', 'Fach 4'];
    const wanted = { id: 'A1', place: 'Fach 4', pieceCount: 3, shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'rubber-covered', lipMaterial: 'NBR' };
    expect(row(cells, german)).toMatchObject(wanted);
    expect(row(cells, ['Artikelnummer', 'Wellendurchmesser', 'Aussen', 'Höhe', 'Gummi', 'Bauform', 'Schutzlippe', 'Anzahl', 'Schublade'])).toMatchObject(wanted);
    expect(row(['20 x 35 x 7', 'Silikon', 'Metall'], ['Größe', 'Mischung', 'Mantel'])).toMatchObject({ shaftMm: 20, lipMaterial: 'VMQ', construction: 'metal-case' });
  });

  test('sizes that would be narrower than any seal are inches', () => {
    expect(row(['0.787x1.378x0.276', 'NBR', 'metal'], ['size', 'rubber', 'type'])).toEqual({ line: 2, code: 'row-size-likely-inches', column: 'size', received: '0.787 × 1.378 × 0.276 mm' });
    expect(row(withCell(3, '1.99'))).toMatchObject({ code: 'row-size-likely-inches', column: 'shaft' });
    expect(row(withCell(3, '2'))).toMatchObject({ widthMm: 2 });
    // The narrowest of the standard lists is wider.
    expect(Math.min(...standardSizes.columns.widthMm)).toBeGreaterThan(2);
  });

  test('a cell that is too long is told in part', () => {
    expect(row(withCell(1, 'w'.repeat(200)))).toMatchObject({ received: 'w'.repeat(60) });
    for (const at of [4, 7]) expect(JSON.stringify(row(withCell(at, 'w'.repeat(200))))).not.toContain('w'.repeat(61));
    expect(row(withCell(0, 'a'.repeat(200)))).toMatchObject({ id: 'a'.repeat(120) });
    expect(row(withCell(8, 'b'.repeat(200)))).toMatchObject({ place: 'b'.repeat(120) });
    expect(row(withCell(7, '123456789'))).toMatchObject({ pieceCount: 123_456_789 });
  });

  test('a row without a size, and sizes that no seal has', () => {
    expect(row(withCell(2, ''))).toEqual({ line: 2, code: 'row-has-no-size', column: 'outside', received: '' });
    const impossible = (shaft: string, outside: string, width: string) => row(['A1', shaft, outside, width, 'NBR', 'metal', '', '', '']);
    expect(impossible('0', '35', '7')).toEqual({ line: 2, code: 'row-size-impossible', column: 'shaft', received: '0 × 35 × 7 mm' });
    for (const [shaft, outside, width] of [['35', '35', '7'], ['20', '35', '0'], ['501', '520', '7'], ['500', '531', '7'], ['20', '35', '61']] as const) expect(impossible(shaft, outside, width)).toMatchObject({ code: 'row-size-impossible' });
    const large = { seal: { ...place.seal, shaftMm: 500, outsideMm: 530, widthMm: 60 } };
    expect(list([['A1', '500', '530', '60', 'NBR', 'metal', '', '', '']], large).badRows).toEqual([]);
  });

  test('sizes in one cell, or in inches', () => {
    const bySize = ['size', 'rubber', 'type'];
    for (const text of ['20x35x7', '20 × 35 × 7', '20*35*7', '20X35X7', '20 mm x 35 mm x 7 mm', '20-35-7', '20 - 35 - 7 mm', '20/35/7', '20,0/35,0/7,0', '20–35–7']) expect(row([text, 'NBR', 'metal'], bySize)).toMatchObject({ shaftMm: 20, outsideMm: 35, widthMm: 7, id: '' });
    for (const received of ['20x35', '20-35', '20/35', '20-35-7-8', '3/4-1/2-7', '20x35x7x8', '20xx7', 'a x 35 x 7']) expect(row([received, 'NBR', 'metal'], bySize)).toEqual({ line: 2, code: 'row-cell-not-understood', column: 'size', received });
    for (const received of ['3/4 x 1 3/8 x 1/4', '¾ × 1⅜ × ¼']) expect(row([received, 'NBR', 'metal'], bySize)).toEqual({ line: 2, code: 'row-size-likely-inches', column: 'size', received });
    expect(row(['3/4', '1 3/8', '1/4', 'NBR', 'metal'], ['shaft', 'outside', 'width', 'rubber', 'type'])).toEqual({ line: 2, code: 'row-size-likely-inches', column: 'shaft', received: '3/4' });
    expect(row(['', 'NBR', 'metal'], bySize)).toMatchObject({ code: 'row-has-no-size', column: 'size' });
    expect(row(['0.75', '1.375', '1/4', 'NBR', 'metal'], ['shaft [in]', 'outside (inch)', 'width_in', 'rubber', 'type'], { seal: { ...place.seal, shaftMm: 19.05, outsideMm: 34.925, widthMm: 6.35 } })).toMatchObject({ shaftMm: 19.05, outsideMm: 34.925, widthMm: 6.35 });
    expect(row(['0.75', '35 mm', '7 mm', 'NBR', 'metal'], ['shaft', 'outside', 'width', 'rubber', 'type'], { unit: 'in' })).toMatchObject({ shaftMm: 19.05, outsideMm: 35, widthMm: 7 });
  });

  test('a size column helps out where the three columns say nothing', () => {
    const names = ['shaft', 'outside', 'width', 'size', 'rubber', 'type'];
    expect(row(['', '', '', '20x35x7', 'NBR', 'metal'], names)).toMatchObject({ shaftMm: 20, outsideMm: 35, widthMm: 7 });
    expect(row(['20', '35', '7', 'odd', 'NBR', 'metal'], names)).toMatchObject({ shaftMm: 20 });
    expect(row(['', '', '', '', 'NBR', 'metal'], names)).toMatchObject({ code: 'row-has-no-size', column: 'size' });
  });
});

describe('the header', () => {
  test.each<[readonly string[]]>([
    [['d', 'D', 'b']], [['d [mm]', 'D (mm)', 'b mm']], [['Shaft diameter', 'Housing bore', 'Height']], [['d1', 'd2', 'w']], [['inside', 'OD', 'thickness']], [['\uFEFFshaft', 'outside', 'width']], [['inner diameter', 'outer_diameter', 'H']],
  ])('%j are shaft, outside and width', (names) => {
    expect(row(['20', '35', '7'], names)).toMatchObject({ shaftMm: 20, outsideMm: 35, widthMm: 7 });
  });

  test('columns that are named by hand come first', () => {
    const names = ['inside', 'shaft', 'outside', 'width'];
    expect(() => list([], {}, names)).toThrow(/both say the shaft/);
    expect(list([['21', '20', '35', '7']], { columns: { shaft: 'shaft' } }, names).candidates[0]).toMatchObject({ shaftMm: 20 });
    expect(list([['20', '99', '35', '7']], { columns: { shaft: 'inside' } }, names).candidates[0]).toMatchObject({ shaftMm: 20 });
    expect(() => list([], { columns: { shaft: 'bore of the lip' } }, names)).toThrow(/columns\.shaft/);
    expect(list([['20 mm', '35', '7', 'Z9']], { columns: { id: ' our mark ' } }, ['shaft', 'outside', 'width', 'our mark']).candidates[0]).toMatchObject({ id: 'Z9' });
    expect(list([['0.75', '35', '7']], { columns: { shaft: 'lip in' } }, ['lip in', 'outside', 'width']).nearMisses[0]).toMatchObject({ shaftMm: 19.05 });
  });

  test('a header must say the size', () => {
    expect(() => list([], {}, ['shaft', 'width'])).toThrow(/no column says outside/);
    expect(() => list([], {}, ['part'])).toThrow(/no column says shaft or outside or width/);
    expect(() => list([], {}, ['size'])).not.toThrow();
  });
});

describe('which rows come first', () => {
  /** A place of which all is known that decides, so that little else is said. */
  const good: Situation = {
    ...place,
    shaft: { diameterMm: 20, readings: [{ instrument: 'outside-micrometer', valuesMm: [19.972, 19.974, 19.971] }], material: 'steel-c45', hardnessHrc: 48, leadIn: { kind: 'chamfer', diameterReductionMm: 3, angleDeg: 20 } },
    bore: { diameterMm: 35, readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015, 35.013, 35.01] }], material: 'gjl250', depthMm: 12, innerEnd: 'open', leadIn: { lengthMm: 1, angleDeg: 15 } },
    running: { speedRpm: 1450, fluid: 'grease', fluidTemperatureC: 55, housingTemperatureC: 55, pressureMpa: 0, hoursPerYear: 900 },
    seat: { kind: 'flush' }, lipFacing: 'inward', fluidSide: 'inside', rotation: 'clockwise', wearTrack: { catchesNail: false }, clearBehindMm: 5, behind: 'bearing', retainedBy: 'nothing', reachableFrom: 'outside',
  };
  const names = ['id', 'size', 'rubber', 'type', 'dust lip', 'qty'];
  const ids = (rows: readonly (readonly string[])[], more: Partial<ShelfMatchInput> = {}) => list(rows, { ...good, ...more }, names).candidates.map(({ id }) => id);
  const same = (id: string, more: Partial<Record<'size' | 'rubber' | 'type' | 'dust' | 'qty', string>> = {}) => [id, more.size ?? '20x35x7', more.rubber ?? 'NBR', more.type ?? 'metal', more.dust ?? '', more.qty ?? '2'];

  test('fewer doubts first, then the size that is nearer, then the order of the list', () => {
    expect(ids([same('wider', { size: '20x35x10' }), same('untold', { rubber: '' }), same('first'), same('second')])).toEqual(['first', 'second', 'untold', 'wider']);
    expect(ids([same('by 2', { size: '20x35x9' }), same('by 1', { size: '20x35x8' })])).toEqual(['by 1', 'by 2']);
    expect(ids([same('none', { qty: '0' }), same('some')])).toEqual(['some', 'none']);
  });

  test('only as many as were asked for, ten where nothing was said', () => {
    const rows = Array.from({ length: 14 }, (_, i) => same(`n${i + 1}`));
    expect(ids(rows)).toEqual(Array.from({ length: 10 }, (_, i) => `n${i + 1}`));
    expect(ids(rows, { bestCount: 2 })).toEqual(['n1', 'n2']);
    expect(ids([same('wider', { size: '20x35x8' }), same('wide', { size: '20x35x9' }), same('right')], { bestCount: 1 })).toEqual(['right']);
  });

  test('why a row is no better', () => {
    const reasons = (cells: readonly string[], more: Partial<ShelfMatchInput> = {}) => list([cells], { ...good, ...more }, names).candidates[0]?.reasons.map(({ code }) => code) ?? [];
    const usual = reasons(same('a'));
    const added = (cells: readonly string[], more: Partial<ShelfMatchInput> = {}) => {
      const { candidates } = list([cells], { ...good, ...more, bestCount: 1 }, names);
      return candidates[0]?.reasons.filter(({ code }) => !usual.includes(code)).map(({ code, parameters }) => [code, ...Object.values(parameters)].join(' '));
    };
    expect(added(same('a', { size: '20x35x10' }))).toContain('size-wider 3 10');
    expect(added(same('a', { size: '20x35x6' }))).toContain('size-narrower 1 6');
    expect(added(same('a', { rubber: '' }))).toContain('list-does-not-say NBR');
    expect(added(same('a', { type: '' }))).toContain('list-does-not-say NBR');
    expect(added(same('a', { qty: '0' }))).toContain('none-left-on-shelf');
    expect(added(same('a', { qty: '' }))).not.toContain('none-left-on-shelf');
    const wantsDust = { seal: { ...place.seal, hasDustLip: true } };
    expect(added(same('a'), wantsDust)).toContain('list-seal-without-dust-lip');
    expect(added(same('a', { dust: 'no' }), wantsDust)).toContain('list-seal-without-dust-lip');
    for (const cells of [same('a', { dust: 'yes' }), same('a', { dust: 'x' }), same('a', { dust: '1' }), same('a', { type: 'BS' })]) expect(added(cells, wantsDust)).not.toContain('list-seal-without-dust-lip');
    // What the row says goes before what the letter says.
    expect(added(same('a', { type: 'BS', dust: 'n' }), wantsDust)).toContain('list-seal-without-dust-lip');
    expect(added(same('a'))).toEqual([]);
    expect(list([same('a', { size: '20x35x6', rubber: '', qty: '0' })], { ...good, ...wantsDust }, names).candidates[0]?.reasons.length).toBe(4);
  });

  test('another size is a near miss, up to 6 mm off, the nearest first', () => {
    const near = (rows: readonly (readonly string[])[], more: Partial<ShelfMatchInput> = {}) => list(rows, { shaft: { diameterMm: 20 }, bore: { diameterMm: 35 }, ...more }, names).nearMisses.map(({ id, shaftOffMm, outsideOffMm }) => `${id} ${shaftOffMm} ${outsideOffMm}`);
    expect(near([same('far', { size: '26x35x7' }), same('farther', { size: '26.1x35x7' }), same('near', { size: '22x35x7' }), same('under', { size: '18x32x7' }), same('out', { size: '20x41.1x7' })])).toEqual(['near 2 0', 'under -2 -3', 'far 6 0']);
    expect(near([same('b', { size: '22x35x7' }), same('a', { size: '20x37x7' })])).toEqual(['b 2 0', 'a 0 2']);
    expect(near([same('b', { size: '22x35x7' }), same('a', { size: '20x36x7' })], { bestCount: 1 })).toEqual(['a 0 1']);
  });

  test('sizes are held against what was measured, else what was told, else the mark', () => {
    const off = (situation: Partial<Situation>) => list([same('a', { size: '30x45x7' })], situation, names).nearMisses.map(({ shaftOffMm, outsideOffMm }) => [shaftOffMm, outsideOffMm]);
    const marked = { ...place.seal, shaftMm: 28, outsideMm: 43 };
    expect(off({ seal: marked })).toEqual([[2, 2]]);
    // Means of the readings: 19.972333 and 35.0125.
    expect(list([same('a', { size: '22x35x7' })], good, names).nearMisses).toMatchObject([{ shaftOffMm: 2.027667, outsideOffMm: -0.0125 }]);
    expect(off({ seal: marked, shaft: { diameterMm: 27 }, bore: { diameterMm: 42 } })).toEqual([[3, 3]]);
  });

  test('every row is counted once', () => {
    const output = list([same('a'), same('none', { qty: '0' }), same('other', { size: '40x60x7' }), ['', ' ', '', '', '', ''], same('odd', { size: 'wood' })], good, names);
    expect(output).toMatchObject({ rowCount: 4, badRowCount: 1, doesNotSuitCount: 1 });
    expect(output.suitsCount + output.suitsWithCareCount + output.cannotTellCount + output.doesNotSuitCount + output.badRowCount).toBe(4);
    expect(output.notChecked).toEqual(['shelf-age-and-storage', 'list-against-shelf']);
    expect(output.assumptions).toEqual([]);
    expect(list(Array.from({ length: 25 }, () => same('odd', { size: 'wood' })), good, names)).toMatchObject({ badRowCount: 25, badRows: { length: 20 } });
  });
});

test('row by row it comes to the same', () => {
  const options: ShelfOptions = { bestCount: 3, columns: { id: undefined } };
  const matcher = shelfMatcher(place, header, options);
  matcher.take(plain, 2);
  matcher.take(withCell(1, '22'), 3);
  expect(matcher.result()).toEqual(shelfMatch.compute({ ...place, header, rows: [plain, withCell(1, '22')], bestCount: 3 }));
  expect(shelfMatch.explain({ ...place, header, rows: [] }, matcher.result())).toEqual([]);
});
