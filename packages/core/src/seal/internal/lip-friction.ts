import { source, type SourceReference, type Span } from '../../result/index.js';
import type { Fluid } from '../running-field.js';
import type { LipMaterial } from '../seal-field.js';
import { sealLimit } from './seal-limit.js';

export const estimateKinds = ['torque by rubber, fluoro', 'torque by rubber, nitrile', 'short form', 'by oil and temperature'] as const;

/** One published estimate of what a lip turns into heat. */
export interface FrictionEstimate {
  readonly estimate: (typeof estimateKinds)[number];
  readonly frictionPowerW: number;
  readonly formula: string;
  readonly scope: Readonly<Record<string, number>>;
  readonly source: SourceReference;
}

const oils: readonly Fluid[] = ['engine-oil', 'gear-oil', 'hypoid-gear-oil', 'atf', 'mineral-oil'];

/** What a lip is asked about its heat. */
export interface LipHeatQuestion {
  readonly shaftMm: number;
  readonly speedRpm: number;
  readonly lipMaterial: LipMaterial;
  readonly fluid?: Fluid | undefined;
  readonly fluidTemperatureC?: number | undefined;
  readonly viscosityAt40CMm2PerS?: number | undefined;
}

/**
 * Friction power of a lip by the published estimates that speak of this rubber and fluid. Made for oil-lubricated gear units.
 * P = T·π·n/30 with T = k·d (fluoro rubber and nitrile; another rubber gets both);  P = 7.69·10⁻⁶·d²·n;
 * P = (145 − 1.6·t + 350·lg lg(ν₄₀ + 0.8))·d²·n·10⁻⁷ for oils of known viscosity, where that is over zero
 * @source iso-tr-14179-1, iso-tr-14179-2 (held as: memory)
 */
export function frictionEstimates({ shaftMm: d, speedRpm: n, lipMaterial, fluid, fluidTemperatureC: t, viscosityAt40CMm2PerS: nu }: LipHeatQuestion): readonly FrictionEstimate[] {
  const estimates: FrictionEstimate[] = [];
  const torque = (estimate: FrictionEstimate['estimate'], value: { readonly low: number; readonly source: SourceReference }) =>
    estimates.push({ estimate, frictionPowerW: (value.low * d * Math.PI * n) / 30, formula: 'k * d * pi * n / 30', scope: { k: value.low, d, n }, source: value.source });
  if (lipMaterial !== 'NBR') torque('torque by rubber, fluoro', sealLimit('friction-torque-fkm', 'Coefficient'));
  if (lipMaterial !== 'FKM') torque('torque by rubber, nitrile', sealLimit('friction-torque-nbr', 'Coefficient'));
  const short = sealLimit('friction-power-short', 'Factor');
  estimates.push({ estimate: 'short form', frictionPowerW: short.low * d ** 2 * n, formula: 'k * d^2 * n', scope: { k: short.low, d, n }, source: short.source });
  if (nu !== undefined && t !== undefined && fluid !== undefined && oils.includes(fluid)) {
    const perSpeed = 145 - 1.6 * t + 350 * Math.log10(Math.log10(nu + 0.8));
    if (perSpeed > 0) {
      estimates.push({
        estimate: 'by oil and temperature', frictionPowerW: perSpeed * d ** 2 * n * 1e-7, formula: '(145 - 1.6 * t + 350 * log10(log10(nu + 0.8))) * d^2 * n * 1e-7',
        scope: { t, nu, d, n }, source: source('iso-tr-14179-2', 'memory', 'seal loss by oil temperature and viscosity'),
      });
    }
  }
  return estimates;
}

export function spanOf(estimates: readonly FrictionEstimate[]): Span {
  const values = estimates.map(({ frictionPowerW }) => frictionPowerW);
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** [K] How much hotter than the medium a lip runs: a published span, the same at every speed above rest; a dust lip adds its own. */
export function lipRiseOf(isTurning: boolean, hasDustLip: boolean): Span & { readonly source: SourceReference } {
  const rise = sealLimit('lip-rise', 'K');
  if (!isTurning) return { low: 0, high: 0, source: rise.source };
  const more = hasDustLip ? sealLimit('lip-rise-dust-lip', 'K').low : 0;
  return { low: rise.low + more, high: rise.high + more, source: rise.source };
}
