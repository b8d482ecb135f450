import type { Finding } from './finding.js';

/** From best to worst. */
export const verdicts = ['suits', 'suits with care', 'cannot tell', 'does not suit'] as const;

export type Verdict = (typeof verdicts)[number];

/**
 * The worst of the deciding findings; supporting findings lower `suits` to `suits with care` and no further.
 * @example verdictOf([deciding('bore-has-grown', 'bad', {}, commonPractice)]) // 'does not suit'
 */
export function verdictOf(findings: readonly Finding[]): Verdict {
  let worst = 0;
  for (const finding of findings) worst = Math.max(worst, rankOf(finding));
  return verdicts[worst] ?? 'suits';
}

function rankOf({ severity, role }: Finding): number {
  if (severity === 'good' || severity === 'note') return 0;
  if (severity === 'care' || role === 'supporting') return 1;
  return severity === 'unknown' ? 2 : 3;
}

/**
 * The worse of two verdicts.
 * @example worseVerdict('suits', 'cannot tell') // 'cannot tell'
 */
export function worseVerdict(first: Verdict, second: Verdict): Verdict {
  return verdicts.indexOf(first) >= verdicts.indexOf(second) ? first : second;
}
