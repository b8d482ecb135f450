import { expect, test } from 'vitest';
import { preferredToleranceClasses } from '../../packages/core/src/tables/generated/preferred-tolerance-classes.js';
import { toleranceZone } from '../../packages/core/src/tolerance/index.js';
import { rowsOf } from './internal/table-rows.js';

const rows = rowsOf(preferredToleranceClasses);

test('every preferred class exists where most letters do, and is named once', () => {
  const names = rows.map((row) => String(row['toleranceClass']));
  expect(new Set(names).size).toBe(names.length);
  for (const toleranceClass of names) expect(toleranceZone.run({ nominalMm: 50, toleranceClass }).standardToleranceUm).toBeGreaterThan(0);
});

test('first choices of holes and shafts pair letter by letter', () => {
  const letters = (pattern: RegExp) =>
    new Set(rows.filter((row) => row['preference'] === 'first' && pattern.test(String(row['toleranceClass']))).map((row) => String(row['toleranceClass']).replace(/\d+/, '').toLowerCase()));
  expect(letters(/^[A-Z]/)).toEqual(letters(/^[a-z]/));
});
