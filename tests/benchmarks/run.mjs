// One table of speeds: medians of seven rounds, beside a bare loop that does the same arithmetic where there is one, and beside parsing the question as JSON.
// Prints; asserts nothing. Build first.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { bearingDimensions, bearingSeat } from '@seatwright/core/bearing';
import { driverSearch, extractionPlan, seatingPlan } from '@seatwright/core/handwork';
import { jobSheet, readWorkshop, situationOf } from '@seatwright/core/job';
import { pressJoint } from '@seatwright/core/joint';
import { parseLength } from '@seatwright/core/quantity';
import { lipSpeed, sealCheck } from '@seatwright/core/seal';
import { fit, toleranceZone } from '@seatwright/core/tolerance';
import { english, jobSheetDocument } from '@seatwright/core/wording';
import { bareDraws, bareFits, bareZones, draw, libraryFits, libraryZones, stacks } from './bare-loops.mjs';

const rounds = 7;
const main = new URL('../../apps/cli/dist/main.js', import.meta.url).pathname;
const sample = (name) => JSON.parse(readFileSync(new URL(`../../apps/bench/public/samples/${name}.json`, import.meta.url), 'utf8'));
const pump = readWorkshop(sample('bilge-pump')).workshop;
const position = pump.machines[0].positions[0];
const situation = situationOf(pump, position, position.parts[0]);
const sealJob = { workshop: sample('bilge-pump') };
const bearingJob = { workshop: sample('bearing-outboard-crank') };
const sheet = jobSheet.run(sealJob);
const seat = { designation: '6205', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'al-a380' };
const joint = pressJoint.parse({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 76, shaft: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5 }, hub: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5 } });
const median = (numbers) => [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)];
const each = (work) => (count) => {
  let sum = 0;
  for (let n = 0; n < count; n += 1) sum += work(n);
  return sum;
};
const parsing = (question) => {
  const text = JSON.stringify(question);
  return each(() => JSON.parse(text) === null ? 0 : 1);
};
let sink = 0;

/** Each: what, how many in a round, the work, the bare loop if there is one, and the question as it would come in JSON. */
const works = [
  ['zone, compute', 300_000, libraryZones, bareZones, { nominalMm: 25, toleranceClass: 'H7' }],
  ['zone, with its input checked', 100_000, each((n) => toleranceZone.run({ nominalMm: 1 + (n % 500), toleranceClass: 'H7' }).upperLimitDeviationUm), bareZones, { nominalMm: 25, toleranceClass: 'H7' }],
  ['fit, compute', 300_000, libraryFits, bareFits, { nominalMm: 25, hole: 'H7', shaft: 'p6' }],
  ['fit, with its input checked', 100_000, each((n) => fit.run({ nominalMm: 1 + (n % 500), hole: 'H7', shaft: 'p6' }).maximumInterferenceUm), bareFits, { nominalMm: 25, hole: 'H7', shaft: 'p6' }],
  ['a random pick of a fit, uniform', 1_000_000, draw('uniform'), bareDraws, null],
  ['a random pick of a fit, normal', 500_000, draw('normal'), bareDraws, null],
  ['stack of 8 rings', 10_000, stacks, null, null],
  ['press joint', 5_000, each(() => pressJoint.compute(joint).notChecked.length), null, joint],
  ['a length typed as text', 200_000, each((n) => parseLength(n % 2 === 0 ? '3/4 in' : '19,05 mm').valueMm), null, '3/4 in'],
  ['lip speed', 300_000, each((n) => lipSpeed.compute({ shaftDiameterMm: 20 + (n % 30), speedRpm: 1450 }).peripheralSpeedMps), each((n) => (Math.PI * (20 + (n % 30)) * 1450) / 60_000), { shaftDiameterMm: 20, speedRpm: 1450 }],
  ['bearing by its designation', 50_000, each(() => bearingDimensions.compute({ designation: '6205' }).notChecked.length), null, { designation: '6205' }],
  ['seats of a bearing', 1_000, each(() => bearingSeat.compute(seat).findings.length), null, seat],
  ['seal check', 2_000, each(() => sealCheck.compute(situation).findings.length), null, situation],
  ['plan for taking out', 5_000, each(() => extractionPlan.compute(situation).steps.length), null, situation],
  ['search for a driver', 1_000, each(() => driverSearch.compute(situation).candidates.length), null, situation],
  ['plan for putting in', 5_000, each(() => seatingPlan.compute(situation).steps.length), null, situation],
  ['whole sheet of a seal', 300, each(() => jobSheet.run(sealJob).parts.length), null, sealJob],
  ['whole sheet of seal and bearing', 100, each(() => jobSheet.run(bearingJob).parts.length), null, bearingJob],
  ['that sheet of a seal in words', 500, each(() => jobSheetDocument(sheet, english).length), null, sheet],
];

/** Time of one [µs]: the median of the rounds. */
function timesUs(count, work) {
  const found = [];
  for (let round = 0; round < rounds; round += 1) {
    const started = performance.now();
    sink += work(count);
    found.push(((performance.now() - started) * 1000) / count);
  }
  return found;
}

const three = (value) => (value >= 100 ? String(Math.round(value)) : value.toPrecision(3));
const rows = works.map(([what, count, work, bare, question]) => {
  const found = timesUs(count, work);
  const us = median(found);
  const ratio = (other) => (other === null ? '' : three(us / median(timesUs(Math.max(count, 10_000), other))));
  return { 'what': what, 'µs each': three(us), 'a second': Math.round(1e6 / us).toLocaleString('en'), 'least … most µs': `${three(Math.min(...found))} … ${three(Math.max(...found))}`, 'times the bare loop': ratio(bare), 'times parsing its JSON': ratio(question === null ? null : parsing(question)) };
});
console.table(rows);

const lines = Array.from({ length: 100_000 }, (_, i) => `{"calc":"tolerance-zone","input":{"nominalMm":${1 + (i % 500)},"toleranceClass":"h7"}}`).join('\n');
const tellMemory = 'data:text/javascript,process.on("exit",()=>process.stderr.write(String(process.resourceUsage().maxRSS)))';
const ended = [];
for (const jobs of ['1', '2']) {
  const runs = Array.from({ length: 3 }, () => {
    const started = performance.now();
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', tellMemory, main, 'batch', '--jobs', jobs], { input: lines, maxBuffer: 1 << 30, encoding: 'utf8' });
    return { perSecond: (stdout.trimEnd().split('\n').length / (performance.now() - started)) * 1000, peakMb: Number(stderr) / 1024 };
  });
  ended.push({ what: `batch --jobs ${jobs}, 100 000 lines`, median: `${Math.round(median(runs.map((run) => run.perSecond))).toLocaleString('en')} lines a second`, beside: `at most ${Math.max(...runs.map((run) => run.peakMb)).toFixed(0)} MB` });
}
const time = (args) => median(Array.from({ length: 9 }, () => { const started = performance.now(); spawnSync(process.execPath, args); return performance.now() - started; }));
const bareMs = time(['-e', '0']);
for (const args of [['zone', '25 p6'], ['job', new URL('../../apps/bench/public/samples/bilge-pump.json', import.meta.url).pathname]]) ended.push({ what: `seatwright ${args[0]}, start to end`, median: `${time([main, ...args]).toFixed(0)} ms`, beside: `Node alone ${bareMs.toFixed(0)} ms` });
console.table(ended);
if (sink === 0) console.log('');
