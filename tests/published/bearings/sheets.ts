import { bearingDimensions, bearingSeat, seatClasses } from '@seatwright/core/bearing';
import { findHalfOpenRow, iso492Radial, rowsOf, seatClasses as seatClassTable } from '@seatwright/core/tables';
import { rangeEnds, rangeText } from '../ledger/range-ends.js';
import { readCsv } from '../ledger/read-csv.js';
import type { Entry, How, Sheet } from '../ledger/sheet.js';
import { workedByHand } from './worked-by-hand.js';

type Row = Readonly<Record<string, string>>;
type Bearing = Parameters<typeof bearingSeat.run>[0];
type Seats = Parameters<typeof seatClasses.run>[0];

const file = (name: string) => readCsv(new URL(`./${name}.csv`, import.meta.url));
const common = { kind: 'same page', allowed: 'exactly', layout: 'grid' } as const;
const held = (row: Row, column = 'how') => ({ how: row[column] as How, ...(Number(row['pagesSeen']) > 0 ? { pagesSeen: Number(row['pagesSeen']) } : {}) });
const range = (row: Row) => rangeText(row['overMm'] ?? '', row['upToMm'] ?? '');
const ends = (row: Row) => rangeEnds(row['overMm'] ?? '', row['upToMm'] ?? '');

const clearances: readonly Entry[] = file('iso-5753-1-clearance').flatMap((row) => {
  const at = (side: 'low' | 'high') => () =>
    ends(row).map((boreMm) => {
      const size = { boreMm, outsideMm: boreMm + 100, widthMm: 15, bearingKind: row['bearingKind'], clearanceGroup: row['group'] };
      return bearingSeat.run(size).unmountedClearanceUm?.[side];
    });
  const cell = { row: `${row['bearingKind']} ${range(row)}`, ...held(row) };
  return [
    { ...cell, column: `${row['group']} least`, printed: row['leastUm'] ?? '', ours: at('low') },
    { ...cell, column: `${row['group']} most`, printed: row['mostUm'] ?? '', ours: at('high') },
  ];
});

/** Runout is in no calculation yet: it is read from the table itself. */
function runoutUm(row: Row, diameterMm: number): number | null | undefined {
  const own = rowsOf(iso492Radial).filter(({ ring, toleranceClass }) => ring === row['ring'] && toleranceClass === row['toleranceClass']);
  return own[findHalfOpenRow(own.map(({ overMm }) => overMm), own.map(({ upToMm }) => upToMm), diameterMm)]?.runoutMaxUm;
}

function ringDeviation(row: Row, diameterMm: number): number | undefined {
  const toleranceClass = row['toleranceClass'];
  const inner = { boreMm: diameterMm, outsideMm: diameterMm + 50, widthMm: 15, bearingToleranceClass: toleranceClass, shaftClass: 'h6' } as Bearing;
  const outer = { boreMm: 1, outsideMm: diameterMm, widthMm: 15, bearingToleranceClass: toleranceClass, housingClass: 'H7', housingMaterial: 'gjl250' } as Bearing;
  return row['ring'] === 'inner' ? bearingSeat.run(inner).shaftSeat?.ringDeviationUm.low : bearingSeat.run(outer).housingSeat?.ringDeviationUm.low;
}

const rings: readonly Entry[] = file('iso-492-radial').flatMap((row) => {
  const name = `${row['ring']} ring, class ${row['toleranceClass']}, ${range(row)}`;
  return [
    { row: name, column: 'lower deviation', printed: row['lowerUm'] ?? '', ...held(row), ours: () => ends(row).map((diameterMm) => ringDeviation(row, diameterMm)) },
    { row: name, column: 'runout', printed: row['runoutUm'] ?? '', ...held(row, 'runoutHow'), ours: () => ends(row).map((diameterMm) => runoutUm(row, diameterMm)) },
  ];
});

const dimensions: readonly Entry[] = file('iso-15-dimensions').flatMap((row) =>
  (['boreMm', 'outsideMm', 'widthMm', 'cornerMm'] as const).map((column): Entry => ({
    row: row['designation'] ?? '',
    column: { boreMm: 'd', outsideMm: 'D', widthMm: 'B', cornerMm: 'r min' }[column],
    printed: row[column] ?? '',
    ...held(row, column === 'cornerMm' ? 'cornerHow' : 'how'),
    ours: () => [bearingDimensions.run({ designation: row['designation'] ?? '' }).matches[0]?.[column === 'cornerMm' ? 'cornerMinMm' : column]],
  })),
);

const conditions: Readonly<Record<string, Partial<Seats>>> = {
  'slides-easily': { mustSlideOnShaft: true },
  'heat-through-shaft': { hasHeatThroughShaft: true },
  split: { isSplitHousing: true },
  'thin-wall': { isThinWalled: true },
};

