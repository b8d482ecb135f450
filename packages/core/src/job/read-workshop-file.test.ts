import { expect, test } from 'vitest';
import { refused } from '../../../../tests/laws/internal/refused.js';
import { readWorkshop, readWorkshopFile } from './read-workshop-file.js';

const seal = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const file = (position: object) => ({ format: 'seatwright', version: 1, machines: [{ name: 'pump', positions: [{ name: 'a', parts: [seal], ...position }] }] });

test('unknown fields are listed by path and the rest is read', () => {
  const { unknownFields, workshop } = readWorkshop({ ...file({ colour: 'green', shaft: { diameterMm: 20, taste: 1 } }), owner: 'x' });
  expect([...unknownFields].sort()).toEqual(['machines[0].positions[0].colour', 'machines[0].positions[0].shaft.taste', 'owner']);
  expect(workshop.machines[0]?.positions[0]?.shaft?.diameterMm).toBe(20);
});

test('the value that was read is not changed', () => {
  const raw = file({ colour: 'green' });
  const before = JSON.stringify(raw);
  readWorkshop(raw);
  expect(JSON.stringify(raw)).toBe(before);
});

test('lengths may be text with a unit', () => {
  expect(readWorkshop(file({ shaft: { diameterMm: '3/4 in' } })).workshop.machines[0]?.positions[0]?.shaft?.diameterMm).toBe(19.05);
});

test('a wrong value names its path', () => {
  expect(refused(() => readWorkshop(file({ shaft: { diameterMm: -3 } })))).toMatchObject({ code: 'invalid-input', path: 'machines[0].positions[0].shaft.diameterMm' });
  expect(refused(() => readWorkshop(file({ bore: { diameterMm: '35 kg' } }))).path).toBe('machines[0].positions[0].bore.diameterMm');
  expect(refused(() => readWorkshop(file({ parts: [{ ...seal, construction: 'wood' }] }))).path).toBe('machines[0].positions[0].parts[0].construction');
});

test('files of a newer version, other formats and non-objects are refused', () => {
  expect(refused(() => readWorkshop({ ...file({}), version: 2 })).message).toMatch(/newer version/);
  expect(refused(() => readWorkshop({ ...file({}), format: 'other' })).path).toBe('format');
  for (const raw of [null, [], 3, 'x']) expect(refused(() => readWorkshop(raw)).code).toBe('invalid-input');
});

test('malformed JSON is placed by line and column', () => {
  expect(refused(() => readWorkshopFile('{\n  "format": "seatwright",\n  oops\n}')).message).toMatch(/line 3/);
  expect(refused(() => readWorkshopFile('')).message).toMatch(/empty/);
});

test('a byte order mark is passed over', () => {
  expect(readWorkshopFile(`﻿${JSON.stringify(file({}))}`).unknownFields).toEqual([]);
});

test('keys that reach for prototypes are unknown fields like any other', () => {
  const raw = JSON.parse(JSON.stringify(file({})).replace('"format"', '"__proto__":{"polluted":1},"format"')) as unknown;
  readWorkshop(raw);
  expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
});
