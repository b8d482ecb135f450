import type { JobSheetOutput } from '@seatwright/core/job';
import { styleOf } from '@seatwright/core/wording';
import type { SectionMode } from '@seatwright/elements/seat-section.js';
import { bearingPartsOf, placesIn, sealPartsOf, type Place } from '../document/places.js';
import { valueAt, type JsonObject } from '../document/raw-document.js';
import { situationOfSeal, type SheetActions, type SheetContext } from '../view/sheet-context.js';
import { sentences } from '../words/sentences.js';
import type { SheetResult } from './compute-sheet.js';
import { bearingOf } from './draft-bearing.js';
import { draftSituation } from './draft-situation.js';
import { bearingDriversOf, driversOf } from './drivers-of.js';
import type { Held } from './held.js';

/** One open sheet: what is typed, what came of it, and what is looked at. */
interface SheetInHand {
  readonly file: JsonObject;
  readonly place: Place;
  readonly sealPart: number;
  readonly result: SheetResult | null;
  readonly lastGood: JobSheetOutput | null;
  readonly mode: SectionMode;
  readonly driverName: string;
  readonly bearingDriverName: string;
  readonly highlight: string;
  readonly isFresh: boolean;
  readonly isUnsaved: boolean;
  readonly toolNews: string;
}

/** All that the blocks of the sheet are drawn from; what is equal to the last time is the same object, so that nothing is drawn for nothing. */
export function contextOf({ file, place, sealPart, result, lastGood, mode, driverName, bearingDriverName, ...inHand }: SheetInHand, held: Held, actions: SheetActions): SheetContext {
  const output = result?.kind === 'sheet' ? result.output : lastGood;
  const part = output?.parts.find(({ path }) => path.endsWith(`parts[${sealPart}]`));
  const seal = part?.kind === 'seal' ? part : null;
  const drivers = held.same('drivers', driversOf(seal));
  const bearingPart = bearingPartsOf(file, place)[0] ?? null;
  const outcome = output?.parts.find(({ path }) => path.endsWith(`parts[${bearingPart ?? -1}]`));
  const bearingOutcome = outcome?.kind === 'bearing' ? outcome : null;
  const bearingDrivers = held.same('bearing drivers', bearingDriversOf(bearingOutcome));
  const sealParts = sealPartsOf(file, place);
  return {
    ...inHand,
    document: file,
    place,
    places: placesIn(file),
    sealPart,
    sealParts,
    bearingPart,
    output,
    seal,
    fault: result?.kind === 'fault' ? result.fault : null,
    toBegin: result?.kind === 'begin' ? result.missing : [],
    isStale: result !== null && result.kind !== 'sheet' && output !== null,
    style: held.same('style', styleOf(sentences, valueAt(file, ['lengthUnit']) === 'in' ? 'in' : 'mm')),
    situation: situationOfSeal(seal) ?? held.same('draft', draftSituation(file, place, sealParts.length === 0 && bearingPart !== null ? null : sealPart)),
    drivers,
    driver: drivers.find(({ name }) => name === driverName) ?? drivers[0] ?? null,
    bearing: bearingPart === null ? null : held.same('bearing', bearingOf(bearingOutcome, file, place, bearingPart)),
    bearingOutcome,
    bearingDriver: bearingDrivers.find(({ name }) => name === bearingDriverName) ?? bearingDrivers[0] ?? null,
    mode: modeThere(mode, sealParts.length > 0 || bearingPart === null, bearingPart !== null),
    same: (name, value) => held.same(name, value),
    actions,
  };
}

/** What is shown of a place: its seal's work where it has a seal, its bearing's where it has one. */
function modeThere(mode: SectionMode, hasSeal: boolean, hasBearing: boolean): SectionMode {
  if (!hasSeal) return mode === 'taking out' || mode === 'bearing out' ? 'bearing out' : 'bearing in';
  return hasBearing ? mode : mode === 'bearing in' ? 'as driven' : mode === 'bearing out' ? 'taking out' : mode;
}
