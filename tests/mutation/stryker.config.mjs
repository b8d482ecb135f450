import { rooms } from './rooms.mjs';

const room = process.env.ROOM;
if (!(room in rooms)) throw new Error(`ROOM is one of ${Object.keys(rooms).join(', ')}`);

export default {
  testRunner: 'in-one-process',
  plugins: [new URL('in-one-process.mjs', import.meta.url).href],
  mutate: [...(process.env.FILES ?? `packages/core/src/${room}/**/*.ts`).split(','), '!**/*.test.ts', '!**/index.ts'],
  ignorePatterns: ['dist', 'dist-types', '/apps/bench/src', '/docs', 'packages/elements', 'tests/browser', 'tests/package', 'tests/mutation/node_modules', 'tests/mutation/results', '/tmp'],
  // Texts that mean something are members of closed unions, which the compiler keeps; the rest are labels and sentences.
  mutator: { excludedMutations: ['StringLiteral'] },
  // What is built once on loading would ask for all tests in a fresh process each time.
  ignoreStatic: true,
  coverageAnalysis: 'perTest',
  // A change that makes a list grow for ever must not take the machine with it.
  testRunnerNodeArgs: ['--max-old-space-size=800'],
  concurrency: Number(process.env.WORKERS ?? 1),
  tempDirName: `tmp/stryker-${room}`,
  reporters: ['json', 'clear-text', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  jsonReporter: { fileName: `tmp/mutation/${room}.json` },
  // An endless loop is stopped by counting; this is for what cannot be counted, and long, since a busy machine is slow.
  timeoutMS: 20_000,
  allowConsoleColors: false,
};
