import { expect, test } from 'vitest';
import { withFirstPosition, withMachine, withoutMachine, withoutPosition, withPosition, withPositionsSwapped, withShaftRenamed } from './change-places.js';
import { outlineOf } from './outline.js';
import { placesIn } from './places.js';
import type { Json, JsonObject } from './raw-document.js';

const at = (name: string, more: JsonObject = {}): Json => ({ name, parts: [{ kind: 'seal' }], ...more });
const file: JsonObject = {
  format: 'seatwright',
  version: 1,
  machines: [
    { name: 'Bilge pump', hourMeterHours: 'half typed', positions: [at('motor side', { onShaft: 'pump shaft', running: { speedRpm: '1450 rp', fluid: 'water' } }), at('impeller side', { onShaft: 'pump shaft' })] },
    { name: 'Winch', positions: [at('drum')] },
  ],
};
const names = (document: JsonObject) => outlineOf(document).map(({ name, shafts }) => `${name}: ${shafts.map((shaft) => `${shaft.name}(${shaft.positions.map((position) => position.name).join(', ')})`).join(' ')}`);
const here = { machine: 0, position: 0 };

test('positions that name the same shaft stand on one line', () => {
  expect(names(file)).toEqual(['Bilge pump: pump shaft(motor side, impeller side)', 'Winch: (drum)']);
});

test('a position beside another sits on its shaft and turns as fast, as typed; one on another shaft knows nothing', () => {
  const beside = withPosition(file, here, 'new position');
  expect(beside.place).toEqual({ machine: 0, position: 1 });
  expect(names(beside.file)[0]).toBe('Bilge pump: pump shaft(motor side, new position, impeller side)');
  expect(beside.file).toMatchObject({ machines: [{ hourMeterHours: 'half typed', positions: [{}, { name: 'new position', onShaft: 'pump shaft', running: { speedRpm: '1450 rp' } }, {}] }, {}] });
  const other = withPosition(file, here, 'new position', 'gear shaft');
  expect(names(other.file)[0]).toBe('Bilge pump: pump shaft(motor side, impeller side) gear shaft(new position)');
});

test('positions change places on their shaft, and what is open stays open', () => {
  const there = { machine: 0, position: 1 };
  const swapped = withPositionsSwapped(file, here, there, here);
  expect(names(swapped.file)[0]).toBe('Bilge pump: pump shaft(impeller side, motor side)');
  expect(swapped.place).toEqual(there);
  expect(withPositionsSwapped(swapped.file, here, there, there)).toEqual({ file, place: here });
  expect(withPositionsSwapped(file, here, there, { machine: 1, position: 0 }).place).toEqual({ machine: 1, position: 0 });
  expect(withPositionsSwapped(file, here, { machine: 1, position: 0 }, here)).toEqual({ file, place: here });
});

test('a machine more stands last, and is looked at', () => {
  const more = withMachine(file, 'New machine', 'new position');
  expect(more.place).toEqual({ machine: 2, position: 0 });
  expect(names(more.file)[2]).toBe('New machine: (new position)');
});

test('what is looked at stays in sight when something else goes, and its neighbour when it goes itself', () => {
  expect(withoutPosition(file, here, { machine: 0, position: 1 })?.place).toEqual(here);
  expect(withoutPosition(file, { machine: 0, position: 1 }, { machine: 0, position: 1 })?.place).toEqual(here);
  expect(withoutPosition(file, { machine: 0, position: 1 }, here)?.place).toEqual(here);
  expect(withoutMachine(file, 0, { machine: 1, position: 0 })?.place).toEqual(here);
  expect(withoutMachine(file, 1, { machine: 1, position: 0 })?.place).toEqual(here);
});

test('the only position of a machine takes the machine along, and the last of all stays', () => {
  const one = withoutPosition(file, { machine: 1, position: 0 }, here);
  expect(names(one?.file ?? {})).toEqual(['Bilge pump: pump shaft(motor side, impeller side)']);
  expect(withoutMachine(one?.file ?? {}, 0, here)).toBeNull();
});

test('a shaft is renamed for all that sits on it', () => {
  expect(names(withShaftRenamed(file, 0, 'pump shaft', 'long shaft'))[0]).toBe('Bilge pump: long shaft(motor side, impeller side)');
  expect(names(withShaftRenamed(file, 0, 'pump shaft', ''))[0]).toBe('Bilge pump: (motor side, impeller side)');
});

test('a machine without a position gets its first one', () => {
  const half: JsonObject = { format: 'seatwright', version: 1, machines: [{ name: 'Winch', positions: [at('drum')] }, { name: 'New pump', positions: [] }] };
  const next = withFirstPosition(half, 1, 'new position');
  expect(next.place).toEqual({ machine: 1, position: 0 });
  expect(placesIn(next.file).map(({ positionName }) => positionName)).toEqual(['drum', 'new position']);
});
