// Prints speeds; asserts nothing. Build first.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { readWorkshop, situationOf } from '@seatwright/core/job';
import { sealCheck } from '@seatwright/core/seal';
import { toleranceZone } from '@seatwright/core/tolerance';

const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const sample = JSON.parse(readFileSync(new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url), 'utf8'));
const { workshop } = readWorkshop(sample);
const position = workshop.machines[0].positions[0];
const situation = situationOf(workshop, position, position.parts[0]);
const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
let sink = 0;

function perSecond(count, work) {
  const started = performance.now();
  for (let i = 0; i < count; i += 1) sink += work(i);
  return (count / (performance.now() - started)) * 1000;
}

const works = {
  'tolerance-zone, compute': [200_000, (i) => toleranceZone.compute({ nominalMm: 1 + (i % 500), toleranceClass: 'h7' }).lowerLimitDeviationUm],
  'tolerance-zone, run': [100_000, (i) => toleranceZone.run({ nominalMm: 1 + (i % 500), toleranceClass: 'h7' }).lowerLimitDeviationUm],
  'seal-check, compute': [2_000, () => sealCheck.compute(situation).findings.length],
  'JSON parse of one request': [200_000, (i) => JSON.parse(`{"calc":"tolerance-zone","input":{"nominalMm":${1 + (i % 500)},"toleranceClass":"h7"}}`).input.nominalMm],
};
const rounds = Object.fromEntries(Object.keys(works).map((name) => [name, []]));
for (let round = 0; round < 7; round += 1) for (const [name, [count, work]] of Object.entries(works)) rounds[name].push(perSecond(count, work));
for (const [name, numbers] of Object.entries(rounds)) console.log(`${name.padEnd(34)}${Math.round(median(numbers)).toLocaleString('en').padStart(14)} a second`);

const lines = Array.from({ length: 100_000 }, (_, i) => `{"calc":"tolerance-zone","input":{"nominalMm":${1 + (i % 500)},"toleranceClass":"h7"}}`).join('\n');
const tellMemory = 'data:text/javascript,process.on("exit",()=>process.stderr.write(String(process.resourceUsage().maxRSS)))';
for (const jobs of ['1', '2']) {
  const runs = Array.from({ length: 3 }, () => {
    const started = performance.now();
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', tellMemory, main, 'batch', '--jobs', jobs], { input: lines, maxBuffer: 1 << 30, encoding: 'utf8' });
    return { perSecond: (stdout.trimEnd().split('\n').length / (performance.now() - started)) * 1000, peakMb: Number(stderr) / 1024 };
  });
  console.log(`${`batch --jobs ${jobs}, 100 000 lines`.padEnd(34)}${Math.round(median(runs.map((run) => run.perSecond))).toLocaleString('en').padStart(14)} lines a second, at most ${Math.max(...runs.map((run) => run.peakMb)).toFixed(0)} MB`);
}

const time = (args) => median(Array.from({ length: 9 }, () => { const t = performance.now(); spawnSync(process.execPath, args); return performance.now() - t; }));
const bare = time(['-e', '0']);
console.log(`${'start-up of `zone` above Node'.padEnd(34)}${(time([main, 'zone', '25 p6']) - bare).toFixed(0).padStart(14)} ms (Node alone ${bare.toFixed(0)} ms)`);
if (sink === 0) console.log('');
