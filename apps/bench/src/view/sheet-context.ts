import type { BearingOutcome, JobSheetOutput, SealOutcome } from '@seatwright/core/job';
import type { Situation } from '@seatwright/core/seal';
import { wordFor, type WritingStyle } from '@seatwright/core/wording';
import type { BearingPusher, SectionBearing } from '@seatwright/elements/seat-bearing-section.js';
import type { SectionDriver, SectionMode, SectionSituation } from '@seatwright/elements/seat-section.js';
import { isOwnOfSeal, type ChangedParts } from '../document/change-parts.js';
import { machinePath, positionPath, sealPartsOf, type NamedPlace, type Place } from '../document/places.js';
import { valueAt, type Json, type JsonObject, type Path } from '../document/raw-document.js';
import { pathOf } from '../document/raw-document.js';
import type { Entry } from '../form/entry.js';
import type { SheetFault } from '../sheet/compute-sheet.js';
import { sentences } from '../words/sentences.js';

/** Everything that the blocks of one open sheet are drawn from. */
export interface SheetContext {
  readonly document: JsonObject;
  readonly place: Place;
  readonly places: readonly NamedPlace[];
  /** Which part of the position is looked at. */
  readonly sealPart: number;
  readonly sealParts: readonly number[];
  /** The first bearing of the position; null where there is none. */
  readonly bearingPart: number | null;
  /** The last result that could be computed; null before the first. */
  readonly output: JobSheetOutput | null;
  readonly seal: SealOutcome | null;
  readonly fault: SheetFault | null;
  /** Keys of what has to be entered before anything can be judged. */
  readonly toBegin: readonly string[];
  /** The sheet was opened with nothing in it. */
  readonly isFresh: boolean;
  readonly isStale: boolean;
  readonly style: WritingStyle;
  readonly situation: SectionSituation | null;
  readonly drivers: readonly SectionDriver[];
  readonly driver: SectionDriver | null;
  /** The bearing as it is asked about, or as far as it reads; null where there is none. */
  readonly bearing: SectionBearing | null;
  readonly bearingOutcome: BearingOutcome | null;
  readonly bearingDriver: BearingPusher | null;
  readonly mode: SectionMode;
  readonly highlight: string;
  readonly isUnsaved: boolean;
  /** What became of tools that were taken in from one's own, or noted as such. */
  readonly toolNews: string;
  /** The same object as last time under this name, where the value is equal. */
  same<T>(name: string, value: T): T;
  readonly actions: SheetActions;
}

export interface SheetActions {
  change(path: Path, value: Json | undefined): void;
  goTo(key: string): void;
  showMode(mode: SectionMode): void;
  chooseDriver(name: string): void;
  chooseBearingDriver(name: string): void;
  choosePlace(place: Place): void;
  takeOwnTools(): void;
  makeToolsOwn(): void;
  /** Shows machines and positions to be changed, or puts them away. */
  arrangePlaces(): void;
  chooseSeal(part: number): void;
  /** A part came or went. */
  changeParts(next: ChangedParts): void;
}

/** What a part of the form is drawn from, on a sheet or by itself. */
export type FormContext = Pick<SheetContext, 'document' | 'place' | 'sealPart' | 'bearingPart' | 'fault' | 'toBegin' | 'style'> & { readonly actions: Pick<SheetActions, 'change' | 'goTo'>;
  /** What stands in a fault for the names that only the file knows. */
  readonly nameInFault?: (fault: string) => string;
};

/**
 * Where an entry stands in the file. What a part has of its own (its seat, its facing) stands with the part;
 * where several seals share the bore, so does what is entered anew, unless the position says it for all.
 */
export function filePathOf({ scope, path }: Pick<Entry, 'scope' | 'path'>, { document, place, sealPart, bearingPart }: Pick<SheetContext, 'document' | 'place' | 'sealPart' | 'bearingPart'>): Path {
  const inner = pathOf(path);
  const position = positionPath(place);
  const part: Path = [...position, 'parts', sealPart];
  switch (scope) {
    case 'file':
      return inner;
    case 'machine':
      return [...machinePath(place), ...inner];
    case 'seal':
      return [...part, ...inner];
    case 'bearing':
      return [...position, 'parts', bearingPart ?? 0, ...inner];
    case 'position':
      return [...(isOfPart(inner, document, place, sealPart) ? part : position), ...inner];
  }
}

function isOfPart(path: Path, document: JsonObject, place: Place, sealPart: number): boolean {
  if (!isOwnOfSeal(path)) return false;
  const position = positionPath(place);
  const [head = ''] = path;
  // A seat is one thing: of the position or of the part as a whole.
  const whole = head === 'running' ? path : [head];
  if (valueAt(document, [...position, 'parts', sealPart, ...whole]) !== undefined) return true;
  return sealPartsOf(document, place).length > 1 && valueAt(document, [...position, ...whole]) === undefined;
}
/** The fault of a field, in words; '' when it has none. */
export function faultOf(key: string, { fault }: Pick<SheetContext, 'fault'>): string {
  if (fault === null || !(fault.key === key || fault.key.startsWith(`${key}.`) || fault.key.startsWith(`${key}[`))) return '';
  const text = wordFor(fault.message.replace(/^[\w.[\]]*: /u, ''), sentences);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

export function situationOfSeal(seal: SealOutcome | null): Situation | null {
  return seal === null ? null : (seal.situation as Situation);
}
