import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { lengthAsTyped } from '@seatwright/core/quantity';
import { TypedField, type FieldReading } from '../internal/typed-field.js';
import { understandLength, type Understood } from '../internal/understand-length.js';

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

  protected override get keys(): readonly (readonly [string, string, string])[] {
    const { half, inch } = this.words.field;
    return [['⁄', '/', half], ['␣', ' ', this.words.field.space], ['in', ' in', inch], ['mm', ' mm', 'mm'], ['+', ' + ', '+']];
  }

  protected override understand(text: string): Understood {
    return understandLength(text, this.defaultUnit, this.decimalMark);
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('defaultUnit') && this.hasUpdated) this.showStored();
    super.willUpdate(changed);
  }

  protected override textOf(stored: number | string | undefined): string {
    return stored === undefined ? '' : lengthAsTyped(stored, this.defaultUnit, this.decimalMark);
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

declare global {
  interface HTMLElementTagNameMap {
    'seat-length-field': SeatLengthField;
  }
}
