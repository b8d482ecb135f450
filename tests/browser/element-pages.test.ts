import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench } from './internal/bench.js';
import { faultsOf } from './internal/faults.js';

const root = new URL('../../', import.meta.url).pathname;
execFileSync(process.execPath, [join(root, 'docs/write-site.mjs')]);
const site = join(root, 'docs/site/elements/');
const pages = readdirSync(site).filter((name) => name.endsWith('.html'));
const bench = new Bench(site);
beforeAll(() => bench.start());
afterAll(() => bench.stop());

test.each(pages)('%s shows its element alive, in light and dark, and axe finds nothing', async (name) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    const { page, context, troubles } = await bench.open({ colorScheme, viewport: { width: 390, height: 844 } }, name);
    if (name !== 'index.html') {
      const tag = name.replace('.html', '');
      await page.locator(tag).first().waitFor({ state: 'attached' });
      await page.waitForFunction((wanted) => (document.querySelector(wanted)?.shadowRoot?.childElementCount ?? 0) > 0, tag);
    }
    expect(await faultsOf(page)).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  }
});
