import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold, verdictOf } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

async function speed(page: Page, text: string): Promise<void> {
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill(text);
}

async function linkOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Share' }).click();
  return page.getByLabel('Link').inputValue();
}

describe('a link', () => {
  it('carries the job as it is typed to another device, where it is offered and opened as a sheet of its own', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await speed(page, '1725 rpm');
    const verdict = await verdictOf(page);
    const link = await linkOf(page);
    expect(link.length).toBeLessThan(8000);
    await context.close();

    const there = await bench.open({ viewport: { width: 390, height: 844 } }, link.replace(/^https?:\/\/[^/]+\//u, ''));
    await there.page.getByRole('heading', { name: 'A job came with the link' }).waitFor();
    await there.page.getByRole('button', { name: /^Open it/ }).click();
    await there.page.locator('section.verdict seat-verdict .stamp').waitFor();
    await expect.poll(() => verdictOf(there.page)).toBe(verdict);
    await unfold(there.page, 'How it runs');
    await expect.poll(() => there.page.getByLabel('Highest shaft speed').inputValue()).toBe('1725 rpm');
    await allKept(there.page);
    expect(new URL(there.page.url()).hash).toBe('');
    // Nothing was changed in it, and it is there all the same after a reload.
    await there.page.reload();
    await there.page.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).waitFor();
    expect(there.troubles).toEqual([]);
    await there.context.close();
  });

  it('that is broken changes nothing and says why', async () => {
    const { page, context, troubles } = await bench.open({}, '#job=1.H4sIAAAAAAAAA2NgGAWjYBSMglEwCkYBAA');
    await page.getByRole('alert').getByText('The link is broken').waitFor();
    expect(new URL(page.url()).hash).toBe('');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('may be left: then nothing is opened', async () => {
    const made = await bench.open();
    await openSample(made.page, 'Winch gearbox');
    const link = await linkOf(made.page);
    await made.context.close();
    const { page, context } = await bench.open({}, link.replace(/^https?:\/\/[^/]+\//u, ''));
    await page.getByRole('button', { name: 'Leave it' }).click();
    await expect.poll(() => page.getByRole('heading', { name: 'A job came with the link' }).count()).toBe(0);
    await context.close();
  });

  it.each(['light', 'dark'] as const)('and its panel have nothing that axe finds, in %s at 390 px', async (colorScheme) => {
    const { page, context } = await bench.open({ colorScheme, viewport: { width: 390, height: 844 }, bypassCSP: true });
    await openSample(page, 'Bilge pump');
    const link = await linkOf(page);
    expect(await faultsOf(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await context.close();
    const there = await bench.open({ colorScheme, viewport: { width: 390, height: 844 }, bypassCSP: true }, link.replace(/^https?:\/\/[^/]+\//u, ''));
    await there.page.getByRole('heading', { name: 'A job came with the link' }).waitFor();
    expect(await faultsOf(there.page)).toEqual([]);
    await there.context.close();
  });
});

describe('a backup', () => {
  /** The backup of what a fresh device keeps after one change in one sample. */
  async function made(): Promise<string> {
    const { page, context } = await bench.open({ acceptDownloads: true });
    await openSample(page, 'Bilge pump');
    await speed(page, '1725');
    await allKept(page);
    await page.getByRole('button', { name: /Sheets$/ }).click();
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Back up everything' }).click()]);
    expect(download.suggestedFilename()).toMatch(/^seatwright-\d{4}-\d\d-\d\d\.json$/);
    const text = readFileSync(await download.path(), 'utf8');
    await context.close();
    return text;
  }

  const given = (page: Page, text: string) => page.locator('input[type=file]').setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: Buffer.from(text) });

  const kept = (page: Page) => page.locator('.kept .shelf strong').allInnerTexts();
  const winchKept = async (page: Page) => {
    await openSample(page, 'Winch gearbox');
    await speed(page, '900');
    await allKept(page);
    await page.getByRole('button', { name: /Sheets$/ }).click();
  };

  it('brings every sheet to another device, once, and leaves alone what is there', async () => {
    const text = await made();
    const { page, context, troubles } = await bench.open();
    await given(page, text);
    await page.getByRole('status').getByText('Taken in: sheets 1, tubes and sockets 0; here already: 0.').waitFor();
    await given(page, text);
    await page.getByRole('button', { name: 'Add it to what is here' }).click();
    await page.getByRole('status').getByText('Taken in: sheets 0, tubes and sockets 0; here already: 1.').waitFor();
    await page.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1725');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('takes the place of what is here only when told to; what was here is set aside, survives a reload, and comes back', async () => {
    const text = await made();
    const { page, context, troubles } = await bench.open();
    await winchKept(page);
    await given(page, text);
    await page.getByText('Sheets: 1; tubes and sockets: 0.').waitFor();
    expect((await kept(page)).join()).toContain('Landing winch');
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect((await kept(page)).join()).toContain('Landing winch');
    await given(page, text);
    await page.getByRole('button', { name: 'Put it in place of what is here' }).click();
    await page.getByRole('status').getByText('In place now: sheets 1').waitFor();
    expect((await kept(page)).join()).toMatch(/^Bilge pump 2/);
    await page.reload();
    await page.getByText(/Set aside on .*: sheets 1, tubes and sockets 0/).waitFor();
    await page.getByRole('button', { name: 'Put them back' }).click();
    await expect.poll(async () => (await kept(page)).join()).toMatch(/^Landing winch/);
    // And forth again: what was put away by putting back is not lost either.
    await page.getByRole('button', { name: 'Put them back' }).click();
    await expect.poll(async () => (await kept(page)).join()).toMatch(/^Bilge pump 2/);
    page.on('dialog', (dialog) => void dialog.accept());
    await page.getByRole('button', { name: 'Drop them' }).click();
    await expect.poll(() => page.locator('.aside').count()).toBe(0);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('put in place of a sheet that is open does not take the pen away: it goes on as a copy', async () => {
    const text = await made();
    const { page, context } = await bench.open();
    await given(page, text);
    await page.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await speed(page, '1111');
    await allKept(page);
    await page.getByRole('button', { name: /Sheets$/ }).click();
    await given(page, text);
    await page.getByRole('button', { name: 'Put it in place of what is here' }).click();
    await page.getByRole('status').getByText('In place now').waitFor();
    await page.getByRole('button', { name: /^Back to the open sheet/ }).click();
    await speed(page, '1112');
    await page.getByRole('status').getByText('Kept as a copy').waitFor();
    await context.close();
  });

  it.each([['cut off', (text: string) => text.slice(0, -300), 'cut off'], ['altered', (text: string) => text.replace('1725', '1726'), 'checksum'], ['of a newer page', (text: string) => text.replace('"version":2', '"version":9'), 'newer version']])('that is %s changes nothing and says why', async (_, spoil, why) => {
    const text = await made();
    const { page, context } = await bench.open();
    await given(page, spoil(text));
    await page.getByRole('alert').getByText(why).waitFor();
    await expect.poll(() => page.locator('ul.kept').count()).toBe(0);
    await context.close();
  });

  it('can be dropped onto the page, as a workshop file can', async () => {
    const text = await made();
    const { page, context } = await bench.open();
    const drop = (content: string) => page.evaluate((dropped) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([dropped], 'dropped.json', { type: 'application/json' }));
      document.querySelector('bench-app')?.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }, content);
    await drop(text);
    await page.getByRole('status').getByText('Taken in: sheets 1').waitFor();
    await drop(readFileSync(new URL('../../apps/bench/public/samples/winch-gearbox.json', import.meta.url), 'utf8'));
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await context.close();
  });

  it('is refused whole where the device has no room, and says so', async () => {
    const text = await made();
    const { page, context } = await bench.open();
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); };
    });
    await given(page, text);
    await page.getByRole('alert').getByText('Nothing was changed').waitFor();
    await context.close();
  });
});
