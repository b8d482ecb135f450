import { boreBandOf, pressFitAllowanceOf, shaftBandOf, widthToleranceOf, type Construction, type RequirementSet } from '@seatwright/core/seal';
import { toleranceZone } from '@seatwright/core/tolerance';
import { rangeEnds, rangeText } from '../ledger/range-ends.js';
import { readCsv } from '../ledger/read-csv.js';
import type { Entry, How, Kind, Sheet } from '../ledger/sheet.js';
import { tableSheets } from '../ledger/table-values.js';
import { lipFriction } from './friction.js';

const mmPerInch = 25.4;
const common = { kind: 'same page', allowed: 'exactly', layout: 'grid' } as const;

const allowanceRows = readCsv(new URL('./press-fit-allowance.csv', import.meta.url));

function allowances(page: string, kind: Kind): readonly Entry[] {
  return allowanceRows
    .filter((row) => row['page'] === page && row['kind'] === kind)
    .flatMap((row) => {
      const inch = row['set'] === 'rma-inch';
      const at = (field: 'allowanceMinMm' | 'allowanceMaxMm' | 'outOfRoundMaxMm') => () =>
        rangeEnds(row['over'] ?? '', row['upTo'] ?? '').map((bore) => {
          const found = pressFitAllowanceOf(row['set'] as RequirementSet, row['construction'] as Construction, inch ? bore * mmPerInch : bore);
          const value = found.set === row['set'] ? found[field] : undefined;
          return inch && typeof value === 'number' ? value / mmPerInch : value;
        });
      const cell = { row: `${row['construction']} ${rangeText(row['over'] ?? '', row['upTo'] ?? '')}`, how: row['how'] as How };
      return [
        { ...cell, column: 'least', printed: row['least'] ?? '', ours: at('allowanceMinMm') },
        { ...cell, column: 'most', printed: row['most'] ?? '', ours: at('allowanceMaxMm') },
        ...(row['outOfRound'] === '' ? [] : [{ ...cell, column: 'out of round', printed: row['outOfRound'] ?? '', ours: at('outOfRoundMaxMm') }]),
      ];
    });
}

const allowanceSheet = (work: string, place: string, page: string, kind: Kind, unit: string, note?: string): Sheet => ({
  ...common, work, place, kind, unit, title: 'Allowance of the seal outside over the nominal bore, by bore', asked: 'allowance at both ends of the range', ...(note === undefined ? {} : { note }), entries: allowances(page, kind),
});

type Limits = readonly (readonly [over: string, upTo: string, ...printed: string[]])[];

/** Zones of the seal handbooks' own tables, [µm]; our tables of ISO 286 were typed from elsewhere. */
const boreH8: Limits = [['6', '10', '22'], ['10', '18', '27'], ['18', '30', '33'], ['30', '50', '39'], ['50', '80', '46'], ['80', '120', '54'], ['120', '180', '63'], ['180', '250', '72'], ['250', '315', '81'], ['315', '400', '89'], ['400', '500', '97']];
const shaftH11: Limits = [['0', '3', '-60'], ['3', '6', '-75'], ['6', '10', '-90'], ['10', '18', '-110'], ['18', '30', '-130'], ['30', '50', '-160'], ['50', '80', '-190'], ['80', '120', '-220'], ['120', '180', '-250'], ['180', '250', '-290'], ['250', '315', '-320'], ['315', '400', '-360'], ['400', '500', '-400']];
const boreRmaInch: Limits = [['0', '3', '-0.001', '0.001'], ['3', '6', '-0.0015', '0.0015'], ['6', '10', '-0.002', '0.002'], ['10', '20', '-0.004', '0.002'], ['20', '40', '-0.006', '0.002'], ['40', '60', '-0.01', '0.002']];
const shaftRmaInch: Limits = [['0', '4', '0.003'], ['4', '6', '0.004'], ['6', '10', '0.005'], ['10', '', '0.006']];
const shaftRmaMm: Limits = [['0', '100', '80'], ['100', '150', '100'], ['150', '250', '130'], ['250', '', '150']];

const of = (limits: Limits, columns: readonly string[], ask: (size: number, column: string) => readonly number[]): readonly Entry[] =>
  limits.flatMap(([over, upTo, ...printed]) =>
    printed.map((value, i): Entry => ({ row: rangeText(over, upTo), column: columns[i] ?? '', printed: value, how: 'page', ours: () => rangeEnds(over, upTo).flatMap((size) => ask(size, columns[i] ?? '')) })),
  );

