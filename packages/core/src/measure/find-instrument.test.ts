import { expect, test } from 'vitest';
import { refused } from '../../../../tests/laws/internal/refused.js';
import { findInstrument, instrumentCatalogue } from './find-instrument.js';

const own = [
  { id: 'dial', measures: 'outside', resolutionMm: 0.01, permissibleErrorMm: 0.02 },
  { id: 'dial', name: 'Dial bore gauge', measures: 'inside', resolutionMm: 0.001, permissibleErrorMm: 0.004 },
  { id: 'old', name: 'Old calliper', measures: 'outside', resolutionMm: 0.05, permissibleErrorMm: 0.1 },
] as const;

test('an own instrument comes first, the one that measures this way among two of one id', () => {
  expect(findInstrument('dial', 'inside', 35, own)).toMatchObject({ id: 'dial', name: 'Dial bore gauge', measures: 'inside', permissibleErrorMm: 0.004, source: { held: 'practice' } });
  expect(findInstrument('dial', 'outside', 35, own)).toMatchObject({ name: 'dial', measures: 'outside', permissibleErrorMm: 0.02 });
  expect(findInstrument('old', 'outside', 35, own)).toMatchObject({ name: 'Old calliper', resolutionMm: 0.05 });
  expect(findInstrument('outside-micrometer', 'outside', 20, own)).toMatchObject({ id: 'outside-micrometer', measures: 'outside' });
});

test('an instrument for something else is refused, own or listed', () => {
  expect(refused(() => findInstrument('old', 'inside', 35, own))).toMatchObject({ code: 'invalid-input', path: 'instrument', received: 'old', allowed: 'an instrument that measures inside', message: expect.stringContaining('measures outside, not inside') as string });
  expect(refused(() => findInstrument('outside-micrometer', 'inside', 35))).toMatchObject({ code: 'invalid-input', allowed: 'an instrument that measures inside', message: expect.stringContaining('measures outside, not inside') as string });
});

test('an unknown instrument is refused with those known for this, each once, and with no other', () => {
  for (const measures of ['outside', 'inside', 'depth'] as const) {
    const known = [...new Set(instrumentCatalogue().flatMap((row) => (row.measures === measures ? [row.id] : [])))];
    expect(known.length).toBeGreaterThan(0);
    expect(refused(() => findInstrument('yardstick', measures, 35))).toMatchObject({ code: 'invalid-input', path: 'instrument', received: 'yardstick', allowed: `one of ${known.join(', ')}`, message: expect.stringContaining(`unknown instrument; known for this are ${known.join(', ')}`) as string });
  }
});

test('each row serves from over its lower end up to and including its upper end; beyond the last the whole reach is named', () => {
  for (const { id, measures, overMm, upToMm, permissibleErrorMm } of instrumentCatalogue()) {
    const rows = instrumentCatalogue().filter((row) => row.id === id && row.measures === measures);
    expect(findInstrument(id, measures, upToMm).permissibleErrorMm).toBe(permissibleErrorMm);
    expect(findInstrument(id, measures, overMm + 0.001).permissibleErrorMm).toBe(permissibleErrorMm);
    // A sum of decimal readings may pass the end by less than any reading tells.
    expect(findInstrument(id, measures, upToMm * (1 + 1e-15)).permissibleErrorMm).toBe(permissibleErrorMm);
    const [from, to] = [Math.min(...rows.map((row) => row.overMm)), Math.max(...rows.map((row) => row.upToMm))];
    for (const sizeMm of [to + 0.001, ...(from > 0 ? [from] : [])]) {
      expect(refused(() => findInstrument(id, measures, sizeMm))).toMatchObject({ code: 'outside-table', path: 'sizeMm', received: sizeMm, allowed: `over ${from}, up to and including ${to} mm` });
    }
  }
});
