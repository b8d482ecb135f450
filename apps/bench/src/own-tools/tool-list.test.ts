import { expect, test } from 'vitest';
import { saysToolList } from '../sharing/marks.js';
import { toolListOf, toolsIn } from './tool-list.js';

const tools = [{ name: 'Offcut 35 x 3', kind: 'tube', outsideMm: '1 3/8 in', wallMm: 3 }, { kind: 'socket' }];

test('a list comes out of its file as it was typed, begun ones too', () => {
  const text = toolListOf(tools, '2026-03-02');
  expect(saysToolList(text)).toBe(true);
  expect(toolsIn(text)).toEqual({ tools });
  expect(toolsIn(`\uFEFF${text}`)).toEqual({ tools });
});

test('the tools of a workshop file are taken too', () => {
  expect(toolsIn(JSON.stringify({ format: 'seatwright', version: 1, toolsAtHand: tools, machines: [] }))).toEqual({ tools });
});

test('anything else gives nothing and says why', () => {
  const text = toolListOf(tools, '2026-03-02');
  for (const [broken, why] of [[text.slice(0, -40), /cut off/u], ['[]', /no list/u], ['{"format":"other"}', /no list/u], [text.replace('"version": 1', '"version": 2'), /newer/u], [toolListOf([], '2026-03-02'), /There are none/u], ['{"format":"seatwright-tools","version":1,"tools":["a"]}', /no list/u], [JSON.stringify({ format: 'seatwright-tools', version: 1, tools: Array.from({ length: 1001 }, () => ({})) }), /1000/u]] as const) {
    expect(toolsIn(broken)).toEqual({ fault: expect.stringMatching(why) as string });
  }
});
