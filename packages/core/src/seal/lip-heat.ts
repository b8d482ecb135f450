import * as z from 'zod/mini';
import { lengthField, rotationalSpeedField, temperatureField } from '../quantity/index.js';
import { candourFields, choiceField, defineCalculation, findingField, outputNumber, sourceField, spanField, supporting, verdictField, verdictOf, yesNoField, type Assumption, type Finding, type WorkingStep } from '../result/index.js';
import { lipHeatFindings } from './internal/checks/fluid-and-heat.js';
import { estimateKinds, frictionEstimates, lipRiseOf, spanOf } from './internal/lip-friction.js';
import { fluids, viscosityField } from './running-field.js';
import { lipMaterials } from './seal-field.js';

const inputField = z.strictObject({
  shaftDiameterMm: lengthField({ label: 'shaft diameter at the lip', unit: 'mm', over: 0, upTo: 500, typical: '20' }),
  speedRpm: rotationalSpeedField({ label: 'shaft speed', unit: 'rpm', from: 0, upTo: 100_000, typical: '3000' }),
  lipMaterial: choiceField(lipMaterials, { label: 'rubber of the lip (ISO 1629)' }),
  fluidTemperatureC: temperatureField({ label: 'temperature of the fluid at the lip', unit: '°C', from: -100, upTo: 400 }),
  fluid: z.optional(choiceField(fluids, { label: 'fluid at the lip' })),
  viscosityAt40CMm2PerS: z.optional(viscosityField),
  hasDustLip: z.optional(yesNoField({ label: 'has a dust lip' })),
});

const outputField = z.strictObject({
  verdict: verdictField,
  frictionPowerW: spanField('heat made by the lip', 'W'),
  frictionTorqueNm: spanField('torque that the lip takes', 'N·m'),
  estimates: z.readonly(z.array(z.strictObject({ estimate: choiceField(estimateKinds, { label: 'estimate' }), frictionPowerW: outputNumber('heat made by the lip', 'W'), source: sourceField }))),
  lipRiseK: spanField('lip hotter than the fluid by', 'K'),
  lipTemperatureC: spanField('temperature of the lip', '°C'),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type LipHeatInput = z.infer<typeof inputField>;
export type LipHeatOutput = z.infer<typeof outputField>;

/** Heat that a lip makes, and how hot it runs against what its rubber stands.  P = k·d·π·n/30 and two more;  lip = fluid + 20 … 50 K
 * The power is the span of the published estimates, made for oil-lubricated gear units; the rise over the fluid is a published span
 * that does not tell speeds apart. Both are estimates, and say so.
 * @returns spans of power [W], torque [N·m], lip temperature [°C]; each estimate with its source; findings
 * @throws CalculationError invalid-input
 * @source iso-tr-14179-1, iso-tr-14179-2 (held as: memory); seal-selection-article-2018 (held as: page)
 * @example lipHeat.run({ shaftDiameterMm: 20, speedRpm: 7800, lipMaterial: 'FKM', fluidTemperatureC: 90 }).frictionPowerW.high.toFixed(0) // '61'
 */
export const lipHeat = defineCalculation({
  name: 'lip-heat',
  summary: 'Heat that the lip makes, and how hot it runs against what its rubber stands',
  input: inputField,
  output: outputField,
  compute(input): LipHeatOutput {
    const estimates = frictionEstimates(asked(input));
    const power = spanOf(estimates);
    const radPerS = (Math.PI * input.speedRpm) / 30;
    const rise = lipRiseOf(input.speedRpm > 0, input.hasDustLip === true);
    const lipTemperatureC = { low: input.fluidTemperatureC + rise.low, high: input.fluidTemperatureC + rise.high };
    const hot = lipHeatFindings(input.lipMaterial, lipTemperatureC);
    const findings: readonly Finding[] = [...hot, ...(input.speedRpm === 0 ? [] : [supporting('lip-makes-heat', 'note', { lowPowerW: power.low, highPowerW: power.high }, estimates[0]?.source ?? rise.source)])];
    const assumptions: Assumption[] = [{ name: 'lip-hotter-than-fluid', value: rise.low, upToValue: rise.high, unit: 'K', source: rise.source, effect: 'how-hot-the-lip-runs' }];
    return {
      verdict: verdictOf(findings),
      frictionPowerW: power,
      frictionTorqueNm: radPerS === 0 ? { low: 0, high: 0 } : { low: power.low / radPerS, high: power.high / radPerS },
      estimates: estimates.map(({ estimate, frictionPowerW, source }) => ({ estimate, frictionPowerW, source })),
      lipRiseK: { low: rise.low, high: rise.high },
      lipTemperatureC,
      findings,
      assumptions,
      notChecked: ['lip-heat-by-speed', 'running-in'],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const rise = lipRiseOf(input.speedRpm > 0, input.hasDustLip === true);
    const steps = frictionEstimates(asked(input)).map(({ estimate, frictionPowerW, formula, scope, source }, i): WorkingStep => ({ kind: 'formula', symbol: `P_${i + 1}`, meaning: `heat made by the lip: ${estimate}`, formula, scope, value: frictionPowerW, unit: 'W', source }));
    return [
      ...steps,
      { kind: 'formula', symbol: 't_1', meaning: 'lip temperature, low', formula: 't + r', scope: { t: input.fluidTemperatureC, r: rise.low }, value: output.lipTemperatureC.low, unit: '°C', source: rise.source },
      { kind: 'formula', symbol: 't_2', meaning: 'lip temperature, high', formula: 't + r', scope: { t: input.fluidTemperatureC, r: rise.high }, value: output.lipTemperatureC.high, unit: '°C', source: rise.source },
    ];
  },
});

function asked({ shaftDiameterMm, ...rest }: LipHeatInput) {
  return { ...rest, shaftMm: shaftDiameterMm };
}
