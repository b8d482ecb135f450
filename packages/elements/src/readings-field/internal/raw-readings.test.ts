import { describe, expect, it } from 'vitest';
import { rowsOf, setOf } from './raw-readings.js';

describe('readings between file and field', () => {
  it('leaves untouched readings as the file had them', () => {
    const set = { instrument: 'inside-micrometer-rod', valuesMm: [35.012, '35,015'] };
    expect(setOf(rowsOf(set), set.instrument, 'mm')).toEqual(set);
    const points = { instrument: 'inside-micrometer-rod', points: [{ valueMm: 35.012, angleDeg: '0', depthMm: '2' }] };
    expect(setOf(rowsOf(points), points.instrument, 'mm')).toEqual(points);
  });

  it('drops cleared readings, and the set with the last of them', () => {
    const rows = rowsOf({ instrument: 'x', valuesMm: [1, 2] });
    expect(setOf([{ ...rows[0]!, value: '', raw: undefined }, rows[1]!], 'x', 'mm')).toEqual({ instrument: 'x', valuesMm: [2] });
    expect(setOf([], 'x', 'mm')).toBeUndefined();
  });

  it('keeps a text that cannot be read, so that it can be mended', () => {
    expect(setOf([{ value: '35,o2', angle: '', depth: '' }], 'x', 'mm')).toEqual({ instrument: 'x', valuesMm: ['35,o2'] });
  });
});
