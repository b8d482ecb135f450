import { defineConfig } from 'vitest/config';

const alias = [
  { find: /^@seatwright\/core$/, replacement: new URL('./packages/core/src/index.ts', import.meta.url).pathname },
  { find: /^@seatwright\/core\/registry$/, replacement: new URL('./packages/core/src/registry.ts', import.meta.url).pathname },
  { find: /^@seatwright\/core\/([a-z]+)$/, replacement: `${new URL('./packages/core/src/', import.meta.url).pathname}$1/index.ts` },
];

/** One root configuration: `unit` reads package sources; `cli`, `browser` and `package` use what was built. */
export default defineConfig({
  test: {
    reporters: ['default', './tests/closing-line-reporter.ts'],
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'apps/bench/src/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/laws/**/*.test.ts', 'tests/golden/**/*.test.ts', 'tests/positions/**/*.test.ts', 'tests/recomputed/**/*.test.ts'],
          setupFiles: ['./tests/drawn-the-same.ts'],
          testTimeout: process.env['RUNS'] === undefined ? 30_000 : 1_200_000,
        },
      },
      { test: { name: 'cli', include: ['apps/cli/src/**/*.test.ts', 'tests/cli/**/*.test.ts', 'tests/package/**/*.test.ts'], setupFiles: ['./tests/drawn-the-same.ts'], testTimeout: 120_000 } },
      { test: { name: 'browser', include: ['tests/browser/**/*.test.ts'], testTimeout: 120_000, hookTimeout: 120_000, fileParallelism: false } },
    ],
  },
});
