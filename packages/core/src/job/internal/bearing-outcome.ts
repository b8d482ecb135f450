import { bearingDriver, type BearingDriverOutput } from '../../handwork/index.js';
import { explainSeats, judgeSeats, planFitting, planRemoval, rateLife, repairSeat, type BearingFittingOutput, type BearingRemovalOutput, type BearingSeatInput, type BearingSeatOutput, type RatingLifeOutput } from '../../bearing/index.js';
import { commonPractice, deciding, plainGeometry, supporting, verdictOf, type Finding, type Verdict, type WorkingStep } from '../../result/index.js';
import type { BearingPart, Machine, Position, WorkshopFile } from '../workshop-file-field.js';
import { attempt } from './attempt.js';
import { isUnlisted, namingFindings } from './bearing-naming.js';
import { given } from './given.js';
import type { InSteps } from './in-steps.js';
import type { BearingOutcome } from './sheet-output.js';

/** What a job sheet has to say about one bearing. */
interface BearingJudged {
  /** What its seats were asked with; null where neither seat is told. */
  readonly situation: BearingSeatInput | null;
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  readonly seat: BearingSeatOutput | null;
  readonly fitting: BearingFittingOutput | null;
  readonly removal: BearingRemovalOutput | null;
  readonly life: RatingLifeOutput | null;
  readonly driver: BearingDriverOutput | null;
}

/** A bearing with its seats as the position gives them; null where neither seat is told: it is on the sheet, but not renewed. */
function bearingQuestion(workshop: WorkshopFile, position: Position, part: BearingPart): BearingSeatInput | null {
  const { kind: _, name: __, note: ___, designation, boreMm, outsideMm, widthMm, basicDynamicLoadRatingN: _c, basicStaticLoadRatingN: _c0, isSealedOrGreased: _s, hasPolymerCage: _k, slipInGapUm: _g, caseLimitC: _l, coldestPartC: _p, isBlindBore: _b, mustBeReused: _r, ...seats } = part;
  const hasSeat = [part.shaftClass, part.shaftReadings, part.housingClass, part.housingReadings].some((one) => one !== undefined);
  if (!hasSeat) return null;
  const { running, bore, shaft } = position;
  const all = {
    ...seats,
    ...(designation === undefined || isUnlisted(part) ? { boreMm, outsideMm, widthMm } : { designation }),
    shaftMaterial: part.shaftMaterial ?? shaft?.material,
    housingMaterial: part.housingMaterial ?? bore?.material,
    temperatureC: running?.housingTemperatureC ?? running?.fluidTemperatureC,
    coldC: running?.coldestC,
    materials: workshop.materials,
    instruments: workshop.instruments,
  };
  return given(all);
}

/** The bearing judged and planned: seats and clearance, how it comes out, how it goes in, its life where ratings and load are given. */
function* judgeBearing(workshop: WorkshopFile, machine: Machine, position: Position, part: BearingPart): InSteps<BearingJudged> {
  const name = part.name ?? part.designation ?? 'bearing';
  const nothing = { seat: null, fitting: null, removal: null, life: null, driver: null };
  const isKnown = part.designation !== undefined || (part.boreMm !== undefined && part.outsideMm !== undefined && part.widthMm !== undefined);
  const question = bearingQuestion(workshop, position, part);
  if (question === null) {
    const findings = [supporting('bearing-not-looked-at', 'note', { name }, commonPractice)];
    return { situation: null, verdict: verdictOf(findings), findings, ...nothing };
  }
  if (!isKnown) {
    const findings = [deciding('bearing-not-known', 'unknown', { name }, commonPractice, 'designation')];
    return { situation: question, verdict: verdictOf(findings), findings: findings.map(ofBearing), ...nothing };
  }
  const errors: Finding[] = [];
  const tried = <T>(what: string, compute: () => T): T | null => {
    const result = attempt(compute);
    if ('value' in result) return result.value;
    if (!errors.some(({ parameters }) => parameters['reason'] === result.error.message)) errors.push(deciding('could-not-compute', 'unknown', { what, reason: result.error.message }, plainGeometry));
    return null;
  };
  const { isSealedOrGreased, hasPolymerCage, slipInGapUm, caseLimitC, coldestPartC, basicStaticLoadRatingN, isBlindBore, mustBeReused } = part;
  const seat = tried('bearing-seat', () => judgeSeats(question));
  yield;
  // What an unknown case bears is not guessed: the finding on its material says what is missing.
  const canPlan = seat?.findings.some(({ code }) => code === 'housing-material-not-given') !== true;
  const fitting = !canPlan ? null : tried('bearing-fitting', () => planFitting({ ...question, ...given({ isSealedOrGreased, hasPolymerCage, slipInGapUm, caseLimitC, coldestPartC, basicStaticLoadRatingN }) }));
  yield;
  const removal = !canPlan ? null : tried('bearing-removal', () => planRemoval({ ...question, ...given({ isBlindBore, mustBeReused, isSealedOrGreased, hasPolymerCage, caseLimitC }) }));
  yield;
  const toolsAtHand = workshop.toolsAtHand;
  const driver = !canPlan ? null : tried('bearing-driver', () => bearingDriver.compute({ ...question, ...(toolsAtHand === undefined ? {} : { toolsAtHand }), maximumCandidateCount: 3 }));
  yield;
  const life = lifeOf(machine, position, seat?.boreMm, part);
  const findings = [...namingFindings(part), ...(seat?.findings ?? []), ...(fitting?.findings ?? []).filter(({ severity }) => severity === 'care'), ...(life?.findings ?? []), ...repairsOf(question, seat), ...errors];
  return { situation: question, verdict: verdictOf(findings), findings: findings.map(ofBearing), seat, fitting, removal, life, driver };
}

