import * as z from 'zod/mini';
import { materialField, partMaterial, partMaterialField, type Material } from '../material/index.js';
import { lengthField, temperatureField } from '../quantity/index.js';
import { anyGiven, candourFields, choiceField, contradiction, defineCalculation, exactlyOne, given, neither, notBoth, outputNumber, plainGeometry, rulesInSchema, source, spanField, textField, wholeNumberField, type Assumption, type Span, type WorkingStep } from '../result/index.js';
import { inchFit } from './inch-fit.js';
import { nominalField } from './internal/nominal-field.js';
import { partDeviations, partLimitsField, type PartDeviations } from './part-limits-field.js';

const coldestC = -200;
const hottestC = 600;
const temperature = (label: string) => temperatureField({ label, unit: '°C', from: coldestC, upTo: hottestC });

const inputField = z
  .strictObject({
    nominalMm: nominalField,
    hole: z.optional(partLimitsField),
    shaft: z.optional(partLimitsField),
    fitClass: z.optional(textField({ label: 'class of inch fit, for both parts', typical: 'FN2', longest: 16 })),
    holeMaterial: partMaterialField,
    shaftMaterial: partMaterialField,
    temperatureC: z.optional(temperature('temperature of both parts')),
    holeTemperatureC: z.optional(temperature('temperature of the part with the hole')),
    shaftTemperatureC: z.optional(temperature('temperature of the shaft')),
    fromC: z.optional(temperature('coldest end of the curve')),
    toC: z.optional(temperature('hottest end of the curve')),
    curvePointCount: z.optional(wholeNumberField({ label: 'points of the curve', unit: '', from: 2, upTo: 2000, typical: '35' })),
    lengthMm: z.optional(lengthField({ label: 'length along the shaft that grows', unit: 'mm', over: 0, upTo: 10_000 })),
    materials: z.optional(z.array(materialField).check(z.maxLength(200))),
  })
  .check(
    z.refine((input) => (input.fitClass === undefined ? input.hole !== undefined && input.shaft !== undefined : input.hole === undefined && input.shaft === undefined), {
      error: 'give hole and shaft, or a fitClass for both',
    }),
    z.refine((input) => input.temperatureC === undefined || (input.holeTemperatureC === undefined && input.shaftTemperatureC === undefined), {
      error: 'give one temperature for both parts, or one for each',
      path: ['temperatureC'],
    }),
    z.refine((input) => (input.fromC ?? -20) < (input.toC ?? 150), { error: 'fromC must be below toC', path: ['toC'] }),
    rulesInSchema(
      [exactlyOne(given('fitClass'), given('hole', 'shaft')), neither({ ...given('fitClass'), ...anyGiven('hole', 'shaft') }), notBoth('temperatureC', 'holeTemperatureC'), notBoth('temperatureC', 'shaftTemperatureC')],
      ['fromC must be below toC'],
    ),
  );

const stateField = z.strictObject({
  leastInterferenceUm: outputNumber('smallest interference; clearance below zero', 'µm'),
  probableInterferenceUm: outputNumber('interference of parts of middle size', 'µm'),
  mostInterferenceUm: outputNumber('largest interference; clearance below zero', 'µm'),
});

const crossingField = z.nullable(
  z.strictObject({
    earliest: outputNumber('earliest, over tolerances and spread of expansion', '°C'),
    probable: z.nullable(outputNumber('for parts of middle size; none: not within reach', '°C')),
    latest: z.nullable(outputNumber('latest; none: not within reach', '°C')),
  }),
);

const outputField = z.strictObject({
  kind: choiceField(['clearance', 'transition', 'interference'], { label: 'kind of fit at these temperatures' }),
  at20C: stateField,
  atTemperature: stateField,
  thermalInterferenceUm: spanField('interference gained by temperature', 'µm'),
  curve: z.readonly(z.array(z.strictObject({ ...stateField.shape, bothAtC: outputNumber('temperature of both parts', '°C') }))),
  looseFromC: crossingField,
  looseBelowC: crossingField,
  tightFromC: crossingField,
  tightBelowC: crossingField,
  axialGrowthUm: z.nullable(spanField('the part with the hole grows this much more than the shaft, along it', 'µm')),
  ...candourFields,
});

