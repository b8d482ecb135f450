import * as z from 'zod/mini';
import { chooseFit } from '../../joint/index.js';
import { snapMm } from '../../quantity/index.js';
import { CalculationError, choiceField, deciding, findingField, outputNumber, plainGeometry, plainMechanics, source, supporting, verdictField, verdictOf, type Finding } from '../../result/index.js';
import { surfaceLimits } from '../../tables/generated/surface-limits.js';
import { markAt } from '../../tables/table.js';
import { zoneOfClass } from '../../tolerance/index.js';
import type { Situation } from '../situation-field.js';
import { newLipInterferenceMm } from './checks/shaft-size.js';
import { standardSizeSource } from './half-step.js';
import { sealLimit } from './seal-limit.js';
import { largerSealShaftsMm, smallerSealShaftsMm } from './standard-lists.js';
import { trackMoveSource } from './track-move.js';

const kinds = ['leave it', 'lip further out', 'lip further in', 'thin sleeve', 'turned sleeve and larger seal', 'regrind and smaller seal'] as const;
const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

export const trackOptionField = z.strictObject({
  kind: choiceField(kinds, { label: 'remedy' }),
  verdict: verdictField,
  findings: z.readonly(z.array(findingField)),
  moveMm: maybe('the seal sits further in by; further out below zero', 'mm'),
  newDepthMm: maybe('depth of the outer face of the new seal', 'mm'),
  spacerMm: maybe('spacer behind the seal', 'mm'),
  newShaftMm: maybe('shaft diameter under the lip', 'mm'),
  newShaftLowerMm: maybe('its lower limit', 'mm'),
  newShaftUpperMm: maybe('its upper limit', 'mm'),
  sleeveBoreLowerMm: maybe('bore of the sleeve, lower limit', 'mm'),
  sleeveBoreUpperMm: maybe('bore of the sleeve, upper limit', 'mm'),
  roughnessLowUm: maybe('roughness Ra of the new track, low', 'µm'),
  roughnessHighUm: maybe('roughness Ra of the new track, high', 'µm'),
});

export type TrackOption = z.infer<typeof trackOptionField>;

/** What the remedies of a worn track are judged by. */
export interface TrackPlace {
  readonly situation: Situation;
  /** Shaft as measured beside the track, or as marked on the seal. */
  readonly shaftMm: number;
  readonly wantedMoveMm: number;
  /** Depth of the outer face of the old seal; null where it was not noted. */
  readonly oldDepthMm: number | null;
}

export function trackOption(kind: TrackOption['kind'], findings: readonly Finding[], numbers: Partial<TrackOption> = {}): TrackOption {
  return {
    kind, verdict: verdictOf(findings), findings, moveMm: null, newDepthMm: null, spacerMm: null, newShaftMm: null, newShaftLowerMm: null, newShaftUpperMm: null,
    sleeveBoreLowerMm: null, sleeveBoreUpperMm: null, roughnessLowUm: null, roughnessHighUm: null, ...numbers,
  };
}

const seatShare = sealLimit('bearing-share', 'Factor');
const spare = sealLimit('bore-spare-depth', 'Mm');

/** The seal seated so that its lip runs beside the track. */
export function movedOptions(place: TrackPlace): readonly TrackOption[] {
  return [moved(place, 'lip further out', -place.wantedMoveMm), moved(place, 'lip further in', place.wantedMoveMm)];
}

