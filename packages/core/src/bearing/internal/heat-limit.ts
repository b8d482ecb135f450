import { practiceValue } from './bearing-practice.js';
import { readSuffixes } from './read-suffixes.js';

/** What decides how hot a bearing, or the case around it, may be made. */
interface Heated {
  readonly designation?: string | undefined;
  readonly isSealedOrGreased?: boolean | undefined;
  readonly hasPolymerCage?: boolean | undefined;
  readonly caseLimitC?: number | undefined;
  readonly ambientC?: number | undefined;
}

/** Whether seals or grease limit the heat: by what is said, by the marking, or because a suffix could not be read. */
export function closureOf({ isSealedOrGreased, designation }: Pick<Heated, 'isSealedOrGreased' | 'designation'>): 'sealed' | 'perhaps sealed' | 'open' {
  const marked = designation === undefined ? null : readSuffixes(designation);
  if (isSealedOrGreased === true || (marked !== null && marked.seal !== 'open')) return 'sealed';
  return isSealedOrGreased === undefined && marked !== null && marked.unknownSuffixes.length > 0 ? 'perhaps sealed' : 'open';
}

/** A case is made no hotter than was said, nor than the bearing that goes into it stands; a bearing no hotter than bearings stand.
 * The handbook's limit for plastic cages is its limit for rubber seals too. Grease that is heated itself stands less: see `hasSealOrGrease`. */
export function heatLimitC(where: 'shaft' | 'housing', input: Heated): number {
  const isTender = input.hasPolymerCage === true || closureOf(input) !== 'open';
  const bearingC = practiceValue(isTender ? 'heating-limit-polymer-cage' : 'heating-limit-bearing', 'C').low;
  return where === 'housing' ? Math.max(input.ambientC ?? 20, Math.min(input.caseLimitC ?? bearingC, bearingC)) : bearingC;
}
