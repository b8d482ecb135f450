import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

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
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('de');
    const width = page.getByLabel('Breite laut Aufschrift');
    await expect.poll(() => width.inputValue()).toBe('8');
    await width.fill('7,5');
    await page.getByRole('button', { name: 'Rückgängig' }).waitFor();
    await page.getByRole('status').getByText('Auf diesem Gerät aufbewahrt').waitFor();
    await page.locator('.bar .under-way').waitFor({ state: 'detached' });
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.reload();
    await page.getByRole('heading', { name: 'Ein Arbeitsblatt öffnen' }).waitFor();
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('de');
    await page.locator('.kept button.shelf').first().click();
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await unfold(page, 'Der Ring, laut Aufschrift');
    await expect.poll(() => width.inputValue()).toBe('7,5');
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
    await expect.poll(() => english.page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.includes('german')))).toEqual([]);
    await expect.poll(() => english.page.evaluate(() => document.documentElement.lang)).toBe('en');
    await english.context.close();
  });

  it('is there without a network, once it was used', async () => {
    const { page, context, troubles } = await bench.open({ locale: 'de-AT' });
    await page.getByRole('status').getByText('geht diese Seite ohne Netz').waitFor();
    await page.getByRole('button', { name: 'Bilgenpumpe' }).click();
    await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
    await expect.poll(() => page.evaluate(async () => (await (await caches.open('languages')).keys()).length)).toBe(3);
    // What the page fetches when it is idle has come.
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    await page.reload();
    await page.getByRole('button', { name: 'Kurbelwelle mit Lager' }).click();
    await page.getByRole('heading', { name: 'Ansehen und messen' }).waitFor();
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });
});

describe.each([390, 1440].flatMap((width) => (['light', 'dark'] as const).map((colorScheme) => ({ width, colorScheme }))))('in German at $width px, $colorScheme', ({ width, colorScheme }) => {
  it('has no fault on the first screen and on a full sheet, and nothing hangs over', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width, height: 900 }, colorScheme, locale: 'de-DE', bypassCSP: true });
    await page.getByRole('heading', { name: 'Ein Arbeitsblatt öffnen' }).waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await openSample(page, 'Windengetriebe');
    await page.locator('details').evaluateAll((all) => { for (const details of all) (details as HTMLDetailsElement).open = true; });
    await page.locator('seat-working li').first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

describe('in German', () => {
  it('a field says what it understood and what it did not, with a decimal comma', async () => {
    const { page, context } = await bench.open({ locale: 'de-DE' });
    await openSample(page, 'Bilgenpumpe');
    await unfold(page, 'Der Ring, laut Aufschrift');
    const width = page.getByLabel('Breite laut Aufschrift');
    await width.fill('5/16 in');
    await page.getByText(/= 7,93\d*\smm/u).first().waitFor();
    await width.fill('acht');
    const fault = page.locator('seat-length-field', { has: width }).locator('.error');
    await fault.waitFor();
    await expect.poll(() => fault.innerText()).toMatch(/verstanden wird/u);
    await width.fill('7,0');
    await fault.waitFor({ state: 'detached' });
    await context.close();
  });

  it('an ordinary job prints on one page of A4', async () => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, locale: 'de-DE' });
    await openSample(page, 'Bilgenpumpe');
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/gu)?.length).toBe(1);
    await context.close();
  });
});
