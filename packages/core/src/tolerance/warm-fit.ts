import { partMaterial, type Material } from '../material/index.js';
import type { Assumption, Span } from '../result/index.js';
import type { FitAtTemperatureInput, FitAtTemperatureOutput } from './internal/fit-at-temperature-fields.js';
import { coldestC, hottestC, referenceC } from './internal/warm-range.js';
import type { PartDeviations } from './part-limits-field.js';

export type WarmFitInput = Omit<FitAtTemperatureInput, 'hole' | 'shaft' | 'fitClass'>;

export interface FitDeviations {
  readonly hole: PartDeviations;
  readonly shaft: PartDeviations;
}

type Crossing = FitAtTemperatureOutput['looseFromC'];
type State = FitAtTemperatureOutput['at20C'];

const usualCurvePoints = 35;

/**
 * A fit when both parts are warm or cold, from deviations that are already known: what `fitAtTemperature` computes.
 * @param deviations of both parts from `nominalMm` at 20 °C
 * @returns interference [µm], temperatures [°C]
 * @throws CalculationError invalid-input (a material that is not known)
 * @source iso-1-2022 (held as: page); plain-geometry (computed)
 * @example warmFit({ nominalMm: 35, holeMaterial: 'al-a380', shaftMaterial: 'steel-c45', temperatureC: 100 }, { hole: { lowerUm: -33, upperUm: -8 }, shaft: { lowerUm: -16, upperUm: 0 } }).kind // 'transition'
 */
export function warmFit(input: WarmFitInput, deviations: FitDeviations): FitAtTemperatureOutput {
  const parts = fitParts(input, deviations);
  const { hole, shaft } = parts;
  const at20C = stateAt(parts, 0, 0);
  const { holeC, shaftC } = fitTemperatures(input);
  const atTemperature = stateAt(parts, holeC - referenceC, shaftC - referenceC);
  const [fromC, toC, count] = [input.fromC ?? -20, input.toC ?? 150, input.curvePointCount ?? usualCurvePoints];
  const shift = thermalShift(parts, holeC - referenceC, shaftC - referenceC);
  return {
    kind: kindOf(atTemperature),
    at20C,
    atTemperature,
    thermalInterferenceUm: { low: shift.low, high: shift.high },
    curve: Array.from({ length: count }, (_, i) => {
      const bothAtC = fromC + ((toC - fromC) * i) / (count - 1);
      return { bothAtC, ...stateAt(parts, bothAtC - referenceC, bothAtC - referenceC) };
    }),
    looseFromC: crossing(parts, 'loose', 1),
    looseBelowC: crossing(parts, 'loose', -1),
    tightFromC: crossing(parts, 'tight', 1),
    tightBelowC: crossing(parts, 'tight', -1),
    axialGrowthUm: input.lengthMm === undefined ? null : axialOf(input.lengthMm, hole, shaft, holeC, shaftC),
    assumptions: assumptionsOf(parts),
    notChecked: ['parts-press-on-each-other', 'form-and-roughness'],
  };
}

export interface FitParts {
  readonly nominalMm: number;
  readonly leastUm: number;
  readonly mostUm: number;
  readonly deviations: FitDeviations;
  readonly hole: Material;
  readonly shaft: Material;
  /** Pairs of expansion coefficients that may meet: parts of one material share theirs. */
  readonly pairs: readonly { readonly hole: number; readonly shaft: number }[];
}

export function fitParts(input: WarmFitInput, deviations: FitDeviations): FitParts {
  const hole = partMaterial(input.holeMaterial, input.materials, 'holeMaterial');
  const shaft = partMaterial(input.shaftMaterial, input.materials, 'shaftMaterial');
  const isOneMaterial = typeof input.holeMaterial === 'string' && input.holeMaterial === input.shaftMaterial;
  const ends = [hole.expansionPerK.low, hole.expansionPerK.high];
  const pairs = isOneMaterial ? ends.map((end) => ({ hole: end, shaft: end })) : ends.flatMap((end) => [shaft.expansionPerK.low, shaft.expansionPerK.high].map((other) => ({ hole: end, shaft: other })));
  return {
    nominalMm: input.nominalMm,
    leastUm: settled(deviations.shaft.lowerUm - deviations.hole.upperUm),
    mostUm: settled(deviations.shaft.upperUm - deviations.hole.lowerUm),
    deviations,
    hole,
    shaft,
    pairs,
  };
}

