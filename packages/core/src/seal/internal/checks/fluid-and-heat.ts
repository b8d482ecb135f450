import { deciding, source, supporting, type Finding, type HeldMark, type Span } from '../../../result/index.js';
import { lipFluid } from '../../../tables/generated/lip-fluid.js';
import { lipTemperature } from '../../../tables/generated/lip-temperature.js';
import { markAt } from '../../../tables/table.js';
import type { Fluid } from '../../running-field.js';
import type { LipMaterial } from '../../seal-field.js';
import type { Situation } from '../../situation-field.js';
import type { Check } from '../check-report.js';
import { lipRiseOf } from '../lip-friction.js';

type Rating = 'good' | 'limited' | 'poor';
const ratingRank: Readonly<Record<Rating, number>> = { good: 0, limited: 1, poor: 2 };

export interface FluidRow {
  readonly rating: Rating;
  readonly maxMediumC: number | null;
  readonly fluid: string;
  readonly source: ReturnType<typeof source>;
}

/** Oils that the tables cover only as mineral oil. */
const standsInFor: Partial<Record<Fluid, string>> = { 'engine-oil': 'mineral-oil', 'gear-oil': 'mineral-oil', atf: 'mineral-oil' };

/** The careful row for a rubber in a fluid: published pages before remembered rows, and the worst rating among them. */
function fluidRowOf(material: LipMaterial, fluid: Fluid): { readonly rating: FluidRow; readonly limit: FluidRow | null } | null {
  const exact = rowsFor(material, fluid);
  const rows = exact.length > 0 ? exact : rowsFor(material, standsInFor[fluid] ?? '');
  if (rows.length === 0) return null;
  const pages = rows.filter((row) => row.source.held === 'page');
  const chosen = pages.length > 0 ? pages : rows;
  const rating = chosen.reduce((worst, row) => (ratingRank[row.rating] > ratingRank[worst.rating] ? row : worst));
  const limits = rows.filter((row) => row.maxMediumC !== null);
  const limit = limits.reduce<FluidRow | null>((low, row) => (low === null || (row.maxMediumC ?? 0) < (low.maxMediumC ?? 0) ? row : low), null);
  return { rating, limit };
}

function rowsFor(material: string, fluid: string): readonly FluidRow[] {
  const { columns } = lipFluid;
  const found: FluidRow[] = [];
  for (let i = 0; i < lipFluid.rowCount; i += 1) {
    if (columns.material[i] !== material || columns.fluid[i] !== fluid) continue;
    found.push({
      rating: columns.rating[i] as Rating,
      maxMediumC: columns.maxMediumC[i] ?? null,
      fluid,
      source: source(columns.rowSource[i] ?? lipFluid.source, markAt(lipFluid, 'rating', i)),
    });
  }
  return found;
}

interface TemperatureRange {
  readonly minC: number | null;
  readonly maxC: number | null;
  readonly source: ReturnType<typeof source>;
}

/** Temperature range of a rubber: `working` (of the medium) or `rubber-limit` (at the lip itself). */
function temperatureRangeOf(material: LipMaterial, kind: 'working' | 'rubber-limit'): TemperatureRange | null {
  const { columns } = lipTemperature;
  for (let i = 0; i < lipTemperature.rowCount; i += 1) {
    if (columns.material[i] !== material || columns.kind[i] !== kind) continue;
    const held: HeldMark = markAt(lipTemperature, 'maxC', i);
    return { minC: columns.minC[i] ?? null, maxC: columns.maxC[i] ?? null, source: source(columns.rowSource[i] ?? lipTemperature.source, held) };
  }
  return null;
}

/** Range for the medium: the working range, or the limits of the rubber itself where no working range is published. */
function workingRangeOf(material: LipMaterial): TemperatureRange | null {
  return temperatureRangeOf(material, 'working') ?? temperatureRangeOf(material, 'rubber-limit');
}

/** How hot the medium may be: the working range of the rubber, or the lower limit that is given for this fluid. */
export function temperatureLimitOf(material: LipMaterial, fluid: Fluid | undefined): { readonly maxC: number; readonly source: FluidRow['source'] } | null {
  const working = workingRangeOf(material);
  if (working?.maxC == null) return null;
  const limit = fluid === undefined ? null : (fluidRowOf(material, fluid)?.limit ?? null);
  if (limit?.maxMediumC != null && limit.maxMediumC < working.maxC) return { maxC: limit.maxMediumC, source: limit.source };
  return { maxC: working.maxC, source: working.source };
}