const zoneSheets: readonly Sheet[] = [
  {
    ...common, work: 'seal-handbook-reprints', place: 'bore H8 as DIN 3760, ISO 6194-1 and JIS B 2402 ask for it', kind: 'another page', title: 'Upper limit of the bore, bores in mm', unit: 'µm',
    asked: 'zone H8 and band of the bore (ISO, DIN), at both ends of the range', note: 'The lower limit, 0, is left out.',
    entries: of(boreH8, ['upper'], (size) => [toleranceZone.run({ nominalMm: size, toleranceClass: 'H8' }).upperLimitDeviationUm, boreBandOf('iso-6194-1', size).upperMm * 1000, boreBandOf('din-3760', size).upperMm * 1000]),
  },
  {
    ...common, work: 'seal-handbook-reprints', place: 'shaft h11 as DIN 3760 and ISO 6194-1 ask for it', kind: 'another page', title: 'Lower limit of the shaft, shafts in mm', unit: 'µm',
    asked: 'zone h11 and band of the shaft (ISO, DIN), at both ends of the range', note: 'The upper limit, 0, is left out.',
    entries: of(shaftH11, ['lower'], (size) => [toleranceZone.run({ nominalMm: size, toleranceClass: 'h11' }).lowerLimitDeviationUm, shaftBandOf('iso-6194-1', size).lowerMm * 1000, shaftBandOf('din-3760', size).lowerMm * 1000]),
  },
  {
    ...common, work: 'rma-os-4', place: 'bore', title: 'Limits of the bore, bores in inches', unit: 'in', asked: 'band of the bore at both ends of the range',
    entries: of(boreRmaInch, ['lower', 'upper'], (size, column) => [boreBandOf('rma-inch', size * mmPerInch)[column === 'lower' ? 'lowerMm' : 'upperMm'] / mmPerInch]),
  },
  {
    ...common, work: 'rma-os-4', place: 'shaft (three handbooks agree)', title: 'Limits of the shaft, plus and minus, shafts in inches', unit: 'in', asked: 'band of the shaft at both ends of the range',
    entries: of(shaftRmaInch, ['±'], (size) => [shaftBandOf('rma-inch', size * mmPerInch).upperMm / mmPerInch, -shaftBandOf('rma-inch', size * mmPerInch).lowerMm / mmPerInch]),
  },
  {
    ...common, work: 'rma-metric', place: 'shaft', title: 'Limits of the shaft, plus and minus, shafts in mm', unit: 'µm', asked: 'band of the shaft at both ends of the range',
    entries: of(shaftRmaMm, ['±'], (size) => [shaftBandOf('rma-metric', size).upperMm * 1000, shaftBandOf('rma-metric', size).lowerMm * -1000]),
  },
];

const widths = (work: string, set: RequirementSet, limits: Limits): Sheet => ({
  ...common, work, place: 'width tolerance', title: 'Width of the seal, plus and minus', unit: set === 'rma-inch' ? 'in' : 'mm', asked: 'width tolerance at both ends of the range',
  entries: of(limits, ['±'], (size) => [set === 'rma-inch' ? widthToleranceOf(set, size * mmPerInch).toleranceMm / mmPerInch : widthToleranceOf(set, size).toleranceMm]),
});

export const seals: readonly Sheet[] = [
  allowanceSheet('din-3760-1996', 'press-fit table', 'DIN 3760', 'same page', 'mm', 'One column of out-of-round is printed for all constructions; the ribbed rows are from memory.'),
  allowanceSheet('gb-13871-1992', 'table of the seal outside', 'GB 13871', 'same page', 'mm', 'Taken as ISO 6194-1:1982. That its bracketed upper value is meant for ribbed rubber is from memory, and so is the row over 440 mm.'),
  allowanceSheet('rma-metric', 'trade article, tolerance charts', 'RMA metric', 'same page', 'mm'),
  allowanceSheet('rma-metric', 'comparison of DIN 3760 and RMA in a second handbook, over 120 mm', 'comparison', 'same page', 'mm'),
  allowanceSheet('rma-metric', 'comparison of DIN 3760 and RMA in a second handbook, to 120 mm', 'comparison', 'another page', 'mm', 'Our rows to 120 mm were typed from the trade article.'),
  allowanceSheet('rma-os-4', 'inch table of the third handbook', 'third', 'same page', 'in'),
  allowanceSheet('rma-os-4', 'inch table of the first handbook', 'first', 'another page', 'in', 'Our rows were typed from the third handbook. For rubber over 4 in the first prints an older row and is not taken, see the misprints.'),
  ...zoneSheets,
  widths('din-3760-1996', 'din-3760', [['0', '10', '0.2'], ['10', '', '0.3']]),
  widths('gb-13871-1992', 'iso-6194-1', [['0', '10', '0.3'], ['10', '', '0.4']]),
  widths('rma-os-4', 'rma-inch', [['0', '', '0.015']]),
  ...tableSheets(new URL('./table-values.csv', import.meta.url)),
  ...lipFriction,
];
