import { deciding, source, supporting, type Finding } from '../../../result/index.js';
import { boreBandOf } from '../../bore-band.js';
import { halfStandardStepMm } from '../half-step.js';
import type { Check } from '../check-report.js';

const softBore = source('din-3761-1983', 'page', '3.1');

/** The bore's label and form: conformity to H8, roundness, taper, and what a soft or split bore asks for. All beside the main question. */
export const boreLabel: Check = ({ situation, sizes, set }) => {
  const { seal, bore: asked } = situation;
  const findings: Finding[] = [];
  const { bore } = sizes;
  const isMetal = seal.construction === 'metal-case';
  if (bore !== null && Math.abs(bore.meanMm - seal.outsideMm) <= halfStandardStepMm) {
    const band = boreBandOf(set, seal.outsideMm);
    const { lowerMm: lower, upperMm: upper } = band;
    const h8 = band.source;
    const width = upper - lower;
    const low = bore.smallestMm - seal.outsideMm;
    const high = bore.largestMm - seal.outsideMm;
    const guard = bore.expandedUncertaintyMm;
    const numbers = { boreMm: bore.meanMm, band: band.label, lowerLimitMm: seal.outsideMm + lower, upperLimitMm: seal.outsideMm + upper, uncertaintyMm: guard, instrument: bore.instrument.name };
    if (low - guard >= lower && high + guard <= upper) findings.push(supporting('bore-in-band', 'good', numbers, h8));
    else if (high - guard > upper || low + guard < lower) findings.push(supporting('bore-out-of-band', 'care', numbers, h8));
    else findings.push(supporting('bore-band-not-provable', 'note', numbers, source('iso-14253-1-1998', 'memory', 'guard band g = U')));
    if (bore.ovalityUm !== null && bore.ovalityUm / 1000 - guard > width) {
      findings.push(supporting('bore-oval', 'care', { ovalityUm: bore.ovalityUm, limitUm: width * 1000 }, h8));
    }
    if (bore.taperUm !== null && Math.abs(bore.taperUm) / 1000 - guard > width) {
      findings.push(supporting('bore-tapered', 'care', { taperUm: bore.taperUm, limitUm: width * 1000 }, h8));
    }
  }
  if (asked?.isSplit === true && isMetal) findings.push(deciding('split-bore-wants-rubber', 'care', {}, softBore));
  return { findings };
};
