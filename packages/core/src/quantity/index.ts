export { asTyped, lengthAsTyped } from './length-as-typed.js';
export { parseAngle, type Angle } from './parse-angle.js';
export { parseDeviation, type Deviation } from './parse-deviation.js';
export { parseForce, type Force } from './parse-force.js';
export { parseHours, type Hours } from './parse-hours.js';
export { parseLength, type Length, type LengthOptions } from './parse-length.js';
export { parsePressure, type Pressure } from './parse-pressure.js';
export { parseRotationalSpeed, type RotationalSpeed } from './parse-rotational-speed.js';
export { parseSurfaceSpeed, type SurfaceSpeed } from './parse-surface-speed.js';
export { parseTemperature, type Temperature } from './parse-temperature.js';
export { parseTemperatureDifference, type TemperatureDifference } from './parse-temperature-difference.js';
export {
  angleField,
  deviationField,
  forceField,
  hoursField,
  inchField,
  lengthField,
  pressureField,
  rotationalSpeedField,
  surfaceSpeedField,
  temperatureDifferenceField,
  temperatureField,
  type QuantityField,
} from './quantity-field.js';
export { snapMm } from './snap.js';
export { writeLength, type WriteLengthOptions } from './write-length.js';
export { fixedText, writeNumber, type DecimalMark } from './write-number.js';
export type { Written } from './written.js';