function seatsAsked(row: Row): readonly (string | undefined)[] {
  const { seat, bearingKind, ringLoad, condition = '' } = row;
  // A plummer block is no question of the calculation: its row is read from the table.
  if (condition === 'plummer-block') return rowsOf(seatClassTable).filter((one) => one.condition === condition).map(({ toleranceClass }) => toleranceClass);
  const loads = seat === 'shaft' && ringLoad === 'rotating' ? ['rotating', 'indeterminate'] : [ringLoad];
  const bores = seat === 'shaft' ? ends(row) : [20, 200];
  return (row['magnitudes'] ?? '').split(' ').flatMap((magnitude) =>
    loads.flatMap((load) =>
      bores.flatMap((boreMm) => {
        const asked = { boreMm, magnitude, ...(bearingKind === 'any' ? {} : { bearingKind }), innerRingLoad: seat === 'shaft' ? load : 'rotating', outerRingLoad: seat === 'housing' ? load : 'stationary', ...conditions[condition] } as Seats;
        const found = seatClasses.run(asked)[seat === 'shaft' ? 'shaft' : 'housing'].filter((one) => one.set === row['set'] && one.condition === condition);
        return found.length === 0 ? [undefined] : found.map(({ toleranceClass }) => toleranceClass);
      }),
    ),
  );
}

const seats = (set: string, seat: string): readonly Entry[] =>
  file('seat-classes')
    .filter((row) => row['set'] === set && row['seat'] === seat)
    .map((row) => ({
      row: [row['bearingKind'] === 'any' ? 'balls and rollers' : row['bearingKind'], row['ringLoad'], row['magnitudes'] === 'light normal heavy' ? 'any load' : row['magnitudes']?.replaceAll(' ', ' or '), ...(seat === 'shaft' ? [range(row)] : []), ...(row['condition'] === 'any' ? [] : [row['condition']])].join(', '),
      column: 'class',
      printed: row['toleranceClass'] ?? '',
      ...held(row),
      ours: () => seatsAsked(row),
    }));

/** P/C on and just over each limit of the load classes. */
const loadClasses: readonly Entry[] = ([['0.06', 'light', 'normal'], ['0.13', 'normal', 'heavy']] as const).map(([limit, upTo, over]) => ({
  row: `P/C up to ${limit}, and over`,
  column: 'load',
  printed: `${upTo} ${over}`,
  how: 'page',
  ours: () => [[Number(limit), Number(limit) + 1e-6].map((loadRatio) => seatClasses.run({ boreMm: 20, innerRingLoad: 'rotating', outerRingLoad: 'stationary', loadRatio }).magnitude).join(' ')],
}));

const seatCommon = { ...common, unit: '', title: 'Recommended tolerance classes' } as const;

export const bearings: readonly Sheet[] = [
  {
    ...common, work: 'iso-5753-1', place: 'groove ball and cylindrical roller bearings, cylindrical bore', title: 'Radial internal clearance by group and bore in mm', unit: 'µm',
    asked: 'bearing seat of a bearing of that bore and group, at both ends of the range',
    note: 'Group 5 over 100 mm and all over 180 mm of the groove balls are from memory; over 200 mm the editions of 1991 and 2009 seem to differ, the older one is taken.',
    entries: clearances,
  },
  {
    ...common, work: 'iso-492', place: 'Normal class, classes 6 and 5', title: 'Lower deviation of mean bore and mean outside diameter, radial runout', unit: 'µm',
    asked: 'bearing seat at both ends of the range; runout from the table', note: 'The upper deviation is 0 throughout and left out.',
    entries: rings,
  },
  { ...common, work: 'iso-15', place: 'dimension series 18, 19, 00, 10, 02, 03, 04', title: 'Boundary dimensions of deep groove ball bearings', unit: 'mm', asked: 'dimensions of the designation', entries: dimensions },
  {
    ...seatCommon, work: 'ansi-abma-7', place: 'shaft fits', asked: 'seat classes with a rotating and with an indeterminate load, at both ends of the range, for each load named',
    note: 'Balls and cylindrical rollers; spherical rollers are not in the library.', entries: seats('abma-7', 'shaft'),
  },
  { ...seatCommon, work: 'ansi-abma-7', place: 'housing fits', asked: 'seat classes for each load named, at two sizes', note: 'For an indeterminate normal load two classes are printed; the library gives the tighter one.', entries: seats('abma-7', 'housing') },
  { ...seatCommon, work: 'bearing-handbook-reprints', place: 'housing fits in cast iron and steel', asked: 'seat classes for each load named, at two sizes', note: 'For an indeterminate normal load two classes are printed; the library gives the tighter one.', entries: seats('handbook', 'housing') },
  { ...seatCommon, work: 'bearing-handbook-reprints', place: 'shaft fits of ball bearings', asked: 'seat classes at both ends of the range, for each load named', entries: seats('handbook', 'shaft') },
  { ...common, work: 'bearing-handbook-reprints', place: 'tolerances and fits: load classes', title: 'Light, normal and heavy load by P/C', unit: '', asked: 'magnitude on the limit and just over it', entries: loadClasses },
  ...workedByHand,
];
