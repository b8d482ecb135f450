import { expect, test } from 'vitest';
import { isOwnOfSeal, sealStillThere, withoutPart, withSeal } from './change-parts.js';
import type { Json, JsonObject } from './raw-document.js';

const place = { machine: 0, position: 0 };
const fileOf = (position: JsonObject): JsonObject => ({ format: 'seatwright', version: 1, machines: [{ name: 'leg', positions: [{ name: 'shaft', ...position }] }] });
const positionOf = (file: JsonObject) => (file as { machines: { positions: Record<string, Json>[] }[] }).machines[0]?.positions[0];

const seal = { kind: 'seal', shaftMm: '35', outsideMm: 52, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', hasDustLip: true, marking: 'x' };

test('what only one seal can have goes from the position to the first one', () => {
  const { file, sealPart } = withSeal(fileOf({ seat: { kind: 'shoulder' }, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 4, oldDepthMm: [2], running: { speedRpm: 900, fluid: 'gear-oil', fluidTemperatureC: 70 }, retainedBy: 'circlip', parts: [{ kind: 'bearing' }, seal] }), place, 'seal {number}');
  expect(sealPart).toBe(2);
  expect(positionOf(file)).toEqual({
    name: 'shaft', retainedBy: 'circlip', running: { speedRpm: 900 },
    parts: [
      { kind: 'bearing' },
      { ...seal, name: 'seal 1', seat: { kind: 'shoulder' }, lipFacing: 'inward', fluidSide: 'inside', clearBehindMm: 4, oldDepthMm: [2], running: { fluid: 'gear-oil', fluidTemperatureC: 70 } },
      { kind: 'seal', name: 'seal 2', shaftMm: '35', outsideMm: 52, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', seat: { kind: 'flush' } },
    ],
  });
});

test('a first seal keeps its own name and its own seat; a flush one leaves the place of the second open', () => {
  const { file } = withSeal(fileOf({ seat: { kind: 'shoulder' }, parts: [{ ...seal, name: 'oil', seat: { kind: 'flush' } }] }), place, 'seal {number}');
  expect(positionOf(file)?.['parts']).toEqual([{ ...seal, name: 'oil', seat: { kind: 'flush' } }, { kind: 'seal', name: 'seal 2', shaftMm: '35', outsideMm: 52, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }]);
  expect(positionOf(file)?.['seat']).toBeUndefined();
  // A third one moves nothing any more.
  const third = withSeal(fileOf({ lipFacing: 'inward', parts: [seal, seal] }), place, 'seal {number}');
  expect(positionOf(third.file)).toMatchObject({ lipFacing: 'inward' });
  expect((positionOf(third.file)?.['parts'] as JsonObject[])[2]?.['name']).toBe('seal 3');
});

test('beside a bearing alone it begins empty', () => {
  expect(withSeal(fileOf({ lipFacing: 'inward', parts: [{ kind: 'bearing' }] }), place, 'seal {number}')).toEqual({ file: fileOf({ lipFacing: 'inward', parts: [{ kind: 'bearing' }, { kind: 'seal' }] }), sealPart: 1 });
});

test('a part goes, the last one stays', () => {
  const file = fileOf({ parts: [seal, { kind: 'bearing' }, seal] });
  expect(withoutPart(file, place, 0)).toEqual({ file: fileOf({ parts: [{ kind: 'bearing' }, seal] }), sealPart: 1 });
  expect(withoutPart(fileOf({ parts: [seal] }), place, 0)).toBeNull();
  expect([sealStillThere(file, place, 2), sealStillThere(file, place, 1), sealStillThere(fileOf({ parts: [{ kind: 'bearing' }] }), place, 3)]).toEqual([2, 0, 0]);
});

test('which entries each seal has by itself', () => {
  expect([['seat', 'kind'], ['running', 'fluid'], ['oldDepthMm', 0], ['running', 'speedRpm'], ['bore', 'depthMm'], ['running']].map(isOwnOfSeal)).toEqual([true, true, true, false, false, false]);
});
