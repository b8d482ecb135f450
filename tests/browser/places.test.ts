import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const heading = (page: Page) => page.getByRole('heading', { level: 1 }).innerText();
const panel = (page: Page) => page.getByRole('region', { name: 'Machines and positions' });
const show = (page: Page) => page.getByRole('button', { name: 'Machines and positions' }).click();
const toStart = (page: Page) => page.getByRole('button', { name: /Sheets$/ }).click();
const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true }).click();
const redo = (page: Page) => page.getByRole('button', { name: 'Redo', exact: true }).click();
const positions = (page: Page) => panel(page).getByLabel(/^Position \d/).evaluateAll((all) => all.map((input) => (input as HTMLInputElement).value));

describe('machines and positions', () => {
  it('are added, renamed and taken away in the page, on one shaft or another, and every step is undone and done again', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('1725 rp');
    await show(page);
    await panel(page).getByRole('button', { name: '+ Another position on this shaft' }).click();
    await expect.poll(() => heading(page)).toContain('new position');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('impeller side');
    await expect.poll(() => positions(page)).toEqual(['pump shaft, motor side', 'impeller side']);
    // It turns as the shaft does, as typed.
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1725 rp');

    await panel(page).getByRole('button', { name: '+ Another shaft of this machine' }).click();
    await expect.poll(() => panel(page).getByLabel('Shaft', { exact: true }).count()).toBe(2);
    await panel(page).getByRole('button', { name: '+ Another machine' }).click();
    await expect.poll(() => heading(page)).toContain('New machine');
    await panel(page).getByLabel('Machine', { exact: true }).last().fill('Fire pump');
    await panel(page).getByRole('button', { name: 'Remove: Bilge pump 2' }).click();
    await page.getByRole('status').getByText('Removed: Bilge pump 2. Undo brings it back.').waitFor();
    await expect.poll(() => heading(page)).toContain('Fire pump');

    await undo(page);
    await expect.poll(() => positions(page)).toEqual(['pump shaft, motor side', 'impeller side', 'new position', 'new position']);
    await undo(page);
    await undo(page);
    await undo(page);
    await undo(page);
    await undo(page);
    await expect.poll(() => positions(page)).toEqual(['pump shaft, motor side']);
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1725 rp');
    for (let i = 0; i < 6; i += 1) await redo(page);
    await expect.poll(() => heading(page)).toContain('Fire pump');
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('the position that is looked at stays when another goes, its neighbour comes when it goes itself, and the last stays', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Outboard crankshaft');
    await page.getByLabel('Position', { exact: true }).selectOption({ label: 'crank, drive side' });
    await show(page);
    await panel(page).getByRole('button', { name: 'Remove: crank, flywheel side' }).click();
    await expect.poll(() => positions(page)).toEqual(['crank, drive side']);
    await expect.poll(() => heading(page)).toContain('crank, drive side');
    await panel(page).getByRole('button', { name: 'Remove: crank, drive side' }).click();
    await page.getByRole('status').getByText('The last position stays').waitFor();
    await expect.poll(() => positions(page)).toEqual(['crank, drive side']);
    await undo(page);
    await expect.poll(() => positions(page)).toEqual(['crank, flywheel side', 'crank, drive side']);
    await panel(page).getByRole('button', { name: 'Open: crank, flywheel side' }).click();
    await expect.poll(() => heading(page)).toContain('crank, flywheel side');
    await expect.poll(() => panel(page).count()).toBe(0);
    await context.close();
  });

  it('stand on the first screen: each machine with its shaft drawn, its positions on it, and when each is due; a position half typed is listed, and silences no other', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, 'Outboard crankshaft');
    await unfold(page, 'The seal, as marked');
    await page.getByLabel('Shaft diameter marked on the seal').fill('twen');
    await show(page);
    await panel(page).getByLabel('Position 1').fill('');
    await allKept(page);
    await toStart(page);
    const machine = page.locator('.kept > li');
    await machine.getByRole('heading', { name: /^Tender outboard, 2-stroke/ }).waitFor();
    await expect.poll(() => machine.locator('svg.shaft-line').count()).toBe(1);
    await expect.poll(() => machine.locator('svg.shaft-line text').allTextContents()).toEqual(['1', '2']);
    await machine.getByRole('button', { name: /crank, drive side/ }).getByText(/due/).waitFor();
    await machine.getByRole('button', { name: /without a name/ }).click();
    await unfold(page, 'The seal, as marked');
    await expect.poll(() => page.getByLabel('Shaft diameter marked on the seal').inputValue()).toBe('twen');
    await toStart(page);
    await machine.getByRole('button', { name: /crank, drive side/ }).click();
    await expect.poll(() => heading(page)).toContain('crank, drive side');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('change places along their shaft by touch and by key; what is open stays open, and undo moves it back', async () => {
    const { page, context, troubles } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await openSample(page, 'Outboard crankshaft');
    const open = await heading(page);
    const before = ['crank, flywheel side', 'crank, drive side'];
    await show(page);
    await expect.poll(() => positions(page)).toEqual(before);
    const way = page.getByRole('button', { name: 'Move one place on along the shaft: crank, flywheel side' });
    await expect.poll(async () => (await way.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(48);
    await way.tap();
    await expect.poll(() => positions(page)).toEqual([...before].reverse());
    await page.getByRole('status').getByText('Moved: crank, flywheel side.').waitFor();
    await expect.poll(() => heading(page)).toBe(open);
    // The way back is under the hand: the same position has the focus, at its other place.
    await page.getByRole('button', { name: 'Move one place back along the shaft: crank, flywheel side' }).press('Enter');
    await expect.poll(() => positions(page)).toEqual(before);
    await undo(page);
    await expect.poll(() => positions(page)).toEqual([...before].reverse());
    await undo(page);
    await expect.poll(() => positions(page)).toEqual(before);
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it.each([[390, 'light'], [390, 'dark'], [1440, 'light'], [1440, 'dark']] as const)('axe finds nothing in them at %i px, %s', async (width, colorScheme) => {
    const { page, context } = await bench.open({ viewport: { width, height: 900 }, colorScheme, bypassCSP: true });
    await openSample(page, 'Outboard crankshaft');
    await show(page);
    await panel(page).getByRole('button', { name: '+ Another shaft of this machine' }).click();
    await panel(page).getByRole('button', { name: '+ Another machine' }).click();
    await allKept(page);
    expect(await faultsOf(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await toStart(page);
    await page.locator('.kept .due').first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await context.close();
  });
});
