import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Bench, openSample, unfold, verdictOf } from './internal/bench.js';
import { isFocusInSight, tabTo } from './internal/by-keyboard.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

/** Unfolds everything there is. */
async function unfoldAll(page: Page): Promise<void> {
  await page.locator('details').evaluateAll((all) => { for (const details of all) (details as HTMLDetailsElement).open = true; });
}

const sizes = [390, 1440] as const;
const schemes = ['light', 'dark'] as const;

describe.each(sizes.flatMap((width) => schemes.map((colorScheme) => ({ width, colorScheme }))))('at $width px, $colorScheme', ({ width, colorScheme }) => {
  const open = () => bench.open({ viewport: { width, height: 900 }, colorScheme, bypassCSP: true });

  it('has no fault on the first screen, an empty sheet, a full sheet and a stale one', async () => {
    const { page, context } = await open();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Start an empty position' }).click();
    await page.getByRole('button', { name: /^Begin with/ }).waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: /^Seatwright/ }).click();
    await openSample(page, 'Winch gearbox');
    await unfoldAll(page);
    await page.locator('seat-working li').first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: /^Seatwright/ }).click();
    await openSample(page, 'Crank with its bearing');
    await unfoldAll(page);
    expect(await faultsOf(page)).toEqual([]);
    await page.getByLabel('Width marked on the seal').fill('eight');
    await page.locator('section.verdict').getByText('Not up to date').waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await context.close();
  });

  it('does not scroll sideways', async () => {
    const { page, context } = await open();
    await openSample(page, 'Crank with its bearing');
    await unfoldAll(page);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await context.close();
  });
});

describe('by hand', () => {
  it('gives every target on a phone at least 48 px in height', async () => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await openSample(page, 'Bilge pump');
    for (const heading of ['The seal, as marked', 'The bore', 'Put in']) await unfold(page, heading);
    const small = await page.evaluate(() => {
      const found: string[] = [];
      const look = (root: ParentNode) => {
        for (const element of root.querySelectorAll<HTMLElement>('*')) {
          if (element.shadowRoot !== null) look(element.shadowRoot);
          if (!element.matches('button, summary, select, input, label:has(input)') || element.closest('.print-sheet') !== null) continue;
          const box = (element.closest('label') ?? element.closest('.line') ?? element).getBoundingClientRect();
          if (box.height > 1 && box.height < 47.5) found.push(`${element.tagName} ${element.textContent.trim().slice(0, 30)} ${box.height}`);
        }
      };
      look(document);
      return found;
    });
    expect(small).toEqual([]);
    await context.close();
  });

  it('offers on a touch screen the characters that a decimal keypad lacks', async () => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await openSample(page, 'Bilge pump');
    await unfold(page, 'The seal, as marked');
    const shaft = page.getByLabel('Shaft diameter marked on the seal');
    await shaft.fill('3');
    await shaft.tap();
    await page.keyboard.press('End');
    const keys = page.locator('seat-length-field', { has: shaft }).locator('.keys button');
    await keys.filter({ hasText: '⁄' }).tap();
    await page.keyboard.type('4');
    await keys.filter({ hasText: 'in' }).tap();
    await expect.poll(() => shaft.inputValue()).toBe('3/4 in');
    await context.close();
  });
});

describe('by keyboard alone', () => {
  it('opens a sample, goes to the next reading, enters it and sees the verdict change', async () => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await tabTo(page, /^Deck wash pump/u);
    await page.keyboard.press('Enter');
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await expect.poll(() => verdictOf(page)).toBe('cannot tell');
    await tabTo(page, /Take this reading next: the bore/u);
    await page.keyboard.press('Enter');
    await page.keyboard.type('Inside micrometer, rod');
    await tabTo(page, 'Reading 1');
    await page.keyboard.type('47.4');
    await expect.poll(() => verdictOf(page)).toBe('does not suit');
    expect(await isFocusInSight(page)).toBe(true);
    await context.close();
  });
});