export function fitTemperatures({ temperatureC, holeTemperatureC, shaftTemperatureC }: WarmFitInput): { readonly holeC: number; readonly shaftC: number } {
  return { holeC: holeTemperatureC ?? temperatureC ?? referenceC, shaftC: shaftTemperatureC ?? temperatureC ?? referenceC };
}

/** Interference gained [µm], over the pairs of coefficients and for the probable ones. */
export function thermalShift({ nominalMm: d, hole, shaft, pairs }: FitParts, holeK: number, shaftK: number): Span & { readonly probable: number } {
  const gained = (holePerK: number, shaftPerK: number) => d * 1000 * (shaftPerK * shaftK - holePerK * holeK);
  const all = pairs.map((pair) => gained(pair.hole, pair.shaft));
  return { low: Math.min(...all), probable: gained(hole.expansionPerK.probable, shaft.expansionPerK.probable), high: Math.max(...all) };
}

function stateAt(parts: FitParts, holeK: number, shaftK: number): State {
  const shift = thermalShift(parts, holeK, shaftK);
  return {
    leastInterferenceUm: parts.leastUm + shift.low,
    probableInterferenceUm: (parts.leastUm + parts.mostUm) / 2 + shift.probable,
    mostInterferenceUm: parts.mostUm + shift.high,
  };
}

function kindOf({ leastInterferenceUm, mostInterferenceUm }: State): FitAtTemperatureOutput['kind'] {
  if (leastInterferenceUm >= 0 && mostInterferenceUm > 0) return 'interference';
  return mostInterferenceUm <= 0 ? 'clearance' : 'transition';
}

/**
 * Where both parts, warmed (+1) or cooled (−1) together from 20 °C, change over. The first of them may do so already at 20 °C.
 * null where this way leads away from it.
 * Loose: nothing presses any more; tight: no clearance is left.
 */
function crossing(parts: FitParts, into: 'loose' | 'tight', direction: 1 | -1): Crossing {
  const { nominalMm: d, leastUm, mostUm, pairs, hole, shaft } = parts;
  const [first, last] = into === 'loose' ? [leastUm, mostUm] : [mostUm, leastUm];
  const sign = into === 'loose' ? -1 : 1;
  const kelvinsFor = (interferenceUm: number, perK: number): number => {
    const missing = sign * -interferenceUm;
    if (missing <= 0) return 0;
    const gainPerK = sign * direction * d * 1000 * perK;
    return gainPerK > 0 ? missing / gainPerK : Infinity;
  };
  const rates = pairs.map((pair) => pair.shaft - pair.hole);
  const reach = direction === 1 ? hottestC - referenceC : referenceC - coldestC;
  const at = (kelvins: number): number | null => (kelvins <= reach ? referenceC + direction * kelvins : null);
  const isThereAlready = kelvinsFor(last, 0) === 0;
  if (!isThereAlready && !rates.some((rate) => sign * direction * rate > 0)) return null;
  const earliest = at(Math.min(...rates.map((rate) => kelvinsFor(first, rate))));
  if (earliest === null) return null;
  return {
    earliest,
    probable: at(kelvinsFor((leastUm + mostUm) / 2, shaft.expansionPerK.probable - hole.expansionPerK.probable)),
    latest: at(Math.max(...rates.map((rate) => kelvinsFor(last, rate)))),
  };
}

function axialOf(lengthMm: number, hole: Material, shaft: Material, holeC: number, shaftC: number): Span {
  const grown = ({ expansionPerK: { low, high } }: Material, c: number): Span => {
    const ends = [low, high].map((perK) => lengthMm * 1000 * perK * (c - referenceC));
    return { low: Math.min(...ends), high: Math.max(...ends) };
  };
  const [ofHole, ofShaft] = [grown(hole, holeC), grown(shaft, shaftC)];
  return hole.id === shaft.id && holeC === shaftC ? { low: 0, high: 0 } : { low: ofHole.low - ofShaft.high, high: ofHole.high - ofShaft.low };
}

function assumptionsOf({ hole, shaft }: FitParts): readonly Assumption[] {
  return ([['expansion-of-hole', hole], ['expansion-of-shaft', shaft]] as const)
    .filter(([, { expansionPerK }]) => expansionPerK.low < expansionPerK.high)
    .map(([name, { expansionPerK: { low, high }, source: by }]) => ({ name, value: low, upToValue: high, unit: '1/K', source: by, effect: 'interference-that-presses' }));
}

function settled(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6 + 0;
}
