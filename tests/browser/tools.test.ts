import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Bench, openSample, unfold } from './internal/bench.js';

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
    expect(await begun.locator('input[aria-invalid=true]').count()).toBe(0);
    await page.locator('section.verdict').getByRole('button', { name: 'Go to the entry that cannot be read' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });
});
