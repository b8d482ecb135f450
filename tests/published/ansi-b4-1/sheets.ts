import { inchFit } from '@seatwright/core/tolerance';
import { rangeEnds, rangeText } from '../ledger/range-ends.js';
import { readCsv } from '../ledger/read-csv.js';
import type { Entry, Sheet } from '../ledger/sheet.js';

const rows = readCsv(new URL('./inch-fits.csv', import.meta.url));

const columns = {
  holeUpper: ({ hole }) => hole.upperThou,
  shaftUpper: ({ shaft }) => shaft.upperThou,
  shaftLower: ({ shaft }) => shaft.lowerThou,
  least: ({ minimumThou }) => minimumThou,
  most: ({ maximumThou }) => maximumThou,
} as const satisfies Record<string, (fit: ReturnType<typeof inchFit.run>) => number>;

const places: Readonly<Record<string, string>> = {
  'MH31 Table 8a': "Machinery's Handbook, 31st ed., Table 8a: RC1 to RC4",
  'MH31 Table 8b': "Machinery's Handbook, 31st ed., Table 8b: RC5 to RC9",
  'reprint LC6-LC11': 'reprint of the table of LC6 to LC11 (1967, reaffirmed 1987)',
  'MH31 Table 10': "Machinery's Handbook, 31st ed., Table 10: LT1 to LT6",
  'MH31 Table 12': "Machinery's Handbook, 31st ed., Table 12, p. 660: LN1 to LN3",
  'MH27 Table 11': "Machinery's Handbook, 27th ed., Table 11, p. 663: FN1 to FN5",
  'MH31 Table 11': "Machinery's Handbook, 31st ed., Table 11 continued: FN1 to FN5",
  '': 'rows not seen on a page',
};

function entriesOf(page: string): readonly Entry[] {
  return rows
    .filter((row) => row['page'] === page)
    .flatMap((row) =>
      Object.entries(columns).flatMap(([column, of]): readonly Entry[] => {
        const printed = row[column] ?? '';
        if (printed === '') return [];
        const ends = rangeEnds(row['overIn'] ?? '', row['upToIn'] ?? '', 0.0001);
        return [
          {
            row: `${row['fitClass']} ${rangeText(row['overIn'] ?? '', row['upToIn'] ?? '')}`,
            column,
            printed,
            how: row['how'] === 'memory' ? 'memory' : 'page',
            ours: () => ends.map((nominalIn) => of(inchFit.run({ nominalIn, fitClass: row['fitClass'] ?? '' }))),
          },
        ];
      }),
    );
}

export const ansiB41: readonly Sheet[] = Object.entries(places).map(([page, place]) => ({
  work: 'ansi-b4-1-1967',
  place,
  title: 'Limits of hole and shaft, least and most clearance (interference negative), sizes in inches',
  unit: '0.001 in',
  kind: 'same page',
  asked: 'both ends of the range; least and most are worked out from the limits and meet the printed columns',
  note: 'The lower limit of the hole is 0 throughout and left out, and so are cells composed from the definitions of the columns.',
  allowed: 'exactly',
  layout: 'grid',
  entries: entriesOf(page),
}));
