import { fault } from './fault.js';
import type { Kind } from './kind.js';
import { decimalRatio, plus, ratio, type Ratio } from './ratio.js';

/** A number that was read, and where reading ended. */
export interface ReadNumber {
  readonly value: Ratio;
  readonly end: number;
}

const vulgar: ReadonlyMap<string, Ratio> = new Map([
  ['½', ratio(1, 2)], ['⅓', ratio(1, 3)], ['⅔', ratio(2, 3)], ['¼', ratio(1, 4)], ['¾', ratio(3, 4)], ['⅕', ratio(1, 5)], ['⅖', ratio(2, 5)], ['⅗', ratio(3, 5)],
  ['⅘', ratio(4, 5)], ['⅙', ratio(1, 6)], ['⅚', ratio(5, 6)], ['⅛', ratio(1, 8)], ['⅜', ratio(3, 8)], ['⅝', ratio(5, 8)], ['⅞', ratio(7, 8)], ['⅒', ratio(1, 10)], ['⅑', ratio(1, 9)], ['⅐', ratio(1, 7)],
]);

const plainFraction = /^(\d+)[ ]?[/⁄][ ]?(\d+)/;
const mixedFraction = /^(\d+)(?: +|-)(\d+)[/⁄](\d+)/;
const decimal = /^(\d*)(?:([.,])(\d+))?/;

/** Whether a number can begin with this character. */
export function startsNumber(sign: string): boolean {
  return /[0-9.,]/.test(sign) || vulgar.has(sign);
}

/**
 * Reads one number: `19.05`, `19,05`, `.5`, `3/4`, `1 3/8`, `1-3/8`, `1⅜`, `⅜`.
 * Throws at the character that is not understood.
 */
export function readNumber(kind: Kind, text: string, start: number): ReadNumber {
  const rest = text.slice(start);
  const single = vulgar.get(rest.slice(0, 1));
  if (single !== undefined) return { value: single, end: start + 1 };
  const mixed = mixedFraction.exec(rest);
  if (mixed !== null) {
    const [all, whole = '0', top = '0', bottom = '1'] = mixed;
    const part = fraction(kind, text, start + all.length - bottom.length, top, bottom);
    // 25-3/8 is a mixed number only when its fraction is less than one.
    if (part.top < part.bottom) return finished(kind, text, { value: plus(ratio(BigInt(whole)), part), end: start + all.length });
  }
  const plain = plainFraction.exec(rest);
  if (plain !== null) {
    const [all, top = '0', bottom = '1'] = plain;
    return finished(kind, text, { value: fraction(kind, text, start + all.length - bottom.length, top, bottom), end: start + all.length });
  }
  const match = decimal.exec(rest);
  const [all = '', whole = '', mark, part = ''] = match ?? [];
  if (all === '' || (whole === '' && part === '')) throw fault(kind, text, start, 'a number is expected');
  let end = start + all.length;
  if (kind.isCount && mark !== undefined && part.length === 3) {
    const plainNumber = `${whole}${part}`;
    throw fault(kind, text, start + whole.length, `write ${plainNumber.replace(/^0+(?=\d)/, '')} or ${whole === '' ? '0' : whole}.${part.slice(0, 2)}: this mark may part thousands or decimals`);
  }
  let value = decimalRatio(`${whole}.${part}`);
  const tail = vulgar.get(text.slice(end, end + 1));
  if (tail !== undefined && mark === undefined) {
    value = plus(value, tail);
    end += 1;
  }
  return finished(kind, text, { value, end });
}

/** No second mark, no power of ten may follow a number. */
function finished(kind: Kind, text: string, number: ReadNumber): ReadNumber {
  const next = text.slice(number.end, number.end + 2);
  if (/^[.,]\d/.test(next)) throw fault(kind, text, number.end, 'a number has one decimal mark and no thousands marks;');
  if (/^[.,]/.test(next)) throw fault(kind, text, number.end, 'digits are expected after the mark;');
  if (/^[eE][0-9+-]/.test(next)) throw fault(kind, text, number.end, 'powers of ten are not read; write the number out;');
  return number;
}

function fraction(kind: Kind, text: string, at: number, top: string, bottom: string): Ratio {
  if (BigInt(bottom) === 0n) throw fault(kind, text, at, 'nothing can be divided by zero');
  return ratio(BigInt(top), BigInt(bottom));
}
