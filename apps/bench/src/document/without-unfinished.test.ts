import { expect, test } from 'vitest';
import { pathInFull, withoutUnfinished } from './without-unfinished.js';

const begun = { kind: 'tube' };
const tube = { name: 'offcut', kind: 'tube', outsideMm: 34.5, wallMm: 2 };
const position = { bore: { readings: [{ valuesMm: [35] }, { instrument: 'caliper', valuesMm: [35.1] }] }, shaft: { obstacles: [{ kind: 'thread' }, { kind: 'key', diameterMm: 22, fromMm: 4 }] } };
const file = { toolsAtHand: [begun, tube, begun, { ...tube, name: 'socket' }], machines: [{ positions: [position] }] };

test('what has only been begun is left out, and the rest moves up', () => {
  expect(withoutUnfinished(file)).toMatchObject({ toolsAtHand: [tube, { name: 'socket' }], machines: [{ positions: [{ bore: { readings: [{ instrument: 'caliper' }] }, shaft: { obstacles: [{ kind: 'key' }] } }] }] });
});

test('a path in what is left leads to the entry as the page numbers it', () => {
  expect(pathInFull(file, 'toolsAtHand[0].outsideMm')).toBe('toolsAtHand[1].outsideMm');
  expect(pathInFull(file, 'toolsAtHand[1].wallMm')).toBe('toolsAtHand[3].wallMm');
  expect(pathInFull(file, 'machines[0].positions[0].bore.readings[0].valuesMm[0]')).toBe('machines[0].positions[0].bore.readings[1].valuesMm[0]');
  expect(pathInFull(file, 'machines[0].positions[0].shaft.obstacles[0].fromMm')).toBe('machines[0].positions[0].shaft.obstacles[1].fromMm');
});

test('a path that names no such list stays as it is', () => {
  for (const path of ['', 'machine', 'machines[0].positions[0].parts[2].widthMm', 'toolsAtHand', 'toolsAtHand[9].name']) expect(pathInFull(file, path)).toBe(path);
});