function moved({ situation, oldDepthMm }: TrackPlace, kind: 'lip further out' | 'lip further in', moveMm: number): TrackOption {
  const { bore, seal, clearBehindMm, shaft } = situation;
  if (oldDepthMm === null) return trackOption(kind, [deciding('track-needs-old-depth', 'unknown', {}, plainGeometry, 'oldDepthMm')], { moveMm });
  const isOut = moveMm < 0;
  const newDepthMm = oldDepthMm + moveMm;
  // Compared as settled to a millionth: 2.3 less 2 is 0.3.
  const endMm = snapMm(newDepthMm + seal.widthMm);
  const standsOut = isOut && snapMm(newDepthMm) < 0;
  const endsOnShoulder = bore?.innerEnd === 'shoulder';
  const numbers = { moveMm, newDepthMm, ...(isOut && endsOnShoulder ? { spacerMm: -moveMm } : {}) };
  const lengthMm = Math.abs(moveMm);
  const seatedMm = bore?.depthMm === undefined ? null : Math.min(endMm, bore.depthMm) - Math.max(newDepthMm, 0);
  if (standsOut) {
    if (seatedMm === null) return trackOption(kind, [deciding('track-move-needs-bore-depth', 'unknown', { lengthMm }, plainGeometry, 'bore.depthMm')], numbers);
    if (seatedMm < seatShare.low * seal.widthMm) return trackOption(kind, [deciding('track-move-leaves-bore', 'bad', { lengthMm, standsOutMm: -newDepthMm, seatedMm: Math.max(0, seatedMm) }, seatShare.source)], numbers);
  }
  if (!isOut) {
    if (endsOnShoulder) return trackOption(kind, [deciding('track-move-meets-shoulder', 'bad', { lengthMm }, plainGeometry)], numbers);
    if (bore?.depthMm === undefined) return trackOption(kind, [deciding('track-move-needs-bore-depth', 'unknown', { lengthMm }, plainGeometry, 'bore.depthMm')], numbers);
    if (endMm > bore.depthMm) return trackOption(kind, [deciding('track-move-passes-bore-end', 'bad', { lengthMm, overMm: snapMm(endMm - bore.depthMm) }, plainGeometry)], numbers);
    if (clearBehindMm !== undefined && snapMm(clearBehindMm - moveMm) < spare.low) return trackOption(kind, [deciding('track-move-meets-what-is-behind', 'bad', { lengthMm, clearMm: clearBehindMm }, spare.source)], numbers);
  }
  const track = situation.wearTrack?.fromFaceMm;
  const onShaft = track === undefined ? undefined : (shaft?.obstacles ?? []).find(({ fromMm, lengthMm: long = 0 }) => -(track + moveMm) >= fromMm - 1 && -(track + moveMm) <= fromMm + long + 1);
  if (onShaft !== undefined) return trackOption(kind, [deciding('track-move-lands-on-part', 'bad', { lengthMm, part: onShaft.kind }, plainGeometry)], numbers);
  const findings: Finding[] = [deciding(isOut ? (endsOnShoulder ? 'track-left-by-spacer' : 'track-left-outward') : 'track-left-inward', 'good', { lengthMm, newDepthMm }, trackMoveSource)];
  if (standsOut) findings.push(supporting('track-move-stands-out', 'care', { standsOutMm: -newDepthMm }, seatShare.source));
  if (!isOut && clearBehindMm === undefined) findings.push(supporting('track-move-room-behind-unknown', 'care', { lengthMm }, plainGeometry));
  return trackOption(kind, findings, numbers);
}

export const sleeveWall = sealLimit('track-sleeve-wall', 'Mm');
const turnedWall = sealLimit('sleeve-wall', 'Mm');

/** A thin sleeve over the track: the old seal size stays, the lip is stretched by twice its wall. */
export function thinSleeve(place: TrackPlace): TrackOption {
  const { situation, shaftMm } = place;
  const growthMm = { low: 2 * sleeveWall.low, high: 2 * sleeveWall.high };
  const made = newLipInterferenceMm(situation.seal.shaftMm);
  const findings: Finding[] = [deciding('thin-sleeve-covers-track', 'care', { lowGrowthMm: growthMm.low, highGrowthMm: growthMm.high }, sleeveWall.source)];
  if (made !== null) findings.push(supporting('thin-sleeve-stretches-lip', made.low + growthMm.high > made.high ? 'care' : 'note', { lipLowMm: made.low + growthMm.low, lipHighMm: made.high + growthMm.high, madeHighMm: made.high }, source('gb-9877-1-1988', 'page', 'lip interference')));
  if (situation.shaft?.obstacles?.some(({ kind }) => kind === 'keyway' || kind === 'spline' || kind === 'cross hole') === true) findings.push(supporting('thin-sleeve-not-over-gaps', 'care', {}, source('us-army-tm', 'page', 'no sleeve over keyways, splines and ports')));
  const bore = sleeveBore(place, shaftMm + growthMm.low, 'ss304');
  return trackOption('thin sleeve', findings, { newShaftMm: shaftMm + (growthMm.low + growthMm.high) / 2, newShaftLowerMm: shaftMm + growthMm.low, newShaftUpperMm: shaftMm + growthMm.high, ...bore });
}

