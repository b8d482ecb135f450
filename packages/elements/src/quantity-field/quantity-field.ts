import { property } from 'lit/decorators.js';
import { parseAngle, parseForce, parseHours, parsePressure, parseRotationalSpeed, parseTemperature, writeNumber } from '@seatwright/core/quantity';
import { invalidInput } from '@seatwright/core/result';
import { styleOf, valueInStyle } from '@seatwright/core/wording';
import { TypedField, type FieldReading } from '../internal/typed-field.js';
import type { Understood } from '../internal/understand-length.js';

export type QuantityKind = 'temperature' | 'rotational-speed' | 'pressure' | 'hours' | 'angle' | 'force' | 'number';

/** A quantity was typed. `value` is in the base unit, null while the text is empty or not understood. */
export interface QuantityChange {
  readonly value: number | null;
  readonly asWritten: string;
  readonly stored: number | string | undefined;
}

const readers: Readonly<Record<Exclude<QuantityKind, 'number'>, { readonly unit: string; readonly name: string; readonly decimals: number; readonly read: (text: string) => number; readonly keys: readonly string[] }>> = {
  temperature: { unit: '°C', name: 'valueC', decimals: 1, read: (text) => parseTemperature(text).valueC, keys: ['−', '°C', '°F'] },
  'rotational-speed': { unit: 'rpm', name: 'valueRpm', decimals: 1, read: (text) => parseRotationalSpeed(text).valueRpm, keys: [] },
  pressure: { unit: 'MPa', name: 'valueMpa', decimals: 4, read: (text) => parsePressure(text).valueMpa, keys: ['−', 'bar', 'psi', 'kPa'] },
  hours: { unit: 'h', name: 'valueHours', decimals: 1, read: (text) => parseHours(text).valueHours, keys: [] },
  force: { unit: 'N', name: 'valueN', decimals: 1, read: (text) => parseForce(text).valueN, keys: ['kN'] },
  angle: { unit: '°', name: 'valueDeg', decimals: 3, read: (text) => parseAngle(text).valueDeg, keys: ['−'] },
};

/**
 * A temperature, speed, pressure, time, angle or plain number as people write it: `77 °F`, `3 psi`, `7800`.
 * @fires seat-change - at each keystroke; detail `{ value, asWritten, stored }`
 */
export class SeatQuantityField extends TypedField {
  /** What is entered. */
  @property() quantity: QuantityKind = 'number';
  /** Unit of a plain number, shown behind it. */
  @property() unit = '';
  /** In which units a quantity is told that was written in another one: those of inch shops, or metric ones. */
  @property({ attribute: 'length-unit' }) lengthUnit: 'mm' | 'in' = 'mm';

  protected override get keys(): readonly (readonly [string, string, string])[] {
    const typed = this.quantity === 'number' ? [] : readers[this.quantity].keys;
    return typed.map((key) => [key, key === '−' ? '-' : ` ${key}`, key]);
  }

  protected override understand(text: string): Understood {
    const isPlain = /^\s*[-−]?\d+([.,]\d+)?\s*$/u.test(text);
    if (this.quantity === 'number') {
      if (!isPlain) throw invalidInput('', text, 'a number, such as 0.4', 'a plain number is expected, such as 0.4');
      const value = Number(text.trim().replace('−', '-').replace(',', '.'));
      return { value, stored: value, shown: this.catalogue.units[this.unit] ?? this.unit };
    }
    const { unit, name, decimals, read } = readers[this.quantity];
    const value = read(text);
    const style = { ...styleOf(this.catalogue, this.lengthUnit), decimalMark: this.decimalMark };
    const told = valueInStyle(name, value, style);
    const written = `= ${trimmed(writeNumber(told.value, decimals, this.decimalMark))}${unit === '°' ? '' : '\u00a0'}${told.unit}`;
    const base = valueInStyle(name, value, { ...style, lengthUnit: 'mm' }).unit;
    return { value, stored: text.trim(), shown: !isPlain ? written : told.unit === base ? base : `${base} ${written}` };
  }

  protected override announce(reading: FieldReading, stored: number | string | undefined): void {
    const detail: QuantityChange = {
      value: reading.kind === 'understood' ? reading.understood.value : null,
      asWritten: this.value,
      stored,
    };
    this.dispatchEvent(new CustomEvent('seat-change', { detail, bubbles: true, composed: true }));
  }
}

function trimmed(written: string): string {
  return /[.,]/u.test(written) ? written.replace(/[.,]?0+$/u, '') : written;
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-quantity-field': SeatQuantityField;
  }
}
