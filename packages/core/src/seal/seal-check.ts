import * as z from 'zod/mini';
import { candourFields, defineCalculation, findingField, outputNumber, spanField, verdictField, verdictOf, type Finding } from '../result/index.js';
import { caseHold } from './case-hold.js';
import { hotHold } from './hot-hold.js';
import { requirementSetField } from './requirement-set.js';
import { situationField, type Situation } from './situation-field.js';
import { sizesOf } from './sizes-of.js';
import type { CheckContext } from './internal/check-report.js';
import { boreLabel } from './internal/checks/bore-label.js';
import { edgesAndRoom } from './internal/checks/edges-and-room.js';
import { facingAndRotation } from './internal/checks/facing-and-rotation.js';
import { fluidAndHeat } from './internal/checks/fluid-and-heat.js';
import { hotHoldCheck } from './internal/checks/hot-hold-check.js';
import { lipSpeedCheck } from './internal/checks/lip-speed-check.js';
import { outsideFit } from './internal/checks/outside-fit.js';
import { pressure } from './internal/checks/pressure.js';
import { pushedOut } from './internal/checks/pushed-out.js';
import { newLipInterferenceMm, shaftSize } from './internal/checks/shaft-size.js';
import { surfaces } from './internal/checks/surfaces.js';
import { explainSealCheck } from './internal/explain-seal-check.js';
import { standardListsOf } from './internal/standard-lists.js';

const checks = [outsideFit, boreLabel, hotHoldCheck, shaftSize, lipSpeedCheck, fluidAndHeat, pressure, pushedOut, facingAndRotation, surfaces, edgesAndRoom];

const measuredField = z.strictObject({
  meanMm: outputNumber('mean size', 'mm'),
  smallestMm: outputNumber('smallest reading', 'mm'),
  largestMm: outputNumber('largest reading', 'mm'),
  expandedUncertaintyMm: outputNumber('expanded uncertainty, k = 2', 'mm'),
  ovalityUm: z.nullable(outputNumber('ovality', 'µm')),
  taperUm: z.nullable(outputNumber('taper', 'µm')),
  readingCount: outputNumber('readings', ''),
  instrument: z.string().check(z.meta({ label: 'instrument', unit: '' })),
});

const celsiusSpan = z.strictObject({
  earliest: outputNumber('earliest', '°C'),
  probable: outputNumber('probable', '°C'),
  latest: outputNumber('latest', '°C'),
});

const outputField = z.strictObject({
  verdict: verdictField,
  requirementSet: requirementSetField,
  findings: z.readonly(z.array(findingField)),
  shaft: z.nullable(measuredField),
  bore: z.nullable(measuredField),
  sealOutsideMm: z.nullable(spanField('outside diameter of the new seal', 'mm')),
  interferenceUm: z.nullable(spanField('interference seal to bore, diametral', 'µm')),
  heldUm: z.nullable(spanField('elastic part of the interference that goes on holding', 'µm')),
  contactPressureMpa: z.nullable(spanField('pressure between case and bore', 'MPa')),
  pushInForceN: z.nullable(spanField('force to push it in', 'N')),
  holdingForceN: z.nullable(spanField('axial force it withstands, cold', 'N')),
  looseFromC: z.nullable(celsiusSpan),
  lipInterferenceMm: z.nullable(spanField('lip interference on this shaft, diametral', 'mm')),
  peripheralSpeedMps: z.nullable(outputNumber('peripheral speed under the lip', 'm/s')),
  /** The one reading that alone would change the verdict, and the best that it could become. */
  decidingReading: z.nullable(z.strictObject({ path: z.string().check(z.meta({ label: 'reading that would change the verdict', unit: '' })), bestVerdict: verdictField })),
  standardSizeLists: z.readonly(z.array(z.string().check(z.meta({ label: 'list of standard sizes that has this seal', unit: '' })))),
  ...candourFields,
});

export type SealCheckOutput = z.infer<typeof outputField>;

/** The context that all checks share; also what the working is written from. */
export function contextOf(situation: Situation): CheckContext {
  const sizes = sizesOf(situation);
  const hold = caseHold(situation, sizes);
  const { running, seal } = situation;
  const housingTemperatureC = running?.housingTemperatureC ?? running?.fluidTemperatureC ?? null;
  const lipShaftMm = sizes.shaft?.meanMm ?? seal.shaftMm;
  return {
    situation,
    set: situation.requirementSet ?? 'iso-6194-1',
    sizes,
    hold,
    hot: hold === null ? null : hotHold(situation, hold, housingTemperatureC),
    housingTemperatureC,
    peripheralSpeedMps: running?.speedRpm === undefined ? null : (Math.PI * lipShaftMm * running.speedRpm) / 60_000,
  };
}

