import type { Situation } from '../seal/index.js';
import { given } from './internal/given.js';
import { oldGapMm, outermostFirst, sealPartsOf, type SealInBore } from './internal/seals-along-bore.js';
import type { Position, SealPart, WorkshopFile } from './workshop-file-field.js';

/**
 * The situation of one seal part: what its position, and the workshop around it, say about it. What a part says of itself goes first.
 * Where seals share a bore, what lies behind an outer one is the next seal, and the depth of the old seal is that of the part alone.
 * @example positionsOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop).map(({ position }) => situationOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop, position, position.parts[0]).seal.outsideMm)[0] // 35
 */
export function situationOf(workshop: WorkshopFile, position: Position, part: SealPart): Situation {
  const all = sealsInOrder(workshop, position);
  const i = all.findIndex((seal) => seal.part === part);
  const [own, inner] = [all[i], all[i + 1]];
  if (own === undefined || inner === undefined) return own?.situation ?? ownSituation(workshop, position, part, false);
  const { clearBehindMm: _ofInnermost, ...situation } = own.situation;
  const roomMm = part.clearBehindMm ?? oldGapMm(own, inner);
  return { ...situation, behind: 'second seal', ...(roomMm === null || roomMm < 0 ? {} : { clearBehindMm: roomMm }) };
}

/** The seals of a position, outermost first. @internal */
export function sealsInOrder(workshop: WorkshopFile, position: Position): readonly SealInBore[] {
  const parts = sealPartsOf(position);
  return outermostFirst(parts.map((part) => ({ part, situation: ownSituation(workshop, position, part, parts.length > 1) })));
}

function ownSituation(workshop: WorkshopFile, position: Position, part: SealPart, isOneOfSeveral: boolean): Situation {
  const { kind: _kind, name: _name, note: _note, seat, lipFacing, fluidSide, running, oldDepthMm, clearBehindMm, ...seal } = part;
  const all = {
    shaft: position.shaft,
    bore: position.bore,
    seal,
    running: running === undefined ? position.running : { ...position.running, ...given(running) },
    seat: seat ?? position.seat,
    lipFacing: lipFacing ?? position.lipFacing,
    fluidSide: fluidSide ?? position.fluidSide,
    rotation: position.rotation,
    wearTrack: position.wearTrack,
    oldDepthMm: oldDepthMm ?? (isOneOfSeveral ? undefined : position.oldDepthMm),
    clearBehindMm: clearBehindMm ?? position.clearBehindMm,
    behind: position.behind,
    retainedBy: position.retainedBy,
    reachableFrom: position.reachableFrom,
    requirementSet: workshop.requirementSet,
    instruments: workshop.instruments,
    materials: workshop.materials,
  };
  return given(all) as Situation;
}
