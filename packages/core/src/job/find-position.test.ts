import { expect, test } from 'vitest';
import { findPosition, positionsNamed } from './find-position.js';
import { readWorkshop } from './read-workshop-file.js';

const parts = [{ kind: 'bearing', designation: '6203' }];
const machine = (name: string, ...positions: readonly string[]) => ({ name, positions: positions.map((position) => ({ name: position, parts })) });
const { workshop } = readWorkshop({ format: 'seatwright', version: 1, machines: [machine('Pump 1', 'motor side', 'Motor side', 'far side'), machine('Pump 2', 'motor side'), machine('Winch', ' drum ', 'twin', 'twin')] });
const at = (position: string, of?: string) => findPosition(workshop, { position, machine: of }).path;

test('a name is found as it is written, else whatever its capitals and the spaces around it', () => {
  expect(at('Motor side')).toBe('machines[0].positions[1]');
  expect(at('motor side', 'Pump 1')).toBe('machines[0].positions[0]');
  expect(at('FAR SIDE')).toBe('machines[0].positions[2]');
  expect(at('drum', 'winch')).toBe('machines[2].positions[0]');
  expect(positionsNamed(workshop, { machine: ' pump 2' }).map(({ path }) => path)).toEqual(['machines[1].positions[0]']);
  expect(positionsNamed(workshop, {})).toHaveLength(7);
});

test('what is not told apart is named', () => {
  expect(() => at('motor side')).toThrow('position: several machines have "motor side"; name the machine too, one of "Pump 1", "Pump 2"');
  expect(() => at('MOTOR SIDE', 'Pump 1')).toThrow('position: "MOTOR SIDE" stands 2 times under "Pump 1"; give each a name of its own');
  expect(() => at('twin')).toThrow('position: "twin" stands 2 times under "Winch"; give each a name of its own');
  expect(() => at('near side')).toThrow(/no such position; there are "motor side"/u);
  expect(() => positionsNamed(workshop, { machine: 'Pump 3' })).toThrow(/no such machine; there are "Pump 1", "Pump 2", "Winch"/u);
  expect(() => findPosition(workshop, {})).toThrow(/the file has several/u);
});

test('a machine that has no position yet holds up no other, and is told where it is asked for', () => {
  const { workshop: half } = readWorkshop({ format: 'seatwright', version: 1, machines: [machine('New pump'), machine('Winch', 'drum')] });
  expect(findPosition(half, {}).path).toBe('machines[1].positions[0]');
  expect(() => positionsNamed(half, { machine: 'new pump' })).toThrow(/machine: there is no position in it/u);
  const { workshop: empty } = readWorkshop({ format: 'seatwright', version: 1, machines: [machine('New pump')] });
  expect(() => findPosition(empty, {})).toThrow(/machines: there is no position in it/u);
  expect(() => readWorkshop({ format: 'seatwright', version: 1, machines: [] })).toThrow(/machines: expected a list that is not empty/u);
});
