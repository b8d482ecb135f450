import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const heading = 'Two drivers side by side';

test('two drivers stand side by side with the same rows, what differs is marked, and either is drawn: by keyboard alone', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Outboard crankshaft');
  await unfold(page, 'Put in');
  await page.locator('#put-in summary', { hasText: heading }).focus();
  await page.keyboard.press('Enter');
  const table = page.locator('bench-drivers table.beside');
  await table.waitFor();
  const names = await table.locator('thead th').allInnerTexts();
  expect(new Set(names).size).toBe(2);
  await expect.poll(() => table.getByRole('row', { name: /^Outside/ }).locator('.mark').count()).toBe(1);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => table.locator('thead th').nth(1).innerText()).not.toBe(names[1]);
  const picked = await table.locator('thead th').nth(1).innerText();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.drawing figcaption').innerText()).toContain(picked);
  await expect.poll(() => table.getByRole('button', { name: 'Draw it' }).nth(1).getAttribute('aria-pressed')).toBe('true');
  expect(troubles).toEqual([]);
  await context.close();
});

test('picking what stands on the other side swaps the two; what is at hand and does not serve says so', async () => {
  const { page, context } = await bench.open();
  await openSample(page, 'Bilge pump');
  await unfold(page, 'Put in');
  await page.getByText(heading).click();
  const names = () => page.locator('bench-drivers thead th').allInnerTexts();
  await page.locator('bench-drivers table').waitFor();
  const [one = '', other = ''] = await names();
  await page.getByLabel('One driver').selectOption(other);
  await expect.poll(names).toEqual([other, one]);
  const options = await page.getByLabel('One driver').locator('option').allInnerTexts();
  expect(options.filter((text) => text.includes('does not serve'))).toContain('Socket 27 (does not serve)');
  await page.getByLabel('One driver').selectOption('Socket 27');
  await page.locator('bench-drivers').getByText(/It lands on only/u).waitFor();
  await context.close();
});

test('by touch, for a bearing: two tools that push the right ring', async () => {
  const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
  await openSample(page, 'Anchor winch');
  await unfold(page, 'Put in');
  await page.getByText(heading).tap();
  const table = page.locator('bench-drivers table.beside');
  await table.waitFor();
  await expect.poll(() => table.getByRole('row', { name: /^Ring to push/ }).innerText()).toContain('inner ring');
  const second = await table.locator('thead th').nth(1).innerText();
  await table.getByRole('button', { name: 'Draw it' }).nth(1).tap();
  await expect.poll(() => page.locator('.drawing figcaption').innerText()).toContain(second);
  expect(troubles).toEqual([]);
  await context.close();
});

test.each([['light', 390], ['dark', 1440]] as const)('axe finds nothing in it, in %s at %s px, and nothing hangs over', async (colorScheme, width) => {
  const { page, context } = await bench.open({ colorScheme, viewport: { width, height: 844 }, bypassCSP: true });
  await openSample(page, 'Crank with its bearing');
  await unfold(page, 'Put in');
  await page.getByText(heading).last().click();
  await page.locator('bench-drivers table').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  await context.close();
});
