import * as z from 'zod/mini';
import { hoursField, pressureField, temperatureDifferenceField, temperatureField } from '../quantity/index.js';
import { bothOrNone, candourFields, commonPractice, deciding, defineCalculation, findingField, notBoth, numberField, outputNumber, plainMechanics, rulesInSchema, source, spanField, supporting, verdictField, verdictOf, type Assumption, type Finding, type Span, type WorkingStep } from '../result/index.js';
import { standingPressureLimit } from '../seal/index.js';

const gauge = (label: string) => pressureField({ label, unit: 'MPa', from: -0.1, upTo: 1, typical: '0.05' });

const inputField = z
  .strictObject({
    volumeCm3: numberField({ label: 'volume that is under test, hoses and gauge with it', unit: 'cm³', over: 0, upTo: 10_000_000, typical: '300' }),
    startPressureMpa: gauge('gauge pressure at the start; suction below zero'),
    endPressureMpa: gauge('gauge pressure at the end; suction below zero'),
    holdHours: hoursField({ label: 'time between the two readings', unit: 'h', over: 0, upTo: 100, typical: '5 min' }),
    startTemperatureC: z.optional(temperatureField({ label: 'temperature of the part at the start', unit: '°C', from: -40, upTo: 150 })),
    endTemperatureC: z.optional(temperatureField({ label: 'temperature of the part at the end', unit: '°C', from: -40, upTo: 150 })),
    airPressureMpa: z.optional(pressureField({ label: 'pressure of the air around, not reduced to sea level', unit: 'MPa', from: 0.05, upTo: 0.11, typical: '0.1013' })),
    gaugeErrorMpa: z.optional(pressureField({ label: 'the gauge may be off by, plus or minus', unit: 'MPa', over: 0, upTo: 0.1 })),
    gaugeStepMpa: z.optional(pressureField({ label: 'smallest step that is read on the gauge', unit: 'MPa', over: 0, upTo: 0.1 })),
    temperatureErrorK: z.optional(temperatureDifferenceField({ label: 'the temperatures may be off by, plus or minus', unit: 'K', over: 0, upTo: 20 })),
    volumeErrorPercent: z.optional(numberField({ label: 'the volume may be off by, plus or minus', unit: '%', from: 0, upTo: 100 })),
    limitDropMpa: z.optional(pressureField({ label: 'largest permitted change of pressure in the same time', unit: 'MPa', over: 0, upTo: 1 })),
    limitMlPerMin: z.optional(numberField({ label: 'largest permitted leak of air at 20 °C and 1 atm', unit: 'mL/min', over: 0, upTo: 1_000_000 })),
  })
  .check(
    z.refine((input) => Math.sign(input.startPressureMpa) * input.endPressureMpa >= -1e-12 && input.startPressureMpa !== 0, { error: 'both readings must be pressure, or both suction, and the start not nothing', path: ['startPressureMpa'] }),
    z.refine((input) => (input.startTemperatureC === undefined) === (input.endTemperatureC === undefined), { error: 'give both temperatures, or none', path: ['endTemperatureC'] }),
    z.refine((input) => input.limitDropMpa === undefined || input.limitMlPerMin === undefined, { error: 'give one limit', path: ['limitMlPerMin'] }),
    rulesInSchema([bothOrNone('startTemperatureC', 'endTemperatureC'), notBoth('limitDropMpa', 'limitMlPerMin')], ['both readings must be pressure, or both suction, and the start not nothing']),
  );

const outputField = z.strictObject({
  verdict: verdictField,
  leakMlPerMin: outputNumber('leak of air at 20 °C and 1 atm; out under pressure, in under suction', 'mL/min'),
  leakUncertaintyMlPerMin: outputNumber('its expanded uncertainty, k = 2', 'mL/min'),
  leakPaM3PerS: outputNumber('leak at 20 °C', 'Pa·m³/s'),
  limitMlPerMin: z.nullable(outputNumber('permitted leak', 'mL/min')),
  pressureByHeatMpa: outputNumber('change of pressure that the change of temperature alone makes', 'MPa'),
  equivalentHoleMm: z.nullable(spanField('diameter of one round hole that leaks as much', 'mm')),
  holdToDecideHours: z.nullable(outputNumber('time after which this gauge would decide, if it goes on alike; none: decided, or waiting does not help', 'h')),
  findings: z.readonly(z.array(findingField)),
  cautions: z.readonly(z.array(z.string().check(z.meta({ label: 'caution', unit: '' })))),
  ...candourFields,
});

