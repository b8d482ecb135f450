import * as z from 'zod/mini';
import { CalculationError, describeLimits, invalidInput, isWithin, type NumberFieldMeta } from '../result/index.js';
import { angleKind, deviationKind, forceKind, hoursKind, lengthKind, pressureKind, rotationalSpeedKind, surfaceSpeedKind, temperatureDifferenceKind, temperatureKind, type Kind } from './internal/kind.js';
import { readQuantity } from './internal/read-quantity.js';
import { snapMm } from './snap.js';

/** A field that takes a number in its base unit or text as people write it, and gives the number. */
export type QuantityField = z.ZodMiniType<number, number | string>;

/** A length in mm, or text: `"3/4 in"`, `"19,05 mm"`. */
export const lengthField = fieldOf(lengthKind, snapMm);
/** A length in inches, or text: `"3/4"` is three quarters of an inch, `"19.05 mm"` as well. */
export const inchField = fieldFrom((written) => Math.round(((readQuantity(lengthKind, written, 'in').value * 5) / 127) * 1e9) / 1e9);
/** A deviation in µm, or text. */
export const deviationField = fieldOf(deviationKind);
/** A temperature in °C, or text. */
export const temperatureField = fieldOf(temperatureKind);
/** A temperature difference in K, or text. */
export const temperatureDifferenceField = fieldOf(temperatureDifferenceKind);
/** A rotational speed in rpm, or text. */
export const rotationalSpeedField = fieldOf(rotationalSpeedKind);
/** A surface speed in m/s, or text. */
export const surfaceSpeedField = fieldOf(surfaceSpeedKind);
/** A pressure in MPa, or text. */
export const pressureField = fieldOf(pressureKind);
/** A time in hours, or text. */
export const hoursField = fieldOf(hoursKind);
/** A force in N, or text. */
export const forceField = fieldOf(forceKind);
/** An angle in degrees, or text. */
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
