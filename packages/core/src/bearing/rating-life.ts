import { defineCalculation, source, type WorkingStep } from '../result/index.js';
import { lifeModificationTerms } from './internal/iso-281.js';
import { inputField, outputField } from './internal/rating-life-fields.js';
import { cleanlinessOf, exponentOf, iso281, loadOf, rateLife } from './internal/rate-life.js';

export type { RatingLifeInput, RatingLifeOutput } from './internal/rating-life-fields.js';

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
  compute: rateLife,
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
