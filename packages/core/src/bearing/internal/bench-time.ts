import type { Span } from '../../result/index.js';
import type { BearingRings } from './bearing-rings.js';

const steel = { densityKgPerM3: 7850, heatJPerKgK: 460 };
/** Heat given to still air by a part on the bench, wood or a rag below it [W/(m²·K)]. From memory. */
const coolingWPerM2K: Span = { low: 8, high: 25 };
/** Share of the space between bore and outside that is metal. */
const metalShare = 0.7;

/**
 * Time [s] in which a heated bearing cools to where it would grip, one lump in still air.  t = m·c/(h·A)·ln((T − Ta)/(Tg − Ta))
 * An estimate: in the hand and against a cold shaft it goes much faster.
 * @source general-memory (cooling of a lump), held as: memory
 */
export function benchTimeS({ boreMm, outsideMm, widthMm }: BearingRings, hotC: number, gripC: number, ambientC: number): Span {
  const [d, D, B] = [boreMm / 1000, outsideMm / 1000, widthMm / 1000];
  const massKg = metalShare * steel.densityKgPerM3 * (Math.PI / 4) * (D ** 2 - d ** 2) * B;
  const areaM2 = Math.PI * (D + d) * B + (Math.PI / 2) * (D ** 2 - d ** 2);
  const perCoefficient = ((massKg * steel.heatJPerKgK) / areaM2) * Math.log((hotC - ambientC) / (gripC - ambientC));
  return { low: perCoefficient / coolingWPerM2K.high, high: perCoefficient / coolingWPerM2K.low };
}
