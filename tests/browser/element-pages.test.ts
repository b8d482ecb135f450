import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Bench } from './internal/bench.js';

const root = new URL('../../', import.meta.url).pathname;
execFileSync(process.execPath, [join(root, 'docs/write-site.mjs')]);
const site = join(root, 'docs/site/elements/');
const pages = readdirSync(site).filter((name) => name.endsWith('.html'));
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

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
    await page.addScriptTag({ content: axe });
    const violations = await page.evaluate(async () => (await (globalThis as unknown as { axe: { run(target: Document, options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } }).axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] })).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`));
    expect(violations).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  }
});