export type LeakCheckInput = z.infer<typeof inputField>;
export type LeakCheckOutput = z.infer<typeof outputField>;

const atmospherePa = 101_325;
const kelvin = (c: number) => c + 273.15;
const referenceK = kelvin(20);
/** Air: ratio of its heats, and its gas constant [J/(kg·K)]. */
const air = { gamma: 1.4, gasConstant: 287.05 };
/** Discharge of a sharp and of a rounded hole. */
const discharge: Span = { low: 0.6, high: 0.85 };
const usual = { gaugeErrorMpa: 0.0016, temperatureErrorK: 0.5, volumeErrorPercent: 10 };

const gasLaw = source('general-memory', 'memory', 'ideal gas, flow of air through an orifice');
const gum = source('jcgm-100-2008', 'memory', '5.1.2');

/** Whether a crankcase or housing holds air: leak from two gauge readings.  Q = V·(P₁/T₁ − P₂/T₂)·T₀/t
 * The change of temperature is taken out by the gas law; the uncertainty is that of gauge, temperature and volume together. The
 * equivalent hole is a round one with the flow of air through it, sonic or not; real gaps are longer, so it is an estimate.
 * @returns leak [mL/min] with its uncertainty, equivalent hole [mm], verdict against a stated limit; how long to wait to decide
 * @throws CalculationError invalid-input
 * @source general-memory (ideal gas; orifice); jcgm-100-2008 (held as: memory)
 * @example leakCheck.run({ volumeCm3: 300, startPressureMpa: '0.5 bar', endPressureMpa: '0.4 bar', holdHours: '5 min' }).leakMlPerMin.toFixed(2) // '5.92'
 */
export const leakCheck = defineCalculation({
  name: 'leak-check',
  summary: 'Whether a crankcase or housing holds air, from two gauge readings, and how large the leak is',
  input: inputField,
  output: outputField,
  compute(input): LeakCheckOutput {
    const test = testOf(input);
    const leakMlPerMin = mlPerMin(test.leakPaM3PerS);
    const leakUncertaintyMlPerMin = mlPerMin(test.uncertaintyPaM3PerS);
    const limitMlPerMin = limitOf(input, test);
    const holdToDecideHours = holdToDecide(input, test, limitMlPerMin);
    const findings = findingsOf(input, { leak: leakMlPerMin, uncertainty: leakUncertaintyMlPerMin, limit: limitMlPerMin, isWorthWaiting: holdToDecideHours !== null });
    return {
      verdict: verdictOf(findings),
      leakMlPerMin,
      leakUncertaintyMlPerMin,
      leakPaM3PerS: test.leakPaM3PerS,
      limitMlPerMin,
      pressureByHeatMpa: test.byHeatPa / 1e6,
      equivalentHoleMm: holeOf(test),
      holdToDecideHours,
      findings,
      cautions: ['test-pressure-low', 'blanks-fly', 'no-oxygen', ...(input.startPressureMpa < 0 ? ['suction-turns-lips'] : []), 'machine-cannot-start'],
      assumptions: assumptionsOf(input),
      notChecked: ['gauge-was-checked', 'what-expands-under-test', ...(input.gaugeStepMpa === undefined ? ['gauge-step'] : []), ...(input.startTemperatureC === undefined ? ['temperature-during-hold'] : [])],
    };
  },
  explain(input, output): readonly WorkingStep[] {
    const { v, p1, p2, t1, t2, seconds } = testOf(input);
    const hole = output.equivalentHoleMm;
    const { upPa, downPa, kgPerS } = flowOf(testOf(input));
    const ratio = Math.max(downPa / upPa, criticalRatio);
    return [
      { kind: 'formula', symbol: 'Q', meaning: 'leak at 20 °C', formula: 'V * (P_1 / T_1 - P_2 / T_2) * s * T_0 / t', scope: { V: v, P_1: p1, P_2: p2, T_1: t1, T_2: t2, T_0: referenceK, t: seconds, s: Math.sign(input.startPressureMpa) }, value: output.leakPaM3PerS, unit: 'Pa·m³/s', source: gasLaw },
      { kind: 'formula', symbol: 'q', meaning: 'leak of air at 20 °C and 1 atm', formula: 'Q / P_n * 60e6', scope: { Q: output.leakPaM3PerS, P_n: atmospherePa }, value: output.leakMlPerMin, unit: 'mL/min', source: gasLaw },
      ...(hole === null
        ? []
        : [
            {
              kind: 'formula', symbol: 'd', meaning: 'round hole that leaks as much, sharp-edged', formula: '1000 * sqrt(4 * m / (pi * C * P_u * sqrt(2 * g / ((g - 1) * R * T) * (r^(2 / g) - r^((g + 1) / g)))))',
              scope: { m: kgPerS, C: discharge.low, P_u: upPa, g: air.gamma, R: air.gasConstant, T: referenceK, r: ratio }, value: hole.high, unit: 'mm', source: gasLaw,
            } as const,
          ]),
    ];
  },
});

