import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

/** A job that says what no sheet of the first screen does. */
const file = { name: 'leg.json', mimeType: 'application/json', buffer: readFileSync(new URL('../../apps/bench/public/samples/outboard-leg.json', import.meta.url)) };

/** All that the sheet says once its folds are open. */
async function saidBy(page: Page): Promise<string> {
  await page.locator('details.block').evaluateAll((all) => { for (const details of all) (details as HTMLDetailsElement).open = true; });
  await page.locator('#put-in seat-plan li').first().waitFor();
  return (await page.locator('seat-verdict, seat-findings, seat-plan, .small-print li').evaluateAll((all) => all.flatMap((element) => (element.shadowRoot === null ? [element.textContent] : Array.from(element.shadowRoot.querySelectorAll('li, p'), (line) => line.textContent))))).join('\n');
}

const bareCode = /(?:^|[^\w-])[a-z0-9]+(?:-[a-z0-9]+){2,}(?:$|[^\w-])/mu;

test.each([['English', 'en-GB', /later-words/u, 'the seal'], ['German', 'de-DE', /german-later/u, 'Dichtring']])('sentences that are seldom said are fetched before the first sheet that says one, in %s', async (_name, locale, part, word) => {
  const { page, context, troubles } = await bench.open({ locale });
  let letThrough = () => {};
  const held = new Promise<void>((done) => { letThrough = done; });
  await context.route(part, async (route) => {
    await held;
    await route.continue();
  });
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.locator('main.sheet').waitFor();
  await page.waitForTimeout(500);
  expect(await page.locator('section.verdict seat-verdict').count()).toBe(0);
  letThrough();
  await page.locator('section.verdict seat-verdict .stamp').waitFor();
  const said = await saidBy(page);
  expect(said).toContain(word);
  expect(said).not.toMatch(bareCode);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a language that is chosen later says them too', async () => {
  const { page, context, troubles } = await bench.open();
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.locator('section.verdict seat-verdict .stamp').waitFor();
  expect(await saidBy(page)).not.toMatch(bareCode);
  await page.getByLabel('Language').selectOption('de');
  await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
  const said = await saidBy(page);
  expect(said).toContain('Dichtring');
  expect(said).not.toMatch(bareCode);
  expect(troubles).toEqual([]);
  await context.close();
});

test.each([
  ['English', 'en-GB', /later-words/u, 'It could not be loaded. Is the connection gone?', 'Show in inches'],
  ['German', 'de-DE', /german-later/u, 'Das ließ sich nicht laden. Ist die Verbindung weg?', 'In Zoll anzeigen'],
])('where they cannot be fetched, the sheet says so, and the next key asks again, in %s', async (_name, locale, part, fault, button) => {
  const { page, context } = await bench.open({ locale });
  await context.route(part, (route) => route.abort());
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.locator('section.verdict').getByText(fault).waitFor();
  await context.unroute(part);
  await page.getByRole('button', { name: button }).click();
  await page.locator('section.verdict seat-verdict .stamp').waitFor();
  expect(await saidBy(page)).not.toMatch(bareCode);
  await context.close();
});
