import type { BearingOutcome } from '../../job/index.js';
import type { Catalogue } from '../catalogue.js';
import type { SheetBlock } from '../sheet-document.js';
import { findingItem } from '../write-finding.js';
import { writeValue, type WritingStyle } from '../write-value.js';
import { wordFor } from '../word-for.js';

/**
 * A bearing on the sheet: both seats, the clearance that is left, and what is to be said about them.
 * @internal
 */
export function bearingBlocks(part: BearingOutcome, catalogue: Catalogue, style: WritingStyle): readonly SheetBlock[] {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const um = (value: number) => writeValue('valueUm', value, style);
  const span = (low: number, high: number) => `${um(low)} ${label('to')} ${um(high)}`;
  const { seat } = part;
  const rows = seat === null ? [] : ([['shaftSeat', seat.shaftSeat], ['housingSeat', seat.housingSeat]] as const).flatMap(([name, one]) => (one === null ? [] : [[label(name), span(one.at20C.leastInterferenceUm, one.at20C.mostInterferenceUm), span(one.atTemperature.leastInterferenceUm, one.atTemperature.mostInterferenceUm), looseText(one.looseFromC, label, style)]]));
  const clearance = seat?.mountedClearanceUm == null || seat.runningClearanceUm === null ? null : `${label('clearance')}: ${span(seat.mountedClearanceUm.probableLow, seat.mountedClearanceUm.probableHigh)} ${label('fittedAt20')}, ${span(seat.runningClearanceUm.probableLow, seat.runningClearanceUm.probableHigh)} ${label('whileRunning')}.`;
  return [
    { kind: 'heading', text: `${label('seats')}: ${part.name}` },
    ...(rows.length === 0 ? [] : [{ kind: 'table', columns: [label('seat'), label('at20'), label('whileRunning'), label('letsGo')], rows } as const]),
    ...(clearance === null ? [] : [{ kind: 'paragraph', text: clearance, isSmall: false } as const]),
    { kind: 'list', isNumbered: false, isSmall: false, items: part.findings.map((finding) => findingItem(finding, catalogue, style)) },
    ...driverLine(part, label, catalogue, style),
  ];
}

/** The tools that push the right ring, or the ring to turn for it. */
function driverLine({ driver }: BearingOutcome, label: (key: string) => string, catalogue: Catalogue, style: WritingStyle): readonly SheetBlock[] {
  if (driver === null) return [];
  const names = driver.candidates.map(({ name }) => wordFor(name, catalogue));
  const mm = (value: number) => writeValue('valueMm', value, style);
  const ring = wordFor(driver.ring, catalogue);
  const text = names.length > 0 ? `${label('driver')} (${ring}): ${names.join('; ')}.` : `${label('driver')} (${ring}): ${label('ringToTurn').replace('{inside}', mm(driver.insideOverMm)).replace('{outside}', mm(driver.outsideUpToMm))}.`;
  return [{ kind: 'paragraph', text, isSmall: false }];
}

type Loose = NonNullable<NonNullable<BearingOutcome['seat']>['shaftSeat']>['looseFromC'];

function looseText(loose: Loose, label: (key: string) => string, style: WritingStyle): string {
  if (loose === null) return label('never');
  const c = (value: number) => writeValue('valueC', value, style);
  const from = loose.earliest <= 20 ? label('already') : c(loose.earliest);
  if (loose.latest === null) return `${from} ${label('or')} ${label('never')}`;
  return loose.latest <= 20 ? label('already') : `${from} ${label('to')} ${c(loose.latest)}`;
}
