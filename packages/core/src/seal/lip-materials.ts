import * as z from 'zod/mini';
import { candourFields, choiceField, defineCalculation, findingField, outputNumber, verdictField, verdictOf, verdicts, type WorkingStep } from '../result/index.js';
import { fluidAndHeat, temperatureLimitOf } from './internal/checks/fluid-and-heat.js';
import { lipSpeedCheck, speedLimitMpsOf } from './internal/checks/lip-speed-check.js';
import { contextOf } from './internal/judge-seal.js';
import { lipMaterials, type LipMaterial } from './seal-field.js';
import { situationField, type Situation } from './situation-field.js';

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));

const rubberField = z.strictObject({
  lipMaterial: choiceField(lipMaterials, { label: 'rubber of the lip (ISO 1629)' }),
  isTheOneGiven: z.boolean().check(z.meta({ label: 'the rubber of the seal that was given', unit: '' })),
  verdict: verdictField,
  temperatureMarginK: maybe('fluid colder than the limit by', 'K'),
  speedMarginMps: maybe('slower than the limit of the rubber by', 'm/s'),
  findings: z.readonly(z.array(findingField)),
});

const outputField = z.strictObject({
  rubbers: z.readonly(z.array(rubberField)),
  ...candourFields,
});

export type LipMaterialsOutput = z.infer<typeof outputField>;
type Rubber = LipMaterialsOutput['rubbers'][number];

/** Which rubber would do here instead: every rubber of the tables judged in this place as the seal check judges it.
 * Ranked by verdict, then by how far the fluid stays below the limit; the rubber that was given comes first among equals.
 * @returns each rubber with its verdict, margins and the findings behind them
 * @throws CalculationError invalid-input | outside-table
 * @source the tables of the seal check; each finding names its own
 * @example lipMaterialsFor.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, running: { fluid: 'engine-oil', fluidTemperatureC: 140, speedRpm: 3000 } }).rubbers[0].lipMaterial // 'PTFE'
 */
export const lipMaterialsFor = defineCalculation({
  name: 'lip-materials',
  summary: 'Which rubber of the lip would do in this fluid, heat and speed, and why the others would not',
  input: situationField,
  output: outputField,
  compute(situation: Situation): LipMaterialsOutput {
    const rubbers = lipMaterials.map((lipMaterial) => judged(situation, lipMaterial));
    const margin = ({ temperatureMarginK }: Rubber) => temperatureMarginK ?? -Infinity;
    return {
      rubbers: rubbers.toSorted((a, b) => verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || Number(b.isTheOneGiven) - Number(a.isTheOneGiven) || margin(b) - margin(a)),
      assumptions: [],
      notChecked: ['price-and-stock', 'lip-heat-by-speed'],
    };
  },
  explain: (situation: Situation, output): readonly WorkingStep[] =>
    output.rubbers.flatMap(({ lipMaterial, temperatureMarginK }): readonly WorkingStep[] => {
      const limit = temperatureLimitOf(lipMaterial, situation.running?.fluid);
      const t = situation.running?.fluidTemperatureC;
      if (temperatureMarginK === null || limit === null || t === undefined) return [];
      return [{ kind: 'formula', symbol: `m_${lipMaterial}`, meaning: `fluid colder than the limit of ${lipMaterial}`, formula: 'limit - t', scope: { limit: limit.maxC, t }, value: temperatureMarginK, unit: 'K', source: limit.source }];
    }),
});

function judged(situation: Situation, lipMaterial: LipMaterial): Rubber {
  const context = contextOf({ ...situation, seal: { ...situation.seal, lipMaterial } });
  const findings = [...fluidAndHeat(context).findings, ...lipSpeedCheck(context).findings];
  const limit = temperatureLimitOf(lipMaterial, situation.running?.fluid);
  const fluidC = situation.running?.fluidTemperatureC;
  const speedLimitMps = speedLimitMpsOf(lipMaterial, situation.seal.shaftMm);
  return {
    lipMaterial,
    isTheOneGiven: lipMaterial === situation.seal.lipMaterial,
    verdict: verdictOf(findings),
    temperatureMarginK: limit === null || fluidC === undefined ? null : limit.maxC - fluidC,
    speedMarginMps: speedLimitMps === null || context.peripheralSpeedMps === null ? null : speedLimitMps - context.peripheralSpeedMps,
    findings,
  };
}
