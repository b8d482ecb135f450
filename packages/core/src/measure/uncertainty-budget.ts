import { normalProbability } from './normal-distribution.js';
import { studentQuantile } from './student-distribution.js';

export const budgetComponents = ['permissible-error', 'step', 'repeatability', 'stated', 'part-temperature', 'instrument-temperature', 'part-expansion', 'instrument-expansion'] as const;

/** One line of an uncertainty budget. */
export interface BudgetLine {
  readonly component: (typeof budgetComponents)[number];
  /** Instrument that the line belongs to; null for lines that concern the part alone. */
  readonly instrument: string | null;
  /** Standard uncertainty of the component, already turned into mm of size. */
  readonly standardUncertaintyMm: number;
  readonly distribution: 'rectangular' | 'normal';
  /** How far the size moves when the component moves by one: the weight of the set of readings, or 1. */
  readonly sensitivityFactor: number;
  /** Null where the line is a stated limit, taken as certain (infinitely many). */
  readonly degreesOfFreedomCount: number | null;
}

/** What a budget adds up to. */
export interface CombinedUncertainty {
  readonly standardUncertaintyMm: number;
  /** Null for infinitely many: every line is a stated limit. */
  readonly effectiveDegreesOfFreedomCount: number | null;
  readonly coverageFactor: number;
  readonly expandedUncertaintyMm: number;
}

/** Level of confidence at which k = 2 for a normal quantity: 95.45 %. */
export const coverageProbability = 2 * normalProbability(2) - 1;

/**
 * A budget added up.  u = √Σ(c·uᵢ)²;  ν_eff = u⁴ / Σ((c·uᵢ)⁴/νᵢ);  k = t(95.45 %, ν_eff);  U = k·u
 * The effective degrees of freedom are cut to the whole number below (within 1e-9 of one counts as that one), and never under 1. Lines are taken as independent.
 * @source jcgm-100-2008, clauses 5.1.2, G.4.1 and G.6.4 (held as: memory)
 * @example combineBudget([{ component: 'step', instrument: null, standardUncertaintyMm: 0.003, distribution: 'rectangular', sensitivityFactor: 1, degreesOfFreedomCount: null }]).coverageFactor // 2
 */
export function combineBudget(lines: readonly BudgetLine[]): CombinedUncertainty {
  const contributions = lines.map((line) => ({ mm: Math.abs(line.sensitivityFactor) * line.standardUncertaintyMm, count: line.degreesOfFreedomCount }));
  const standardUncertaintyMm = Math.sqrt(contributions.reduce((sum, { mm }) => sum + mm ** 2, 0));
  const degrees = effectiveDegreesOfFreedom(contributions);
  const effectiveDegreesOfFreedomCount = degrees === null ? null : Math.max(1, Math.floor(degrees * (1 + 1e-9)));
  const coverageFactor = effectiveDegreesOfFreedomCount === null ? 2 : studentQuantile(coverageProbability, effectiveDegreesOfFreedomCount);
  return { standardUncertaintyMm, effectiveDegreesOfFreedomCount, coverageFactor, expandedUncertaintyMm: coverageFactor * standardUncertaintyMm };
}

/** More than this say nothing that infinitely many do not say. */
const certainFromCount = 1e9;

/**
 * Welch–Satterthwaite:  ν_eff = (Σu²)² / Σ(u⁴/ν)
 * @param contributions standard uncertainties in one unit, each with its degrees of freedom or null for infinitely many
 * @returns null for infinitely many
 * @source jcgm-100-2008, clause G.4.1, formula G.2b (held as: memory)
 * @example effectiveDegreesOfFreedom([{ mm: 3, count: 9 }, { mm: 3, count: 9 }]) // 18
 */
export function effectiveDegreesOfFreedom(contributions: readonly { readonly mm: number; readonly count: number | null }[]): number | null {
  const total = contributions.reduce((sum, { mm }) => sum + mm ** 2, 0);
  if (total === 0) return null;
  const share = contributions.reduce((sum, { mm, count }) => (count === null ? sum : sum + (mm ** 2 / total) ** 2 / count), 0);
  return share * certainFromCount < 1 ? null : 1 / share;
}
