import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold, verdictOf } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const drawing = '.drawing :is(seat-section, seat-bearing-section)';

describe('a job from a sample', () => {
  it('opens the bilge pump with its verdict, drawing, plan and drivers, asking nothing of any other place', async () => {
    const { page, troubles, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await expect.poll(() => verdictOf(page)).toMatch(/^suits/);
    await expect.poll(() => page.locator(drawing).getByRole('img').first().getAttribute('aria-label')).toMatch(/Shaft 20\smm, bore 35\smm, seal 7\smm wide/);
    await unfold(page, 'Take out');
    await expect.poll(() => page.locator('#take-out seat-plan li').count()).toBeGreaterThan(8);
    await unfold(page, 'Put in');
    await expect.poll(() => page.locator('seat-driver-choices .card').count()).toBe(4);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('follows a changed reading: a worn bore does not suit, and the drawing shows the gap', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'The bore');
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' }).first();
    await bore.getByLabel('Readings as').selectOption('list');
    for (const reading of [1, 2, 3, 4, 5]) await bore.getByLabel(`Reading ${reading}`, { exact: true }).fill(`35.2${reading}`);
    await expect.poll(() => verdictOf(page)).toBe('does not suit');
    await expect.poll(() => page.locator(drawing).getByRole('img').last().getAttribute('aria-label')).toMatch(/^Gap: \d/);
    await context.close();
  });

  it('draws the driver that is chosen, and the drill while the old one comes out', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Outboard crankshaft');
    await unfold(page, 'Put in');
    const cards = page.locator('seat-driver-choices .card');
    const second = await cards.nth(1).locator('.name').innerText();
    await cards.nth(1).click();
    await expect.poll(() => page.locator(drawing).locator('figcaption').innerText()).toContain(second);
    await page.getByRole('button', { name: 'Seal out' }).click();
    await expect.poll(() => page.locator(drawing).getByRole('img').first().getAttribute('aria-label')).toContain('drill goes through the face');
    await page.locator('.drawing').getByText('Dimensions as a table').click();
    await page.locator('.drawing').getByRole('row', { name: /Circle of the holes/ }).waitFor();
    await context.close();
  });

  it('leads from a dimension of the drawing to its entry', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await page.locator(`${drawing} g[data-name="width"] text`).click();
    await page.keyboard.press('End');
    await page.keyboard.type('.5');
    await expect.poll(() => page.getByLabel('Width marked on the seal').inputValue()).toBe('7.5');
    await expect.poll(() => page.locator(`${drawing} g[data-name="width"] text`).textContent()).toBe('7.5');
    await context.close();
  });

  it('shows the positions of a file and keeps to the one that is picked', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Outboard crankshaft');
    await page.getByLabel('Position', { exact: true }).selectOption({ label: 'crank, drive side' });
    await expect.poll(() => page.locator(drawing).getByRole('img').first().getAttribute('aria-label')).toMatch(/bore 40\smm/);
    await expect.poll(() => page.getByRole('heading', { level: 1 }).innerText()).toContain('crank, drive side');
    await context.close();
  });
});

describe('a nearer look', () => {
  it('magnifies the gap by a tap on its ring or by the button, and says by how much', async () => {
    const { page, context } = await bench.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await openSample(page, 'Bilge pump');
    const times = async () => Number((await page.locator(`${drawing} svg[part=detail] .caption`).textContent())?.split(' ')[0]);
    const before = await times();
    await page.locator(`${drawing} svg[part=drawing] .mark-letter`).tap();
    await expect.poll(times).toBeGreaterThan(before * 1.4);
    await page.locator(drawing).getByRole('button', { name: 'Look nearer' }).tap();
    await expect.poll(times).toBe(before);
    await context.close();
  });

  it('shows the old lip track and the drill midway in the face, to scale', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Winch gearbox');
    await page.getByRole('button', { name: 'Taking out' }).click();
    await expect.poll(() => page.locator(drawing).getByRole('img').first().getAttribute('aria-label')).toMatch(/midway between shaft and case.*The old lip track lies \d/u);
    await page.locator('.drawing').getByText('Dimensions as a table').click();
    await page.locator('.drawing').getByRole('button', { name: /^Old lip track/ }).click();
    await expect.poll(() => page.locator('[data-key="wearTrack.fromFaceMm"]').evaluate((field) => field.matches(':focus-within'))).toBe(true);
    await context.close();
  });
});

