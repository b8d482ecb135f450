import { rooms } from './rooms.mjs';

const room = process.env.ROOM;
if (!(room in rooms)) throw new Error(`ROOM is one of ${Object.keys(rooms).join(', ')}`);

export default {
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.mjs', related: true },
  plugins: [new URL('node_modules/@stryker-mutator/vitest-runner/dist/src/index.js', import.meta.url).href],
  mutate: [process.env.FILES ?? `packages/core/src/${room}/**/*.ts`, '!**/*.test.ts', '!**/index.ts'],
  ignorePatterns: ['/docs', 'dist', 'dist-types', 'tests/browser', 'tests/package', 'tests/golden', 'coverage', '/tmp'],
  // Labels, help and schemas are built once on loading: no number or verdict changes with them while the tests run.
  ignoreStatic: true,
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  concurrency: Number(process.env.WORKERS ?? 1),
  tempDirName: 'tmp/stryker',
  reporters: ['json', 'clear-text'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `tmp/mutation/${room}.json` },
  timeoutMS: 10_000,
  checkers: [],
  allowConsoleColors: false,
};
