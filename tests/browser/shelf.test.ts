import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const list = readFileSync(new URL('../../apps/bench/public/samples/shelf.csv', import.meta.url), 'utf8');

test('a pasted list is ranked for the position; what is taken becomes the seal, and can be taken back', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Bilge pump');
  await page.getByText('Another seal from a list').click();
  await page.getByLabel('Paste the list').fill(list);
  await page.getByLabel('Paste the list').blur();
  await page.getByText(/seals: \d+ suit/).waitFor();
  await page.locator('.shelf-rows li', { hasText: 'SW-002' }).getByRole('button', { name: 'Take this one' }).click();
  await unfold(page, 'The seal, as marked');
  await page.getByLabel('What is printed on the seal').waitFor({ state: 'attached' });
  await expect.poll(() => page.locator('seat-choice-field[data-key="seal.construction"]').evaluate((field) => (field as unknown as { value: string }).value)).toBe('rubber-covered');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.locator('seat-choice-field[data-key="seal.construction"]').evaluate((field) => (field as unknown as { value: string }).value)).toBe('metal-case');
  expect(troubles).toEqual([]);
  await context.close();
});

test('a long list leaves the page its turns, and is judged anew when a reading changes', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Bilge pump');
  await page.getByText('Another seal from a list').click();
  const rows = Array.from({ length: 20_000 }, (_, i) => (i % 100 === 0 ? `A-${i};20;35;7;metal case;NBR` : `A-${i};${10 + (i % 60)};${72 + ((i * 7) % 80)};${5 + (i % 8)};metal case;NBR`));
  await page.locator('bench-shelf input[type=file]').setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(`Article;d;D;Width;Type;Rubber\n${rows.join('\n')}`) });
  await page.getByText('20000 seals:').waitFor();
  const before = await page.locator('bench-shelf [role=status]').innerText();
  await unfold(page, 'The bore');
  await page.locator('seat-readings-field[data-key="bore.readings"]').getByLabel(/^Reading/).first().fill('34.2');
  await page.waitForFunction((said) => document.querySelector('bench-shelf [role=status]')?.textContent !== said, before);
  expect(troubles).toEqual([]);
  await context.close();
});

test.each(['light', 'dark'] as const)('axe finds nothing in the ranked list, in %s at 390 px, and nothing hangs over', async (colorScheme) => {
  const { page, context } = await bench.open({ colorScheme, viewport: { width: 390, height: 844 }, bypassCSP: true });
  await openSample(page, 'Bilge pump');
  await page.getByText('Another seal from a list').click();
  await page.getByLabel('Paste the list').fill(`${list}\nbroken;row`);
  await page.getByLabel('Paste the list').blur();
  await page.getByText(/seals: \d+ suit/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await context.close();
});
