import { expect, test } from 'vitest';
import { History } from './history.js';

const state = (n: number) => ({ n });

test('goes back and forth through the states, and a new change forgets what was taken back', () => {
  const history = new History<{ readonly n: number }>();
  history.note(state(0), ['a']);
  history.note(state(1), ['b']);
  expect(history.undo(state(2))).toEqual(state(1));
  expect(history.undo(state(1))).toEqual(state(0));
  expect(history.canUndo).toBe(false);
  expect(history.undo(state(0))).toEqual(state(0));
  expect(history.redo(state(0))).toEqual(state(1));
  history.note(state(1), ['c']);
  expect(history.canRedo).toBe(false);
});

test('typing on in one field is one change', () => {
  const history = new History<{ readonly n: number }>();
  history.note(state(0), ['speed']);
  history.note(state(1), ['speed']);
  history.note(state(2), ['speed']);
  expect(history.undo(state(3))).toEqual(state(0));
});

test('a change of the whole is never one with another', () => {
  const history = new History<{ readonly n: number }>();
  history.note(state(0), []);
  history.note(state(1), []);
  expect(history.undo(state(2))).toEqual(state(1));
});
