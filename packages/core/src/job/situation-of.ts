import type { Situation } from '../seal/index.js';
import type { Position, SealPart, WorkshopFile } from './workshop-file-field.js';

/** The situation of one seal part: what its position, and the workshop around it, say about it. */
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
