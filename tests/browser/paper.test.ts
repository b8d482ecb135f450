import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Bench, openSample } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

describe('on paper', () => {
  it.each([
    ['Bilge pump', 1],
    ['Outboard crankshaft', 2],
    ['Winch gearbox', 2],
    ['Old fire pump', 2],
    ['Deck wash pump', 2],
    ['Fuel transfer pump', 2],
    ['Crank with its bearing', 3],
    ['Anchor winch', 2],
  ] as const)('prints %s, an ordinary job on one page of A4 and what needs more on two', async (title, most) => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, title);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThanOrEqual(1);
    expect(pages).toBeLessThanOrEqual(most);
    await context.close();
  });

  it('shows the sheet and nothing of the form, in black on white even at night', async () => {
    const { page, context } = await bench.open({ colorScheme: 'dark' });
    await openSample(page, 'Bilge pump');
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await expect.poll(() => page.locator('.screen').evaluateAll((all) => all.filter((element) => element.checkVisibility()).length)).toBe(0);
    const sheet = page.locator('.print-sheet');
    await expect.poll(() => sheet.locator('h2', { hasText: 'Take out' }).isVisible()).toBe(true);
    await expect.poll(() => sheet.locator('seat-section').count()).toBe(2);
    await expect.poll(() => sheet.locator('.blanks span').count()).toBe(13);
    await expect.poll(() => sheet.evaluate((element) => [getComputedStyle(element).color, getComputedStyle(document.documentElement).backgroundColor])).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    await context.close();
  });

  it('draws a bearing going in and coming out, beside its seal', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Crank with its bearing');
    await page.emulateMedia({ media: 'print' });
    const drawings = page.locator('.print-sheet seat-bearing-section svg[part=drawing]');
    await expect.poll(() => drawings.evaluateAll((all) => all.filter((svg) => svg.getBoundingClientRect().width > 0).map((svg) => svg.getAttribute('aria-label') ?? ''))).toEqual(expect.arrayContaining([expect.stringMatching(/The bearing as driven in/u), expect.stringMatching(/Taking the bearing out/u)]));
    await context.close();
  });
});
