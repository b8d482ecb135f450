import * as z from 'zod/mini';
import { materialField, partMaterialField } from '../../material/index.js';
import { deviationField, lengthField, rotationalSpeedField, temperatureField } from '../../quantity/index.js';
import { choiceField, numberField } from '../../result/index.js';

/** The fields of a joint of two cylinders, shared by what computes with one. */
export const jointShape = {
  jointDiameterMm: lengthField({ label: 'diameter of the joint', unit: 'mm', over: 0, upTo: 10_000 }),
  shaftBoreMm: lengthField({ label: 'bore through the shaft', unit: 'mm', from: 0, upTo: 10_000, help: '0: solid', typical: '0' }),
  hubOutsideMm: lengthField({ label: 'outside of the hub', unit: 'mm', over: 0, upTo: 100_000 }),
  lengthMm: lengthField({ label: 'length of the joint', unit: 'mm', over: 0, upTo: 10_000 }),
  interferenceUm: deviationField({ label: 'interference on the diameter, at 20 °C', unit: 'µm', from: -100_000, upTo: 100_000, help: 'clearance: below zero' }),
  shaft: partMaterialField,
  hub: partMaterialField,
  frictionCoefficient: z.optional(numberField({ label: 'friction', unit: '', over: 0, upTo: 2 })),
  seatCondition: z.optional(choiceField(['dry', 'oiled'], { label: 'seat pressed dry or oiled' })),
  smoothingUm: z.optional(deviationField({ label: 'interference lost as the surfaces smooth', unit: 'µm', from: 0, upTo: 1000 })),
  smoothingRule: z.optional(
    choiceField(['din-7190-2001', 'din-7190-1-2017'], { label: 'rule for the loss by smoothing', help: 'din-7190-2001: 0.8 of both roughnesses; din-7190-1-2017: 0.4 of them' }),
  ),
  shaftRoughnessRzUm: z.optional(deviationField({ label: 'roughness Rz of the shaft', unit: 'µm', from: 0, upTo: 400 })),
  hubRoughnessRzUm: z.optional(deviationField({ label: 'roughness Rz of the hub', unit: 'µm', from: 0, upTo: 400 })),
  temperatureC: z.optional(temperatureField({ label: 'temperature of both parts', unit: '°C', from: -200, upTo: 1000, typical: '20' })),
  shaftTemperatureC: z.optional(temperatureField({ label: 'temperature of the shaft', unit: '°C', from: -200, upTo: 1000 })),
  hubTemperatureC: z.optional(temperatureField({ label: 'temperature of the hub', unit: '°C', from: -200, upTo: 1000 })),
  speedRpm: z.optional(rotationalSpeedField({ label: 'speed', unit: 'rpm', from: 0, upTo: 1_000_000 })),
  materials: z.optional(z.array(materialField).check(z.maxLength(200))),
};

export type JointInput = z.infer<z.ZodMiniObject<typeof jointShape>>;
