// Bare loops that do the arithmetic of a calculation and nothing else: what the objects, checks and notes of an answer are measured against.
import { ringStack } from '@seatwright/core/joint';
import { fitDistribution } from '@seatwright/core/measure';
import { iso2861ShaftDeviations } from '@seatwright/core/tables';
import { fit, toleranceZone } from '@seatwright/core/tolerance';

/** The bare loop of a fit: the size step by search, the limits of both classes from typed arrays, sizes, clearances, interferences. */
const rowCount = 500;
const { overMm, upToMm } = iso2861ShaftDeviations.columns;
const ends = Float64Array.from(upToMm);
const limits = { hole: new Float64Array(2 * ends.length), shaft: new Float64Array(2 * ends.length) };
for (let step = 0; step < ends.length; step += 1) {
  const { holeZone, shaftZone } = fit.compute({ nominalMm: (overMm[step] + upToMm[step]) / 2, hole: 'H7', shaft: 'p6' });
  limits.hole.set([holeZone.lowerLimitDeviationUm, holeZone.upperLimitDeviationUm], 2 * step);
  limits.shaft.set([shaftZone.lowerLimitDeviationUm, shaftZone.upperLimitDeviationUm], 2 * step);
}
const out = new Float64Array(9);

/** The size step of a nominal size, by halving. */
function stepOf(nominalMm) {
  let [low, high] = [0, ends.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (nominalMm <= ends[middle]) high = middle;
    else low = middle + 1;
  }
  return low;
}

export function bareFits(count) {
  let sum = 0;
  for (let n = 0; n < count; n += 1) {
    const nominalMm = 1 + (n % rowCount);
    const low = stepOf(nominalMm);
    const nominalNm = Math.round(nominalMm * 1e6);
    const [holeLower, holeUpper, shaftLower, shaftUpper] = [limits.hole[2 * low], limits.hole[2 * low + 1], limits.shaft[2 * low], limits.shaft[2 * low + 1]];
    const most = Math.round((holeUpper - shaftLower) * 1e6) / 1e6;
    const least = Math.round((holeLower - shaftUpper) * 1e6) / 1e6;
    out[0] = Math.max(0, most);
    out[1] = Math.max(0, least);
    out[2] = Math.max(0, -least);
    out[3] = Math.max(0, -most);
    out[4] = Math.round((holeUpper - holeLower + shaftUpper - shaftLower) * 1e6) / 1e6;
    out[5] = (nominalNm + Math.round(holeUpper * 1000)) / 1e6;
    out[6] = (nominalNm + Math.round(holeLower * 1000)) / 1e6;
    out[7] = (nominalNm + Math.round(shaftUpper * 1000)) / 1e6;
    out[8] = (nominalNm + Math.round(shaftLower * 1000)) / 1e6;
    sum += out[2] + out[n % 9];
  }
  return sum;
}
export function libraryFits(count) {
  let sum = 0;
  for (let n = 0; n < count; n += 1) sum += fit.compute({ nominalMm: 1 + (n % rowCount), hole: 'H7', shaft: 'p6' }).maximumInterferenceUm;
  return sum;
}

/** The bare loop of a pick: xoshiro128** written out, two uniform sizes, their difference into a typed array, then sorted as the library does. */
export function bareDraws(count) {
  let [a, b, c, d] = [1, 2, 3, 4];
  const next = () => {
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return ((result >>> 0) + 0.5) / 4294967296;
  };
  const values = new Float64Array(count);
  let sum = 0;
  let loose = 0;
  let tight = 0;
  let over = 0;
  for (let n = 0; n < count; n += 1) {
    const clearance = 21 * next() - (2 + 13 * next());
    values[n] = clearance;
    sum += clearance;
    if (clearance > 0) loose += 1;
    if (clearance < 0) tight += 1;
    if (-clearance > 8) over += 1;
  }
  const mean = sum / count;
  let squares = 0;
  for (let n = 0; n < count; n += 1) squares += (values[n] - mean) ** 2;
  values.sort();
  return squares + loose + tight + over + values[count >> 1];
}
export const draw = (spread) => (count) =>
  fitDistribution.compute({ nominalMm: 25, hole: { toleranceClass: 'H7', spread }, shaft: { toleranceClass: 'k6', spread }, interferenceOverUm: 8, drawCount: count, curvePointCount: 2, quantilesAtProbability: [0.5] }).simulated.meanClearanceUm;

const rings = Array.from({ length: 8 }, (_, k) => ({ insideMm: 20 + 10 * k, outsideMm: 30 + 10 * k, material: k % 2 === 0 ? 'steel-c45' : 'al-a380', temperatureC: 20 + k }));
const interferencesUm = [20, -5, 30, 10, 0, 25, 15];
export const stacks = (count) => {
  let sum = 0;
  for (let n = 0; n < count; n += 1) sum += ringStack.compute({ rings, interferencesUm }).joints[0].contactPressureMpa;
  return sum;
};

/** The bare loop of a tolerance zone: the size step by search, two limits from a typed array. */
export function bareZones(count) {
  let sum = 0;
  for (let n = 0; n < count; n += 1) {
    const nominalMm = 1 + (n % rowCount);
    const low = stepOf(nominalMm);
    out[0] = limits.hole[2 * low];
    out[1] = limits.hole[2 * low + 1];
    sum += out[n & 1];
  }
  return sum;
}
export function libraryZones(count) {
  let sum = 0;
  for (let n = 0; n < count; n += 1) sum += toleranceZone.compute({ nominalMm: 1 + (n % rowCount), toleranceClass: 'H7' }).upperLimitDeviationUm;
  return sum;
}
