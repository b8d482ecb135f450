import type { Assumption, Finding, PlanStep } from '@seatwright/core/result';
import { english, sourceName } from '@seatwright/core/wording';

/** Whether the page has the English words for all that a sheet says: those that are seldom said are fetched after the first (`words-in-two.ts`). */
export function isSpoken(sheet: unknown): boolean {
  if (typeof sheet !== 'object' || sheet === null) return true;
  return hasWords(sheet) && Object.values(sheet).every(isSpoken);
}

/** A part of a sheet, with what it may have to say. */
type Speaking = Partial<Pick<Finding, 'code' | 'severity' | 'source'> & Pick<PlanStep, 'cautions'> & Pick<Assumption, 'name' | 'effect'> & { readonly notChecked: readonly string[] }>;

function hasWords({ code, severity, source, cautions = [], name = '', effect, notChecked = [] }: Speaking): boolean {
  if (code !== undefined && !(code in (severity === undefined ? english.steps : english.findings))) return false;
  if (effect !== undefined && !(effect in english.effects && name in english.assumed)) return false;
  if (source !== undefined && sourceName(source.id, english) === source.id) return false;
  return cautions.every((caution) => caution in english.cautions) && notChecked.every((check) => check in english.notChecked);
}
