// Long lists through the built command: time, rows a second, cost of a row and peak memory from 1 000 rows to a million, and what more threads bring.
// Run `npm run build` first. Memory is read from /proc (Linux); elsewhere it is left out.
import { spawn } from 'node:child_process';
import { createWriteStream, existsSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { once } from 'node:events';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';

const command = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const pump = new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'seatwright-scale-'));
const largest = Number(process.env.ROWS ?? 1_000_000);
const counts = [1_000, 10_000, 100_000, 1_000_000].filter((count) => count <= largest);

async function write(file, count, lineOf, header = '') {
  const stream = createWriteStream(file);
  if (header !== '') stream.write(`${header}\n`);
  for (let i = 0; i < count; i += 1) if (!stream.write(`${lineOf(i)}\n`)) await once(stream, 'drain');
  stream.end();
  await once(stream, 'finish');
}

/** Seconds and peak memory of one run; what it writes is thrown away. */
async function timed(args, input) {
  const child = spawn(process.execPath, [command, ...args], { stdio: [input === undefined ? 'ignore' : openSync(input, 'r'), 'ignore', 'inherit'] });
  let peakMib = 0;
  const look = () => {
    if (!existsSync(`/proc/${child.pid}/status`)) return;
    const found = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'));
    if (found !== null) peakMib = Math.max(peakMib, Number(found[1]) / 1024);
  };
  const from = performance.now();
  const timer = setInterval(look, 20);
  await once(child, 'exit');
  clearInterval(timer);
  return { seconds: (performance.now() - from) / 1000, peakMib };
}

const rows = [];
const startS = (await timed(['list'])).seconds;
async function measure(what, count, args, input) {
  const { seconds, peakMib } = await timed(args, input);
  // The cost of a row is what comes on top of starting.
  const perRowUs = (1e6 * Math.max(seconds - startS, 0)) / count;
  rows.push({ what, rows: count, 's': seconds.toFixed(2), 'rows/s': Math.round(count / seconds), 'µs a row': perRowUs.toFixed(1), 'peak MiB': peakMib === 0 ? '' : Math.round(peakMib) });
}

try {
  for (const count of counts) {
    const shelf = join(folder, `shelf-${count}.csv`);
    await write(shelf, count, (i) => `A-${i},${10 + (i % 60)},${22 + ((i * 7) % 80)},${5 + (i % 8)},${i % 3 === 0 ? 'rubber' : 'metal'},${['NBR', 'FKM', 'ACM'][i % 3]}`, 'article,shaft,outside,width,case,rubber');
    await measure('shelf', count, ['shelf', shelf, '--for', pump, '--json']);
    const lines = join(folder, `lines-${count}.jsonl`);
    await write(lines, count, (i) => `{"id":${i},"calc":"fit","input":{"nominalMm":${1 + (i % 500)},"hole":"H7","shaft":"p6"}}`);
    for (const jobs of [1, 2, 4].filter((each) => each <= Math.max(2, availableParallelism()))) await measure(`batch --jobs ${jobs}`, count, ['batch', '--jobs', String(jobs)], lines);
    const checks = join(folder, `checks-${count}.jsonl`);
    if (count <= 100_000) {
      await write(checks, count, (i) => `{"calc":"seal-check","input":{"seal":{"shaftMm":20,"outsideMm":35,"widthMm":7,"construction":"metal-case","lipMaterial":"NBR"},"bore":{"diameterMm":35,"material":"al-a380","readings":[{"instrument":"inside-micrometer-rod","valuesMm":[${35 + (i % 40) / 1000}]}]}}}`);
      for (const jobs of [1, 2]) await measure(`batch of seal-check --jobs ${jobs}`, count, ['batch', '--jobs', String(jobs)], checks);
    }
  }
  console.log(`start-up ${(startS * 1000).toFixed(0)} ms; ${availableParallelism()} cores`);
  console.table(rows);
} finally {
  rmSync(folder, { recursive: true });
}
