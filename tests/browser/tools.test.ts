import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

/** Adds a tool to the sheet and gives back its part of the form. */
async function addTool(page: Page): Promise<Locator> {
  const count = await page.locator('#group-tools .item').count();
  await page.getByRole('button', { name: '+ Add a tool' }).click();
  const tool = page.locator('#group-tools .item').nth(count);
  await tool.getByLabel('Name of the tool').waitFor();
  return tool;
}

describe('tools on a sheet', () => {
  it('show a fault at the tool that has it, though one before it has only been begun', async () => {
    const { page, context, troubles } = await bench.open();
    await openSample(page, 'Deck wash pump');
    await unfold(page, 'Tools at hand');
    const begun = await addTool(page);
    const spoilt = await addTool(page);
    await spoilt.getByLabel('Name of the tool').fill('offcut');
    await spoilt.getByLabel('Wall thickness').fill('2');
    await spoilt.getByLabel('Outside diameter at the end that pushes').fill('5000');
    await spoilt.getByText('up to and including 1000').waitFor();
    await expect.poll(() => begun.locator('input[aria-invalid=true]').count()).toBe(0);
    await page.locator('section.verdict').getByRole('button', { name: 'Go to the entry that cannot be read' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });
});

describe("tubes and sockets of one's own", () => {
  const show = async (page: Page) => {
    await page.getByRole('button', { name: /^Your tubes and sockets/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Tubes and sockets of your own' }).waitFor();
  };
  const isKept = async (page: Page) => {
    await page.locator('.kept-mark').waitFor();
    await page.locator('.kept-mark .under-way').waitFor({ state: 'detached' });
  };
  const back = (page: Page) => page.getByRole('button', { name: '‹ Sheets' }).click();
  const items = (page: Page) => page.locator('bench-own-tools .item > summary > span:first-child').allInnerTexts();
  const give = (page: Page, text: string) => page.locator('input[type=file]').setInputFiles({ name: 'any.json', mimeType: 'application/json', buffer: Buffer.from(text) });

  const length = (page: Page) => page.locator('bench-own-tools .item').first().getByLabel('Length');
  /** Shows the list in a second tab. */
  const inAnotherTab = async (page: Page) => {
    const other = await page.context().newPage();
    await other.goto(page.url());
    await show(other);
    return other;
  };

  /** Notes one tool, with the cursor in each field as it is typed. */
  async function noteTool(page: Page, name: string, outside: string, wall: string): Promise<void> {
    const count = await page.locator('bench-own-tools .item').count();
    await page.getByRole('button', { name: '+ Add a tool' }).click();
    const item = page.locator('bench-own-tools .item').nth(count);
    await item.getByLabel('Name of the tool').pressSequentially(name);
    await item.getByLabel('Outside diameter at the end that pushes').pressSequentially(outside);
    await item.getByLabel('Wall thickness').pressSequentially(wall);
  }

  it('are typed in inches where the device is used in inches', async () => {
    const { page, context, troubles } = await bench.open();
    await page.evaluate(() => { localStorage.setItem('seatwright-units', 'in'); });
    await show(page);
    await noteTool(page, 'Socket 1 3/8', '1.375', '0.12');
    await isKept(page);
    await page.reload();
    await show(page);
    await page.locator('bench-own-tools .item > summary').click();
    const outside = page.locator('bench-own-tools seat-length-field', { has: page.getByLabel('Outside diameter at the end that pushes') });
    await expect.poll(() => outside.evaluate((field) => (field as unknown as { stored: unknown }).stored)).toBe('1.375 in');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('are noted at every stroke, changed and taken away; a new job begins with them, one from elsewhere keeps its own', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
    await show(page);
    await noteTool(page, 'Offcut of gas pipe', '1 3/8 in', '3.2');
    await noteTool(page, 'Socket 32', '43', '5');
    await page.getByRole('button', { name: '+ Add a tool' }).click();
    await page.locator('bench-own-tools .item').nth(2).getByLabel('Name of the tool').pressSequentially('half ty');
    await isKept(page);
    await page.reload();
    await page.getByText('3; a new job begins with them.').waitFor();
    await show(page);
    await expect.poll(() => items(page)).toEqual(['Offcut of gas pipe', 'Socket 32', 'half ty']);
    // A fault stands at its entry, in words.
    const socket = page.locator('bench-own-tools .item').nth(1);
    await socket.locator('summary').click();
    await socket.getByLabel('Wall thickness').fill('50');
    await socket.getByText('Wall thickness must not exceed half of outside diameter at the end that pushes').waitFor();
    await socket.getByLabel('Wall thickness').fill('5');
    await page.locator('bench-own-tools .item').nth(2).locator('summary').click();
    await page.getByRole('button', { name: 'Remove: half ty' }).click();
    await page.getByRole('status').getByText('Removed: half ty.').waitFor();
    await page.getByRole('button', { name: 'Put it back' }).click();
    await expect.poll(() => items(page)).toHaveLength(3);
    await back(page);

    await page.getByRole('button', { name: 'Start an empty position' }).click();
    await unfold(page, 'Tools at hand');
    await expect.poll(() => page.locator('#group-tools .item > summary > span:first-child').allInnerTexts()).toEqual(['Offcut of gas pipe', 'Socket 32']);
    await page.getByRole('button', { name: /Sheets$/ }).click();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'Tools at hand');
    await expect.poll(() => page.locator('#group-tools .item').count()).toBe(4);
    await page.getByRole('button', { name: 'Take in your own tubes and sockets' }).click();
    await page.getByRole('status').getByText('Taken in: 2.').waitFor();
    await expect.poll(() => page.locator('#group-tools .item').count()).toBe(6);
    await page.getByRole('button', { name: 'Note these as your own' }).click();
    await page.getByRole('status').getByText('Noted as your own: 4; there already: 2.').waitFor();
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('go to another device by a file, by a workshop file and by a backup, each once; what is no list changes nothing', async () => {
    const { page, context } = await bench.open({ acceptDownloads: true });
    await show(page);
    await noteTool(page, 'Offcut of gas pipe', '1 3/8 in', '3.2');
    const [list] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the list as a file' }).click()]);
    const listText = readFileSync(await list.path(), 'utf8');
    await back(page);
    const [kept] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Back up everything' }).click()]);
    const backupText = readFileSync(await kept.path(), 'utf8');
    await context.close();

    const there = await bench.open();
    await give(there.page, backupText);
    await there.page.getByRole('status').getByText('Taken in: sheets 0, tubes and sockets 1').waitFor();
    // A list opened on the first screen is taken in and shown.
    await give(there.page, listText);
    await there.page.getByRole('status').getByText('Taken in: 0; here already: 1.').waitFor();
    await give(there.page, readFileSync(new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url), 'utf8'));
    await there.page.getByRole('status').getByText('Taken in: 4; here already: 0.').waitFor();
    await give(there.page, '{"milk": 2}');
    await there.page.getByRole('alert').getByText('This is no list').waitFor();
    await expect.poll(() => items(there.page)).toHaveLength(5);
    expect(there.troubles).toEqual([]);
    await there.context.close();
  });

  it('follow what another tab writes: added, changed and taken away', async () => {
    const { page, context, troubles } = await bench.open();
    await show(page);
    await noteTool(page, 'Socket 32', '43', '5');
    await isKept(page);
    const other = await inAnotherTab(page);
    await other.locator('bench-own-tools .item > summary').first().click();
    await length(page).fill('60');
    await expect.poll(() => length(other).inputValue()).toBe('60');
    await length(other).fill('90');
    await expect.poll(() => length(page).inputValue()).toBe('90');
    await noteTool(other, 'Pipe end', '60', '3');
    await expect.poll(() => items(page)).toEqual(['Socket 32', 'Pipe end']);
    await page.getByRole('button', { name: /^Remove/ }).first().click();
    await expect.poll(() => items(other)).toEqual(['Pipe end']);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('changed in two tabs that cannot hear of each other are overwritten by neither: both states stand in the list', async () => {
    const { page, context } = await bench.open();
    await context.addInitScript(() => { Reflect.deleteProperty(globalThis, 'BroadcastChannel'); });
    await page.reload();
    await show(page);
    await noteTool(page, 'Socket 32', '43', '5');
    await isKept(page);
    const other = await inAnotherTab(page);
    await length(page).fill('60');
    await isKept(page);
    await other.locator('bench-own-tools .item > summary').first().click();
    await length(other).fill('90');
    await expect.poll(() => items(other)).toEqual(['Socket 32', 'Socket 32']);
    await context.close();
  });

  it('are not lost where the device has no room: the page says so, and the list can be saved', async () => {
    const { page, context } = await bench.open();
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); };
      (globalThis as unknown as { makeRoom: () => void }).makeRoom = () => { IDBObjectStore.prototype.put = put; };
    });
    await show(page);
    await noteTool(page, 'Socket 32', '43', '5');
    await page.getByRole('alert').getByText('The storage of this device is full').waitFor();
    await page.evaluate(() => { (globalThis as unknown as { makeRoom: () => void }).makeRoom(); });
    await page.locator('bench-own-tools .item').first().getByLabel('Length').fill('60');
    await isKept(page);
    await expect.poll(() => page.getByRole('alert').count()).toBe(0);
    await page.reload();
    await page.getByText('1; a new job begins with them.').waitFor();
    await context.close();
  });

  it.each([[390, 'light'], [390, 'dark'], [1440, 'light'], [1440, 'dark']] as const)('axe finds nothing in the list at %i px, %s', async (width, colorScheme) => {
    const { page, context } = await bench.open({ viewport: { width, height: 900 }, colorScheme, bypassCSP: true });
    await show(page);
    expect(await faultsOf(page)).toEqual([]);
    await noteTool(page, 'Offcut of gas pipe', '1 3/8 in', '60');
    expect(await faultsOf(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await context.close();
  });
});
