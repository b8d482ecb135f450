import { contradiction, invalidInput } from '../../result/index.js';

export const shelfRoles = ['id', 'shaft', 'outside', 'width', 'size', 'construction', 'lipMaterial', 'dustLip', 'count', 'place'] as const;
export type ShelfRole = (typeof shelfRoles)[number];

export interface ShelfColumn {
  readonly index: number;
  readonly unit: 'mm' | 'in';
  readonly header: string;
}

export type ShelfColumns = Readonly<Partial<Record<ShelfRole, ShelfColumn>>>;

/** What columns are called, English and German, in small letters and digits alone. A lone `d` is the shaft and a lone `D` the outside, as on drawings. */
const names: Readonly<Record<ShelfRole, readonly string[]>> = {
  id: ['id', 'part', 'partno', 'partnumber', 'article', 'item', 'number', 'no', 'name', 'code', 'marking', 'artikel', 'artikelnummer', 'nummer', 'nr', 'bezeichnung', 'teil'],
  shaft: ['shaft', 'shaftdiameter', 'd1', 'inside', 'insidediameter', 'innerdiameter', 'inner', 'lip', 'welle', 'wellendurchmesser', 'innen', 'innendurchmesser'],
  outside: ['outside', 'outsidediameter', 'outerdiameter', 'outer', 'd2', 'od', 'bore', 'housing', 'housingbore', 'aussen', 'aussendurchmesser', 'bohrung', 'gehaeuse'],
  width: ['width', 'b', 'w', 'height', 'h', 'thickness', 'breite', 'hoehe', 'dicke'],
  size: ['size', 'dimensions', 'dimension', 'dxdxb', 'groesse', 'abmessung', 'abmessungen', 'masse'],
  construction: ['construction', 'type', 'design', 'case', 'outsideof', 'bauart', 'bauform', 'typ', 'ausfuehrung', 'mantel'],
  lipMaterial: ['material', 'rubber', 'lipmaterial', 'compound', 'elastomer', 'werkstoff', 'gummi', 'lippe', 'mischung'],
  dustLip: ['dustlip', 'secondlip', 'auxiliarylip', 'staublippe', 'schutzlippe'],
  count: ['quantity', 'qty', 'count', 'pieces', 'pcs', 'stock', 'instock', 'anzahl', 'menge', 'stueck', 'stk', 'bestand'],
  place: ['place', 'bin', 'shelf', 'location', 'drawer', 'box', 'lagerplatz', 'fach', 'regal', 'ort', 'schublade', 'kiste'],
};

const units: Readonly<Record<string, 'mm' | 'in'>> = { mm: 'mm', millimetre: 'mm', millimetres: 'mm', in: 'in', inch: 'in', inches: 'in', '"': 'in' };

/**
 * Which column holds what, by its header; a unit may stand in it: `shaft [mm]`, `D (in)`, `width_in`, `bmm`. Inches stand apart: a `bin` is a place.
 * @param given columns named by hand: they come before what the header says
 * @throws CalculationError invalid-input (nothing says the size) | contradiction (two columns say the same)
 */
export function shelfColumns(header: readonly string[], unit: 'mm' | 'in' = 'mm', given: Readonly<Partial<Record<ShelfRole, string>>> = {}): ShelfColumns {
  const found: Partial<Record<ShelfRole, ShelfColumn>> = {};
  for (const role of shelfRoles) {
    const wanted = given[role];
    if (wanted === undefined) continue;
    const index = header.findIndex((cell) => cell.trim() === wanted.trim());
    if (index < 0) throw invalidInput(`columns.${role}`, wanted, `one of ${header.join(', ')}`);
    found[role] = { index, unit: readHeader(wanted).unit ?? unit, header: wanted };
  }
  const taken = new Set(Object.values(found).map(({ index }) => index));
  header.forEach((cell, index) => {
    if (taken.has(index)) return;
    const { role, unit: own } = readHeader(cell);
    if (role === null || given[role] !== undefined) return;
    const before = found[role];
    if (before !== undefined) throw contradiction([`header[${before.index}]`, `header[${index}]`], `columns "${before.header}" and "${cell}" both say the ${role}; name the one to take`);
    found[role] = { index, unit: own ?? unit, header: cell };
  });
  if (found.size === undefined && (found.shaft === undefined || found.outside === undefined || found.width === undefined)) {
    const missing = (['shaft', 'outside', 'width'] as const).filter((role) => found[role] === undefined);
    throw invalidInput('header', header.slice(0, 20).join(', '), 'columns for shaft, outside and width, or one for the size (20 × 35 × 7)', `no column says ${missing.join(' or ')}`);
  }
  return found;
}

const umlauts: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };

/** Small letters and digits alone; umlauts as they are written without. */
export function plainKey(text: string): string {
  return text.toLowerCase().replaceAll(/[äöüß]/gu, (sign) => umlauts[sign] ?? '').replaceAll(/[^a-z0-9]/gu, '');
}

function readHeader(cell: string): { readonly role: ShelfRole | null; readonly unit: 'mm' | 'in' | null } {
  const plain = cell.replace('\uFEFF', '').trim();
  const [, before = plain, mark = ''] = /^(.*?)(?:[\s_]*[[(]\s*|[\s_]+|(?=mm|millimetre|"))(mm|millimetres?|inch(?:es)?|in|")\s*[\])]?$/iu.exec(plain) ?? [];
  const unit = mark !== '' && before.trim() !== '' ? (units[mark.toLowerCase()] ?? null) : null;
  const text = (unit === null ? plain : before).trim();
  if (text === 'd') return { role: 'shaft', unit };
  if (text === 'D') return { role: 'outside', unit };
  const key = plainKey(text);
  return { role: shelfRoles.find((role) => names[role].includes(key)) ?? null, unit };
}