interface Test {
  readonly v: number;
  readonly p1: number;
  readonly p2: number;
  readonly t1: number;
  readonly t2: number;
  readonly airPa: number;
  readonly seconds: number;
  readonly leakPaM3PerS: number;
  readonly uncertaintyPaM3PerS: number;
  /** Parts of it: what a longer hold makes smaller, and what it does not. */
  readonly byHold: number;
  readonly byVolume: number;
  readonly byHeatPa: number;
}

function testOf(input: LeakCheckInput): Test {
  const v = input.volumeCm3 * 1e-6;
  const airPa = (input.airPressureMpa ?? atmospherePa / 1e6) * 1e6;
  const [p1, p2] = [airPa + input.startPressureMpa * 1e6, airPa + input.endPressureMpa * 1e6];
  const [t1, t2] = [kelvin(input.startTemperatureC ?? 20), kelvin(input.endTemperatureC ?? 20)];
  const seconds = input.holdHours * 3600;
  const perSecond = (v * referenceK) / seconds;
  const leak = perSecond * (p1 / t1 - p2 / t2) * Math.sign(input.startPressureMpa);
  const standard = (halfWidth: number) => halfWidth / Math.sqrt(3);
  const pressureU = Math.hypot(standard((input.gaugeErrorMpa ?? usual.gaugeErrorMpa) * 1e6), standard(((input.gaugeStepMpa ?? 0) * 1e6) / 2));
  const temperatureU = standard(input.temperatureErrorK ?? usual.temperatureErrorK);
  const byHold = 2 * Math.hypot((perSecond * pressureU) / t1, (perSecond * pressureU) / t2, (perSecond * p1 * temperatureU) / t1 ** 2, (perSecond * p2 * temperatureU) / t2 ** 2);
  const byVolume = 2 * Math.abs(leak) * standard((input.volumeErrorPercent ?? usual.volumeErrorPercent) / 100);
  return { v, p1, p2, t1, t2, airPa, seconds, leakPaM3PerS: leak + 0, uncertaintyPaM3PerS: Math.hypot(byHold, byVolume), byHold, byVolume, byHeatPa: (p1 * t2) / t1 - p1 };
}

/** Time after which leak and limit would stand apart. Waiting makes the share of gauge and temperature smaller, not that of the volume, and ends when the pressure is gone. */
function holdToDecide({ holdHours }: LeakCheckInput, { v, p1, t1, airPa, seconds, leakPaM3PerS, uncertaintyPaM3PerS, byHold, byVolume }: Test, limitMlPerMin: number | null): number | null {
  if (limitMlPerMin === null) return null;
  const apart = Math.abs((limitMlPerMin * atmospherePa) / 60e6 - leakPaM3PerS);
  if (apart >= uncertaintyPaM3PerS || apart <= byVolume) return null;
  const timesAsLong = byHold / Math.sqrt(apart ** 2 - byVolume ** 2);
  const mostToLose = (v * Math.abs(p1 - airPa) * referenceK) / t1;
  return leakPaM3PerS * seconds * timesAsLong > mostToLose ? null : holdHours * timesAsLong;
}

function mlPerMin(paM3PerS: number): number {
  return (paM3PerS / atmospherePa) * 60e6;
}

