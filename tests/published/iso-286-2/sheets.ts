import { toleranceZone } from '@seatwright/core/tolerance';
import type { Entry, Sheet } from '../ledger/sheet.js';
import { holes } from './holes.js';
import { largeSizes } from './large-sizes.js';
import { printedRows, type PrintedBlock } from './printed-rows.js';
import { shafts } from './shafts.js';

function entriesOf(block: PrintedBlock): readonly Entry[] {
  const upTo: readonly number[] = printedRows[block.rows];
  const start = block.rows === 'large' || block.rows === 'largeSplit' ? 500 : 0;
  return Object.entries(block.classes).flatMap(([toleranceClass, text]) => {
    const limits = text.trim().split(/\s+/u);
    if (limits.length !== upTo.length) throw new Error(`${toleranceClass}: ${limits.length} limits for ${upTo.length} rows`);
    return limits.flatMap((printed, i): readonly Entry[] => {
      const [over, end] = [upTo[i - 1] ?? start, upTo[i] ?? Number.NaN];
      const at = (nominalMm: number) => toleranceZone.run({ nominalMm, toleranceClass });
      const ends = [over === 0 ? 1.001 : over + 0.001, end];
      return printed === '-' ? [] : [{ row: `${over}–${end}`, column: toleranceClass, printed, how: 'memory', ours: () => ends.map(at).map((zone) => `${zone.upperLimitDeviationUm}/${zone.lowerLimitDeviationUm}`) }];
    });
  });
}

export const iso2862: readonly Sheet[] = [...holes, ...shafts, ...largeSizes].map((block) => ({
  work: 'iso-286-2-2010',
  place: block.table,
  title: 'Upper and lower limit deviations, sizes in mm',
  unit: 'µm',
  kind: 'another page',
  asked: 'zone at both ends of the range',
  allowed: 'exactly',
  layout: 'grid',
  entries: entriesOf(block),
}));
