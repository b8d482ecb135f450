import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, openSample, verdictOf } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test('another seal stands beside that of the sheet with the same rows, what differs is marked, and it can be taken and taken back', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Outboard crankshaft');
  const before = await verdictOf(page);
  await page.getByText('Another seal beside it').click();
  await expect.poll(() => page.locator('table.beside').count()).toBe(0);
  await page.locator('bench-beside').getByRole('radio', { name: 'rubber-covered', exact: true }).check();
  const table = page.locator('table.beside');
  await table.waitFor();
  await expect.poll(() => table.getByRole('row', { name: /Outside of the seal/ }).innerText()).toMatch(/≠[\s\S]*metal case[\s\S]*rubber-covered/);
  await expect.poll(() => table.getByRole('row', { name: /^Size/ }).innerText()).not.toContain('≠');
  await page.getByRole('button', { name: 'Take the other' }).click();
  await table.waitFor({ state: 'detached' });
  await expect.poll(() => page.locator('seat-choice-field[data-key="seal.construction"]').evaluate((field) => (field as unknown as { value: string }).value)).toBe('rubber-covered');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => verdictOf(page)).toBe(before);
  expect(troubles).toEqual([]);
  await context.close();
});

test('an entry that cannot be judged is said in words', async () => {
  const { page, context } = await bench.open();
  await openSample(page, 'Bilge pump');
  await page.getByText('Another seal beside it').click();
  await page.getByLabel('Outside diameter of the other').fill('-3');
  await page.locator('bench-beside [role=alert]').getByText(/outsideMm: expected over 0/).waitFor();
  await context.close();
});

test.each([['light', 390], ['dark', 390], ['light', 820]] as const)('axe finds nothing in the comparison, in %s at %s px, and nothing hangs over', async (colorScheme, width) => {
  const { page, context } = await bench.open({ colorScheme, viewport: { width, height: 844 }, bypassCSP: true });
  await openSample(page, 'Bilge pump');
  await page.getByText('Another seal beside it').click();
  await page.getByLabel('Width of the other').fill('10');
  await page.locator('table.beside').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  await context.close();
});
