import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

describe('readings as a pad', () => {
  it('takes angles down and depths across by keyboard alone, tells oval and taper, and is a pad again when the page is loaded anew', async () => {
    const { page, troubles, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await page.getByRole('button', { name: 'Start an empty position' }).click();
    await unfold(page, 'The bore');
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' }).first();
    await bore.getByLabel('Measured with').selectOption('inside-micrometer-rod');
    await bore.getByLabel('Readings as').selectOption('pad');
    await bore.getByRole('button', { name: 'one more depth' }).click();
    await bore.getByLabel('at depth, mm (1)').focus();
    for (const text of ['2', '6', '0', '35.010', '35.020', '60', '35.014', '35.024', '120', '35.018', '35.028']) {
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
    await expect.poll(() => bore.getByRole('row').count()).toBe(4);
    await bore.getByText(/out of round by 8\sµm, taper 10\sµm/).waitFor();
    await expect.poll(() => bore.evaluate((group) => group.ownerDocument.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await bore.getByLabel('Reading at angle, ° 60, at depth, mm 6').fill('35.o2');
    await bore.getByText('Reading at angle, ° 60, at depth, mm 6: ', { exact: false }).waitFor();
    await bore.getByLabel('Reading at angle, ° 60, at depth, mm 6').fill('35.024');
    await allKept(page);
    await page.reload();
    await page.locator('.kept button').first().click();
    await unfold(page, 'The bore');
    await expect.poll(() => bore.getByLabel('Reading at angle, ° 120, at depth, mm 6').inputValue()).toBe('35.028');
    await expect.poll(() => bore.getByLabel('Readings as').inputValue()).toBe('pad');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('shows the readings of a list, and a list the readings of a pad', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'The bore');
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' }).first();
    const readings = () => bore.locator('.pad td input').evaluateAll((all) => all.map((input) => (input as HTMLInputElement).value));
    await expect.poll(() => readings()).toEqual(['35.012', '35.01', '35.015', '', '35.013', '', '', '35.011']);
    const result = await bore.locator('.result').innerText();
    await bore.getByLabel('Readings as').selectOption('list');
    await expect.poll(() => bore.getByLabel('Reading 5', { exact: true }).inputValue()).toBe('35.011');
    await expect.poll(() => bore.locator('.result').innerText()).toBe(result);
    await bore.getByLabel('Readings as').selectOption('places');
    await expect.poll(() => bore.getByLabel('at angle, °').nth(4).inputValue()).toBe('90');
    await bore.getByLabel('Readings as').selectOption('pad');
    await expect.poll(() => readings()).toEqual(['35.012', '35.01', '35.015', '', '35.013', '', '', '35.011']);
    await context.close();
  });
});
