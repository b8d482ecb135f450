import { afterAll, beforeAll, expect, test } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test.each([['light', 390], ['dark', 390], ['light', 1440]] as const)('the charts of a sheet tell themselves in words and as tables, in %s at %s px, and axe finds nothing', async (colorScheme, width) => {
  const { page, context, troubles } = await bench.open({ colorScheme, viewport: { width, height: 844 }, bypassCSP: true });
  await openSample(page, 'Outboard crankshaft');
  await page.getByText('Limits, heat and speed, drawn').click();
  await page.getByRole('img', { name: /^At 20 °C between/ }).waitFor();
  await expect.poll(() => page.getByRole('img', { name: /speed under the lip grows/ }).getAttribute('aria-label')).toContain('7800');
  for (const summary of await page.getByText('The chart as a table').all()) await summary.click();
  await page.getByRole('columnheader', { name: 'temperature of the housing' }).waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  expect(await faultsOf(page)).toEqual([]);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a chart follows what is typed', async () => {
  const { page, context } = await bench.open();
  await openSample(page, 'Outboard crankshaft');
  await page.getByText('Limits, heat and speed, drawn').click();
  const image = page.getByRole('img', { name: /speed under the lip grows/ });
  const before = await image.getAttribute('aria-label');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('3000');
  await page.waitForFunction((said) => document.querySelector('seat-lip-speed')?.shadowRoot?.querySelector('svg')?.getAttribute('aria-label') !== said, before);
  await expect.poll(() => image.getAttribute('aria-label')).toContain('3000');
  await context.close();
});

test('a part that cannot be fetched is said to be missing, and comes after the page was loaded anew', async () => {
  const { page, context } = await bench.open({ serviceWorkers: 'block' });
  await openSample(page, 'Outboard crankshaft');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('3100');
  await allKept(page);
  await context.route(/bench-charts/u, (route) => route.abort());
  await page.getByText('Limits, heat and speed, drawn').click();
  await page.getByText('It could not be loaded. Is the connection gone?').waitFor();
  await context.unroute(/bench-charts/u);
  await page.getByRole('button', { name: 'Load it anew' }).click();
  await page.getByText('Limits, heat and speed, drawn').click();
  await page.getByRole('img', { name: /speed under the lip grows/ }).waitFor();
  await unfold(page, 'How it runs');
  expect(await page.getByLabel('Highest shaft speed').inputValue()).toBe('3100');
  await context.close();
});
