import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Bench, openSample } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe('on paper', () => {
  it.each([
    ['Bilge pump', 1],
    ['Outboard crankshaft', 1],
    ['Winch gearbox', 1],
    ['Old fire pump', 1],
    ['Deck wash pump', 1],
    ['Fuel transfer pump', 1],
    ['Crank with its bearing', 2],
    ['Anchor winch', 1],
  ] as const)('prints %s on one page of A4 or Letter, and on two what needs more', async (title, most) => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, title);
    const margin = { top: '6mm', bottom: '6mm', left: '7mm', right: '7mm' };
    for (const paper of [{ preferCSSPageSize: true }, { format: 'Letter', margin }]) expect(pagesOf(await page.pdf(paper))).toBe(most);
    await context.close();
  });

  it.each(['Bilgenpumpe', 'Alte Feuerlöschpumpe', 'Deckwaschpumpe'])('prints %s on one page in German too', async (title) => {
    const { page, context } = await bench.open({ locale: 'de-DE' });
    await openSample(page, title);
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
    await context.close();
  });

  it('sets a sheet as large as its page holds it: a short one larger, a long one smaller', async () => {
    const { page, context, troubles } = await bench.open();
    const zoomOf = async (title: string) => {
      await openSample(page, title);
      await page.emulateMedia({ media: 'print' });
      const columns = page.locator('.print-sheet .columns');
      await columns.waitFor();
      const zoom = await columns.evaluate((element) => Number(getComputedStyle(element).zoom));
      await page.emulateMedia({ media: 'screen' });
      await page.getByRole('button', { name: 'Sheets' }).click();
      return zoom;
    };
    const [short, ordinary, long] = [await zoomOf('Anchor winch'), await zoomOf('Bilge pump'), await zoomOf('Outboard crankshaft')];
    expect(short).toBeGreaterThan(1.1);
    expect(ordinary).toBeCloseTo(1, 1);
    expect(long).toBeLessThan(0.95);
    expect(troubles).toEqual([]);
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

  it('draws the tools where they end, though on the screen they come sliding', async () => {
    const { page, context } = await bench.open({ reducedMotion: 'no-preference' });
    await openSample(page, 'Crank with its bearing');
    const animated = page.locator('.tool.moved');
    await expect.poll(() => animated.first().evaluate((tool) => getComputedStyle(tool).animationName)).toBe('slide-in');
    await page.emulateMedia({ media: 'print', reducedMotion: 'no-preference' });
    await expect.poll(() => animated.evaluateAll((all) => all.filter((tool) => tool.closest('svg') !== null).map((tool) => getComputedStyle(tool).animationName))).toEqual(expect.arrayContaining(['none']));
    expect(await animated.evaluateAll((all) => all.map((tool) => getComputedStyle(tool).animationName).filter((name) => name !== 'none'))).toEqual([]);
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
