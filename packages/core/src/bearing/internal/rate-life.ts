import { contradiction, deciding, source, supporting, verdictOf, type Assumption, type Finding, type Span } from '../../result/index.js';
import { contaminationSpan, equivalentBallLoad, lifeModification, nominalViscosity, reliabilityFactor, type BallLoad } from './iso-281.js';
import type { RatingLifeInput, RatingLifeOutput } from './rating-life-fields.js';

export const iso281 = (clause: string) => source('iso-281-2007', 'memory', clause);
const iso76 = source('iso-76-2006', 'memory', 'equivalent static load');
export const exponentOf = (kind: RatingLifeInput['kind']) => (kind === 'ball' ? 3 : 10 / 3);
/** Static safety below which quiet running is not given: 1 for balls, 1.5 for rollers. */
const leastStaticSafety = { ball: 1, roller: 1.5 } as const;

/**
 * The life of a bearing, from input that is known to be sound: what `ratingLife` computes.
 * @throws CalculationError contradiction | outside-table (κ below 0.1)
 * @example rateLife({ basicDynamicLoadRatingN: 19500, equivalentLoadN: 1950, kind: 'ball', speedRpm: 1000 }).basicRatingLifeMillionRev // 1000
 */
export function rateLife(input: RatingLifeInput): RatingLifeOutput {
  const load = loadOf(input);
  const basicRatingLifeMillionRev = (input.basicDynamicLoadRatingN / load.equivalentN) ** exponentOf(input.kind);
  const basicRatingLifeHours = (basicRatingLifeMillionRev * 1e6) / (60 * input.speedRpm);
  const a1 = reliabilityFactor(input.reliabilityPercent ?? 90);
  const wanted = input.meanDiameterMm === undefined ? null : nominalViscosity(input.speedRpm, input.meanDiameterMm);
  const kappa = wanted === null || input.viscosityMm2PerS === undefined ? null : input.viscosityMm2PerS / wanted;
  const aIso = modificationOf(input, load.equivalentN, kappa);
  const modified = aIso === null ? null : { low: a1 * aIso.low * basicRatingLifeHours, high: a1 * aIso.high * basicRatingLifeHours };
  const staticLoadN = staticLoadOf(input);
  const staticSafety = staticLoadN === null || staticLoadN === 0 || input.basicStaticLoadRatingN === undefined ? null : input.basicStaticLoadRatingN / staticLoadN;
  const shortest = modified?.low ?? a1 * basicRatingLifeHours;
  const findings = findingsOf(input, load.equivalentN, shortest, staticSafety, kappa);
  return {
    verdict: verdictOf(findings),
    equivalentLoadN: load.equivalentN,
    basicRatingLifeMillionRev,
    basicRatingLifeHours,
    reliabilityFactor: a1,
    lifeModificationFactor: aIso,
    modifiedRatingLifeHours: modified,
    viscosityRatio: kappa,
    nominalViscosityMm2PerS: wanted,
    equivalentStaticLoadN: staticLoadN,
    staticSafetyFactor: staticSafety,
    speedFactorMmRpm: input.meanDiameterMm === undefined ? null : input.meanDiameterMm * input.speedRpm,
    relubricationHours: relubricationOf(input),
    serviceIntervalsCount: input.serviceIntervalHours === undefined ? null : shortest / input.serviceIntervalHours,
    findings,
    assumptions: assumptionsOf(input),
    notChecked: [...(relubricationOf(input) === null ? ['relubrication-interval'] : []), 'mounting-and-dirt', ...(aIso === null ? ['modified-life'] : [])],
  };
}

export function loadOf(input: RatingLifeInput): { readonly equivalentN: number; readonly parts: BallLoad | null } {
  if (input.equivalentLoadN !== undefined) return { equivalentN: input.equivalentLoadN, parts: null };
  const [Fr, Fa] = [input.radialLoadN ?? 0, input.axialLoadN ?? 0];
  if (Fr === 0 && Fa === 0) throw contradiction(['radialLoadN', 'axialLoadN'], 'without any load there is no life to rate');
  if (input.kind === 'roller') {
    if (Fa > 0) throw contradiction(['axialLoadN'], 'the equivalent load of rollers under axial load is the maker’s: give equivalentLoadN');
    return { equivalentN: Fr, parts: null };
  }
  const parts = equivalentBallLoad(Fr, Fa, input.f0Factor, input.basicStaticLoadRatingN);
  return { equivalentN: parts.P, parts };
}

