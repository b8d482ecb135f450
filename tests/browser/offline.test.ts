import { rm } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold, verdictOf, type OpenBench } from './internal/bench.js';
import { newerBuild, newerHeading } from './internal/newer-build.js';
import { benchFolder } from './internal/served-page.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

it('works without a network from the second visit: opens, computes, keeps', async () => {
  const { page, context, troubles } = await bench.open();
  await page.getByRole('status').getByText('works without a network').waitFor();
  await context.setOffline(true);
  await page.reload();
  await openSample(page, 'Winch gearbox');
  await expect.poll(() => verdictOf(page)).not.toBe('');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('900');
  await allKept(page);
  await page.locator('details.working > summary').click();
  await page.locator('seat-working li').first().waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});

it('can be installed: a manifest with name, icon and start', async () => {
  const { page, context } = await bench.open();
  const manifest = await page.evaluate(async () => (await fetch(document.querySelector<HTMLLinkElement>('link[rel=manifest]')?.href ?? '')).json() as Promise<Record<string, unknown>>);
  expect(manifest).toMatchObject({ name: 'Seatwright', display: 'standalone', start_url: './' });
  await context.close();
});

describe('a newer page', () => {
  let newer = '';
  beforeAll(async () => { newer = await newerBuild(); });
  afterEach(() => { bench.serveFrom(benchFolder); });
  afterAll(() => rm(newer, { recursive: true, force: true }));

  const lookForNewer = (page: Page) => page.evaluate(async () => { await (await navigator.serviceWorker.getRegistration())?.update(); });
  const isOffered = (page: Page) => page.getByRole('status').getByText('A newer version of this page is ready').waitFor();

  /** A page that the worker serves, with a sheet open and one entry changed. */
  async function atWork(): Promise<OpenBench> {
    const opened = await bench.open();
    const { page } = opened;
    await page.getByRole('status').getByText('works without a network').waitFor();
    await page.reload();
    await openSample(page, 'Outboard crankshaft');
    await page.getByLabel('Position', { exact: true }).selectOption({ label: 'crank, drive side' });
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('7000');
    await allKept(page);
    return opened;
  }

  it('asks first; until then the present one goes on whole; taken, it opens the sheet again where it was', async () => {
    const { page, context, troubles } = await atWork();
    bench.serveFrom(newer);
    await lookForNewer(page);
    await isOffered(page);
    // Parts that were not fetched before are those of this build, though the server has them no more.
    await unfold(page, 'Decide');
    await page.getByText('Limits, heat and speed, drawn').click();
    await page.locator('bench-charts').getByRole('img').first().waitFor();
    await page.getByLabel('Highest shaft speed').fill('');
    await page.getByLabel('Highest shaft speed').pressSequentially('7123');
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Take it now' }).click()]);
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await expect.poll(() => page.getByRole('heading', { level: 1 }).innerText()).toContain('crank, drive side');
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('7123');
    await page.getByRole('button', { name: /Sheets$/ }).click();
    await page.getByRole('heading', { level: 1, name: newerHeading }).waitFor();
    // It was brought along once: loaded anew by hand, the page begins on its first screen.
    await page.reload();
    await page.getByRole('heading', { level: 1, name: newerHeading }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('taken in one tab does not load another tab anew under the hand: that one says so, and brings its sheet along when it is told to', async () => {
    const { page, context, troubles } = await atWork();
    const other = await context.newPage();
    await other.goto(page.url());
    bench.serveFrom(newer);
    await lookForNewer(other);
    await isOffered(page);
    await isOffered(other);
    await other.getByRole('button', { name: 'Take it now' }).click();
    await other.getByRole('heading', { level: 1, name: newerHeading }).waitFor();
    await page.getByRole('status').getByText('was taken in another tab').waitFor();
    await page.getByLabel('Highest shaft speed').fill('6999');
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load it anew' }).click()]);
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('6999');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('is not taken over a sheet that nothing holds: the page says to save it first', async () => {
    const { page, context } = await bench.open();
    await page.addInitScript(() => {
      Object.defineProperty(globalThis, 'indexedDB', { value: { open: () => { throw new DOMException('denied', 'SecurityError'); } } });
      Object.defineProperty(globalThis, 'sessionStorage', { get: () => { throw new DOMException('denied', 'SecurityError'); } });
    });
    await page.getByRole('status').getByText('works without a network').waitFor();
    await page.reload();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('1212');
    bench.serveFrom(newer);
    await lookForNewer(page);
    await isOffered(page);
    await page.getByRole('button', { name: 'Take it now' }).click();
    await page.getByRole('status').getByText('save it as a file first').waitFor();
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1212');
    await context.close();
  });
});
