import { property } from 'lit/decorators.js';
import { parseLength, writeLength } from '@seatwright/core/quantity';
import { TypedField, type FieldReading, type Understood } from '../internal/typed-field.js';

/** A length was typed. `valueMm` is null while the text is empty or not understood. */
export interface LengthChange {
  readonly valueMm: number | null;
  readonly asWritten: string;
  /** The text with its unit, so that it reads the same in a document; undefined when empty. */
  readonly stored: number | string | undefined;
}

/**
 * A length as people write it: `19.05`, `19,05 mm`, `3/4 in`, `1 3/8"`, `25 + 0.03`. Stays as typed; what was understood stands beside it.
 * @fires seat-change - at each keystroke; detail `{ valueMm, asWritten, stored }`
 */
export class SeatLengthField extends TypedField {
  /** Unit of a number without one. */
  @property({ attribute: 'default-unit' }) defaultUnit: 'mm' | 'in' = 'mm';
  @property({ attribute: 'decimal-mark' }) decimalMark: '.' | ',' = '.';

  protected override get keys(): readonly (readonly [string, string, string])[] {
    const { half, inch } = this.words.field;
    return [['⁄', '/', half], ['␣', ' ', this.words.field.space], ['in', ' in', inch], ['mm', ' mm', 'mm'], ['+', ' + ', '+']];
  }

  protected override understand(text: string): Understood {
    return understandLength(text, this.defaultUnit, this.decimalMark);
  }

  protected override textOf(stored: number | string | undefined): string {
    return typeof stored === 'number' && this.defaultUnit === 'in' ? `${stored} mm` : super.textOf(stored);
  }

  protected override announce(reading: FieldReading, stored: number | string | undefined): void {
    const detail: LengthChange = {
      valueMm: reading.kind === 'understood' ? reading.understood.value : null,
      asWritten: this.value,
      stored,
    };
    this.dispatchEvent(new CustomEvent('seat-change', { detail, bubbles: true, composed: true }));
  }
}

/**
 * What a length means and how to show it: the unit alone behind plain millimetres, the value where a unit or a fraction had to be read.
 * A number without a unit in an inch field is stored with its unit, since a document counts bare numbers as millimetres.
 */
export function understandLength(text: string, defaultUnit: 'mm' | 'in', decimalMark: '.' | ','): Understood {
  const { valueMm } = parseLength(text, { defaultUnit });
  const hasOwnUnit = defaultUnit === 'mm' || parseLength(text, { defaultUnit: 'mm' }).valueMm === valueMm;
  const short = (written: string) => written.replace(/([.,]\d*?)0+(?=\s)/u, '$1').replace(/[.,](?=\s)/u, '');
  const mm = short(writeLength(valueMm, { decimalMark }));
  const isPlain = defaultUnit === 'mm' && /^\s*\d+([.,]\d+)?\s*(mm)?\s*$/u.test(text);
  return { value: valueMm, stored: hasOwnUnit ? text.trim() : `${text.trim()} in`, shown: isPlain ? (text.includes('mm') ? '' : 'mm') : `= ${mm}` };
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-length-field': SeatLengthField;
  }
}
