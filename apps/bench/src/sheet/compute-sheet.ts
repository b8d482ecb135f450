import { sealSheetInSteps, type JobSheetOutput } from '@seatwright/core/job';
import { CalculationError, type WorkingStep } from '@seatwright/core/result';
import { isOwnOfSeal } from '../document/change-parts.js';
import { isObject, pathOf, textAt, valueAt, type Json, type JsonObject } from '../document/raw-document.js';
import { bearingPartsOf, machinePath, positionPath, sealPartsOf, withPlaceAlone, type Place } from '../document/places.js';
import { isSpoken } from './is-spoken.js';
import type * as whole from './whole-sheet.js';
import { allSentences, sentences } from '../words/sentences.js';
import { pathInFull, withoutUnfinished } from '../document/without-unfinished.js';

/** An entry that cannot be read: the key of its field, and what would be understood. */
export interface SheetFault {
  readonly key: string;
  readonly message: string;
}

/** What came of the entries as they stand now. */
export type SheetResult =
  | { readonly kind: 'sheet'; readonly output: JobSheetOutput }
  | { readonly kind: 'fault'; readonly fault: SheetFault }
  /** A seal cannot be judged before these are entered; keys in the order of the form. */
  | { readonly kind: 'begin'; readonly missing: readonly string[] }
  /** There is a bearing on the sheet, or a sentence that is seldom said: what judges bearings and has those words is still to be fetched. */
  | { readonly kind: 'waiting' };

/** What judges bearings, looks for remedies, shows the working and says the rest, once it is there; until then a sheet is made of its seals alone. */
let wholeSheet: typeof whole | null = null;

/** Fetches what not every sheet needs; tells whether that made a difference. Rejects where it cannot be loaded. */
export async function fetchWholeSheet(): Promise<boolean> {
  if (wholeSheet !== null) return false;
  [wholeSheet] = await Promise.all([import('./whole-sheet.js'), allSentences()]);
  return true;
}

const neededOfSeal = ['shaftMm', 'outsideMm', 'widthMm', 'construction', 'lipMaterial'] as const;

/** Computes the job sheet of one position from the file as typed, in steps between which the page can answer. */
export function* computeSheet(document: JsonObject, place: Place, sealPart: number, asOfDate: string): Generator<undefined, SheetResult> {
  const seal = valueAt(document, [...positionPath(place), 'parts', sealPart]);
  const hasBearing = bearingPartsOf(document, place).length > 0;
  const isBearingAlone = sealPartsOf(document, place).length === 0 && hasBearing;
  const missing = isBearingAlone ? [] : neededOfSeal.filter((key) => !isObject(seal) || seal[key] === undefined || seal[key] === '').map((key) => `seal.${key}`);
  if (missing.length > 0) return { kind: 'begin', missing };
  if (hasBearing && wholeSheet === null) return { kind: 'waiting' };
  try {
    const input = inputOf(document, place, asOfDate);
    if (wholeSheet !== null) return { kind: 'sheet', output: yield* wholeSheet.jobSheetInSteps(input) };
    const output = yield* sealSheetInSteps(input);
    return isSpoken(output, sentences) ? { kind: 'sheet', output } : { kind: 'waiting' };
  } catch (error) {
    if (error instanceof CalculationError) return { kind: 'fault', fault: { key: keyOfPath(pathInFull(withPlaceAlone(document, place), error.path), sealPart, bearingPartsOf(document, place)[0]), message: error.message } };
    throw error;
  }
}

/** The working of the same sheet, built when somebody asks for it; null where what explains it is still to be fetched. */
export function workingOf(document: JsonObject, place: Place, asOfDate: string, output: JobSheetOutput): readonly WorkingStep[] | null {
  if (wholeSheet === null) return null;
  return wholeSheet.jobSheetWorking(inputOf(document, place, asOfDate), output);
}

function inputOf(document: JsonObject, place: Place, asOfDate: string): { readonly workshop: Json; readonly machine: string; readonly position: string; readonly asOfDate: string } {
  return {
    workshop: withoutUnfinished(withPlaceAlone(document, place)),
    machine: textAt(document, [...machinePath(place), 'name']),
    position: textAt(document, [...positionPath(place), 'name']),
    asOfDate,
  };
}

/** The key of the field that a path in the file with one position belongs to. */
function keyOfPath(path: string, sealPart: number, bearingPart?: number): string {
  const inPosition = /^machines\[0\]\.positions\[0\]\.?(.*)$/u.exec(path);
  if (inPosition !== null) {
    const rest = inPosition[1] ?? '';
    const ofSeal = `parts[${sealPart}].`;
    const ofBearing = `parts[${bearingPart ?? -1}].`;
    if (rest.startsWith(ofBearing)) return `bearing.${rest.slice(ofBearing.length)}`;
    if (!rest.startsWith(ofSeal)) return rest;
    const inSeal = rest.slice(ofSeal.length);
    return isOwnOfSeal(pathOf(inSeal)) ? inSeal : `seal.${inSeal}`;
  }
  const inMachine = /^machines\[0\]\.(.*)$/u.exec(path);
  if (inMachine !== null) return `machine.${inMachine[1] ?? ''}`;
  return path === 'machine' ? 'machine.name' : path === 'position' ? 'name' : `file.${path}`;
}

/** Today as the calendar day where this device is. */
export function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
