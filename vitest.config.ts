import { defineConfig } from 'vitest/config';

/** Packages by name are their sources. */
export const alias = [
  { find: /^@seatwright\/core$/, replacement: new URL('./packages/core/src/index.ts', import.meta.url).pathname },
  { find: /^@seatwright\/core\/registry$/, replacement: new URL('./packages/core/src/registry.ts', import.meta.url).pathname },
  { find: /^@seatwright\/core\/([a-z]+)$/, replacement: `${new URL('./packages/core/src/', import.meta.url).pathname}$1/index.ts` },
];

/** [ms] Long where laws are soaked or bytes are spoilt by the million. */
const testTimeout = process.env['RUNS'] === undefined && process.env['INPUTS'] === undefined ? 30_000 : 7_200_000;

/** One root configuration: `unit` reads package sources; `cli`, `browser` and `package` use what was built. */
export default defineConfig({
  test: {
    reporters: ['default', './tests/closing-line-reporter.ts'],
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'apps/bench/src/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/laws/**/*.test.ts', 'tests/golden/**/*.test.ts', 'tests/positions/**/*.test.ts', 'tests/recomputed/**/*.test.ts', 'tests/fuzz/texts.test.ts', 'tests/fuzz/links.test.ts', 'tests/fuzz/arguments.test.ts'],
          setupFiles: ['./tests/drawn-the-same.ts'],
          testTimeout,
        },
      },
      { test: { name: 'cli', include: ['apps/cli/src/**/*.test.ts', 'tests/cli/**/*.test.ts', 'tests/package/**/*.test.ts', 'tests/fuzz/lists.test.ts'], setupFiles: ['./tests/drawn-the-same.ts'], testTimeout: Math.max(120_000, testTimeout) } },
      { test: { name: 'browser', include: ['tests/browser/**/*.test.ts'], testTimeout: 120_000, hookTimeout: 120_000, fileParallelism: false, expect: { poll: { timeout: 20_000 } } } },
    ],
  },
});
