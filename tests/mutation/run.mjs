import { existsSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { rooms } from './rooms.mjs';

/** `npm run mutation` for all rooms, `npm run mutation -- tolerance joint` for some: one after the other, in the background's share of the machine. */
const here = new URL('.', import.meta.url).pathname;
if (!existsSync(`${here}node_modules`)) spawnSync('npm', ['ci', '--ignore-scripts', '--prefix', here], { stdio: 'inherit' });
const asked = process.argv.slice(2);
for (const room of asked.length === 0 ? Object.keys(rooms) : asked) {
  const { status } = spawnSync('nice', ['-n', '15', `${here}node_modules/.bin/stryker`, 'run', `${here}stryker.config.mjs`], {
    stdio: 'inherit',
    // Laws are tried a few times only, on the same cases each time: a change alone decides.
    env: { RUNS: '4', SEED: '20260101', ...process.env, ROOM: room },
  });
  if (status !== 0) process.exit(status ?? 1);
}
await import('./write-report.mjs');
