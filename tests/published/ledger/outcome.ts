import type { Allowed, Entry, Sheet } from './sheet.js';

/** What came of one check. */
export interface Outcome {
  /** Our value, or our values where the places asked do not agree. */
  readonly ours: string;
  /** Largest difference over the places asked; 0 for words that are the same, null for words that are not. */
  readonly difference: number | null;
  readonly allowed: Allowed;
  readonly holds: boolean;
}

const settled = (value: number): number => Number(value.toFixed(9)) + 0;

/** Asks the library and compares with what is printed. */
export function outcomeOf(entry: Entry, sheet: Sheet): Outcome {
  const answers = entry.ours();
  const printed = Number(entry.printed);
  const allowed = allowedOf(entry, sheet);
  const shown = [...new Set(answers.map((answer) => (typeof answer === 'number' ? written(settled(answer), entry.printed) : String(answer))))].join('; ');
  if (answers.length === 0) return { ours: 'not asked', difference: null, allowed, holds: false };
  if (entry.printed === '' || Number.isNaN(printed)) {
    const isSame = answers.every((answer) => answer === entry.printed);
    return { ours: shown, difference: isSame ? 0 : null, allowed, holds: isSame };
  }
  if (!answers.every((answer) => typeof answer === 'number' && Number.isFinite(answer))) return { ours: shown, difference: null, allowed, holds: false };
  const differences = answers.map((answer) => settled(Number(answer) - printed));
  const difference = differences.reduce((worst, one) => (Math.abs(one) > Math.abs(worst) ? one : worst), 0);
  return { ours: shown, difference, allowed, holds: Math.abs(difference) <= allowed.difference + 1e-9 };
}

function allowedOf(entry: Entry, sheet: Sheet): Allowed {
  if (entry.allowed !== undefined) return entry.allowed;
  if (sheet.allowed === 'exactly') return { difference: 0, why: 'exactly as printed' };
  if (sheet.allowed !== 'printed digits') return sheet.allowed;
  return { difference: 0.5 * 10 ** -decimalsOf(entry.printed), why: 'half of the last printed digit' };
}

const decimalsOf = (printed: string): number => printed.split('.')[1]?.length ?? 0;

/** Two digits beyond the printed ones, without trailing zeros. */
function written(value: number, printed: string): string {
  return String(Number(value.toFixed(Math.min(9, decimalsOf(printed) + 2))));
}
