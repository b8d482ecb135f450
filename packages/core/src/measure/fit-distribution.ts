import * as z from 'zod/mini';
import { deviationField, lengthField } from '../quantity/index.js';
import { candourFields, defineCalculation, numberField, wholeNumberField, outputNumber, source, type WorkingStep } from '../result/index.js';
import { clearanceDistribution, type ClearanceDistribution } from './internal/clearance-distribution.js';
import { readSpread, type ReadSpread } from './internal/read-spread.js';
import { simulateClearance, type SimulatedClearance } from './internal/simulate-clearance.js';
import { partSpreadField } from './part-spread-field.js';

const inputField = z.strictObject({
  nominalMm: lengthField({ label: 'nominal size', unit: 'mm', over: 0, upTo: 3150 }),
  hole: partSpreadField,
  shaft: partSpreadField,
  interferenceOverUm: z.optional(deviationField({ label: 'interference that is too much', unit: 'µm', from: 0, upTo: 100_000, help: 'how often is it passed?' })),
  quantilesAtProbability: z.optional(
    z.array(numberField({ label: 'share of fits that do not pass the clearance asked for', unit: '', over: 0, below: 1 })).check(z.minLength(1), z.maxLength(100)),
  ),
  drawCount: z.optional(wholeNumberField({ label: 'pairs of parts to pick at random', unit: '', from: 1000, upTo: 5_000_000, help: 'left out: none are picked, and the exact answer stands alone', typical: '100000' })),
  seed: z.optional(wholeNumberField({ label: 'seed of the random picks', unit: '', from: 0, upTo: 4_294_967_295, typical: '1' })),
  curvePointCount: z.optional(wholeNumberField({ label: 'points of the curve', unit: '', from: 2, upTo: 2000, typical: '121' })),
});

const limitsField = z.strictObject({
  minimumClearanceUm: outputNumber('smallest clearance, interference negative', 'µm'),
  maximumClearanceUm: outputNumber('largest clearance, interference negative', 'µm'),
});

const quantileField = z.strictObject({
  atProbability: outputNumber('share of fits that do not pass it', ''),
  clearanceUm: outputNumber('clearance, interference negative', 'µm'),
});

const spreadShape = {
  meanClearanceUm: outputNumber('mean clearance, interference negative', 'µm'),
  standardDeviationUm: outputNumber('standard deviation of the clearance', 'µm'),
  clearanceProbability: outputNumber('share of fits that are loose', ''),
  interferenceProbability: outputNumber('share of fits that are tight', ''),
  interferenceOverProbability: z.nullable(outputNumber('share of fits tighter than the interference asked about', '')),
  quantiles: z.readonly(z.array(quantileField)),
};

const outputField = z.strictObject({
  worstCase: limitsField,
  rootSumSquare: limitsField,
  exact: z.strictObject({ ...spreadShape, curve: z.readonly(z.array(z.strictObject({ clearanceUm: outputNumber('clearance, interference negative', 'µm'), cumulativeProbability: outputNumber('share of fits up to there', '') }))) }),
  simulated: z.nullable(z.strictObject({ ...spreadShape, drawCount: outputNumber('pairs of parts picked', ''), seed: outputNumber('seed', '') })),
  ...candourFields,
});

export type FitDistributionOutput = z.infer<typeof outputField>;

type Spread = Pick<FitDistributionOutput['exact'], 'meanClearanceUm' | 'standardDeviationUm' | 'clearanceProbability' | 'interferenceProbability' | 'interferenceOverProbability' | 'quantiles'>;

const usualQuantiles: readonly number[] = [0.00135, 0.025, 0.5, 0.975, 0.99865];
const usualCurvePoints = 121;
/** Standard deviations that the curve of an endless spread is drawn to. */
const curveReach = 4.5;
const byProbability = source('plain-probability', 'computed');

/** How a fit comes out over many pairs of parts: worst case, root sum of squares, exactly, and by seeded picks.  c = D − d,  μ = μ_D − μ_d,  σ² = σ_D² + σ_d²
 * The two parts are taken as picked independently. Exact: convolution, better than 1e-12; see `clearanceDistribution`.
 * @returns clearances [µm], interference negative; probabilities 0 to 1; quantiles; n points of the cumulative curve
 * @throws CalculationError invalid-input | contradiction | no-such-class | outside-table
 * @source plain-probability (held as: computed); picks blackman-vigna-2021, karney-2016 (held as: memory)
 * @example fitDistribution.run({ nominalMm: 25, hole: { toleranceClass: 'H7', spread: 'uniform' }, shaft: { toleranceClass: 'k6', spread: 'uniform' } }).exact.clearanceProbability.toFixed(4) // '0.5952'
 */
