import { afterAll, beforeAll, expect, test } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test('the first screen tells what is due of each position of each kept sheet, and in how many hours', async () => {
  const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
  await openSample(page, 'Outboard crankshaft');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('7000');
  await allKept(page);
  await page.getByRole('button', { name: /Sheets$/ }).click();
  await expect.poll(async () => (await page.locator('.kept .due').allInnerTexts()).map((text) => text.replaceAll('\u00a0', ' '))).toEqual(['overdue by 4 h', 'overdue by 4 h']);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(troubles).toEqual([]);
  await context.close();
});
