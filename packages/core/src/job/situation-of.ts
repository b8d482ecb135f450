import type { Situation } from '../seal/index.js';
import type { Position, SealPart, WorkshopFile } from './workshop-file-field.js';

/**
 * The situation of one seal part: what its position, and the workshop around it, say about it.
 * @example positionsOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop).map(({ position }) => situationOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop, position, position.parts[0]).seal.outsideMm)[0] // 35
 */
export function situationOf(workshop: WorkshopFile, position: Position, part: SealPart): Situation {
  const { kind: _kind, name: _name, note: _note, seat, lipFacing, oldDepthMm, ...seal } = part;
  const all = {
    shaft: position.shaft,
    bore: position.bore,
    seal,
    running: position.running,
    seat: seat ?? position.seat,
    lipFacing: lipFacing ?? position.lipFacing,
    fluidSide: position.fluidSide,
    rotation: position.rotation,
    wearTrack: position.wearTrack,
    oldDepthMm: oldDepthMm ?? position.oldDepthMm,
    clearBehindMm: position.clearBehindMm,
    behind: position.behind,
    retainedBy: position.retainedBy,
    reachableFrom: position.reachableFrom,
    requirementSet: workshop.requirementSet,
    instruments: workshop.instruments,
    materials: workshop.materials,
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as unknown as Situation;
}
