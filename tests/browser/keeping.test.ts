import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const anotherPage = async (context: BrowserContext, address: string): Promise<Page> => {
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  await page.goto(address);
  return page;
};

async function note(page: Page, text: string): Promise<void> {
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill(text);
}

describe('what is typed', () => {
  it('is found again after the page was killed in the middle of typing', async () => {
    const { page, context, troubles } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('');
    await page.getByLabel('Highest shaft speed').pressSequentially('1725');
    await allKept(page);
    await page.close({ runBeforeUnload: false });
    const again = await anotherPage(context, address);
    await again.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(again, 'How it runs');
    expect(await again.getByLabel('Highest shaft speed').inputValue()).toBe('1725');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('in two tabs is overwritten by neither: the later one goes on as a copy and says so', async () => {
    const { page, context } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const other = await anotherPage(context, address);
    await other.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await note(page, '1100');
    await page.waitForTimeout(300);
    await note(other, '1200');
    await other.getByRole('status').getByText('Kept as a copy').waitFor();
    const third = await anotherPage(context, address);
    expect((await third.locator('.kept .shelf strong').allInnerTexts()).toSorted()).toEqual(['Bilge pump 2, pump shaft, motor side', 'Bilge pump 2, pump shaft, motor side (2)']);
    await context.close();
  });

  it('can be removed, once asked', async () => {
    const { page, context } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const again = await anotherPage(context, address);
    again.on('dialog', (dialog) => void dialog.accept());
    await again.getByRole('button', { name: /^Remove: Bilge pump 2/ }).click();
    await expect.poll(() => again.locator('.kept').count()).toBe(0);
    await context.close();
  });

  it('is not kept where the browser keeps nothing, and the page says so', async () => {
    const { page, context } = await bench.open();
    await page.addInitScript(() => { Object.defineProperty(globalThis, 'indexedDB', { value: { open: () => { throw new DOMException('denied', 'SecurityError'); } } }); });
    await page.reload();
    await page.getByText('this browser keeps nothing').waitFor();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await page.getByRole('status').getByText('Not kept: save it as a file').waitFor();
    await context.close();
  });
});

describe('what was changed', () => {
  it('is taken back and done again, a field at a time', async () => {
    const { page, context, troubles } = await bench.open();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    const speed = page.getByLabel('Highest shaft speed');
    const before = await speed.inputValue();
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await speed.fill('');
    await speed.pressSequentially('9000');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => speed.inputValue()).toBe(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => speed.inputValue()).toBe('9000');
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
