import { deciding, source, supporting, type Finding } from '../../../result/index.js';
import { boreUpperDeviationMm } from './outside-fit.js';
import { halfStandardStepMm } from '../half-step.js';
import type { Check } from '../check-report.js';

const h8 = source('din-3760-1996', 'page', 'bore H8');
const softBore = source('din-3761-1983', 'page', '3.1');

/** The bore's label and form: conformity to H8, roundness, taper, and what a soft or split bore asks for. All beside the main question. */
export const boreLabel: Check = ({ situation, sizes }) => {
  const { seal, bore: asked } = situation;
  const findings: Finding[] = [];
  const { bore } = sizes;
  const isMetal = seal.construction === 'metal-case';
  if (bore !== null && Math.abs(bore.meanMm - seal.outsideMm) <= halfStandardStepMm) {
    const upper = boreUpperDeviationMm(seal.outsideMm);
    const low = bore.smallestMm - seal.outsideMm;
    const high = bore.largestMm - seal.outsideMm;
    const guard = bore.expandedUncertaintyMm;
    const numbers = { boreMm: bore.meanMm, lowerLimitMm: seal.outsideMm, upperLimitMm: seal.outsideMm + upper, uncertaintyMm: guard, instrument: bore.instrument.name };
    if (low - guard >= 0 && high + guard <= upper) findings.push(supporting('bore-meets-h8', 'good', numbers, h8));
    else if (high - guard > upper || low + guard < 0) findings.push(supporting('bore-outside-h8', 'care', numbers, h8));
    else findings.push(supporting('bore-h8-not-provable', 'note', numbers, source('iso-14253-1-1998', 'memory', 'guard band g = U')));
    if (bore.ovalityUm !== null && bore.ovalityUm / 1000 - guard > upper) {
      findings.push(supporting('bore-oval', 'care', { ovalityUm: bore.ovalityUm, limitUm: upper * 1000 }, h8));
    }
    if (bore.taperUm !== null && Math.abs(bore.taperUm) / 1000 - guard > upper) {
      findings.push(supporting('bore-tapered', 'care', { taperUm: bore.taperUm, limitUm: upper * 1000 }, h8));
    }
  }
  if (asked?.isSplit === true && isMetal) findings.push(deciding('split-bore-wants-rubber', 'care', {}, softBore));
  return { findings };
};