/** A turned steel sleeve on the shaft, ground to the shaft size of a larger standard seal of the same bore. */
export function turnedSleeve(place: TrackPlace): TrackOption {
  const { situation, shaftMm } = place;
  const kind = 'turned sleeve and larger seal';
  const newShaftMm = largerSealShaftsMm(situation.seal).find((mm) => (mm - shaftMm) / 2 >= turnedWall.low);
  if (newShaftMm === undefined) return trackOption(kind, [deciding('no-larger-seal-in-bore', 'bad', { outsideMm: situation.seal.outsideMm, wallMm: turnedWall.low }, standardSizeSource)]);
  const bore = sleeveBore(place, newShaftMm, 'steel-c45');
  if (bore === null) return trackOption(kind, [deciding('track-sleeve-finds-no-fit', 'bad', { newShaftMm }, plainMechanics)], { newShaftMm });
  return trackOption(kind, [deciding('turned-sleeve-takes-larger-seal', 'good', { newShaftMm, outsideMm: situation.seal.outsideMm, wallMm: (newShaftMm - shaftMm) / 2 }, standardSizeSource)], { ...ground(newShaftMm), ...bore });
}

/** The shaft ground down past the groove, to the shaft size of a smaller standard seal of the same bore. */
export function regrind({ situation, shaftMm }: TrackPlace): TrackOption {
  const kind = 'regrind and smaller seal';
  const depthMm = situation.wearTrack?.depthMm;
  if (depthMm === undefined) return trackOption(kind, [deciding('regrind-needs-groove-depth', 'unknown', {}, plainGeometry, 'wearTrack.depthMm')]);
  const cleanMm = snapMm(shaftMm - 2 * depthMm);
  const newShaftMm = smallerSealShaftsMm(situation.seal).find((mm) => mm <= cleanMm);
  if (newShaftMm === undefined) return trackOption(kind, [deciding('no-smaller-seal-in-bore', 'bad', { outsideMm: situation.seal.outsideMm, cleanMm }, standardSizeSource)]);
  return trackOption(kind, [deciding('regrind-takes-smaller-seal', 'care', { newShaftMm, outsideMm: situation.seal.outsideMm, removedMm: shaftMm - newShaftMm }, standardSizeSource)], ground(newShaftMm));
}

/** Drawing data of a ground track: h11, roughness as DIN 3760 asks, no lead. */
function ground(newShaftMm: number): Partial<TrackOption> {
  const zone = zoneOfClass({ nominalMm: newShaftMm, toleranceClass: 'h11' });
  const roughness = trackRoughness();
  return { newShaftMm, newShaftLowerMm: zone.lowerLimitOfSizeMm, newShaftUpperMm: zone.upperLimitOfSizeMm, roughnessLowUm: roughness.lowUm, roughnessHighUm: roughness.highUm };
}

export function trackRoughness() {
  const { columns } = surfaceLimits;
  const i = columns.what.findIndex((what, row) => what === 'shaft-ra' && columns.set[row] === 'din-3760');
  return { lowUm: columns.lowerUm[i] ?? null, highUm: columns.upperUm[i] ?? null, source: source('din-3760-1996', markAt(surfaceLimits, 'upperUm', i), 'shaft roughness') };
}

/** Limits of the sleeve's bore for a fit on this shaft that stays tight when hot and does not flow; null where none is found. */
function sleeveBore({ situation, shaftMm }: TrackPlace, outsideMm: number, hub: string): Pick<TrackOption, 'sleeveBoreLowerMm' | 'sleeveBoreUpperMm'> | null {
  const { running, seal, shaft, materials } = situation;
  const hotC = running?.fluidTemperatureC ?? 20;
  try {
    const fit = chooseFit.compute({
      nominalMm: seal.shaftMm,
      joint: { shaftBoreMm: 0, hubOutsideMm: outsideMm, lengthMm: seal.widthMm, shaft: shaft?.material ?? 'steel-c45', hub, temperatureC: hotC, ...(materials === undefined ? {} : { materials }) },
      mustStayTight: true, mustStayElastic: true, leastInterferenceUm: 1, maximumCandidateCount: 1,
    }).candidates[0];
    if (fit === undefined) return null;
    const { leastInterferenceUm: least, mostInterferenceUm: most } = fit;
    const middleUm = (least + most) / 2;
    const halfUm = zoneOfClass({ nominalMm: seal.shaftMm, toleranceClass: 'H7' }).standardToleranceUm / 4;
    const at = (um: number) => Math.round((shaftMm - um / 1000) * 1e6) / 1e6;
    return { sleeveBoreLowerMm: at(Math.min(most, middleUm + halfUm)), sleeveBoreUpperMm: at(Math.max(least, middleUm - halfUm)) };
  } catch (error) {
    if (error instanceof CalculationError) return null;
    throw error;
  }
}
