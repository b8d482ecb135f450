import * as z from 'zod/mini';
import { sourceField } from './candour-field.js';
import type { SourceReference } from './source-reference.js';

/** One step of work, as data: `code` and `parameters` become a sentence in `wording/`; `cautions` stand beside it. */
export interface PlanStep {
  readonly code: string;
  readonly parameters: Readonly<Record<string, number | string>>;
  /** Codes of the cautions that belong to this step. */
  readonly cautions: readonly string[];
  readonly source: SourceReference;
}

/**
 * One step of work.
 * @example planStep('drive-in', {}, commonPractice, ['eye-protection']).cautions // eye-protection
 */
export function planStep(
  code: string,
  parameters: PlanStep['parameters'],
  source: SourceReference,
  cautions: readonly string[] = [],
): PlanStep {
  return { code, parameters, cautions, source };
}

/** Schema of a step of work in an output. */
export const planStepField = z.strictObject({
  code: z.string().check(z.meta({ label: 'step', unit: '' })),
  parameters: z.readonly(z.record(z.string(), z.union([z.number(), z.string()]))),
  cautions: z.readonly(z.array(z.string().check(z.meta({ label: 'caution', unit: '' })))),
  source: sourceField,
});