describe('what is typed', () => {
  it('keeps 3/4 in as typed and says 19.05 mm beside it', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'The seal, as marked');
    const shaft = page.getByLabel('Shaft diameter marked on the seal');
    await shaft.fill('3/4 in');
    await expect.poll(() => shaft.inputValue()).toBe('3/4 in');
    await page.locator('seat-length-field', { has: shaft }).getByText('= 19.05 mm').waitFor();
    await expect.poll(() => page.locator(drawing).getByRole('img').first().getAttribute('aria-label')).toMatch(/Shaft 19\.05\smm/);
    await context.close();
  });

  it('says what would be understood, keeps the last good result and marks it', async () => {
    const { page, troubles, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    const before = await verdictOf(page);
    await unfold(page, 'The seal, as marked');
    const width = page.getByLabel('Width marked on the seal');
    await width.fill('seven');
    const field = page.locator('seat-length-field', { has: width });
    await field.getByText('understood are 19.05').waitFor();
    await expect.poll(() => width.getAttribute('aria-invalid')).toBe('true');
    await page.locator('section.verdict').getByText('Not up to date').waitFor();
    await expect.poll(() => verdictOf(page)).toBe(before);
    await width.fill('600');
    await field.getByText('up to and including 60').waitFor();
    await width.fill('7');
    await expect.poll(() => page.locator('section.verdict').getByText('Not up to date').count()).toBe(0);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('saves what was typed, as typed', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Old fire pump');
    await unfold(page, 'Where it sits');
    await page.getByLabel(/^Room from the inner face/).fill('7/16');
    await page.getByText(/= 0\.4375\sin/).waitFor();
    await allKept(page);
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as file' }).click()]);
    const saved = JSON.parse(readFileSync(await download.path(), 'utf8')) as { machines: { positions: { clearBehindMm: unknown; shaft: { diameterMm: unknown } }[] }[] };
    expect(saved.machines[0]?.positions[0]?.clearBehindMm).toBe('7/16 in');
    expect(saved.machines[0]?.positions[0]?.shaft.diameterMm).toBe('3/4 in');
    await context.close();
  });

  it('says why a file is not opened', async () => {
    const { page, context } = await bench.open();
    const choose = page.getByLabel('Open a workshop file');
    await choose.setInputFiles({ name: 'newer.json', mimeType: 'application/json', buffer: Buffer.from('{"format":"seatwright","version":7,"machines":[]}') });
    await page.getByRole('alert').getByText('newer version').waitFor();
    await choose.setInputFiles({ name: 'shopping.json', mimeType: 'application/json', buffer: Buffer.from('{"milk": 2}') });
    await page.getByRole('alert').getByText('not a workshop file').waitFor();
    await context.close();
  });
});

