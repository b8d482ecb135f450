import { source, type SourceReference, type Span } from '../../result/index.js';
import { sheetMetalPilotHoles as pilots } from '../../tables/generated/sheet-metal-pilot-holes.js';
import { sheetMetalScrewThreads as threads } from '../../tables/generated/sheet-metal-screw-threads.js';
import { markAt } from '../../tables/table.js';
import { practiceValue } from './practice-value.js';

/** A sheet-metal screw with the pilot hole for one sheet. */
export interface SheetScrew {
  readonly designation: string;
  readonly outsideMm: number;
  readonly outsideMinMm: number;
  readonly pitchMm: number;
  readonly pilotMm: number;
  readonly pilotSource: SourceReference;
  readonly threadSource: SourceReference;
}

const dinSet = 'din-7975';
const groupSource = 'st-hole-group-1b';

/**
 * Screws that the pilot tables give for a sheet, smallest first. DIN 7975 comes first, by its nearest thickness up to half a step away;
 * where it has no row (sheet thinner than a pitch) the hole group 1B answers.
 * @source din-7975 (held as: page); st-hole-group-1b (held as: page); en-iso-1478 (held as: page)
 */
export function screwsForSheet(sheetMm: number): readonly SheetScrew[] {
  const found: SheetScrew[] = [];
  for (let i = 0; i < threads.rowCount; i += 1) {
    const designation = threads.columns.designation[i];
    const outsideMm = threads.columns.outsideMm[i];
    const pitchMm = threads.columns.pitchMm[i];
    if (designation == null || outsideMm == null || pitchMm == null) continue;
    const pilot = pilotFor(designation, sheetMm);
    if (pilot === null) continue;
    found.push({
      designation,
      outsideMm,
      outsideMinMm: threads.columns.outsideMinMm[i] ?? outsideMm,
      pitchMm,
      ...pilot,
      threadSource: source(threads.source, markAt(threads, 'outsideMm', i), 'thread table'),
    });
  }
  return found.sort((first, second) => first.outsideMm - second.outsideMm);
}

/** Half a step of the thicknesses that DIN 7975 lists. */
const halfStepMm = 0.05;

function pilotFor(designation: string, sheetMm: number): Pick<SheetScrew, 'pilotMm' | 'pilotSource'> | null {
  const { columns } = pilots;
  let group: Pick<SheetScrew, 'pilotMm' | 'pilotSource'> | null = null;
  for (let i = 0; i < pilots.rowCount; i += 1) {
    const over = columns.sheetOverMm[i];
    const upTo = columns.sheetUpToMm[i];
    const pilotMm = columns.pilotMm[i];
    if (columns.designation[i] !== designation || over == null || upTo == null || pilotMm == null) continue;
    const set = String(columns.set[i]);
    if (set === dinSet && sheetMm > upTo - halfStepMm - 1e-9 && sheetMm <= upTo + halfStepMm + 1e-9) {
      return { pilotMm, pilotSource: source(dinSet, markAt(pilots, 'pilotMm', i), `${designation}, sheet ${upTo} mm`) };
    }
    if (set !== dinSet && sheetMm > over && sheetMm <= upTo) {
      group = { pilotMm, pilotSource: source(groupSource, markAt(pilots, 'pilotMm', i), `${designation}, sheet over ${over} up to ${upTo} mm`) };
    }
  }
  return group;
}

/** Share of the thread's cylinder that shears in a sheet. */
export const shearShare = practiceValue('thread-shear-share', 'Factor');
/** Shear strength over tensile strength. */
export const shearRatio = practiceValue('shear-ratio', 'Factor').low;
/** Tensile strength of cold-rolled drawing steel DC01. */
export const sheetTensileMpa = practiceValue('sheet-tensile', 'Mpa');

/**
 * Force at which one screw tears its thread out of a thin sheet: a stated estimate.  F = k·π·d·t·0.58·Rm
 * @source plain-mechanics (held as: computed); k from common practice; Rm en-10130 (held as: memory)
 */
export function stripForceN(screw: Pick<SheetScrew, 'outsideMm' | 'outsideMinMm'>, sheetMm: Span): Span {
  return {
    low: shearShare.low * Math.PI * screw.outsideMinMm * sheetMm.low * shearRatio * sheetTensileMpa.low,
    high: shearShare.high * Math.PI * screw.outsideMm * sheetMm.high * shearRatio * sheetTensileMpa.high,
  };
}
