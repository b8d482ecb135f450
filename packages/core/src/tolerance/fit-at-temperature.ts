import { contradiction, defineCalculation, plainGeometry, source, type WorkingStep } from '../result/index.js';
import { inchFit } from './inch-fit.js';
import { inputField, outputField, type FitAtTemperatureInput, type FitAtTemperatureOutput } from './internal/fit-at-temperature-fields.js';
import { referenceC } from './internal/warm-range.js';
import { partDeviations } from './part-limits-field.js';
import { fitParts, fitTemperatures, thermalShift, warmFit, type FitDeviations, type FitParts } from './warm-fit.js';

export type { FitAtTemperatureInput, FitAtTemperatureOutput } from './internal/fit-at-temperature-fields.js';

const reference = source('iso-1-2022', 'page', 'reference temperature 20 °C');

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
  compute: (input): FitAtTemperatureOutput => warmFit(input, deviationsOf(input)),
  explain: (input, output) => working(fitParts(input, deviationsOf(input)), fitTemperatures(input), output),
});

function deviationsOf({ nominalMm, hole, shaft, fitClass }: FitAtTemperatureInput): FitDeviations {
  if (fitClass !== undefined) {
    const limits = inchFit.compute({ nominalIn: Math.round(((nominalMm * 5) / 127) * 1e9) / 1e9, fitClass });
    const um = (thou: number) => Math.round(thou * 25_400_000) / 1e6;
    return { hole: { lowerUm: um(limits.hole.lowerThou), upperUm: um(limits.hole.upperThou) }, shaft: { lowerUm: um(limits.shaft.lowerThou), upperUm: um(limits.shaft.upperThou) } };
  }
  if (hole === undefined || shaft === undefined) throw contradiction(['hole', 'shaft'], 'give hole and shaft, or a fitClass for both');
  return { hole: partDeviations(hole, nominalMm, 'hole'), shaft: partDeviations(shaft, nominalMm, 'shaft') };
}

function working(parts: FitParts, { holeC, shaftC }: { readonly holeC: number; readonly shaftC: number }, output: FitAtTemperatureOutput): readonly WorkingStep[] {
  const { deviations, nominalMm: d, hole, shaft, leastUm, mostUm } = parts;
  const scope = { d, alpha_s: shaft.expansionPerK.probable, alpha_h: hole.expansionPerK.probable, t_s: shaftC, t_h: holeC, t_0: referenceC };
  const probable = thermalShift(parts, holeC - referenceC, shaftC - referenceC).probable;
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
