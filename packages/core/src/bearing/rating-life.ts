import * as z from 'zod/mini';
import { forceField, hoursField, lengthField, rotationalSpeedField, temperatureField } from '../quantity/index.js';
import { candourFields, choiceField, contradiction, deciding, defineCalculation, exactlyOne, findingField, given, notBoth, numberField, outputNumber, rulesInSchema, source, spanField, supporting, verdictField, verdictOf, type Assumption, type Finding, type Span, type WorkingStep } from '../result/index.js';
import { contaminationLevels, contaminationSpan, equivalentBallLoad, lifeModification, lifeModificationTerms, nominalViscosity, reliabilityFactor, type BallLoad } from './internal/iso-281.js';

const inputField = z
  .strictObject({
    basicDynamicLoadRatingN: forceField({ label: 'basic dynamic load rating C, as the maker of the bearing gives it', unit: 'N', over: 0, upTo: 100_000_000 }),
    basicStaticLoadRatingN: z.optional(forceField({ label: 'basic static load rating C0, as the maker gives it', unit: 'N', over: 0, upTo: 100_000_000 })),
    equivalentLoadN: z.optional(forceField({ label: 'equivalent dynamic load P', unit: 'N', over: 0, upTo: 100_000_000 })),
    radialLoadN: z.optional(forceField({ label: 'radial load', unit: 'N', from: 0, upTo: 100_000_000 })),
    axialLoadN: z.optional(forceField({ label: 'axial load', unit: 'N', from: 0, upTo: 100_000_000 })),
    f0Factor: z.optional(numberField({ label: 'factor f0 of the bearing, as the maker gives it', unit: '', from: 8, upTo: 18, typical: '14' })),
    kind: choiceField(['ball', 'roller'], { label: 'balls or rollers' }),
    speedRpm: rotationalSpeedField({ label: 'speed', unit: 'rpm', over: 0, upTo: 1_000_000 }),
    reliabilityPercent: z.optional(numberField({ label: 'reliability wanted', unit: '%', from: 90, upTo: 99.95, typical: '90' })),
    boreMm: z.optional(lengthField({ label: 'bore of the bearing', unit: 'mm', over: 0, upTo: 5000 })),
    greaseTemperatureC: z.optional(temperatureField({ label: 'temperature of the grease while running', unit: '°C', from: -40, upTo: 120 })),
    meanDiameterMm: z.optional(lengthField({ label: 'mean diameter of the bearing, (d + D)/2', unit: 'mm', over: 0, upTo: 5000 })),
    viscosityMm2PerS: z.optional(numberField({ label: 'viscosity of the oil at working temperature', unit: 'mm²/s', over: 0, upTo: 10_000 })),
    fatigueLoadLimitN: z.optional(forceField({ label: 'fatigue load limit Cu, as the maker gives it', unit: 'N', over: 0, upTo: 10_000_000 })),
    contaminationFactor: z.optional(numberField({ label: 'contamination factor eC', unit: '', from: 0, upTo: 1 })),
    contamination: z.optional(choiceField(contaminationLevels, { label: 'how clean the oil is' })),
    serviceIntervalHours: z.optional(hoursField({ label: 'service interval', unit: 'h', over: 0, upTo: 1_000_000 })),
  })
  .check(
    z.refine((input) => (input.equivalentLoadN === undefined) !== (input.radialLoadN === undefined), { error: 'give equivalentLoadN, or radialLoadN with axialLoadN', path: ['equivalentLoadN'] }),
    z.refine((input) => input.contaminationFactor === undefined || input.contamination === undefined, { error: 'give contaminationFactor or contamination, not both', path: ['contamination'] }),
    rulesInSchema([exactlyOne(given('equivalentLoadN'), given('radialLoadN')), notBoth('contaminationFactor', 'contamination')]),
  );

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const outputField = z.strictObject({
  verdict: verdictField,
  equivalentLoadN: outputNumber('equivalent dynamic load P', 'N'),
  basicRatingLifeMillionRev: outputNumber('basic rating life L10', '10⁶ turns'),
  basicRatingLifeHours: outputNumber('basic rating life L10h', 'h'),
  reliabilityFactor: outputNumber('factor a1 for the reliability', ''),
  lifeModificationFactor: z.nullable(spanField('factor a_ISO', '')),
  modifiedRatingLifeHours: z.nullable(spanField('modified rating life Lnm', 'h')),
  viscosityRatio: maybe('viscosity ratio κ', ''),
  nominalViscosityMm2PerS: maybe('viscosity that would be wanted, ν1', 'mm²/s'),
  equivalentStaticLoadN: maybe('equivalent static load P0', 'N'),
  staticSafetyFactor: maybe('static safety C0/P0', ''),
  speedFactorMmRpm: maybe('speed factor n·dm', 'mm·rpm'),
  relubricationHours: z.nullable(spanField('grease again after, an estimate', 'h')),
  serviceIntervalsCount: maybe('service intervals in the life', ''),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type RatingLifeInput = z.infer<typeof inputField>;
export type RatingLifeOutput = z.infer<typeof outputField>;

const iso281 = (clause: string) => source('iso-281-2007', 'memory', clause);
const iso76 = source('iso-76-2006', 'memory', 'equivalent static load');
const exponentOf = (kind: RatingLifeInput['kind']) => (kind === 'ball' ? 3 : 10 / 3);
/** Static safety below which quiet running is not given: 1 for balls, 1.5 for rollers. */
const leastStaticSafety = { ball: 1, roller: 1.5 } as const;

/** Rating life of a bearing.  L10 = (C/P)^p,  p = 3 for balls, 10/3 for rollers;  Lnm = a1·a_ISO·L10
 * Load ratings are the maker's. For deep groove balls P comes from radial and axial load where those are given. The modified life needs
 * viscosity, mean diameter, fatigue load limit and how clean the oil is; a contamination level gives a span.
 * @returns life [10⁶ turns, h], static safety, viscosity ratio, modified life; findings
 * @throws CalculationError invalid-input | contradiction | outside-table (κ below 0.1)
 * @source iso-281-2007, iso-76-2006 (held as: memory)
 * @example ratingLife.run({ basicDynamicLoadRatingN: 19500, equivalentLoadN: 1950, kind: 'ball', speedRpm: 1000 }).basicRatingLifeMillionRev // 1000
 */
export const ratingLife = defineCalculation({
  name: 'rating-life',
  summary: 'Rating life of a bearing by ISO 281, basic and modified, and its static safety',
  input: inputField,
  output: outputField,
  compute(input): RatingLifeOutput {
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
  },
  explain(input, output): readonly WorkingStep[] {
    const load = loadOf(input);
    const p = exponentOf(input.kind);
    const steps: WorkingStep[] = [];
    if (load.parts !== null) {
      const { e, X, Y, Fr, Fa } = load.parts;
      steps.push({ kind: 'formula', symbol: 'P', meaning: 'equivalent dynamic load', formula: 'Fa <= e * Fr ? Fr : max(Fr, X * Fr + Y * Fa)', scope: { Fr, Fa, e, X, Y }, value: output.equivalentLoadN, unit: 'N', source: iso281('table 3') });
    }
    steps.push(
      { kind: 'formula', symbol: 'L10', meaning: 'basic rating life', formula: '(C / P)^p', scope: { C: input.basicDynamicLoadRatingN, P: output.equivalentLoadN, p }, value: output.basicRatingLifeMillionRev, unit: '10⁶ turns', source: iso281('5') },
      { kind: 'formula', symbol: 'L10h', meaning: 'basic rating life', formula: '1e6 * L / (60 * n)', scope: { L: output.basicRatingLifeMillionRev, n: input.speedRpm }, value: output.basicRatingLifeHours, unit: 'h', source: iso281('5') },
    );
    if (output.nominalViscosityMm2PerS !== null && input.meanDiameterMm !== undefined) {
      const scope = { n: input.speedRpm, D: input.meanDiameterMm };
      steps.push({ kind: 'formula', symbol: 'nu_1', meaning: 'viscosity that would be wanted', formula: 'n < 1000 ? 45000 * n^(-0.83) * D^(-0.5) : 4500 * n^(-0.5) * D^(-0.5)', scope, value: output.nominalViscosityMm2PerS, unit: 'mm²/s', source: iso281('9.3.3') });
    }
    if (output.viscosityRatio !== null && output.nominalViscosityMm2PerS !== null && input.viscosityMm2PerS !== undefined) {
      steps.push({ kind: 'formula', symbol: 'kappa', meaning: 'viscosity ratio', formula: 'nu / nu_1', scope: { nu: input.viscosityMm2PerS, nu_1: output.nominalViscosityMm2PerS }, value: output.viscosityRatio, unit: '', source: iso281('9.3.3') });
    }
    if (output.relubricationHours !== null && input.boreMm !== undefined) {
      const scope = { k: input.kind === 'ball' ? 10 : 5, n: input.speedRpm, d: input.boreMm, t: input.greaseTemperatureC ?? 70 };
      steps.push({ kind: 'formula', symbol: 't_f', meaning: 'grease again after, at most', formula: 'k * (14e6 / (n * sqrt(d)) - 4 * d) * 0.5^(max(0, t - 70) / 15)', scope, value: output.relubricationHours.high, unit: 'h', source: source('bearing-handbook-reprints', 'memory', 'grease interval') });
    }
    if (output.modifiedRatingLifeHours !== null && output.lifeModificationFactor !== null) {
      const { ratio, a, b, power, inner, load: q, outer } = lifeModificationTerms(input.kind, output.viscosityRatio ?? 0);
      const scope = { eC: cleanlinessOf(input)?.low ?? 0, Cu: input.fatigueLoadLimitN ?? 0, P: output.equivalentLoadN, kappa: ratio, a, b, r: power, s: inner, q };
      const share = Math.max(0, a - b / ratio ** power) ** inner * ((scope.eC * scope.Cu) / scope.P) ** q;
      steps.push(
        { kind: 'formula', symbol: 'g', meaning: 'what film, cleanliness and load give, low', formula: 'max(0, a - b / kappa^r)^s * (eC * Cu / P)^q', scope, value: share, unit: '', source: iso281('9.3.3.4') },
        { kind: 'formula', symbol: 'a_ISO', meaning: 'factor a_ISO, low; at most 50', formula: 'g >= 1 ? 50 : min(50, 0.1 * (1 - g)^w)', scope: { g: share, w: outer }, value: output.lifeModificationFactor.low, unit: '', source: iso281('9.3.3.4') },
      );
      steps.push({ kind: 'formula', symbol: 'Lnmh', meaning: 'modified rating life, low', formula: 'a_1 * a_ISO * L', scope: { a_1: output.reliabilityFactor, a_ISO: output.lifeModificationFactor.low, L: output.basicRatingLifeHours }, value: output.modifiedRatingLifeHours.low, unit: 'h', source: iso281('9') });
    }
    return steps;
  },
});

function loadOf(input: RatingLifeInput): { readonly equivalentN: number; readonly parts: BallLoad | null } {
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

function cleanlinessOf({ contaminationFactor, contamination, meanDiameterMm }: RatingLifeInput): Span | null {
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
