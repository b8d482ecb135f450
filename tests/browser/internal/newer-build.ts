import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('../../../apps/bench/', import.meta.url));

/** What the newer page says on its first screen, where the present one says its own heading. */
export const newerHeading = 'Open a job sheet, newer';

/** A second build of the page from the same source with one sentence changed: other chunks, another worker. Returns its folder. */
export async function newerBuild(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), 'seatwright-newer-'));
  let isChanged = false;
  const change = {
    name: 'one-sentence-changed',
    transform(code: string): string | undefined {
      if (!code.includes("'Open a job sheet'")) return undefined;
      isChanged = true;
      return code.replace("'Open a job sheet'", `'${newerHeading}'`);
    },
  };
  const before = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  await build({ root, configFile: join(root, 'vite.config.ts'), logLevel: 'error', plugins: [{ ...change, enforce: 'pre' }], build: { outDir, emptyOutDir: true } });
  process.env['NODE_ENV'] = before;
  if (!isChanged) throw new Error('the sentence to change was not found');
  return outDir;
}
