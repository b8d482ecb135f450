import { planExtraction, planSeating, searchDrivers } from '../../handwork/index.js';
import { deciding, plainGeometry, verdictOf, type Finding } from '../../result/index.js';
import { judgeSeal, type SealCheckOutput, type Situation } from '../../seal/index.js';
import { sealsInOrder, situationOf } from '../situation-of.js';
import type { Position, SealPart, WorkshopFile } from '../workshop-file-field.js';
import { attempt } from './attempt.js';
import type { InSteps } from './in-steps.js';
import { sealPartsOf } from './seals-along-bore.js';
import type { SealOutcome } from './sheet-output.js';

/** What would help where something is wrong. */
export type Remedies = (situation: Situation, check: SealCheckOutput) => readonly Finding[];

/** What a job sheet has to say about one seal: whether it suits, how it comes out, what drives it in, where it ends. */
export function* sealOutcome(workshop: WorkshopFile, position: Position, part: SealPart, path: string, remedies: Remedies): InSteps<SealOutcome> {
  const situation = situationOf(workshop, position, part);
  const errors: Finding[] = [];
  const tried = <T>(what: string, compute: () => T): T | null => {
    const result = attempt(compute);
    if ('value' in result) return result.value;
    if (!errors.some((finding) => finding.parameters['reason'] === result.error.message)) {
      errors.push(deciding('could-not-compute', 'unknown', { what, reason: result.error.message }, plainGeometry));
    }
    return null;
  };
  const check = tried('seal-check', () => judgeSeal(situation));
  yield;
  const extraction = tried('extraction-plan', () => planExtraction(situation));
  yield;
  const driver = tried('driver-search', () => searchDrivers(workshop.toolsAtHand === undefined ? situation : { ...situation, toolsAtHand: workshop.toolsAtHand }));
  yield;
  const seating = tried('seating-plan', () => planSeating(apartFromItsNeighbour(workshop, position, part, situation)));
  yield;
  // Where the new seal would end belongs to the question whether it suits; how it is got there does not.
  const leavesTrack = seating?.findings.some(({ code }) => code === 'seating-lip-leaves-track') === true;
  const ofPlace = (seating?.findings ?? []).filter(({ code, role, severity }) => role === 'deciding' && (severity === 'care' || severity === 'bad' || code === 'seating-lip-leaves-track'));
  // Where the planned place is off the old track already, no other way off it is named.
  const { wearTrack, ...elsewhere } = situation;
  const helps = check === null ? [] : remedies(leavesTrack || wearTrack === undefined ? elsewhere : situation, check);
  const findings = [...(check?.findings ?? []), ...ofPlace, ...helps, ...errors];
  return { kind: 'seal', name: nameIn(position, part), path, situation, verdict: verdictOf(findings), findings, check, extraction, driver, seating };
}

/** Where another seal lies behind this one in the same bore, the room between the two is judged from both (`betweenSeals`). */
function apartFromItsNeighbour(workshop: WorkshopFile, position: Position, part: SealPart, situation: Situation): Situation {
  if (sealsInOrder(workshop, position).at(-1)?.part === part) return situation;
  const { clearBehindMm: _judgedBetween, ...rest } = situation;
  return { ...rest, behind: 'open space' };
}

/** The name of a seal, or its size; with its number among those of the position that are called the same. */
function nameIn(position: Position, part: SealPart): string {
  const nameOf = ({ name, shaftMm, outsideMm, widthMm }: SealPart) => name ?? `${shaftMm} × ${outsideMm} × ${widthMm}`;
  const alike = sealPartsOf(position).filter((other) => nameOf(other) === nameOf(part));
  return alike.length < 2 ? nameOf(part) : `${nameOf(part)} (${alike.indexOf(part) + 1})`;
}
