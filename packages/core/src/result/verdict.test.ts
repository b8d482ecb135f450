import { expect, test } from 'vitest';
import { deciding, supporting } from './finding.js';
import { commonPractice } from './source-reference.js';
import { verdictOf, worseVerdict } from './verdict.js';

const good = deciding('a', 'good', {}, commonPractice);

test('no findings, no objection', () => expect(verdictOf([])).toBe('suits'));
test('one deciding bad finding outweighs everything', () => expect(verdictOf([good, deciding('b', 'bad', {}, commonPractice), deciding('c', 'unknown', {}, commonPractice)])).toBe('does not suit'));
test('a missing deciding reading is worse than care', () => expect(verdictOf([deciding('b', 'care', {}, commonPractice), deciding('c', 'unknown', {}, commonPractice)])).toBe('cannot tell'));
test('supporting findings never do worse than care', () => {
  expect(verdictOf([good, supporting('b', 'bad', {}, commonPractice)])).toBe('suits with care');
  expect(verdictOf([good, supporting('b', 'unknown', {}, commonPractice)])).toBe('suits with care');
  expect(verdictOf([good, supporting('b', 'note', {}, commonPractice)])).toBe('suits');
});
test('the worse of two verdicts', () => expect(worseVerdict('cannot tell', 'suits with care')).toBe('cannot tell'));
