import { snapMm } from '../../quantity/index.js';
import type { SizeLimits } from '../conformance-probability.js';
import { decisionOf, decisionZones, type DecisionRule } from '../decision-zones.js';
import { instrumentCatalogue, type Instrument, type Measures } from '../find-instrument.js';
import type { OwnInstrument } from '../instrument-field.js';
import { combineBudget, type BudgetLine } from '../uncertainty-budget.js';
import { instrumentLines } from './analysed-readings.js';

/** An instrument that could answer, with what it would leave open. */
interface Decider {
  readonly id: string;
  readonly name: string;
  readonly expandedUncertaintyMm: number;
  /** 0 for an instrument of the workshop's own: it is at hand. */
  readonly costRankCount: number;
}

export interface Deciders {
  /** The cheapest that decides, if it reads the same. */
  readonly forThisSize: Decider | null;
  /** The cheapest with a small enough uncertainty for the tolerance, whatever it reads; null as well with one limit. */
  readonly forTheTolerance: Decider | null;
}

export interface DecidersAsked {
  readonly measures: Measures;
  readonly lowMm: number;
  readonly highMm: number;
  readonly limits: SizeLimits;
  readonly rule: DecisionRule;
  /** Largest share of the tolerance that U may take. */
  readonly shareRatio: number;
  /** Lines that any instrument would meet: temperatures. */
  readonly otherLines: readonly BudgetLine[];
  readonly own: readonly OwnInstrument[];
}

/** The cheapest instruments that measure this way in this size and could decide; among equally cheap ones the finest. */
export function decidingInstruments(asked: DecidersAsked): Deciders {
  const { lowMm, highMm, limits, rule, shareRatio } = asked;
  const { lowerLimitMm, upperLimitMm } = limits;
  const toleranceMm = lowerLimitMm === null || upperLimitMm === null ? null : upperLimitMm - lowerLimitMm;
  const candidates = candidatesOf(asked);
  const forThisSize = candidates.find(({ uncertainty }) => decisionOf({ lowMm, highMm }, decisionZones(limits, uncertainty, rule)) !== 'cannot be proven');
  const forTheTolerance = toleranceMm === null ? undefined : candidates.find(({ uncertainty }) => uncertainty.expandedUncertaintyMm <= shareRatio * toleranceMm * (1 + 1e-9));
  return { forThisSize: forThisSize?.decider ?? null, forTheTolerance: forTheTolerance?.decider ?? null };
}

function candidatesOf({ measures, lowMm, highMm, otherLines, own }: DecidersAsked) {
  const middleMm = snapMm((lowMm + highMm) / 2);
  const mine = own.filter((instrument) => instrument.measures === measures).map((instrument) => ({ ...instrument, name: instrument.name ?? instrument.id, costRankCount: 0 }));
  const known = instrumentCatalogue().filter((row) => row.measures === measures && middleMm > row.overMm && middleMm <= row.upToMm);
  const withUncertainty = (instrument: Omit<Instrument, 'source'> & { readonly costRankCount: number }) => {
    const uncertainty = combineBudget([...instrumentLines(instrument, 1), ...otherLines]);
    const { id, name, costRankCount } = instrument;
    const decider: Decider = { id, name, expandedUncertaintyMm: uncertainty.expandedUncertaintyMm, costRankCount };
    return { decider, uncertainty };
  };
  return [...mine, ...known]
    .map(withUncertainty)
    .sort((first, second) => first.decider.costRankCount - second.decider.costRankCount || first.decider.expandedUncertaintyMm - second.decider.expandedUncertaintyMm);
}
