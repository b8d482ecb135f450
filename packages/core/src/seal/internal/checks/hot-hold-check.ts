import { expansionScatterShare, findMaterial } from '../../../material/index.js';
import { commonPractice, deciding, plainMechanics, source, type Assumption, type Finding } from '../../../result/index.js';
import { caseMaterialId } from '../../case-hold.js';
import { holdsByMetal } from '../../seal-field.js';
import type { HotHold } from '../../hot-hold.js';
import type { Check } from '../check-report.js';
import { housingGive } from '../housing-give.js';

const softBore = source('din-3761-1983', 'page', '3.1');

/** Does it still hold when the housing is hot? The loss is taken from the elastic hold that is left after the case has yielded. */
export const hotHoldCheck: Check = ({ situation, hold, hot, housingTemperatureC }) => {
  const { seal, bore, running, retainedBy } = situation;
  const notChecked = housingGive(situation)?.isWallKnown === true ? [] : ['housing-stiffness'];
  if (!holdsByMetal(seal.construction)) {
    return {
      findings: hot !== null && hot.lossUmPerK.high > 0 ? [deciding('rubber-cover-follows-heat', 'good', { housing: hot.housingMaterial.name }, softBore)] : [],
      notChecked: [...notChecked, 'rubber-cover-force', 'rubber-cover-set'],
    };
  }
  if (hold === null || hold.interferenceUm.high <= 0) return { findings: [], notChecked };
  if (bore?.material === undefined) {
    return { findings: [deciding('housing-material-missing', 'unknown', {}, plainMechanics, 'bore.material')], notChecked };
  }
  if (hot?.looseFromC == null) return { findings: [deciding('heat-does-not-loosen', 'good', { housing: hot?.housingMaterial.name ?? '' }, plainMechanics)], notChecked };
  const assumptions = scatterOf(hot);
  const numbers = {
    housing: hot.housingMaterial.name,
    heldLowUm: hold.heldUm.low,
    heldHighUm: hold.heldUm.high,
    earliestC: hot.looseFromC.earliest,
    probableC: hot.looseFromC.probable,
    latestC: hot.looseFromC.latest,
  };
  if (housingTemperatureC === null || hot.remainingUm === null) {
    return { findings: [deciding('housing-temperature-missing', 'unknown', numbers, plainMechanics, 'running.housingTemperatureC')], assumptions, notChecked };
  }
  if (running?.housingTemperatureC === undefined) assumptions.push({ name: 'housing-temperature', value: housingTemperatureC, unit: '°C', source: commonPractice, effect: 'hold-when-hot' });
  const all = { ...numbers, housingTemperatureC, remainingLowUm: Math.max(hot.remainingUm.low, 0), remainingHighUm: Math.max(hot.remainingUm.high, 0) };
  const isHeldOtherwise = retainedBy === 'circlip' || retainedBy === 'plate' || retainedBy === 'staking';
  return { findings: [verdictHot(all, hot.remainingUm, isHeldOtherwise)], assumptions, notChecked };
};

function verdictHot(numbers: Finding['parameters'], remaining: { readonly low: number; readonly high: number }, isHeldOtherwise: boolean): Finding {
  if (remaining.low > 0) return deciding('case-holds-hot', 'good', numbers, plainMechanics);
  if (isHeldOtherwise) return deciding('case-loose-hot-but-retained', 'care', numbers, plainMechanics);
  if (remaining.high > 0) return deciding('case-may-loosen-hot', 'care', numbers, plainMechanics);
  return deciding('case-loose-hot', 'bad', numbers, plainMechanics);
}

/** Where no handbook prints a range of the expansion, the scatter that stands in is listed. */
function scatterOf({ housingMaterial }: HotHold): Assumption[] {
  if (!housingMaterial.isExpansionSpanAssumed && !findMaterial(caseMaterialId).isExpansionSpanAssumed) return [];
  return [{ name: 'expansion-scatter', value: `± ${expansionScatterShare * 100} %`, unit: '', source: commonPractice, effect: 'hold-when-hot' }];
}
