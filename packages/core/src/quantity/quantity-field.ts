import * as z from 'zod/mini';
import { CalculationError, describeLimits, invalidInput, isWithin, type NumberFieldMeta } from '../result/index.js';
import { angleKind, deviationKind, forceKind, hoursKind, lengthKind, pressureKind, rotationalSpeedKind, surfaceSpeedKind, temperatureDifferenceKind, temperatureKind, type Kind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import { snapMm } from './snap.js';

/** A field that takes a number in its base unit or text as people write it, and gives the number. */
export type QuantityField = z.ZodMiniType<number, number | string>;

/**
 * A length in mm, or text: `"3/4 in"`, `"19,05 mm"`.
 * @example lengthField({ label: 'x', unit: 'mm' }).safeParse('3/4 in').data // 19.05
 */
export const lengthField = fieldOf(lengthKind, snapMm);
/**
 * A length in inches, or text: `"3/4"` is three quarters of an inch, `"19.05 mm"` as well.
 * @example inchField({ label: 'x', unit: 'in' }).safeParse('19.05 mm').data // 0.75
 */
export const inchField = fieldFrom((written) => Math.round(((readQuantity(lengthKind, written, 'in').value * 5) / 127) * 1e9) / 1e9);
/**
 * A deviation in µm, or text.
 * @example deviationField({ label: 'x', unit: 'µm' }).safeParse('1.5 thou').data // 38.1
 */
export const deviationField = fieldOf(deviationKind);
/**
 * A temperature in °C, or text.
 * @example temperatureField({ label: 'x', unit: '°C' }).safeParse('212 °F').data // 100
 */
export const temperatureField = fieldOf(temperatureKind);
/**
 * A temperature difference in K, or text.
 * @example temperatureDifferenceField({ label: 'x', unit: 'K' }).safeParse('90 °F').data // 50
 */
export const temperatureDifferenceField = fieldOf(temperatureDifferenceKind);
/**
 * A rotational speed in rpm, or text.
 * @example rotationalSpeedField({ label: 'x', unit: 'rpm' }).safeParse('7800').data // 7800
 */
export const rotationalSpeedField = fieldOf(rotationalSpeedKind);
/**
 * A surface speed in m/s, or text.
 * @example surfaceSpeedField({ label: 'x', unit: 'm/s' }).safeParse('600 ft/min').data // 3.048
 */
export const surfaceSpeedField = fieldOf(surfaceSpeedKind);
/**
 * A pressure in MPa, or text.
 * @example pressureField({ label: 'x', unit: 'MPa' }).safeParse('0.3 bar').data // 0.03
 */
export const pressureField = fieldOf(pressureKind);
/**
 * A time in hours, or text.
 * @example hoursField({ label: 'x', unit: 'h' }).safeParse('90 min').data // 1.5
 */
export const hoursField = fieldOf(hoursKind);
/**
 * A force in N, or text.
 * @example forceField({ label: 'x', unit: 'N' }).safeParse('4.5 kN').data // 4500
 */
export const forceField = fieldOf(forceKind);
/**
 * An angle in degrees, or text.
 * @example angleField({ label: 'x', unit: '°' }).safeParse('15°').data // 15
 */
export const angleField = fieldOf(angleKind);

function fieldOf(kind: Kind, settle: (value: number) => number = (value) => value): (meta: NumberFieldMeta) => QuantityField {
  return fieldFrom((written) => readQuantity(kind, written).value, settle);
}

function fieldFrom(read: (written: string) => number, settle: (value: number) => number = (value) => value): (meta: NumberFieldMeta) => QuantityField {
  return (meta) => {
    const { over, from, below, upTo, ...shown } = meta;
    const limits = { over, from, below, upTo, unit: meta.unit } as NumberFieldMeta;
    const schemaLimits = withoutGaps({ exclusiveMinimum: over, minimum: from, exclusiveMaximum: below, maximum: upTo });
    return z
      .pipe(
        z.union([z.number(), z.string()]),
        z.transform((written: number | string, context) => {
          try {
            const value = settle(typeof written === 'number' ? written : read(written));
            if (isWithin(value, limits)) return value;
            throw invalidInput('', written, describeLimits(limits));
          } catch (error) {
            if (!(error instanceof CalculationError)) throw error;
            context.issues.push({ code: 'custom', input: written, message: error.message, params: { error } });
            return z.NEVER;
          }
        }),
      )
      .check(z.meta({ ...shown, ...schemaLimits }));
  };
}

function withoutGaps(record: Readonly<Record<string, number | undefined>>): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(record).filter((entry): entry is [string, number] => entry[1] !== undefined));
}