/** The permitted leak: as given, or the one that a permitted change of pressure stands for. */
function limitOf({ limitDropMpa, limitMlPerMin }: LeakCheckInput, { v, t2, seconds }: Test): number | null {
  if (limitMlPerMin !== undefined) return limitMlPerMin;
  return limitDropMpa === undefined ? null : mlPerMin((v * limitDropMpa * 1e6 * referenceK) / t2 / seconds);
}

const criticalRatio = (2 / (air.gamma + 1)) ** (air.gamma / (air.gamma - 1));

function flowOf({ p1, p2, airPa, leakPaM3PerS }: Test) {
  const inside = (p1 + p2) / 2;
  return { upPa: Math.max(inside, airPa), downPa: Math.min(inside, airPa), kgPerS: leakPaM3PerS / (air.gasConstant * referenceK) };
}

/** One round hole with the same flow at the mean pressure; null where nothing leaks. */
function holeOf(test: Test): Span | null {
  const { upPa, downPa, kgPerS } = flowOf(test);
  if (kgPerS <= 0 || upPa <= downPa) return null;
  const g = air.gamma;
  const r = Math.max(downPa / upPa, criticalRatio);
  const perArea = upPa * Math.sqrt(((2 * g) / ((g - 1) * air.gasConstant * referenceK)) * (r ** (2 / g) - r ** ((g + 1) / g)));
  const diameterMm = (coefficient: number) => 1000 * Math.sqrt((4 * kgPerS) / (Math.PI * coefficient * perArea));
  return { low: diameterMm(discharge.high), high: diameterMm(discharge.low) };
}

interface Outcome {
  readonly leak: number;
  readonly uncertainty: number;
  readonly limit: number | null;
  readonly isWorthWaiting: boolean;
}

function findingsOf(input: LeakCheckInput, { leak, uncertainty, limit, isWorthWaiting }: Outcome): readonly Finding[] {
  const findings: Finding[] = [];
  const numbers = { leakMlPerMin: leak, uncertaintyMlPerMin: uncertainty, ...(limit === null ? {} : { limitMlPerMin: limit }) };
  if (limit === null) findings.push(deciding('leak-limit-not-given', 'unknown', numbers, commonPractice, 'limitDropMpa'));
  else if (leak + uncertainty <= limit) findings.push(deciding('holds-air', 'good', numbers, gum));
  else if (leak - uncertainty > limit) findings.push(deciding('leaks-air', 'bad', numbers, gum));
  else if (isWorthWaiting) findings.push(deciding('leak-cannot-tell', 'unknown', numbers, gum, 'holdHours'));
  else findings.push(deciding('leak-too-near-limit', 'unknown', numbers, gum, 'gaugeErrorMpa'));
  if (leak > uncertainty) findings.push(supporting('leak-is-real', limit === null || leak > limit ? 'care' : 'note', numbers, gum));
  const lip = standingPressureLimit();
  if (Math.abs(input.startPressureMpa) > lip.pressureMaxMpa) findings.push(supporting('test-pressure-over-lip', 'care', { testMpa: Math.abs(input.startPressureMpa), limitMpa: lip.pressureMaxMpa }, lip.source));
  if (leak < -uncertainty) findings.push(supporting('leak-below-nothing', 'care', numbers, plainMechanics));
  return findings;
}

function assumptionsOf(input: LeakCheckInput): readonly Assumption[] {
  const list: Assumption[] = [{ name: 'discharge-of-hole', value: discharge.low, upToValue: discharge.high, unit: '', source: gasLaw, effect: 'size-of-hole' }];
  if (input.airPressureMpa === undefined) list.push({ name: 'air-pressure-normal', value: atmospherePa / 1e6, unit: 'MPa', source: gasLaw, effect: 'the-leak' });
  if (input.gaugeErrorMpa === undefined) list.push({ name: 'gauge-error', value: usual.gaugeErrorMpa, unit: 'MPa', source: commonPractice, effect: 'leak-verdict' });
  if (input.volumeErrorPercent === undefined) list.push({ name: 'volume-error', value: usual.volumeErrorPercent, unit: '%', source: commonPractice, effect: 'leak-verdict' });
  if (input.temperatureErrorK === undefined) list.push({ name: 'temperature-error', value: usual.temperatureErrorK, unit: 'K', source: commonPractice, effect: 'leak-verdict' });
  if (input.startTemperatureC === undefined) list.push({ name: 'temperature-steady', value: 20, unit: '°C', source: commonPractice, effect: 'the-leak' });
  return list;
}
