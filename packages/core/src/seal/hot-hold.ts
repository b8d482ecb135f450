import { findMaterial, type Material } from '../material/index.js';
import type { Span } from '../result/index.js';
import { caseMaterialId, type CaseHold } from './case-hold.js';
import type { Situation } from './situation-field.js';

/** What is left of the hold when the housing is hot. */
export interface HotHold {
  readonly housingMaterial: Material;
  /** Diametral loss for each kelvin above 20 °C; negative when the case outgrows the housing. */
  readonly lossUmPerK: Span;
  /** Elastic hold left at the housing temperature; null when no temperature is known. */
  readonly remainingUm: Span | null;
  /** Housing temperature at which the hold is gone; null when heat does not loosen it. */
  readonly looseFromC: { readonly earliest: number; readonly probable: number; readonly latest: number } | null;
}

const referenceC = 20;

/**
 * Loss of hold by heat.  loss = (α_housing − α_case)·(T − 20)·D, taken from the elastic hold, never from the first interference
 * @param housingTemperatureC [°C] highest housing temperature, or null when unknown
 * @source plain-mechanics (held as: computed); reference temperature: iso-1-2022
 * @example hotHold({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }, caseHold({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }), 90) === null // false
 */
export function hotHold(situation: Situation, hold: CaseHold, housingTemperatureC: number | null): HotHold | null {
  const materialId = situation.bore?.material;
  if (materialId === undefined) return null;
  const housing = findMaterial(materialId, situation.materials, 'bore.material');
  const ring = findMaterial(caseMaterialId);
  const diameterUm = situation.seal.outsideMm * 1000;
  const lossUmPerK: Span = {
    low: (housing.expansionPerK.low - ring.expansionPerK.high) * diameterUm,
    high: (housing.expansionPerK.high - ring.expansionPerK.low) * diameterUm,
  };
  const probableLoss = (housing.expansionPerK.probable - ring.expansionPerK.probable) * diameterUm;
  const rise = housingTemperatureC === null ? null : housingTemperatureC - referenceC;
  const { heldUm } = hold;
  return {
    housingMaterial: housing,
    lossUmPerK,
    remainingUm:
      rise === null
        ? null
        : {
            low: Math.min(heldUm.low - lossUmPerK.low * rise, heldUm.low - lossUmPerK.high * rise),
            high: Math.max(heldUm.high - lossUmPerK.low * rise, heldUm.high - lossUmPerK.high * rise),
          },
    looseFromC:
      probableLoss <= 0 || lossUmPerK.low <= 0 || isSameFamily(housing)
        ? null
        : {
            earliest: referenceC + heldUm.low / lossUmPerK.high,
            probable: referenceC + (heldUm.low + heldUm.high) / 2 / probableLoss,
            latest: referenceC + heldUm.high / lossUmPerK.low,
          },
  };
}

/** Steel case in steel or iron: the expansion coefficients overlap, heat changes next to nothing. */
function isSameFamily({ family }: Material): boolean {
  return family === 'steel' || family === 'iron';
}
