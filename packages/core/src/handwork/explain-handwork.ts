import type { WorkingStep } from '../result/index.js';
import type { Situation } from '../seal/index.js';
import { driverNeedOf } from './internal/driver-need.js';
import { driverWorking } from './internal/driver-working.js';
import { extractionOf, type ExtractionInput } from './internal/extraction.js';
import { extractionWorking } from './internal/extraction-working.js';
import { rankTools } from './internal/rank-tools.js';
import { situationIn, stockIn, type DriverInput } from './internal/search-drivers.js';
import { seatingOf } from './internal/seating.js';
import { seatingWorking } from './internal/seating-working.js';

/**
 * The working of what `planExtraction` plans.
 * @throws CalculationError outside-table
 * @example explainExtraction({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).length > 0 // true
 */
export function explainExtraction(input: ExtractionInput): readonly WorkingStep[] {
  return extractionWorking(extractionOf(input));
}

/**
 * The working of what `searchDrivers` puts first.
 * @throws CalculationError outside-table
 * @example explainDrivers({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).length > 0 // true
 */
export function explainDrivers(input: DriverInput): readonly WorkingStep[] {
  const need = driverNeedOf(situationIn(input));
  return driverWorking(need, rankTools(need, stockIn(input)).usable[0] ?? null);
}

/**
 * The working of what `planSeating` plans.
 * @throws CalculationError outside-table
 * @example explainSeating({ seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).length > 0 // true
 */
export function explainSeating(situation: Situation): readonly WorkingStep[] {
  return seatingWorking(seatingOf(situation));
}
