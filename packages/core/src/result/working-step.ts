import type { SourceReference } from './source-reference.js';

/** A formula with the numbers it was used with; evaluating `formula` in `scope` gives `value`. */
export interface FormulaStep {
  readonly kind: 'formula';
  readonly symbol: string;
  readonly meaning: string;
  readonly formula: string;
  readonly scope: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: string;
  readonly source: SourceReference;
}

/** A value read from a table. */
export interface LookupStep {
  readonly kind: 'lookup';
  readonly symbol: string;
  readonly meaning: string;
  readonly table: string;
  readonly row: string;
  readonly column: string;
  readonly value: number | string;
  readonly unit: string;
  readonly source: SourceReference;
}

/** A branch taken, and why. */
export interface ChoiceStep {
  readonly kind: 'choice';
  readonly symbol: string;
  readonly meaning: string;
  readonly value: string | number;
  readonly unit: string;
  readonly why: string;
  readonly source: SourceReference;
}

export type WorkingStep = FormulaStep | LookupStep | ChoiceStep;