export const fitDistribution = defineCalculation({
  name: 'fit-distribution',
  summary: 'How often a fit is loose or too tight over many pairs of parts',
  input: inputField,
  output: outputField,
  compute(input): FitDistributionOutput {
    const hole = readSpread(input.hole, input.nominalMm, 'hole');
    const shaft = readSpread(input.shaft, input.nominalMm, 'shaft');
    const exact = clearanceDistribution(hole.spread, shaft.spread);
    const asked = input.quantilesAtProbability ?? usualQuantiles;
    const over = input.interferenceOverUm ?? null;
    const worstCase = { minimumClearanceUm: settled(hole.lowUm - shaft.highUm), maximumClearanceUm: settled(hole.highUm - shaft.lowUm) };
    const seed = input.seed ?? 1;
    const drawCount = input.drawCount ?? null;
    return {
      worstCase,
      rootSumSquare: rootSumSquare(hole, shaft),
      exact: { ...exactly(exact, asked, over), curve: curve(exact, hole, shaft, input.curvePointCount ?? usualCurvePoints) },
      simulated: drawCount === null ? null : { ...counted(simulateClearance(hole.spread, shaft.spread, drawCount, seed, over ?? Infinity), asked, over), drawCount, seed },
      assumptions: [...hole.assumptions, ...shaft.assumptions],
      notChecked: ['parts-picked-independently', 'fit-away-from-20-c', 'form-and-roughness'],
    };
  },
  explain(input, output) {
    return working(readSpread(input.hole, input.nominalMm, 'hole'), readSpread(input.shaft, input.nominalMm, 'shaft'), output);
  },
});

function rootSumSquare(hole: ReadSpread, shaft: ReadSpread): FitDistributionOutput['rootSumSquare'] {
  const middle = (hole.lowUm + hole.highUm - shaft.lowUm - shaft.highUm) / 2;
  const half = Math.sqrt((hole.highUm - hole.lowUm) ** 2 + (shaft.highUm - shaft.lowUm) ** 2) / 2;
  return { minimumClearanceUm: middle - half, maximumClearanceUm: middle + half };
}

function exactly(distribution: ClearanceDistribution, asked: readonly number[], over: number | null): Spread {
  const loose = 1 - distribution.cumulative(0);
  return {
    meanClearanceUm: distribution.mean,
    standardDeviationUm: Math.sqrt(distribution.variance),
    clearanceProbability: loose,
    interferenceProbability: distribution.below(0),
    interferenceOverProbability: over === null ? null : distribution.below(-over),
    quantiles: asked.map((atProbability) => ({ atProbability, clearanceUm: distribution.quantile(atProbability) })),
  };
}

function counted(found: SimulatedClearance, asked: readonly number[], over: number | null): Spread {
  const { values } = found;
  return {
    meanClearanceUm: found.mean,
    standardDeviationUm: found.deviation,
    clearanceProbability: found.clearanceShare,
    interferenceProbability: found.interferenceShare,
    interferenceOverProbability: over === null ? null : found.overShare,
    quantiles: asked.map((atProbability) => ({ atProbability, clearanceUm: values[Math.min(values.length - 1, Math.max(0, Math.ceil(atProbability * values.length) - 1))] ?? 0 })),
  };
}

function curve(distribution: ClearanceDistribution, hole: ReadSpread, shaft: ReadSpread, pointCount: number): FitDistributionOutput['exact']['curve'] {
  const reach = Math.max(curveReach * Math.sqrt(distribution.variance), (hole.highUm - hole.lowUm + shaft.highUm - shaft.lowUm) / 2);
  const low = Math.max(hole.spread.low - shaft.spread.high, distribution.mean - reach);
  const high = Math.min(hole.spread.high - shaft.spread.low, distribution.mean + reach);
  return Array.from({ length: pointCount }, (_, i) => {
    const clearanceUm = low + ((high - low) * i) / (pointCount - 1);
    return { clearanceUm, cumulativeProbability: distribution.cumulative(clearanceUm) };
  });
}

function settled(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6 + 0;
}

function working(hole: ReadSpread, shaft: ReadSpread, output: FitDistributionOutput): readonly WorkingStep[] {
  const limits = { ES: hole.highUm, EI: hole.lowUm, es: shaft.highUm, ei: shaft.lowUm };
  const { ES, EI, es, ei } = limits;
  const rows = [
    ['c_min', 'smallest clearance, worst case', 'EI - es', { EI, es }, output.worstCase.minimumClearanceUm],
    ['c_max', 'largest clearance, worst case', 'ES - ei', { ES, ei }, output.worstCase.maximumClearanceUm],
    ['c_rss_min', 'smallest clearance by root sum of squares', '(ES + EI - es - ei) / 2 - sqrt((ES - EI)^2 + (es - ei)^2) / 2', limits, output.rootSumSquare.minimumClearanceUm],
    ['c_rss_max', 'largest clearance by root sum of squares', '(ES + EI - es - ei) / 2 + sqrt((ES - EI)^2 + (es - ei)^2) / 2', limits, output.rootSumSquare.maximumClearanceUm],
    ['mu', 'mean clearance', 'mu_D - mu_d', { mu_D: hole.spread.mean, mu_d: shaft.spread.mean }, output.exact.meanClearanceUm],
    ['sigma', 'standard deviation of the clearance', 'sqrt(v_D + v_d)', { v_D: hole.spread.variance, v_d: shaft.spread.variance }, output.exact.standardDeviationUm],
  ] as const;
  return [
    ...rows.map(([symbol, meaning, formula, scope, value]): WorkingStep => ({ kind: 'formula', symbol, meaning, formula, scope, value, unit: 'µm', source: byProbability })),
    { kind: 'choice', symbol: 'P', meaning: 'share of fits that are loose', value: output.exact.clearanceProbability, unit: '', why: 'integral of the density of one part times the share of the other part beyond it', source: byProbability },
  ];
}
