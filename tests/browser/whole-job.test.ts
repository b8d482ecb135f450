import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, verdictOf } from './internal/bench.js';
import { isFocusInSight, tabTo } from './internal/by-keyboard.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const phone = { viewport: { width: 390, height: 844 } };

describe('a whole job by keyboard alone', () => {
  const opened = async () => {
    const { page, troubles, context } = await bench.open(phone);
    const to = async (name: string | RegExp) => {
      await tabTo(page, name);
      expect(await isFocusInSight(page), `in sight: ${name}`).toBe(true);
    };
    const press = async (name: string | RegExp) => {
      await to(name);
      await page.keyboard.press('Enter');
    };
    const enter = async (name: string | RegExp, text: string) => {
      await to(name);
      await page.keyboard.type(text);
    };
    return { page, troubles, context, to, press, enter };
  };

  it('a seal: from an empty position to where the new one ends', async () => {
    const { page, troubles, context, to, press, enter } = await opened();
    await press(/^Start an empty position/u);
    await press(/^Begin with: the shaft diameter/u);
    await page.keyboard.type('20');
    await enter('Outside diameter marked on the seal', '35');
    await enter('Width marked on the seal', '7');
    await to('metal case');
    await page.keyboard.press('Space');
    await expect.poll(() => page.getByLabel('metal case', { exact: true }).isChecked()).toBe(true);
    await enter(/^Rubber of the lip/u, 'NBR');
    await expect.poll(() => verdictOf(page)).toBe('cannot tell');
    await press('The shaft');
    await enter(/^Measured with/u, 'Outside micrometer');
    await enter('Reading 1', '19.972');
    await press('The bore');
    await enter(/^Measured with/u, 'Inside micrometer, rod');
    await enter('Reading 1', '35.012');
    await enter(/^Housing material/u, 'Grey cast iron');
    await press('How it runs');
    await enter(/^Highest shaft speed/u, '1450');
    await enter(/^Fluid at the lip/u, 'grease');
    await enter(/^Highest fluid temperature/u, '55');
    await expect.poll(() => verdictOf(page)).toMatch(/^suits/u);
    await press('Put in');
    await page.locator('#put-in seat-plan').getByRole('listitem').first().waitFor();
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('a bearing: from the sample with its seat missing to how it is driven in', async () => {
    const { page, troubles, context, press, enter } = await opened();
    await press(/Anchor winch/u);
    await page.locator('section.verdict seat-verdict .stamp').waitFor();
    await expect.poll(() => verdictOf(page)).toBe('cannot tell');
    await press('The bearing');
    await enter('Tolerance class of the shaft seat', 'm6');
    await expect.poll(() => verdictOf(page)).not.toBe('cannot tell');
    await press('Take out');
    await page.locator('#take-out seat-plan').getByRole('listitem').first().waitFor();
    await press('Put in');
    await page.locator('#put-in seat-plan').getByRole('listitem').first().waitFor();
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

describe('a whole job by touch', () => {
  /** One thumb: taps, and the keys of the keyboard that the phone puts up; a list of the phone's own is chosen from. */
  const opened = async () => {
    const { page, troubles, context } = await bench.open({ ...phone, hasTouch: true, isMobile: true });
    const open = (heading: string) => page.locator('summary', { has: page.getByRole('heading', { name: heading, exact: true }) }).tap();
    const type = async (field: Locator, text: string) => {
      await field.tap();
      await page.keyboard.type(text);
    };
    return { page, troubles, context, open, type };
  };
  const noSideways = async (page: Page) => {
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  };

  it('a seal: from an empty position to the driver that is chosen', async () => {
    const { page, troubles, context, open, type } = await opened();
    await page.getByRole('button', { name: 'Start an empty position' }).tap();
    await page.getByRole('button', { name: /^Begin with/u }).tap();
    await page.keyboard.type('20');
    await type(page.getByLabel('Outside diameter marked on the seal'), '35');
    await type(page.getByLabel('Width marked on the seal'), '7');
    await page.getByLabel('metal case', { exact: true }).tap();
    await page.getByLabel('Rubber of the lip').selectOption('NBR');
    await page.getByRole('button', { name: 'Take this reading next: the bore' }).tap();
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' }).first();
    await bore.getByLabel('Measured with').selectOption('inside-micrometer-rod');
    await type(bore.getByLabel('Reading 1'), '35.012');
    await page.getByLabel('Housing material').selectOption({ label: 'Grey cast iron GJL-250 / G3000' });
    await open('The shaft');
    const shaft = page.getByRole('group', { name: 'Shaft, where the lip runs' }).first();
    await shaft.getByLabel('Measured with').selectOption('outside-micrometer');
    await type(shaft.getByLabel('Reading 1'), '19.972');
    await open('How it runs');
    await type(page.getByLabel('Highest shaft speed'), '1450');
    await page.getByLabel('Fluid at the lip').selectOption('grease');
    await type(page.getByLabel('Highest fluid temperature'), '55');
    await expect.poll(() => verdictOf(page)).toMatch(/^suits/u);
    await open('Put in');
    const driver = page.locator('seat-driver-choices .card').nth(1);
    const name = await driver.locator('.name').innerText();
    await driver.tap();
    await expect.poll(() => page.locator('#put-in > summary').innerText()).toContain(name);
    await noSideways(page);
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('a bearing: added behind a seal, and its plan read', async () => {
    const { page, troubles, context, open, type } = await opened();
    await page.getByRole('button', { name: 'Bilge pump' }).tap();
    await page.getByRole('button', { name: '+ Add the bearing behind it' }).tap();
    await type(page.getByLabel('Designation on the ring'), '6204');
    await type(page.getByLabel('Tolerance class of the shaft seat'), 'k5');
    await type(page.getByLabel('Tolerance class of the housing seat'), 'J7');
    await page.getByRole('heading', { name: /^Seats and clearance: 6204/u }).waitFor();
    await open('Put in');
    await page.locator('#put-in').getByText(/^Compare the new bearing/u).first().waitFor();
    await noSideways(page);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
