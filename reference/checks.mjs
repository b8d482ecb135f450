// Writes reference/CHECKS.md: every published value of tests/published, our value beside it, the difference.
//
//   node reference/checks.mjs           write the page
//   node reference/checks.mjs --check   write nothing, fail where the page is stale
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const root = fileURLToPath(new URL('../', import.meta.url));
const path = `${root}reference/CHECKS.md`;

/** The ledger is TypeScript over the library's sources, as the tests read it: nothing needs to be built. */
const { module } = await runnerImport(`${root}tests/published/ledger/checks-page.ts`, {
  root,
  configFile: false,
  logLevel: 'error',
  resolve: { alias: [{ find: /^@seatwright\/core\/([a-z]+)$/, replacement: `${root}packages/core/src/$1/index.ts` }] },
});
const page = module.checksPage();

function readPage() {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

if (!process.argv.includes('--check')) writeFileSync(path, page);
else if (readPage() !== page) {
  console.error('reference/CHECKS.md is stale: node reference/checks.mjs, then look at what changed');
  process.exitCode = 1;
}
