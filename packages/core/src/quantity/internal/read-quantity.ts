import { invalidInput } from '../../result/index.js';
import { fault } from './fault.js';
import { allKinds, type Kind, type Unit } from './kind.js';
import { negated, plus, ratio, times, toNumber, type Ratio } from './ratio.js';
import { readNumber, startsNumber } from './read-number.js';

/** A quantity in its base unit, with what was written. */
export interface ReadQuantity {
  readonly value: number;
  readonly asWritten: string;
  readonly unit: string;
}

interface Term {
  readonly isNegative: boolean;
  readonly value: Ratio;
  readonly unit: Unit | null;
}

const longest = 80;
const minus = /[-−–]/;

/**
 * Reads what a person wrote as a quantity of one kind, exactly, rounding once at the end.
 * A term without a unit takes the next unit to its right, else the last to its left, else the default;
 * but a size before an allowance in µm or thou is in the default unit: `25 + 10 µm` is 25.01 mm.
 * @throws CalculationError invalid-input, pointing at the character
 */
export function readQuantity(kind: Kind, written: string | number, defaultUnit = kind.baseUnit): ReadQuantity {
  if (typeof written === 'number') return readPlain(kind, written, defaultUnit);
  if (written.length > longest) throw invalidInput('', written, `a ${kind.name}, such as ${kind.examples}`, `longer than ${longest} characters`);
  const text = written.replace(/[\u00a0\u2007\u2009\u202f\t]/g, ' ');
  const terms = readTerms(kind, text);
  const last = terms.findLast((term) => term.unit !== null)?.unit ?? unitOf(kind, defaultUnit);
  let total = ratio(0);
  let toTheRight: Unit | null = null;
  const [first] = terms;
  for (const term of [...terms].reverse()) {
    toTheRight = term.unit ?? toTheRight;
    const isSizeBeforeAllowance = term.unit === null && toTheRight !== null && kind.fineUnits?.includes(toTheRight.name) === true;
    const unit = isSizeBeforeAllowance ? unitOf(kind, defaultUnit) : (toTheRight ?? last);
    const inBase = times(term.value, unit.factor);
    total = plus(total, term.isNegative ? negated(inBase) : inBase);
    if (unit.offset !== undefined && term === first) total = plus(total, unit.offset);
  }
  const value = toNumber(total);
  if (kind.name === 'length' && last.name === 'mm' && terms.every(({ unit }) => unit === null) && /[/⁄¼½¾⅐-⅞]/u.test(text)) {
    throw fault(kind, text, 0, `write ${text.trim()} in or ${value} mm: a fraction without a unit may be inches`);
  }
  return { value, asWritten: written, unit: last.name };
}

function readTerms(kind: Kind, text: string): readonly Term[] {
  const terms: Term[] = [];
  let at = skipSpaces(text, 0);
  if (kind.name === 'length' && /[øØ⌀∅]/.test(text.slice(at, at + 1))) at = skipSpaces(text, at + 1);
  if (at >= text.length) throw fault(kind, text, at, 'nothing is written');
  let isNegative = false;
  if (minus.test(text.slice(at, at + 1)) || text[at] === '+') {
    isNegative = text[at] !== '+';
    at = skipSpaces(text, at + 1);
  }
  for (;;) {
    if (!startsNumber(text.slice(at, at + 1))) throw fault(kind, text, at, 'a number is expected');
    const number = readNumber(kind, text, at);
    const { unit, end } = readUnit(kind, text, number.end);
    terms.push({ isNegative, value: number.value, unit });
    at = skipSpaces(text, end);
    if (at >= text.length) return terms;
    const sign = text.slice(at, at + 1);
    // 1' 2 1/2": inches after feet need no plus.
    if (unit?.name === 'ft' && startsNumber(sign)) continue;
    if (sign !== '+' && !minus.test(sign)) throw fault(kind, text, at, unit === null ? unitFault(kind, text, at) : 'this is not understood');
    if (!kind.allowsSums) throw fault(kind, text, at, `a ${kind.name} is written as one number`);
    isNegative = sign !== '+';
    at = skipSpaces(text, at + 1);
  }
}

/** The longest spelling of a unit that stands here. */
function readUnit(kind: Kind, text: string, numberEnd: number): { readonly unit: Unit | null; readonly end: number } {
  const at = skipSpaces(text, numberEnd);
  let best = '';
  for (const spelling of kind.units.keys()) if (spelling.length > best.length && text.startsWith(spelling, at)) best = spelling;
  const end = at + best.length;
  if (best === '' || (/[A-Za-zµμ]$/.test(best) && /^[A-Za-zµμ0-9²]/.test(text.slice(end, end + 1)))) return { unit: null, end: numberEnd };
  return { unit: kind.units.get(best) ?? null, end };
}

function unitFault(kind: Kind, text: string, at: number): string {
  // With its digits: `mm2` is not a misplaced `mm`.
  const word = /^[^\s\d+]+[\d²]*/.exec(text.slice(at))?.[0] ?? text.slice(at, at + 1);
  const other = allKinds.find((candidate) => candidate.units.has(word));
  return other === undefined ? `"${word}" is not a unit of ${kind.name} (${kind.understood})` : `"${word}" is a unit of ${other.name}, not of ${kind.name} (${kind.understood})`;
}

function readPlain(kind: Kind, value: number, defaultUnit: string): ReadQuantity {
  if (!Number.isFinite(value)) throw invalidInput('', value, `a ${kind.name}, such as ${kind.examples}`, 'not a number');
  const unit = unitOf(kind, defaultUnit);
  // Only lengths are read in another unit than their base, and those have no offset.
  const { top, bottom } = unit.factor;
  if (top === bottom) return { value: value === 0 ? 0 : value, asWritten: String(value), unit: unit.name };
  return { value: Math.round(((value * Number(top)) / Number(bottom)) * 1e9) / 1e9, asWritten: String(value), unit: unit.name };
}

function unitOf(kind: Kind, name: string): Unit {
  const unit = kind.units.get(name);
  if (unit === undefined) throw invalidInput('', name, kind.understood, `unknown unit of ${kind.name}`);
  return unit;
}

function skipSpaces(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ') at += 1;
  return at;
}
