import type { Assumption, Finding, PlanStep } from '@seatwright/core/result';
import { sourceName, type Catalogue } from '@seatwright/core/wording';

/** Whether a language has the words for all that a sheet says: those that are seldom said are fetched after the first (`words-in-two.ts`). */
export function isSpoken(sheet: unknown, catalogue: Catalogue): boolean {
  if (typeof sheet !== 'object' || sheet === null) return true;
  return hasWords(sheet, catalogue) && Object.values(sheet).every((part) => isSpoken(part, catalogue));
}

/** A part of a sheet, with what it may have to say. */
type Speaking = Partial<Pick<Finding, 'code' | 'severity' | 'source'> & Pick<PlanStep, 'cautions'> & Pick<Assumption, 'name' | 'effect'> & { readonly notChecked: readonly string[] }>;

function hasWords({ code, severity, source, cautions = [], name = '', effect, notChecked = [] }: Speaking, catalogue: Catalogue): boolean {
  if (code !== undefined && !(code in (severity === undefined ? catalogue.steps : catalogue.findings))) return false;
  if (effect !== undefined && !(effect in catalogue.effects && name in catalogue.assumed)) return false;
  if (source !== undefined && sourceName(source.id, catalogue) === source.id) return false;
  return cautions.every((caution) => caution in catalogue.cautions) && notChecked.every((check) => check in catalogue.notChecked);
}
