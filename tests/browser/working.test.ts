import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, openSample } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test('a number of the working can be tried: what follows is told apart from the job, and one tap brings the job back', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Outboard crankshaft');
  await page.getByText('Show the working').click();
  const working = page.locator('seat-working');
  const step = working.locator('li', { hasText: 'peripheral speed' }).first();
  await step.locator('mfrac').first().waitFor({ state: 'attached' });
  await step.getByText('Try other numbers').click();
  await step.getByLabel('Try other numbers: n').fill('3900');
  await step.getByLabel('Try other numbers: n').blur();
  await step.getByText('with the numbers tried:').waitFor();
  await working.getByText('Numbers are tried: they are not the job’s.').waitFor();
  await working.getByRole('button', { name: 'Back to the job’s own' }).click();
  await expect.poll(() => working.locator('.tried').count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});

test('the working is copied as text with every digit', async () => {
  const { page, context } = await bench.open({ permissions: ['clipboard-read', 'clipboard-write'] });
  await openSample(page, 'Bilge pump');
  await page.getByText('Show the working').click();
  await page.getByRole('button', { name: 'Copy the working' }).click();
  await page.getByRole('button', { name: 'Copied' }).waitFor();
  const text = await page.evaluate(() => navigator.clipboard.readText());
  expect(text).toMatch(/ = pi \* d \* n \/ 60000\n {2}d = [\d.]+, n = \d+/);
  await context.close();
});

test.each(['light', 'dark'] as const)('axe finds nothing in the working, in %s at 390 px, and nothing hangs over', async (colorScheme) => {
  const { page, context } = await bench.open({ colorScheme, viewport: { width: 390, height: 844 }, bypassCSP: true });
  await openSample(page, 'Outboard crankshaft');
  await page.getByText('Show the working').click();
  await page.locator('seat-working').getByText('Try other numbers').first().click();
  expect(await faultsOf(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await context.close();
});
