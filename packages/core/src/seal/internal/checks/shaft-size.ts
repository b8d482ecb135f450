import { deciding, source, supporting, type Finding } from '../../../result/index.js';
import { lipInterference } from '../../../tables/generated/lip-interference.js';
import { findHalfOpenRow } from '../../../tables/half-open-range.js';
import { zoneOfClass } from '../../../tolerance/index.js';
import { shaftBandOf } from '../../shaft-band.js';
import type { Check } from '../check-report.js';
import { anotherSize, halfStandardStepMm } from '../half-step.js';

/** Lip interference of a new seal on a shaft of its nominal size, where the table reaches. */
export function newLipInterferenceMm(nominalMm: number): { readonly low: number; readonly high: number } | null {
  const i = findHalfOpenRow(lipInterference.columns.overMm, lipInterference.columns.upToMm, nominalMm);
  const low = lipInterference.columns.lipInterferenceMinMm[i];
  const high = lipInterference.columns.lipInterferenceMaxMm[i];
  return low === undefined || high === undefined ? null : { low, high };
}

/** Is the shaft the size the lip is made for? */
export const shaftSize: Check = ({ situation, sizes, set }) => {
  const { seal } = situation;
  const { shaft } = sizes;
  const nominalMm = seal.shaftMm;
  const band = shaftBandOf(set, nominalMm);
  const doubts = sizes.doubts.shaft;
  if (shaft === null) {
    if (doubts.length > 0) return { findings: doubts };
    return {
      findings: [deciding('shaft-not-measured', 'unknown', { shaftNominalMm: nominalMm, lowerLimitMm: nominalMm + band.lowerMm, upperLimitMm: nominalMm + band.upperMm, band: band.label }, band.source, 'shaft.readings')],
    };
  }
  const deviationMm = shaft.meanMm - nominalMm;
  if (Math.abs(deviationMm) > halfStandardStepMm) {
    return {
      findings: [...doubts, anotherSize('shaft', shaft.meanMm, nominalMm, { shaftMm: shaft.meanMm, shaftNominalMm: nominalMm, deviationUm: deviationMm * 1000 })],
    };
  }
  const guard = shaft.expandedUncertaintyMm;
  const numbers = {
    shaftMm: shaft.meanMm,
    shaftNominalMm: nominalMm,
    deviationUm: deviationMm * 1000,
    uncertaintyMm: guard,
    lowerLimitMm: nominalMm + band.lowerMm,
    upperLimitMm: nominalMm + band.upperMm,
    band: band.label,
    instrument: shaft.instrument.name,
  };
  const findings: Finding[] = [...doubts];
  const lip = newLipInterferenceMm(nominalMm);
  const lipSource = source('gb-9877-1-1988', 'page', 'lip interference');
  if (deviationMm - guard >= band.lowerMm && deviationMm + guard <= band.upperMm) findings.push(deciding('shaft-in-band', 'good', numbers, band.source));
  else if (deviationMm + guard < band.lowerMm) {
    if (lip === null) findings.push(deciding('shaft-undersize', 'care', numbers, band.source));
    else if (lip.low + deviationMm <= 0) findings.push(deciding('shaft-undersize-lip-may-not-touch', 'bad', { ...numbers, lipLowUm: (lip.low + deviationMm) * 1000, lipHighUm: (lip.high + deviationMm) * 1000 }, lipSource));
    else findings.push(deciding('shaft-undersize-lip-still-touches', 'care', { ...numbers, lipLowUm: (lip.low + deviationMm) * 1000, lipHighUm: (lip.high + deviationMm) * 1000 }, lipSource));
  } else if (deviationMm - guard > band.upperMm) findings.push(deciding('shaft-oversize', 'care', numbers, band.source));
  else findings.push(deciding('shaft-band-not-provable', deviationMm >= band.lowerMm && deviationMm <= band.upperMm ? 'note' : 'care', numbers, band.source));
  findings.push(...roundness(shaft.ovalityUm, guard, nominalMm));
  return { findings };
};

function roundness(ovalityUm: number | null, guardMm: number, nominalMm: number): readonly Finding[] {
  if (ovalityUm === null) return [];
  const limitUm = zoneOfClass({ nominalMm, toleranceClass: 'h8' }).standardToleranceUm;
  if (ovalityUm - guardMm * 1000 <= limitUm) return [];
  return [supporting('shaft-out-of-round', 'care', { ovalityUm, limitUm }, source('din-3760-1996', 'page', 'roundness IT8'))];
}
