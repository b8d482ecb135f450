import type { SourceReference } from './source-reference.js';

/** How a check came out. `unknown`: the reading that decides is missing or too coarse. */
export type Severity = 'good' | 'note' | 'care' | 'unknown' | 'bad';

/** What a finding says, as data: sentences are made in `wording/` from `code` and `parameters`. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  /** Only deciding findings can make the verdict worse than `suits with care`. */
  readonly role: 'deciding' | 'supporting';
  /** Numbers carry their unit in the name, so that one writer can format them. */
  readonly parameters: Readonly<Record<string, number | string>>;
  readonly source: SourceReference;
  /** Path of the reading that would settle it, when the severity is `unknown`. */
  readonly missing?: string;
}

/**
 * A finding on the main question: it can decide the verdict alone.
 * @example deciding('bore-has-grown', 'care', { overUm: 12 }, commonPractice).role // 'deciding'
 */
export function deciding(
  code: string,
  severity: Severity,
  parameters: Finding['parameters'],
  source: SourceReference,
  missing?: string,
): Finding {
  return missing === undefined
    ? { code, severity, role: 'deciding', parameters, source }
    : { code, severity, role: 'deciding', parameters, source, missing };
}

/**
 * A finding beside the main question: at worst it asks for care.
 * @example supporting('roughness', 'note', {}, commonPractice).role // 'supporting'
 */
export function supporting(
  code: string,
  severity: Severity,
  parameters: Finding['parameters'],
  source: SourceReference,
): Finding {
  return { code, severity, role: 'supporting', parameters, source };
}
