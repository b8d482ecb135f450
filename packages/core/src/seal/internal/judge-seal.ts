import { verdictOf, type Finding } from '../../result/index.js';
import { caseHold } from '../case-hold.js';
import { hotHold } from '../hot-hold.js';
import type { SealCheckOutput } from './seal-check-output.js';
import type { Situation } from '../situation-field.js';
import { sizesOf } from '../sizes-of.js';
import type { CheckContext } from './check-report.js';
import { boreLabel } from './checks/bore-label.js';
import { edgesAndRoom } from './checks/edges-and-room.js';
import { facingAndRotation } from './checks/facing-and-rotation.js';
import { fluidAndHeat } from './checks/fluid-and-heat.js';
import { hotHoldCheck } from './checks/hot-hold-check.js';
import { inchSizes } from './checks/inch-sizes.js';
import { lipSpeedCheck } from './checks/lip-speed-check.js';
import { outsideFit } from './checks/outside-fit.js';
import { pressure } from './checks/pressure.js';
import { pushedOut } from './checks/pushed-out.js';
import { newLipInterferenceMm, shaftSize } from './checks/shaft-size.js';
import { surfaces } from './checks/surfaces.js';
import { peripheralSpeedMps } from './peripheral-speed.js';
import { standardListsOf } from './standard-lists.js';

const checks = [outsideFit, boreLabel, inchSizes, hotHoldCheck, shaftSize, lipSpeedCheck, fluidAndHeat, pressure, pushedOut, facingAndRotation, surfaces, edgesAndRoom];

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
    peripheralSpeedMps: running?.speedRpm === undefined ? null : peripheralSpeedMps(lipShaftMm, running.speedRpm),
  };
}

/** What `sealCheck` answers, apart from its schemas and its working, which a sheet need not fetch. Trusts its input. @internal */
export function judgeSeal(situation: Situation): SealCheckOutput {
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
}

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