/** What is missing of a bearing is told by its path under the bearing; what its housing is made of by that of the bore, where a file has it. */
function ofBearing(finding: Finding): Finding {
  if (finding.missing === 'housingMaterial') return { ...finding, missing: 'bore.material' };
  return finding.missing === undefined ? finding : { ...finding, missing: `bearing.${finding.missing}` };
}

/** The best repair of a seat that lets its ring creep, as a note. */
function repairsOf(question: BearingSeatInput, seat: BearingSeatOutput | null): readonly Finding[] {
  const ringOn = { shaft: 'inner', housing: 'outer' } as const;
  const loose = (['shaft', 'housing'] as const).filter((where) => seat?.findings.some(({ code }) => [`${ringOn[where]}-ring-creeps`, `${ringOn[where]}-ring-seat-worn`].includes(code)) === true);
  return loose.flatMap((where) => {
    const repair = attempt(() => repairSeat({ ...question, seat: where }));
    if ('error' in repair) return [];
    return repair.value.options.filter(({ verdict }) => verdict === 'suits' || verdict === 'suits with care').slice(0, 1).flatMap(({ findings }) => findings.slice(0, 1).map(({ code, parameters, source }) => supporting(code, 'note', parameters, source)));
  });
}

function lifeOf(machine: Machine, position: Position, boreMm: number | undefined, { basicDynamicLoadRatingN, basicStaticLoadRatingN, radialLoadN, bearingKind }: BearingPart): RatingLifeOutput | null {
  const speedRpm = position.running?.speedRpm;
  if (basicDynamicLoadRatingN === undefined || radialLoadN === undefined || radialLoadN === 0 || speedRpm === undefined || speedRpm === 0) return null;
  const serviceIntervalHours = position.serviceIntervalHours ?? machine.serviceIntervalHours;
  const result = attempt(() =>
    rateLife({
      basicDynamicLoadRatingN, radialLoadN, speedRpm, ...(boreMm === undefined ? {} : { boreMm }), kind: bearingKind === 'cylindrical-roller' ? 'roller' : 'ball',
      ...(basicStaticLoadRatingN === undefined ? {} : { basicStaticLoadRatingN }),
      ...(serviceIntervalHours === undefined ? {} : { serviceIntervalHours }),
    }),
  );
  return 'value' in result ? result.value : null;
}

/** Working of a bearing on a sheet. */
export function bearingWorking(workshop: WorkshopFile, position: Position, part: BearingPart): readonly WorkingStep[] {
  const question = bearingQuestion(workshop, position, part);
  if (question === null) return [];
  const result = attempt(() => explainSeats(question, judgeSeats(question)));
  return 'value' in result ? result.value : [];
}

/** A bearing on a sheet. */
export function* bearingOutcome(workshop: WorkshopFile, machine: Machine, position: Position, part: BearingPart, path: string): InSteps<BearingOutcome> {
  return { kind: 'bearing', name: part.name ?? part.designation ?? 'bearing', path, ...(yield* judgeBearing(workshop, machine, position, part)) };
}
