import fc from 'fast-check';
import { expect, test } from 'vitest';
import { calculations } from '@seatwright/core/registry';
import { answerLine } from './answer-line.js';

const names = calculations.map(({ name }) => name);

/** Anything a stream may hold: noise, JSON of any shape, and requests that are nearly right. */
const garbage = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.json(),
  fc.record({ calc: fc.oneof(fc.constantFrom(...names), fc.string()), input: fc.anything(), id: fc.jsonValue(), explain: fc.boolean() }).map((request) => JSON.stringify(request)),
  fc
    .record({ calc: fc.constantFrom('tolerance-zone', 'lip-speed', 'fit'), nominalMm: fc.oneof(fc.double(), fc.string()), text: fc.string() })
    .map(({ calc, nominalMm, text }) => JSON.stringify({ calc, input: { nominalMm, toleranceClass: text, hole: text, shaft: text, shaftDiameterMm: nominalMm, speedRpm: nominalMm } })),
);

test('whatever a line holds, one line of JSON comes back: an answer, or an error that names its line', () => {
  fc.assert(
    fc.property(garbage, fc.integer({ min: 1, max: 1e6 }), (text, line) => {
      const { answer, ok } = answerLine(text, line);
      expect(answer).not.toMatch(/[\n\r]/);
      const told = JSON.parse(answer) as { ok: boolean; line?: number; error?: { code: string; message: string } };
      expect(told.ok).toBe(ok);
      if (ok) return;
      expect(told.line).toBe(line);
      expect(told.error?.code).not.toBe('internal');
      expect(told.error?.message).not.toBe('');
      expect(answer.length).toBeLessThan(6000 + text.length * 8);
    }),
    { numRuns: process.env['CI'] === undefined ? 500 : 5000 },
  );
});

test('a line too long to keep is told as such', () => {
  expect(JSON.parse(answerLine(null, 7).answer)).toMatchObject({ ok: false, line: 7, error: { code: 'invalid-input', message: expect.stringMatching(/longer than 16 MiB/) as string } });
});