export type FitAtTemperatureInput = z.infer<typeof inputField>;
export type FitAtTemperatureOutput = z.infer<typeof outputField>;

type Crossing = FitAtTemperatureOutput['looseFromC'];
type State = FitAtTemperatureOutput['at20C'];

const referenceC = 20;
const reference = source('iso-1-2022', 'page', 'reference temperature 20 °C');
const usualCurvePoints = 35;

/** What heat makes of a fit: two materials, each at its own temperature.  I(T) = I + d·(αs·(Ts − 20) − αh·(Th − 20))
 * Free growth of both parts from 20 °C; a hole grows as if it were full. What the parts do to each other is not in it.
 * `looseFromC`: on warming both, interference is gone; `looseBelowC`: on cooling; `tightFromC`, `tightBelowC`: clearance is gone.
 * @returns interference [µm] at 20 °C, at the temperatures and over a range; temperatures [°C], to −200 and 600 °C
 * @throws CalculationError invalid-input | no-such-class | outside-table | contradiction
 * @source iso-1-2022 (held as: page); plain-geometry (computed)
 * @example fitAtTemperature.run({ nominalMm: 35, hole: 'N7', shaft: 'h6', holeMaterial: 'al-a380', shaftMaterial: 'steel-c45', temperatureC: 100 }).kind // 'transition'
 */
export const fitAtTemperature = defineCalculation({
  name: 'fit-at-temperature',
  summary: 'What heat makes of a fit, and from which temperature it is loose or tight',
  input: inputField,
  output: outputField,
  compute(input): FitAtTemperatureOutput {
    const parts = partsOf(input);
    const { hole, shaft } = parts;
    const at20C = stateAt(parts, 0, 0);
    const { holeC, shaftC } = temperaturesOf(input);
    const atTemperature = stateAt(parts, holeC - referenceC, shaftC - referenceC);
    const [fromC, toC, count] = [input.fromC ?? -20, input.toC ?? 150, input.curvePointCount ?? usualCurvePoints];
    const shift = shiftOf(parts, holeC - referenceC, shaftC - referenceC);
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
  },
  explain(input, output) {
    return working(partsOf(input), temperaturesOf(input), output);
  },
});

interface Parts {
  readonly nominalMm: number;
  readonly leastUm: number;
  readonly mostUm: number;
  readonly deviations: { readonly hole: PartDeviations; readonly shaft: PartDeviations };
  readonly hole: Material;
  readonly shaft: Material;
  /** Pairs of expansion coefficients that may meet: parts of one material share theirs. */
  readonly pairs: readonly { readonly hole: number; readonly shaft: number }[];
}

