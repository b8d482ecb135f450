import type { Place } from '../document/places.js';
import { isObject, type Json, type JsonObject } from '../document/raw-document.js';
import type { KnownSheet } from './keeper.js';

/**
 * The sheet that is open in this tab, for after the page is loaded anew: where it is kept, and the sheet itself
 * where the device would not keep it. The tab holds it until it is closed.
 */
export interface HeldSheet {
  readonly known: KnownSheet;
  readonly place: Place;
  /** Null where the device keeps all of it. */
  readonly file: JsonObject | null;
}

const key = 'seatwright-held';

/** Whether the tab took it: it has little room, and none where storage is denied. */
export function holdInTab(held: HeldSheet): boolean {
  try {
    sessionStorage.setItem(key, JSON.stringify(held));
    return true;
  } catch {
    return false;
  }
}

export function dropFromTab(): void {
  try {
    sessionStorage.removeItem(key);
  } catch {
    // What was never held need not be dropped.
  }
}

export function heldInTab(): HeldSheet | null {
  try {
    const held = JSON.parse(sessionStorage.getItem(key) ?? 'null') as Json;
    return isObject(held) && isObject(held['known']) && isObject(held['place']) ? (held as unknown as HeldSheet) : null;
  } catch {
    return null;
  }
}
