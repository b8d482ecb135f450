import type { Span } from '../../result/index.js';
import { middle } from './hole-in-face.js';
import type { Section } from './section.js';
import { screwsForSheet, stripForceN, type SheetScrew } from './sheet-screw.js';

/** Screws and how many of them, against the pull that the seal asks for. */
export interface ScrewChoice {
  readonly screw: SheetScrew;
  readonly screwCount: 1 | 2;
  /** One screw's thread tears out. */
  readonly oneStripsN: Span;
  /** All of them together. */
  readonly stripForceN: Span;
  /** Thread pitches that the sheet is thick. */
  readonly turnsOfBiteRatio: number;
  readonly enough: 'surely' | 'probably' | 'perhaps' | 'no' | 'unknown';
}

/**
 * The smallest sheet-metal screw that is probably enough, one or two of them (opposite); else the largest that fits, twice.
 * Fits: its pilot is no larger than the largest drill, and its thread leaves half the least wall on both sides.
 */
export function chooseScrew({ sheetMm }: Pick<Section, 'sheetMm'>, pullForceN: Span | null, largestDrillMm: number, freeWidthMm: number, leastWallMm: number): ScrewChoice | null {
  const fitting = screwsForSheet(middle(sheetMm)).filter((screw) => screw.pilotMm <= largestDrillMm && screw.outsideMm <= freeWidthMm - leastWallMm);
  let last: ScrewChoice | null = null;
  for (const screw of fitting) {
    for (const screwCount of [1, 2] as const) {
      const choice = chosen(screw, screwCount, sheetMm, pullForceN);
      if (choice.enough === 'surely' || choice.enough === 'probably') return choice;
      if (choice.enough === 'unknown' && screwCount === 2) return choice;
      last = choice;
    }
  }
  return last;
}

function chosen(screw: SheetScrew, screwCount: 1 | 2, sheetMm: Span, pullForceN: Span | null): ScrewChoice {
  const oneStripsN = stripForceN(screw, sheetMm);
  const all = { low: screwCount * oneStripsN.low, high: screwCount * oneStripsN.high };
  return { screw, screwCount, oneStripsN, stripForceN: all, turnsOfBiteRatio: middle(sheetMm) / screw.pitchMm, enough: enough(all, pullForceN) };
}

function enough(strip: Span, pull: Span | null): ScrewChoice['enough'] {
  if (pull === null) return 'unknown';
  if (strip.low >= pull.high) return 'surely';
  if (middle(strip) >= middle(pull)) return 'probably';
  return strip.high >= pull.low ? 'perhaps' : 'no';
}