function partsOf(input: FitAtTemperatureInput): Parts {
  const hole = partMaterial(input.holeMaterial, input.materials, 'holeMaterial');
  const shaft = partMaterial(input.shaftMaterial, input.materials, 'shaftMaterial');
  const deviations = deviationsOf(input);
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

function deviationsOf({ nominalMm, hole, shaft, fitClass }: FitAtTemperatureInput): Parts['deviations'] {
  if (fitClass !== undefined) {
    const limits = inchFit.compute({ nominalIn: Math.round(((nominalMm * 5) / 127) * 1e9) / 1e9, fitClass });
    const um = (thou: number) => Math.round(thou * 25_400_000) / 1e6;
    return { hole: { lowerUm: um(limits.hole.lowerThou), upperUm: um(limits.hole.upperThou) }, shaft: { lowerUm: um(limits.shaft.lowerThou), upperUm: um(limits.shaft.upperThou) } };
  }
  if (hole === undefined || shaft === undefined) throw contradiction(['hole', 'shaft'], 'give hole and shaft, or a fitClass for both');
  return { hole: partDeviations(hole, nominalMm, 'hole'), shaft: partDeviations(shaft, nominalMm, 'shaft') };
}

function temperaturesOf({ temperatureC, holeTemperatureC, shaftTemperatureC }: FitAtTemperatureInput): { readonly holeC: number; readonly shaftC: number } {
  return { holeC: holeTemperatureC ?? temperatureC ?? referenceC, shaftC: shaftTemperatureC ?? temperatureC ?? referenceC };
}

/** Interference gained [µm], over the pairs of coefficients and for the probable ones. */
function shiftOf({ nominalMm: d, hole, shaft, pairs }: Parts, holeK: number, shaftK: number): Span & { readonly probable: number } {
  const gained = (holePerK: number, shaftPerK: number) => d * 1000 * (shaftPerK * shaftK - holePerK * holeK);
  const all = pairs.map((pair) => gained(pair.hole, pair.shaft));
  return { low: Math.min(...all), probable: gained(hole.expansionPerK.probable, shaft.expansionPerK.probable), high: Math.max(...all) };
}

function stateAt(parts: Parts, holeK: number, shaftK: number): State {
  const shift = shiftOf(parts, holeK, shaftK);
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
function crossing(parts: Parts, into: 'loose' | 'tight', direction: 1 | -1): Crossing {
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

function assumptionsOf({ hole, shaft }: Parts): readonly Assumption[] {
  return ([['expansion-of-hole', hole], ['expansion-of-shaft', shaft]] as const)
    .filter(([, { expansionPerK }]) => expansionPerK.low < expansionPerK.high)
    .map(([name, { expansionPerK: { low, high }, source: by }]) => ({ name, value: low, upToValue: high, unit: '1/K', source: by, effect: 'interference-that-presses' }));
}

function settled(valueUm: number): number {
  return Math.round(valueUm * 1e6) / 1e6 + 0;
}

function working(parts: Parts, { holeC, shaftC }: { readonly holeC: number; readonly shaftC: number }, output: FitAtTemperatureOutput): readonly WorkingStep[] {
  const { deviations, nominalMm: d, hole, shaft, leastUm, mostUm } = parts;
  const scope = { d, alpha_s: shaft.expansionPerK.probable, alpha_h: hole.expansionPerK.probable, t_s: shaftC, t_h: holeC, t_0: referenceC };
  const probable = shiftOf(parts, holeC - referenceC, shaftC - referenceC).probable;
  const at = output.atTemperature;
  return [
    { kind: 'formula', symbol: 'I_min', meaning: 'smallest interference at 20 °C', formula: 'ei - ES', scope: { ei: deviations.shaft.lowerUm, ES: deviations.hole.upperUm }, value: leastUm, unit: 'µm', source: plainGeometry },
    { kind: 'formula', symbol: 'I_max', meaning: 'largest interference at 20 °C', formula: 'es - EI', scope: { es: deviations.shaft.upperUm, EI: deviations.hole.lowerUm }, value: mostUm, unit: 'µm', source: plainGeometry },
    { kind: 'formula', symbol: 'dI', meaning: 'interference gained by temperature, probable coefficients', formula: '1000 * d * (alpha_s * (t_s - t_0) - alpha_h * (t_h - t_0))', scope, value: probable, unit: 'µm', source: reference },
    { kind: 'formula', symbol: 'I_1', meaning: 'smallest interference there', formula: 'I_min + dI_low', scope: { I_min: leastUm, dI_low: output.thermalInterferenceUm.low }, value: at.leastInterferenceUm, unit: 'µm', source: reference },
    { kind: 'formula', symbol: 'I_p', meaning: 'interference of parts of middle size there', formula: '(I_min + I_max) / 2 + dI', scope: { I_min: leastUm, I_max: mostUm, dI: probable }, value: at.probableInterferenceUm, unit: 'µm', source: reference },
    { kind: 'formula', symbol: 'I_2', meaning: 'largest interference there', formula: 'I_max + dI_high', scope: { I_max: mostUm, dI_high: output.thermalInterferenceUm.high }, value: at.mostInterferenceUm, unit: 'µm', source: reference },
  ];
}
