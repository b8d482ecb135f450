import { afterAll, beforeAll, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold, verdictOf } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

it('works without a network from the second visit: opens, computes, keeps', async () => {
  const { page, context, troubles } = await bench.open();
  await page.getByRole('status').getByText('works without a network').waitFor();
  await context.setOffline(true);
  await page.reload();
  await openSample(page, 'Winch gearbox');
  expect(await verdictOf(page)).not.toBe('');
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill('900');
  await allKept(page);
  await page.locator('details.working > summary').click();
  await page.locator('seat-working li').first().waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});

it('can be installed: a manifest with name, icon and start', async () => {
  const { page, context } = await bench.open();
  const manifest = await page.evaluate(async () => (await fetch(document.querySelector<HTMLLinkElement>('link[rel=manifest]')?.href ?? '')).json() as Promise<Record<string, unknown>>);
  expect(manifest).toMatchObject({ name: 'Seatwright', display: 'standalone', start_url: './' });
  await context.close();
});