describe('an empty position', () => {
  it('leads from nothing to a verdict, naming the next thing to enter', async () => {
    const { page, troubles, context } = await bench.open({ viewport: { width: 390, height: 844 } });
    await page.getByRole('button', { name: 'Start an empty position' }).click();
    await page.getByRole('button', { name: 'Begin with: the shaft diameter marked on the seal' }).click();
    await page.keyboard.type('20');
    await page.getByLabel('Outside diameter marked on the seal').fill('35');
    await page.getByLabel('Width marked on the seal').fill('7');
    await page.getByLabel('metal case', { exact: true }).check();
    await page.getByLabel('Rubber of the lip').selectOption('NBR');
    await expect.poll(() => verdictOf(page)).toBe('cannot tell');

    await page.getByRole('button', { name: 'Take this reading next: the bore' }).click();
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' });
    await bore.getByLabel('Measured with').selectOption({ label: 'Inside micrometer, rod and sleeve' });
    await bore.getByLabel('Reading 1').fill('35.012');
    await bore.getByLabel('Reading 2').fill('35.015');
    await page.getByLabel('Housing material').selectOption({ label: 'Grey cast iron GJL-250 / G3000' });

    await unfold(page, 'The shaft');
    const shaft = page.getByRole('group', { name: 'Shaft, where the lip runs' });
    await shaft.getByLabel('Measured with').selectOption({ label: 'Outside micrometer' });
    await shaft.getByLabel('Reading 1').fill('19,972');

    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('1450');
    await page.getByLabel('Fluid at the lip').selectOption('grease');
    await page.getByLabel('Highest fluid temperature').fill('131 °F');
    await page.getByText('= 55 °C').waitFor();

    await expect.poll(() => verdictOf(page)).toMatch(/^suits/);
    await expect.poll(() => page.locator('#put-in > summary').innerText()).toMatch(/flush/);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('does not count a reading before its instrument is named', async () => {
    const { page, context } = await bench.open();
    await openSample(page, 'Deck wash pump');
    await unfold(page, 'The bore');
    const bore = page.getByRole('group', { name: 'Bore, where the seal sits' });
    await bore.getByLabel('Reading 1').fill('47.01');
    await bore.getByText('Choose what it was measured with').waitFor();
    const reasons = () => page.locator('section.verdict seat-verdict').getByRole('listitem').allInnerTexts();
    expect((await reasons()).join(' ')).toContain('The bore has not been measured');
    await bore.getByLabel('Measured with').selectOption({ label: 'Inside micrometer, rod and sleeve' });
    await expect.poll(async () => (await reasons()).join(' ')).not.toContain('The bore has not been measured');
    await expect.poll(() => bore.getByLabel('Reading 1').inputValue()).toBe('47.01');
    await context.close();
  });
});

describe('a bearing', () => {
  it('alone: its seats, what is missing, and how a tighter class changes it', async () => {
    const { page, troubles, context } = await bench.open();
    await openSample(page, 'Anchor winch');
    await expect.poll(() => verdictOf(page)).toBe('cannot tell');
    await page.getByRole('button', { name: /the shaft seat of the bearing/ }).waitFor();
    await unfold(page, 'The bearing');
    await page.getByLabel('Tolerance class of the shaft seat').fill('m6');
    await expect.poll(() => page.locator('#decide').getByRole('row', { name: /^Shaft/ }).innerText()).toMatch(/9\sµm to 37\sµm/u);
    await expect.poll(() => verdictOf(page)).not.toBe('cannot tell');
    await unfold(page, 'Put in');
    await expect.poll(() => page.locator('#put-in seat-plan li').count()).toBeGreaterThan(4);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('behind a seal: added by hand, out after the seal and in before it', async () => {
    const { page, troubles, context } = await bench.open();
    await openSample(page, 'Bilge pump');
    await page.getByRole('button', { name: '+ Add the bearing behind it' }).click();
    await unfold(page, 'The bearing');
    await page.getByLabel('Designation on the ring').fill('6204');
    await page.getByLabel('Tolerance class of the shaft seat').fill('k5');
    await page.getByLabel('Tolerance class of the housing seat').fill('J7');
    await page.getByRole('heading', { name: /^Seats and clearance: 6204/ }).waitFor();
    await unfold(page, 'Put in');
    const top = async (text: RegExp) => (await page.locator('#put-in').getByText(text).first().boundingBox())?.y ?? Number.NaN;
    await expect.poll(() => top(/^Compare the new bearing/u)).toBeLessThan(await top(/^Compare the new seal/u));
    await unfold(page, 'Take out');
    await expect.poll(() => page.locator('#take-out seat-plan').count()).toBe(2);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
