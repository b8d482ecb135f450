import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** Faults by the rules of WCAG 2.2 A and AA, as rule and place. The page must be opened with `bypassCSP`. */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  await page.addScriptTag({ path: axePath });
  const results = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(root: Document, options: object): Promise<AxeResults> } };
    return axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
  });
  return results.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.flat().join(' ')} ${node.failureSummary ?? ''}`));
}
