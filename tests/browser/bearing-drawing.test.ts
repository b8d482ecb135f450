import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const drawing = '.drawing seat-bearing-section';
const spoken = (page: Page) => page.locator(drawing).getByRole('img').first().getAttribute('aria-label');

test('a bearing alone leads its sheet: its sizes, both seats magnified, what drives it in and where the puller grips', async () => {
  const { page, context, troubles } = await bench.open();
  await openSample(page, 'Anchor winch');
  await page.locator(drawing).waitFor();
  await expect.poll(() => page.locator('.drawing seat-section').count()).toBe(0);
  await expect.poll(() => spoken(page)).toMatch(/Bearing 45\smm by 85\smm by 19\smm\. With balls\./u);
  await expect.poll(() => page.locator(`${drawing} svg[part=detail]`).evaluateAll((all) => all.map((svg) => svg.getAttribute('aria-label') ?? ''))).toEqual([expect.stringMatching(/^outer ring in the housing: Gap: /u), expect.stringMatching(/^inner ring on the shaft: Interference: /u)]);
  await expect.poll(() => page.locator(`${drawing} text.caption`).first().innerHTML()).toMatch(/\d+ × the section/u);
  await unfold(page, 'Take out');
  await expect.poll(() => spoken(page)).toContain('puller grips behind the inner ring');
  await page.getByRole('button', { name: 'Driven in' }).click();
  await expect.poll(() => spoken(page)).toContain('The bearing as driven in.');
  expect(troubles).toEqual([]);
  await context.close();
});

test('a dimension leads to its entry, and an entry lights its dimension', async () => {
  const { page, context } = await bench.open();
  await openSample(page, 'Anchor winch');
  const lit = () => page.locator(`${drawing} g.lit`).evaluateAll((all) => all.map((group) => (group as SVGGElement).dataset['name']));
  await page.locator(`${drawing} g[data-name="bearing-outside"] text`).click();
  await expect.poll(lit).toEqual(['bearing-width', 'bearing-outside', 'bearing-bore']);
  await page.keyboard.press('Control+a');
  await page.keyboard.type('6309 ZZ');
  await expect.poll(() => page.locator(`${drawing} g[data-name="bearing-outside"] text`).textContent()).toBe('ø 100');
  await expect.poll(() => spoken(page)).toContain('shielded');
  await page.getByLabel('Tolerance class of the shaft seat').focus();
  await expect.poll(lit).toEqual(['bearing-bore']);
  await context.close();
});

test('the table of dimensions leads to the entries by keyboard too', async () => {
  const { page, context } = await bench.open();
  await openSample(page, 'Bilge pump');
  await page.locator('.drawing').getByText('Dimensions as a table').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.getByLabel('Shaft diameter marked on the seal').evaluate((field) => (field.getRootNode() as ShadowRoot).activeElement === field)).toBe(true);
  await context.close();
});

test('behind a seal: added by hand it stands in, is drawn once it is named, and has its own way in and out', async () => {
  const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
  await openSample(page, 'Bilge pump');
  await expect.poll(() => page.locator('.drawing seat-section').count()).toBe(1);
  await page.getByRole('button', { name: '+ Add the bearing behind it' }).click();
  await page.locator(drawing).waitFor();
  await page.getByLabel('Designation on the ring').fill('6204');
  await expect.poll(() => spoken(page)).toMatch(/seal 7\smm wide.*Bearing 20\smm by 47\smm by 14\smm/u);
  await page.getByRole('button', { name: 'Bearing out' }).click();
  await expect.poll(() => spoken(page)).toContain('Taking the bearing out');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.drawing seat-section').waitFor();
  await page.getByRole('button', { name: 'Taking out', pressed: true }).waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});

test('what draws a bearing is fetched when there is one', async () => {
  const { page, context } = await bench.open({ serviceWorkers: 'block' });
  const fetched: string[] = [];
  page.on('request', (request) => fetched.push(request.url()));
  await openSample(page, 'Bilge pump');
  await page.waitForLoadState('networkidle');
  expect(fetched.filter((url) => url.includes('bearing-section'))).toEqual([]);
  await page.getByRole('button', { name: '+ Add the bearing behind it' }).click();
  await page.locator(drawing).waitFor();
  expect(fetched.filter((url) => url.includes('bearing-section'))).toHaveLength(1);
  await context.close();
});

test.each([['light', 390], ['dark', 390], ['light', 1440]] as const)('axe finds nothing in the drawing, in %s at %s px', async (colorScheme, width) => {
  const { page, context } = await bench.open({ colorScheme, viewport: { width, height: 844 }, bypassCSP: true });
  await openSample(page, 'Crank with its bearing');
  await page.locator(drawing).waitFor();
  for (const name of ['Seal out', 'Bearing in', 'Bearing out']) {
    await page.getByRole('button', { name }).click();
    expect(await faultsOf(page)).toEqual([]);
  }
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  await context.close();
});