export function cleanlinessOf({ contaminationFactor, contamination, meanDiameterMm }: RatingLifeInput): Span | null {
  if (contaminationFactor !== undefined) return { low: contaminationFactor, high: contaminationFactor };
  return contamination === undefined || meanDiameterMm === undefined ? null : contaminationSpan(contamination, meanDiameterMm);
}

function modificationOf(input: RatingLifeInput, P: number, kappa: number | null): RatingLifeOutput['lifeModificationFactor'] {
  if (kappa === null || input.fatigueLoadLimitN === undefined || input.meanDiameterMm === undefined) return null;
  const eC = cleanlinessOf(input);
  if (eC === null) return null;
  const at = (factor: number) => lifeModification(input.kind, kappa, (factor * (input.fatigueLoadLimitN ?? 0)) / P);
  return { low: at(eC.low), high: at(eC.high) };
}

/**
 * When to grease again, a rule of handbooks for horizontal shafts up to 70 °C.  t = k·(14·10⁶/(n·√d) − 4·d), k = 10 for balls, 5 for rollers
 * Above 70 °C half for every 15 K. An estimate: half of it stands as the careful end. Null where the speed is too high for the rule.
 * @source bearing-handbook-reprints (held as: memory)
 */
function relubricationOf({ kind, speedRpm, boreMm, greaseTemperatureC = 70 }: RatingLifeInput): RatingLifeOutput['relubricationHours'] {
  if (boreMm === undefined) return null;
  const hours = (kind === 'ball' ? 10 : 5) * (14e6 / (speedRpm * Math.sqrt(boreMm)) - 4 * boreMm);
  if (hours <= 0) return null;
  const warm = hours * 0.5 ** (Math.max(0, greaseTemperatureC - 70) / 15);
  return { low: warm / 2, high: warm };
}

/** P0 = max(Fr, 0.6·Fr + 0.5·Fa) for deep groove balls; rollers carry radial load. */
function staticLoadOf({ radialLoadN, axialLoadN = 0, kind }: RatingLifeInput): number | null {
  if (radialLoadN === undefined) return null;
  return kind === 'ball' ? Math.max(radialLoadN, 0.6 * radialLoadN + 0.5 * axialLoadN) : radialLoadN;
}

function findingsOf(input: RatingLifeInput, P: number, shortestHours: number, staticSafety: number | null, kappa: number | null): readonly Finding[] {
  const findings: Finding[] = [];
  if (input.serviceIntervalHours !== undefined) {
    const numbers = { lifeHours: shortestHours, intervalHours: input.serviceIntervalHours };
    findings.push(deciding(shortestHours >= input.serviceIntervalHours ? 'life-outlasts-interval' : 'life-shorter-than-interval', shortestHours >= input.serviceIntervalHours ? 'good' : 'bad', numbers, iso281('5')));
  }
  if (P > input.basicDynamicLoadRatingN / 2) findings.push(supporting('load-beyond-rating-life', 'care', { loadN: P, ratingN: input.basicDynamicLoadRatingN }, iso281('5')));
  if (staticSafety !== null) findings.push(supporting(staticSafety >= leastStaticSafety[input.kind] ? 'static-safety-enough' : 'static-safety-low', staticSafety >= leastStaticSafety[input.kind] ? 'good' : 'care', { safetyFactor: staticSafety, leastFactor: leastStaticSafety[input.kind] }, iso76));
  if (kappa !== null && kappa < 1) findings.push(supporting('oil-film-thin', 'care', { kappaRatio: kappa }, iso281('9.3.3')));
  return findings;
}

function assumptionsOf({ reliabilityPercent, contamination, meanDiameterMm }: RatingLifeInput): readonly Assumption[] {
  const list: Assumption[] = [];
  if (reliabilityPercent === undefined) list.push({ name: 'reliability-90', value: 90, unit: '%', source: iso281('table 12'), effect: 'rated-life' });
  if (contamination !== undefined && meanDiameterMm !== undefined) {
    const { low, high } = contaminationSpan(contamination, meanDiameterMm);
    list.push({ name: 'contamination-factor', value: low, upToValue: high, unit: '', source: iso281('table 13'), effect: 'rated-life' });
  }
  return list;
}
