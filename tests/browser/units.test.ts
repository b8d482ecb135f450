import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, openSample, unfold, verdictOf } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test('one tap shows everything in inches and back; what was typed stays as it was typed, and means the same', async () => {
  const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
  await openSample(page, 'Outboard crankshaft');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('6000');
  const decide = page.locator('#decide');
  await decide.getByText(/6\.28\sm\/s/u).first().waitFor();
  const verdict = await verdictOf(page);
  const metric = await decide.innerText();
  expect(metric).toMatch(/m\/s/);
  await page.getByRole('button', { name: 'Show in inches' }).click();
  await decide.getByText(/ft\/min/).first().waitFor();
  const inch = await decide.innerText();
  expect(inch).toMatch(/°F/);
  expect(inch).toMatch(/thou/);
  expect(inch).not.toMatch(/\d\s(?:µm|MPa|m\/s|°C)/);
  await expect.poll(() => verdictOf(page)).toBe(verdict);
  await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('6000');
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.getByRole('button', { name: 'Show in millimetres' }).click();
  await decide.getByText(/m\/s/).first().waitFor();
  await expect.poll(() => decide.innerText()).toBe(metric);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a length that was typed without a unit says what it is once the form is in inches; the same the other way round', async () => {
  const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
  await openSample(page, 'Bilge pump');
  await unfold(page, 'The seal, as marked');
  await unfold(page, 'The shaft');
  const shaft = page.getByLabel('Shaft diameter marked on the seal');
  const width = page.getByLabel('Width marked on the seal');
  const reading = page.getByLabel('Reading 2').first();
  const first = await reading.inputValue();
  await width.fill('7.5');
  await page.getByRole('button', { name: 'Show in inches' }).click();
  await expect.poll(() => shaft.inputValue()).toBe('20 mm');
  await expect.poll(() => width.inputValue()).toBe('7.5 mm');
  await expect.poll(() => reading.inputValue()).toMatch(/mm$/u);
  // What is typed now counts in inches, and means the same afterwards.
  await width.fill('5/16');
  await page.locator('#measure summary').filter({ hasText: '5/16' }).first().waitFor();
  await page.getByRole('button', { name: 'Show in millimetres' }).click();
  await expect.poll(() => shaft.inputValue()).toBe('20');
  await expect.poll(() => width.inputValue()).toBe('5/16 in');
  await expect.poll(() => reading.inputValue()).toBe(first);
  await expect.poll(() => page.locator('seat-readings-field .error').count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});
