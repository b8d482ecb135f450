import { describeLimits, type Limits } from './limits.js';

export type CalculationErrorCode = 'invalid-input' | 'outside-table' | 'no-such-class' | 'contradiction' | 'no-solution';

export interface CalculationErrorLine {
  readonly code: CalculationErrorCode;
  /** Path of the field, e.g. `bore.readings.valuesMm[2]`; empty when the whole input is meant. */
  readonly path: string;
  readonly message: string;
  readonly received: unknown;
  readonly allowed: string;
}

interface Details {
  readonly path?: string;
  readonly message: string;
  readonly received?: unknown;
  readonly allowed?: string;
}

/**
 * Input that cannot be computed. One class, a closed set of codes, and what a caller needs to mend it:
 * the path of the field, the value received, what is allowed.
 */
export class CalculationError extends Error {
  readonly code: CalculationErrorCode;
  readonly path: string;
  readonly received: unknown;
  readonly allowed: string;

  constructor(code: CalculationErrorCode, details: Details) {
    super(details.message);
    this.name = 'CalculationError';
    this.code = code;
    this.path = details.path ?? '';
    this.received = details.received ?? null;
    this.allowed = details.allowed ?? '';
  }

  /** The error as the command line writes it. */
  toJSON(): CalculationErrorLine {
    return { code: this.code, path: this.path, message: this.message, received: shortened(this.received), allowed: this.allowed };
  }

  /** The same error seen from further out: `path` goes in front. */
  within(outerPath: string): CalculationError {
    const path = joinPath(outerPath, this.path);
    const head = `${this.path === '' ? 'input' : this.path}: `;
    return new CalculationError(this.code, {
      path,
      message: this.message.startsWith(head) ? `${path === '' ? 'input' : path}: ${this.message.slice(head.length)}` : this.message,
      received: this.received,
      allowed: this.allowed,
    });
  }
}

/**
 * A field that cannot be understood or lies outside its permitted range.
 * @example invalidInput('speedRpm', -5, 'from 0').message // 'speedRpm: expected from 0, got -5'
 */
export function invalidInput(path: string, received: unknown, allowed: string, reason = `expected ${allowed}`): CalculationError {
  return new CalculationError('invalid-input', {
    path,
    received,
    allowed,
    message: `${path === '' ? 'input' : path}: ${reason}, got ${written(received)}`,
  });
}

/**
 * A size that the table does not reach. Nothing is extrapolated.
 * @example outsideTable('iso-286-1', 'nominalMm', 4000, { over: 0, upTo: 3150, unit: 'mm' }).code // 'outside-table'
 */
export function outsideTable(table: string, quantity: string, received: number, limits: Limits): CalculationError {
  const allowed = describeLimits(limits);
  return new CalculationError('outside-table', {
    path: quantity,
    received,
    allowed,
    message: `${quantity}: ${received} is outside ${table} (${allowed})`,
  });
}

/**
 * A tolerance class that the standard does not give for this size.
 * @example noSuchClass('hole', 'H99', ['H18'], 'no such grade').allowed // 'nearest: H18'
 */
export function noSuchClass(path: string, received: string, nearest: readonly string[], why: string, what = 'class'): CalculationError {
  const allowed = nearest.length > 0 ? `nearest: ${nearest.join(', ')}` : '';
  return new CalculationError('no-such-class', {
    path,
    received,
    allowed,
    message: `${path}: no ${what} ${written(received)}: ${why}${allowed === '' ? '' : `; ${allowed}`}`,
  });
}

/**
 * Two statements in the input that cannot both be true.
 * @example contradiction(['boreMm', 'outsideMm'], 'the bore is larger').message // 'boreMm and outsideMm: the bore is larger'
 */
export function contradiction(paths: readonly string[], why: string): CalculationError {
  return new CalculationError('contradiction', { path: paths[0] ?? '', received: [...paths], message: `${paths.join(' and ')}: ${why}` });
}

/**
 * The question has no answer in the permitted range.
 * @example noSolution('no fit holds when hot').code // 'no-solution'
 */
export function noSolution(why: string): CalculationError {
  return new CalculationError('no-solution', { message: why });
}

/**
 * `bore` + `readings[2]` = `bore.readings[2]`.
 * @internal
 */
export function joinPath(outer: string, inner: string): string {
  if (outer === '') return inner;
  if (inner === '') return outer;
  return inner.startsWith('[') ? `${outer}${inner}` : `${outer}.${inner}`;
}

/**
 * What `read` gives; an error of it is told from further out, under `path`.
 * @internal
 */
export function readWithin<T>(path: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    throw error instanceof CalculationError ? error.within(path) : error;
  }
}

function written(value: unknown): string {
  if (value === undefined || value === null) return 'nothing';
  const text = JSON.stringify(shortened(value)) ?? typeof value;
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}

function shortened(value: unknown): unknown {
  if (typeof value === 'string') return value.length > 120 ? `${value.slice(0, 117)}…` : value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : String(value);
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? `a list of ${value.length}` : 'an object';
  if (typeof value === 'boolean' || value === null || value === undefined) return value ?? null;
  return typeof value;
}
