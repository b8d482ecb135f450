import { expect, test } from 'vitest';
import { placeAfter } from './places.js';
import type { JsonObject } from './raw-document.js';

const file = (machines: Readonly<Record<string, readonly string[]>>): JsonObject => ({
  machines: Object.entries(machines).map(([name, positions]) => ({ name, positions: positions.map((position) => ({ name: position })) })),
});
const before = file({ Pump: ['motor side', 'impeller side'], Winch: ['drum'] });
const impeller = { machine: 0, position: 1 };

test.each([
  ['nothing moved', { Pump: ['motor side', 'impeller side'], Winch: ['drum'] }, impeller],
  ['the machine before it is new', { Ramp: ['idler'], Pump: ['motor side', 'impeller side'] }, { machine: 1, position: 1 }],
  ['it changed places', { Pump: ['impeller side', 'motor side'] }, { machine: 0, position: 0 }],
  ['it was given another name', { Pump: ['motor side', 'wet side'] }, impeller],
  ['another is called the same', { Pump: ['impeller side', 'impeller side'] }, impeller],
  ['it is gone', { Pump: ['motor side'] }, undefined],
])('a position is found again: %s', (_, machines, expected) => {
  const found = placeAfter(before, impeller, file(machines));
  expect(found && { machine: found.machine, position: found.position }).toEqual(expected);
});
