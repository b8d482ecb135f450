import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench, verdictOf } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

/** A job that says what no sheet of the first screen does. */
const file = { name: 'leg.json', mimeType: 'application/json', buffer: readFileSync(new URL('../../apps/bench/public/samples/outboard-leg.json', import.meta.url)) };

test('sentences that are seldom said are fetched before the first sheet that says one', async () => {
  const { page, context, troubles } = await bench.open();
  let letThrough = () => {};
  const held = new Promise<void>((done) => { letThrough = done; });
  await context.route(/later-words/u, async (route) => {
    await held;
    await route.continue();
  });
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.locator('main.sheet').waitFor();
  await page.waitForTimeout(500);
  expect(await page.locator('section.verdict seat-verdict').count()).toBe(0);
  letThrough();
  await expect.poll(() => verdictOf(page)).toMatch(/suit|tell/u);
  const said = await page.locator('seat-findings, seat-plan, .small-print').allInnerTexts();
  expect(said.join('\n').length).toBeGreaterThan(1000);
  expect(said.join('\n')).not.toMatch(/^[a-z0-9]+(?:-[a-z0-9]+){2,}$/mu);
  expect(troubles).toEqual([]);
  await context.close();
});

test('where they cannot be fetched, the sheet says so, and the next key asks again', async () => {
  const { page, context } = await bench.open();
  await context.route(/later-words/u, (route) => route.abort());
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.locator('section.verdict').getByText('It could not be loaded. Is the connection gone?').waitFor();
  await context.unroute(/later-words/u);
  await page.getByRole('button', { name: 'Show in inches' }).click();
  await expect.poll(() => verdictOf(page)).toMatch(/suit|tell/u);
  await context.close();
});
