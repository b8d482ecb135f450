import { defineConfig } from 'vitest/config';
import { rooms } from './rooms.mjs';
import { alias } from '../../vitest.config.ts';

const room = process.env.ROOM;

/** The unit project alone, and of it what looks at one room. */
export default defineConfig({
  root: new URL('../..', import.meta.url).pathname,
  resolve: { alias },
  test: {
    include: [`packages/core/src/${room}/**/*.test.ts`, ...rooms[room].map((name) => `tests/${name}.test.ts`)],
    setupFiles: ['./tests/drawn-the-same.ts'],
    testTimeout: 120_000,
    isolate: false,
  },
});