/** Does this seal suit this shaft and this bore, as measured, cold and hot, at this speed, in this fluid?
 * @returns verdict, findings with limit, source and what to do; the numbers behind them; assumptions and what was not checked
 * @throws CalculationError invalid-input | outside-table
 * @source iso-6194-1-2007 with din-3760-1996 where ISO is silent; each finding names its own
 * @example sealCheck.run({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).verdict // 'cannot tell'
 */
export const sealCheck = defineCalculation({
  name: 'seal-check',
  summary: 'Does this seal suit this shaft and this bore, as measured, cold and hot?',
  input: situationField,
  output: outputField,
  compute(situation): SealCheckOutput {
    const context = contextOf(situation);
    const reports = checks.map((check) => check(context));
    const findings = reports.flatMap((report) => report.findings);
    const { sizes, hold, hot } = context;
    const lip = newLipInterferenceMm(situation.seal.shaftMm);
    const lipShiftMm = (sizes.shaft?.meanMm ?? situation.seal.shaftMm) - situation.seal.shaftMm;
    return {
      verdict: verdictOf(findings),
      requirementSet: context.set,
      findings: inOrder(findings),
      shaft: measured(sizes.shaft),
      bore: measured(sizes.bore),
      sealOutsideMm: sizes.sealOutside === null ? null : { low: sizes.sealOutside.leastMm, high: sizes.sealOutside.mostMm },
      interferenceUm: hold?.interferenceUm ?? null,
      heldUm: hold?.heldUm ?? null,
      contactPressureMpa: hold !== null && hold.pushInForceN !== null ? hold.contactPressureMpa : null,
      pushInForceN: hold?.pushInForceN ?? null,
      holdingForceN: hold?.holdingForceN ?? null,
      looseFromC: hold !== null && hold.pushInForceN !== null ? (hot?.looseFromC ?? null) : null,
      lipInterferenceMm: lip === null || sizes.shaft === null ? null : { low: lip.low + lipShiftMm, high: lip.high + lipShiftMm },
      peripheralSpeedMps: context.peripheralSpeedMps,
      decidingReading: decidingReadingOf(findings),
      standardSizeLists: standardListsOf(situation.seal),
      assumptions: [...(hold?.assumptions ?? []), ...reports.flatMap((report) => report.assumptions ?? [])],
      notChecked: [
        ...new Set([
          ...reports.flatMap((report) => report.notChecked ?? []),
          ...(situation.seal.hasDustLip === true ? [] : ['dirt-from-outside']),
          ...(sizes.bore === null && sizes.shaft === null ? [] : ['operator-form-temperature-in-uncertainty']),
        ]),
      ],
    };
  },
  explain: (situation) => explainSealCheck(contextOf(situation)),
});

/** Of the readings that are missing, the one without whose gaps the verdict would be better; null where none alone would change it. */
function decidingReadingOf(findings: readonly Finding[]): SealCheckOutput['decidingReading'] {
  const verdict = verdictOf(findings);
  const missing = [...new Set(findings.flatMap((finding) => (finding.missing === undefined ? [] : [finding.missing])))];
  const found = missing.map((path) => ({ path, bestVerdict: verdictOf(findings.filter((finding) => finding.missing !== path)) }));
  return found.find(({ bestVerdict }) => bestVerdict !== verdict) ?? null;
}

const severityOrder: readonly Finding['severity'][] = ['bad', 'unknown', 'care', 'note', 'good'];

/** Worst first; deciding before supporting; otherwise in the order of the work. */
function inOrder(findings: readonly Finding[]): readonly Finding[] {
  const weight = (finding: Finding) => severityOrder.indexOf(finding.severity) * 2 + (finding.role === 'deciding' ? 0 : 1);
  return findings.map((finding, i) => ({ finding, i })).sort((a, b) => weight(a.finding) - weight(b.finding) || a.i - b.i).map(({ finding }) => finding);
}

function measured(size: CheckContext['sizes']['shaft']): SealCheckOutput['shaft'] {
  if (size === null) return null;
  const { instrument, ...numbers } = size;
  return { ...numbers, instrument: instrument.name };
}
