import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { Bench, openSample, unfold, verdictOf } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const stepsIn = async (page: Page, block: string) => (await page.locator(`#${block} seat-plan`).first().getByRole('listitem').allInnerTexts()).join('\n');

describe('several seals in one bore', () => {
  it('a second one keeps water out: it is added, named, and judged by its own side and fluid', async () => {
    const { page, troubles, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await openSample(page, 'Winch gearbox');
    await page.getByRole('button', { name: '+ Another seal in this bore' }).click();
    expect(await page.getByLabel('Which seal').locator('option').allInnerTexts()).toEqual(['drum shaft seal 45 x 62 x 8', 'seal 2']);
    expect(await page.getByLabel('Which seal').inputValue()).toBe('1');
    await unfold(page, 'The seal, as marked');
    expect(await page.getByLabel('Outside diameter marked on the seal').inputValue()).toBe('62');
    await page.getByLabel('Name of the part').fill('water seal');
    await unfold(page, 'Where it sits');
    await page.getByRole('group', { name: 'Side the sealing lip faces' }).getByLabel('outward').check();
    await page.getByRole('group', { name: 'Side the fluid is on' }).getByLabel('outside').check();
    await unfold(page, 'How it runs');
    await page.getByLabel('Fluid at the lip').selectOption('water');
    await unfold(page, 'Take out');
    await expect.poll(() => stepsIn(page, 'take-out')).toMatch(/Now "water seal" comes out[^]*Now "drum shaft seal 45 x 62 x 8" comes out/u);
    await unfold(page, 'Put in');
    await expect.poll(() => stepsIn(page, 'put-in')).toMatch(/Now "drum shaft seal 45 x 62 x 8" goes in[^]*Now "water seal" goes in/u);
    // A second one may not stand in the first: 13 mm of bore do not take both.
    await expect.poll(() => verdictOf(page)).toBe('does not suit');
    await page.locator('#decide').getByText('would stand in each other by').waitFor();
    await unfold(page, 'The bore');
    await page.getByLabel('Depth of the bore').fill('25');
    await page.getByLabel('Which seal').selectOption('0');
    await unfold(page, 'Where it sits');
    await page.getByLabel('Depth of its outer face below the housing face').fill('15');
    await page.locator('#decide').getByText('7 mm are left between them').waitFor();
    // The first one keeps what was entered for it.
    await unfold(page, 'How it runs');
    expect(await page.getByLabel('Fluid at the lip').inputValue()).toBe('gear-oil');
    expect(await page.getByRole('group', { name: 'Side the sealing lip faces' }).getByLabel('inward').isChecked()).toBe(true);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('parts are taken away again, the last one excepted, and undo brings them back', async () => {
    const { page, troubles, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    const removals = () => page.locator('#measure').getByRole('button', { name: /^Remove: / }).allInnerTexts();
    expect(await removals()).toEqual([]);
    await page.getByRole('button', { name: '+ Add the bearing behind it' }).click();
    await page.getByLabel('Designation on the ring').fill('6203');
    await page.getByRole('button', { name: '+ Another seal in this bore' }).click();
    expect(await removals()).toEqual(['Remove: seal 2', 'Remove: The bearing']);
    await page.getByRole('button', { name: 'Remove: The bearing' }).click();
    await expect.poll(removals).toEqual([expect.stringMatching(/^Remove: /u)]);
    await page.getByLabel('Which seal').selectOption({ label: 'seal 2' });
    await page.getByRole('button', { name: 'Remove: seal 2' }).click();
    await expect.poll(removals).toEqual([]);
    expect(await page.getByLabel('Which seal').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => page.getByLabel('Which seal').locator('option').count()).toBe(2);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => page.getByLabel('Designation on the ring').inputValue()).toBe('6203');
    // The bearing alone: the seal goes, and comes again.
    await page.getByLabel('Which seal').selectOption({ label: 'seal 2' });
    for (const name of ['Remove: seal 2', /^Remove: (?!The bearing)/u]) await page.locator('#measure').getByRole('button', { name }).click();
    await page.getByRole('button', { name: '+ Add a seal' }).click();
    await page.getByRole('button', { name: 'Begin with: the shaft diameter marked on the seal' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('has no fault of access with two seals on it', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, colorScheme, bypassCSP: true });
      await openSample(page, 'Winch gearbox');
      await page.getByRole('button', { name: '+ Another seal in this bore' }).click();
      await unfold(page, 'Take out');
      await expect.poll(() => stepsIn(page, 'take-out')).toContain('Now "seal 2" comes out');
      expect(await faultsOf(page)).toEqual([]);
      await context.close();
    }
  });
});
