import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

describe('the language of the page', () => {
  it('changes in the middle of a job: nothing is lost, everything follows, and it is found again', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, 'Bilge pump');
    await unfold(page, 'The seal, as marked');
    await page.getByLabel('Width marked on the seal').fill('8');
    await allKept(page);
    await page.getByLabel('Language').selectOption('de');
    await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    const width = page.getByLabel('Breite laut Aufschrift');
    expect(await width.inputValue()).toBe('8');
    await width.fill('7,5');
    await page.getByRole('button', { name: 'Rückgängig' }).waitFor();
    await page.getByRole('status').getByText('Auf diesem Gerät aufbewahrt').waitFor();
    await page.locator('.bar .under-way').waitFor({ state: 'detached' });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.reload();
    await page.getByRole('heading', { name: 'Ein Arbeitsblatt öffnen' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
    await page.locator('.kept button.shelf').first().click();
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await unfold(page, 'Der Ring, laut Aufschrift');
    expect(await width.inputValue()).toBe('7,5');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('begins in the language of the browser, and fetches no other', async () => {
    const { page, context } = await bench.open({ locale: 'de-DE' });
    await page.getByRole('heading', { name: 'Ein Arbeitsblatt öffnen' }).waitFor();
    await page.getByRole('button', { name: 'English' }).click();
    await page.getByRole('heading', { name: 'Open a job sheet' }).waitFor();
    await context.close();
    const english = await bench.open({ locale: 'fr-FR' });
    await openSample(english.page, 'Bilge pump');
    expect(await english.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.includes('german')))).toEqual([]);
    expect(await english.page.evaluate(() => document.documentElement.lang)).toBe('en');
    await english.context.close();
  });

  it('is there without a network, once it was used', async () => {
    const { page, context, troubles } = await bench.open({ locale: 'de-AT' });
    await page.getByRole('status').getByText('geht diese Seite ohne Netz').waitFor();
    await page.getByRole('button', { name: 'Bilgenpumpe' }).click();
    await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
    await expect.poll(() => page.evaluate(async () => (await (await caches.open('languages')).keys()).length)).toBe(2);
    await context.setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'Windengetriebe' }).click();
    await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });
});
