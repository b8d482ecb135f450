import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bearingPractice } from '../../packages/core/src/tables/generated/bearing-practice.js';
import { handworkPractice } from '../../packages/core/src/tables/generated/handwork-practice.js';
import { sealLimits } from '../../packages/core/src/tables/generated/seal-limits.js';
import { rowsOf } from './internal/table-rows.js';

const rooms = new URL('../../packages/core/src/', import.meta.url);
const text = (room: string) =>
  readdirSync(new URL(`${room}/`, rooms), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts'))
    .map((path) => readFileSync(new URL(`${room}/${path}`, rooms), 'utf8'))
    .join('\n');

test.each([
  ['seal', 'sealLimit', sealLimits],
  ['bearing', 'practiceValue', bearingPractice],
  ['handwork', 'practiceValue', handworkPractice],
] as const)('the %s room uses each single value of its table, and none that is not there', (room, reader, table) => {
  const quoted = [...text(room).matchAll(new RegExp(`${reader}\\(([^)]*)\\)`, 'g'))].flatMap(([, inside = '']) => [...inside.matchAll(/'([a-z-]{4,})'/g)].map(([, name = '']) => name));
  expect([...new Set(quoted)].toSorted()).toEqual([...table.columns.name].toSorted());
});

test.each([[sealLimits], [bearingPractice], [handworkPractice]])('spans run from low to high, and each row gives at least one number', (table) => {
  for (const row of rowsOf(table)) {
    const numbers = Object.entries(row).filter(([, cell]) => typeof cell === 'number');
    expect(numbers.length).toBeGreaterThan(0);
    for (const [column, low] of numbers) {
      const high = row[column.replace(/^low/, 'high')];
      if (column.startsWith('low') && typeof high === 'number') expect(Number(low)).toBeLessThan(high);
    }
  }
});
