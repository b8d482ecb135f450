import type { Span } from '../../result/index.js';
import { zoneOfClass } from '../../tolerance/index.js';
import type { DriverNeed } from './driver-need.js';
import type { FinalDepth } from './final-depth.js';
import { practiceValue } from './practice-value.js';

/** One driver to turn, as the dimensions of a drawing. */
export interface TurnedDriver {
  /** flat plate: lands on the housing; recessed: so does its rim, and what its recess takes stands out; stepped: its collar lands, its step sets the depth; plain sleeve: follows to the shoulder. */
  readonly form: 'flat plate' | 'recessed plate' | 'stepped collar' | 'plain sleeve';
  /** The end that pushes. */
  readonly outsideMm: number;
  /** ISO 286 class that a lathe holds without care. */
  readonly outsideClass: string;
  readonly outsideDeviationMm: Span;
  readonly insideMm: number;
  readonly insideClass: string;
  readonly insideDeviationMm: Span;
  readonly insideDepthMm: number;
  readonly collarOutsideMm: number | null;
  /** Inside of the recess that the seal stands out into. */
  readonly recessInsideMm: number | null;
  /** How far the step stands proud of the collar, or how deep the recess is. */
  readonly stepHeightMm: number | null;
  readonly stepClass: string | null;
  readonly stepDeviationMm: Span | null;
  readonly lengthMm: number;
  readonly faceOutOfSquareUpToMm: number;
  readonly isOpenThrough: boolean;
}

/** What a turned driver is given, as practice has it; the 0.4 mm under the seal outside is from workshop manuals. */
const turnedPractice = {
  underSealMm: practiceValue('turned-under-seal', 'Mm').low,
  underBoreMm: practiceValue('turned-under-bore', 'Mm').low,
  overShaftMm: practiceValue('turned-over-shaft', 'Mm').low,
  landingMm: practiceValue('turned-landing', 'Mm').low,
  spareLengthMm: practiceValue('turned-spare-length', 'Mm').low,
  solidEndMm: practiceValue('turned-solid-end', 'Mm').low,
  handleMm: practiceValue('turned-handle', 'Mm').low,
  reliefMm: practiceValue('turned-relief', 'Mm').low,
  leastWallMm: practiceValue('turned-wall', 'Mm').low,
  faceOutOfSquareMm: practiceValue('turned-face-out-of-square', 'Mm').high,
} as const;

/** Classes of a turned driver: what must enter is never larger, what must clear is never smaller. */
const classes = { entering: 'h11', free: 'js12', inside: 'H12', step: 'js11' } as const;

function deviationOf(nominalMm: number, toleranceClass: string): Span {
  const { lowerLimitDeviationUm, upperLimitDeviationUm } = zoneOfClass({ nominalMm, toleranceClass });
  return { low: lowerLimitDeviationUm / 1000, high: upperLimitDeviationUm / 1000 };
}

/** A driver that would suit; null where shaft parts leave no ring to turn. */
export function turnedDriverOf(need: DriverNeed): TurnedDriver | null {
  const { section, situation, final, mouthMm, faceDiameterMm, mustEnter } = need;
  const entering = down(Math.min(situation.seal.outsideMm - turnedPractice.underSealMm, section.boreMm.low - turnedPractice.underBoreMm));
  const depthMm = final.depthMm?.nominal ?? 0;
  const collarMm = collar(mouthMm.high, faceDiameterMm);
  const recessMm = up(section.sealOutsideMm.high + turnedPractice.overShaftMm);
  const form = formOf(final, collarMm - recessMm >= 2 * turnedPractice.leastWallMm);
  const isStepped = form === 'stepped collar';
  const isWide = form === 'flat plate' || form === 'recessed plate';
  const isRecessed = form === 'recessed plate';
  const stepMm = isStepped || isRecessed ? Math.abs(depthMm) : null;
  const outsideMm = isWide ? collarMm : entering;
  const insideMm = inside(need, entering);
  if (insideMm === null || !(entering - insideMm >= 2 * turnedPractice.leastWallMm)) return null;
  const outsideClass = isWide && mustEnter === 'no' ? classes.free : classes.entering;
  const insideDepthMm = up(need.lengthOverMm === null || need.lengthOverMm > 0 ? Math.max(need.lengthOverMm ?? 0, 0) + turnedPractice.spareLengthMm : turnedPractice.reliefMm);
  const lengthMm = up(Math.max(insideDepthMm + turnedPractice.solidEndMm, Math.max(final.depthMm?.high ?? 0, 0) + turnedPractice.handleMm));
  return {
    form,
    outsideMm,
    outsideClass,
    outsideDeviationMm: deviationOf(outsideMm, outsideClass),
    insideMm,
    insideClass: classes.inside,
    insideDeviationMm: deviationOf(insideMm, classes.inside),
    insideDepthMm,
    collarOutsideMm: isStepped ? collarMm : null,
    recessInsideMm: isRecessed ? recessMm : null,
    stepHeightMm: stepMm,
    stepClass: stepMm === null ? null : classes.step,
    stepDeviationMm: stepMm === null ? null : deviationOf(stepMm, classes.step),
    lengthMm,
    faceOutOfSquareUpToMm: turnedPractice.faceOutOfSquareMm,
    isOpenThrough: need.lengthOverMm === null,
  };
}

/** What lands on the housing sets the depth by itself; on a shoulder the shoulder does, and where the rim round a recess would be too thin, the gauge. */
function formOf({ kind, depthMm }: FinalDepth, leavesRim: boolean): TurnedDriver['form'] {
  if (kind === 'shoulder' || depthMm === null) return 'plain sleeve';
  if (depthMm.nominal > 0) return 'stepped collar';
  if (depthMm.nominal === 0) return 'flat plate';
  return leavesRim ? 'recessed plate' : 'plain sleeve';
}

/** Clear of what bends where that leaves a rim; else just clear of the shaft. */
function inside({ clearOver, rimAloneFromMm, faceUpToMm, section }: DriverNeed, outsideMm: number): number | null {
  const clear = clearOver === null ? 0 : clearOver.mm + turnedPractice.overShaftMm;
  const wanted = up(Math.max(clear, rimAloneFromMm));
  const most = Math.min(faceUpToMm, outsideMm - 2 * turnedPractice.leastWallMm);
  if (wanted <= most) return wanted;
  const least = up(clear);
  return least > 0 && least <= most && section.lipFacing === 'inward' ? least : null;
}

function collar(mouthHighMm: number, faceDiameterMm: number | null): number {
  const wanted = up(mouthHighMm + 2 * turnedPractice.landingMm);
  return faceDiameterMm !== null && faceDiameterMm > mouthHighMm ? Math.min(wanted, faceDiameterMm) : wanted;
}

/** To the next tenth up or down: what a lathe reads. */
function up(valueMm: number): number {
  return Math.ceil(valueMm * 10 - 1e-6) / 10;
}

function down(valueMm: number): number {
  return Math.floor(valueMm * 10 + 1e-6) / 10;
}