/** Does the rubber stand the fluid and its heat? */
export const fluidAndHeat: Check = ({ situation }) => {
  const { seal, running } = situation;
  const findings: Finding[] = [];
  const material = seal.lipMaterial;
  const tables = source('tribology-handbook-b23', 'page', 'sealing lip materials');
  if (running?.fluid === undefined) findings.push(deciding('fluid-missing', 'unknown', { lipMaterial: material }, tables, 'running.fluid'));
  else findings.push(fluidFinding(material, running.fluid));
  if (running?.fluidTemperatureC === undefined) {
    findings.push(deciding('fluid-temperature-missing', 'unknown', { lipMaterial: material }, tables, 'running.fluidTemperatureC'));
  } else findings.push(...heatFindings(situation, running.fluidTemperatureC));
  if (running?.coldestC !== undefined) findings.push(...coldFindings(material, running.coldestC));
  if (running?.runsDry === true) findings.push(dryFinding(material));
  return { findings, notChecked: ['lip-heat-by-speed'] };
};

function fluidFinding(lipMaterial: LipMaterial, fluid: Fluid): Finding {
  const row = fluidRowOf(lipMaterial, fluid);
  if (row === null) return deciding('fluid-not-in-table', 'unknown', { lipMaterial, fluid }, source('seal-handbook-reprints', 'page'), 'running.fluid');
  const { rating } = row;
  const numbers = { lipMaterial, fluid, rowFluid: rating.fluid };
  if (rating.rating === 'poor') return deciding('fluid-attacks-rubber', 'bad', numbers, rating.source);
  if (rating.rating === 'limited') return deciding('fluid-limited', 'care', numbers, rating.source);
  return deciding('fluid-suits-rubber', 'good', numbers, rating.source);
}

function heatFindings({ seal, running }: Situation, fluidTemperatureC: number): readonly Finding[] {
  const { lipMaterial } = seal;
  const fluid = running?.fluid;
  const findings: Finding[] = [];
  const working = workingRangeOf(lipMaterial);
  const limit = fluid === undefined ? null : (fluidRowOf(lipMaterial, fluid)?.limit ?? null);
  if (working?.maxC == null) findings.push(deciding('temperature-not-in-table', 'unknown', { lipMaterial }, source('seal-handbook-reprints', 'page'), 'running.fluidTemperatureC'));
  else {
    const numbers = { lipMaterial, fluidTemperatureC, limitC: working.maxC };
    if (fluidTemperatureC > working.maxC) findings.push(deciding('temperature-over-working-limit', 'bad', numbers, working.source));
    else if (limit?.maxMediumC != null && fluidTemperatureC > limit.maxMediumC) {
      findings.push(deciding('temperature-over-fluid-limit', 'care', { ...numbers, limitC: limit.maxMediumC, fluid: fluid ?? '' }, limit.source));
    } else findings.push(deciding('temperature-within', 'good', numbers, working.source));
  }
  const rise = lipRiseOf(running?.speedRpm !== 0, seal.hasDustLip === true);
  const lip = lipHeatFindings(lipMaterial, { low: fluidTemperatureC + rise.low, high: fluidTemperatureC + rise.high });
  return [...findings, ...lip.filter(({ severity }) => severity !== 'good')];
}

/** The lip itself against what its rubber stands: surely over, perhaps, or within. */
export function lipHeatFindings(lipMaterial: LipMaterial, lipC: Span): readonly Finding[] {
  const rubber = temperatureRangeOf(lipMaterial, 'rubber-limit');
  if (rubber?.maxC == null) return [];
  const numbers = { lipMaterial, lipLowC: lipC.low, lipHighC: lipC.high, limitC: rubber.maxC };
  if (lipC.low > rubber.maxC) return [deciding('lip-likely-over-rubber-limit', 'care', numbers, rubber.source)];
  if (lipC.high > rubber.maxC) return [supporting('lip-may-pass-rubber-limit', 'note', numbers, rubber.source)];
  return [supporting('lip-within-rubber-limit', 'good', numbers, rubber.source)];
}

/** A lip without any fluid: rubber burns its edge, PTFE stands it. */
function dryFinding(lipMaterial: LipMaterial): Finding {
  const by = source('general-memory', 'memory', 'dry running of lips');
  return lipMaterial === 'PTFE' ? deciding('lip-stands-dry-running', 'good', { lipMaterial }, by) : deciding('lip-runs-dry', 'bad', { lipMaterial }, by);
}

function coldFindings(lipMaterial: LipMaterial, coldestC: number): readonly Finding[] {
  const working = workingRangeOf(lipMaterial);
  if (working?.minC == null || coldestC >= working.minC) return [];
  return [deciding('too-cold-for-rubber', 'care', { lipMaterial, coldestC, limitC: working.minC }, working.source)];
}
