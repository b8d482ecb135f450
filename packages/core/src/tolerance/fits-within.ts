import { classLimitsAt, type ClassLimits } from './internal/class-limits.js';
import { classNames, type ClassName } from './internal/class-names.js';
import { preferenceOf, type Preference } from './internal/class-preference.js';
import { settledUm } from './internal/settled.js';
import { sizeStepOf } from './internal/size-steps.js';

/** A fit of two classes and what it guarantees. Clearance is interference below zero. */
export interface FitCandidate {
  readonly hole: string;
  readonly shaft: string;
  /** The lesser preference of both classes. */
  readonly preference: Preference;
  readonly basis: 'hole-basis' | 'shaft-basis' | 'none';
  readonly leastInterferenceUm: number;
  readonly mostInterferenceUm: number;
  readonly fitToleranceUm: number;
  /** How far it leaves the window, at both ends together; zero inside. */
  readonly missUm: number;
}

/** What the interference must keep to; an end left out is open. */
export interface InterferenceWindow {
  readonly leastUm?: number | undefined;
  readonly mostUm?: number | undefined;
}

/** Grades that fits are made with. */
const finestGrade = 4;
const coarsestGrade = 12;
const rank: Readonly<Record<Preference, number>> = { first: 0, second: 1, none: 2 };

interface Part {
  readonly name: ClassName;
  readonly limits: ClassLimits;
  readonly preference: Preference;
}

/**
 * Fits whose interference keeps to a window whatever the parts within their classes: preferred first, those with H or h before
 * others, then the widest tolerance, since that is the easiest to make. Looked at are all pairs of preferred classes, and every class with H or h, grades 4 to 12.
 * @param window ends [µm] of the interference on the diameter; clearance below zero
 * @returns found, best first; nearest by how far they leave the window; how many were looked at
 * @throws CalculationError outside-table
 * @source iso-286-1-2010, Tables 1 to 5; preference iso-1829-1975 (held as: memory)
 * @example fitsWithin(25, { leastUm: 1, mostUm: 40 }).found.length > 0 // true
 */
export function fitsWithin(nominalMm: number, { leastUm = -Infinity, mostUm = Infinity }: InterferenceWindow): { readonly found: readonly FitCandidate[]; readonly nearest: readonly FitCandidate[]; readonly consideredCount: number } {
  const step = sizeStepOf(nominalMm);
  const parts = classNames.flatMap((name): readonly Part[] => {
    const grade = Number(name.grade);
    if (name.grade.startsWith('0') || grade < finestGrade || grade > coarsestGrade) return [];
    const limits = classLimitsAt(name, step);
    return limits === null ? [] : [{ name, limits, preference: preferenceOf(name) }];
  });
  const holes = parts.filter(({ name }) => name.kind === 'hole');
  const shafts = parts.filter(({ name }) => name.kind === 'shaft');
  const all: FitCandidate[] = [];
  for (const hole of holes) {
    for (const shaft of shafts) {
      const isPreferred = hole.preference !== 'none' && shaft.preference !== 'none';
      if (!isPreferred && hole.name.holeLetter !== 'H' && shaft.name.holeLetter !== 'H') continue;
      all.push(candidate(hole, shaft, leastUm, mostUm));
    }
  }
  const found = all.filter(({ missUm }) => missUm === 0).sort(byWorth);
  const nearest = found.length > 0 ? [] : all.sort((a, b) => a.missUm - b.missUm || rank[a.preference] - rank[b.preference]).slice(0, 12);
  return { found, nearest, consideredCount: all.length };
}

function candidate(hole: Part, shaft: Part, leastUm: number, mostUm: number): FitCandidate {
  const leastInterferenceUm = settledUm(shaft.limits.lowerUm - hole.limits.upperUm);
  const mostInterferenceUm = settledUm(shaft.limits.upperUm - hole.limits.lowerUm);
  return {
    hole: hole.name.text,
    shaft: shaft.name.text,
    preference: rank[hole.preference] > rank[shaft.preference] ? hole.preference : shaft.preference,
    basis: hole.name.holeLetter === 'H' ? 'hole-basis' : shaft.name.holeLetter === 'H' ? 'shaft-basis' : 'none',
    leastInterferenceUm,
    mostInterferenceUm,
    fitToleranceUm: settledUm(mostInterferenceUm - leastInterferenceUm),
    missUm: Math.max(0, leastUm - leastInterferenceUm) + Math.max(0, mostInterferenceUm - mostUm),
  };
}

function byWorth(a: FitCandidate, b: FitCandidate): number {
  const other = ({ basis }: FitCandidate) => (basis === 'none' ? 1 : 0);
  return rank[a.preference] - rank[b.preference] || other(a) - other(b) || b.fitToleranceUm - a.fitToleranceUm || basisRank(a) - basisRank(b);
}

function basisRank({ basis }: FitCandidate): number {
  return ['hole-basis', 'shaft-basis', 'none'].indexOf(basis);
}
