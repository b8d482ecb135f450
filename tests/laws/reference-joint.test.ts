import { expect, test } from 'vitest';
import { coolingAgents } from '../../packages/core/src/tables/generated/cooling-agents.js';
import { heatingLimits } from '../../packages/core/src/tables/generated/heating-limits.js';
import { materials } from '../../packages/core/src/tables/generated/materials.js';
import { pressFriction } from '../../packages/core/src/tables/generated/press-friction.js';
import { numberAt, rowsOf } from './internal/table-rows.js';

test('sliding on takes no more than breaking loose, oil no more than dry, and none is as slippery or as rough as metal never is', () => {
  const rows = rowsOf(pressFriction);
  for (const row of rows) {
    const release = numberAt(row, 'releaseCoefficient');
    expect(release).toBeGreaterThanOrEqual(0.03);
    expect(release).toBeLessThanOrEqual(0.2);
    if (row['slipCoefficient'] !== null) expect(numberAt(row, 'slipCoefficient')).toBeLessThanOrEqual(release);
    const dry = rows.find((candidate) => candidate['hub'] === row['hub'] && candidate['condition'] === 'dry');
    if (row['condition'] === 'oiled' && dry !== undefined) expect(release).toBeLessThanOrEqual(numberAt(dry, 'releaseCoefficient'));
  }
});

test('a heating limit names a material or a family that exists, and the bearing limit is that of its steel', () => {
  const ids = new Set([...materials.columns.id, ...materials.columns.class, 'sealed']);
  for (const row of rowsOf(heatingLimits)) {
    expect(ids).toContain(row['material']);
    expect(numberAt(row, 'lowC')).toBeLessThanOrEqual(numberAt(row, 'highC'));
  }
  const bearing = rowsOf(heatingLimits).find((row) => row['material'] === 'steel-100cr6');
  expect(bearing?.['highC']).toBe(materials.columns.maxServiceC[materials.columns.id.indexOf('steel-100cr6')]);
});

test('a freezer is the least cold, dry ice is colder, and nothing is colder than nitrogen boils', () => {
  const lows = rowsOf(coolingAgents).map((row) => numberAt(row, 'lowC'));
  expect(rowsOf(coolingAgents).map((row) => row['name'])).toEqual(['freezer', 'dry-ice', 'liquid-nitrogen']);
  expect(lows).toEqual([...lows].toSorted((a, b) => b - a));
  expect(Math.min(...lows)).toBeGreaterThanOrEqual(-196);
  expect(Math.max(...lows)).toBeLessThan(0);
});
