import { rm } from 'node:fs/promises';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';
import { newerBuild } from './internal/newer-build.js';
import { benchFolder } from './internal/served-page.js';

const bench = new Bench();
let newer = '';
beforeAll(async () => {
  await bench.start();
  newer = await newerBuild();
});
afterEach(() => { bench.serveFrom(benchFolder); });
afterAll(async () => {
  await bench.stop();
  await rm(newer, { recursive: true, force: true });
});

async function keepOne(page: Page, title: string): Promise<void> {
  await openSample(page, title);
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('900');
  await allKept(page);
  await page.getByRole('button', { name: /Sheets$/ }).click();
}

const fits = async (page: Page, width: number) => {
  expect(await faultsOf(page)).toEqual([]);
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
};

describe.each([[390, 'light'], [390, 'dark'], [1440, 'light'], [1440, 'dark']] as const)('at %i px, %s', (width, colorScheme) => {
  const open = () => bench.open({ viewport: { width, height: 900 }, colorScheme, bypassCSP: true, acceptDownloads: true });

  it('axe finds nothing in a backup that waits for a word, in what it set aside, and where there is no room', async () => {
    const { page, context } = await open();
    await keepOne(page, 'Bilge pump');
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Back up everything' }).click()]);
    await page.locator('input[type=file]').setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: readFileSync(await download.path()) });
    await page.getByRole('heading', { name: /^A backup of/ }).waitFor();
    await fits(page, width);
    await page.getByRole('button', { name: 'Put it in place of what is here' }).click();
    await page.getByText(/^Set aside on/).waitFor();
    await fits(page, width);
    await page.evaluate(() => { IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); }; });
    await openSample(page, 'Winch gearbox');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('901');
    await page.locator('.keeping-panel').waitFor();
    await fits(page, width);
    await context.close();
  });

  it('axe finds nothing where a newer page is offered', async () => {
    const { page, context } = await open();
    await page.getByRole('status').getByText('works without a network').waitFor();
    await page.reload();
    bench.serveFrom(newer);
    await page.evaluate(async () => { await (await navigator.serviceWorker.getRegistration())?.update(); });
    await page.getByRole('status').getByText('A newer version of this page is ready').waitFor();
    await fits(page, width);
    await context.close();
  });
});

it('gives every target of machines, positions and tools at least 48 px in height on a phone', async () => {
  const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const small = () => page.evaluate(() => [...document.querySelectorAll<HTMLElement>('button, summary, select, input, label:has(input)')].flatMap((element) => {
    const box = (element.closest('label') ?? element).getBoundingClientRect();
    return box.height > 1 && box.height < 47.5 && element.closest('.print-sheet') === null ? [`${element.tagName} ${element.textContent.trim().slice(0, 30)} ${box.height}`] : [];
  }));
  await keepOne(page, 'Outboard crankshaft');
  await expect.poll(() => small()).toEqual([]);
  await page.getByRole('button', { name: 'Tender outboard, 2-stroke, crank, drive side' }).click();
  await page.getByRole('button', { name: 'Machines and positions' }).click();
  await page.getByRole('button', { name: '+ Another shaft of this machine' }).click();
  await expect.poll(() => small()).toEqual([]);
  await page.getByRole('button', { name: /Sheets$/ }).click();
  await page.getByRole('button', { name: /^Your tubes and sockets/ }).click();
  await page.getByRole('button', { name: '+ Add a tool' }).click();
  await expect.poll(() => small()).toEqual([]);
  await context.close();
});
