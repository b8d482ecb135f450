import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { rooms } from './rooms.mjs';
import { argued } from './argued.mjs';

/**
 * From what the tool wrote (`tmp/mutation/<room>.json`) to what is kept: counts and survivors of each room in `results/`, and
 * `reference/mutation.md`, made from those. A room that was not run again keeps its last result with its date.
 */
const root = new URL('../..', import.meta.url).pathname;
const results = `${root}tests/mutation/results`;
mkdirSync(results, { recursive: true });

/** How many sources of the room there are, so that a part of them is called a part. */
function sourceCount(folder) {
  return readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && !name.endsWith('index.ts')).length;
}

const words = (text) => text.replace(/\s+/g, ' ').trim();

function excerpt(source, { start, end }) {
  const lines = source.split('\n');
  if (start.line === end.line) return lines[start.line - 1].slice(start.column - 1, end.column - 1);
  return [lines[start.line - 1].slice(start.column - 1), ...lines.slice(start.line, end.line - 1), lines[end.line - 1].slice(0, end.column - 1)].join(' ');
}

function summary(room) {
  const path = `${root}tmp/mutation/${room}.json`;
  if (!existsSync(path)) return;
  const { files, framework } = JSON.parse(readFileSync(path, 'utf8'));
  const counts = { killed: 0, timeout: 0, survived: 0, uncovered: 0, onLoading: 0, words: 0, invalid: 0 };
  const survivors = [];
  for (const [file, { source, mutants }] of Object.entries(files)) {
    for (const { mutatorName, replacement, status, statusReason = '', location } of mutants) {
      const name = { Killed: 'killed', Timeout: 'timeout', Survived: 'survived', NoCoverage: 'uncovered', CompileError: 'invalid', RuntimeError: 'invalid' }[status] ?? (/static/i.test(statusReason) ? 'onLoading' : 'words');
      counts[name] += 1;
      if (name === 'survived' || name === 'uncovered') {
        survivors.push({ file: file.replace(/^packages\/core\/src\//, ''), line: location.start.line, kind: mutatorName, from: words(excerpt(source, location)).slice(0, 120), to: words(replacement ?? '').slice(0, 60), ...(name === 'uncovered' ? { uncovered: true } : {}) });
      }
    }
  }
  const [tried, all] = [Object.keys(files).length, sourceCount(`${root}packages/core/src/${room}`)];
  // Files of labels and types alone have nothing to change.
  const part = process.env.FILES === undefined ? {} : { files: `${tried} of its ${all} files` };
  writeFileSync(`${results}/${room}.json`, `${JSON.stringify({ room, date: new Date().toISOString().slice(0, 10), tool: `Stryker ${framework?.version ?? ''}`.trim(), ...part, counts, survivors }, null, 1)}\n`);
}

/** Why a survivor may stay: the first entry whose file begins so and whose text is in what was changed. */
const reasonOf = ({ file, from, to, kind }) => argued.find((entry) => file.startsWith(entry.file) && (entry.from === undefined || from.includes(entry.from)) && (entry.to === undefined || to === entry.to) && (entry.kind === undefined || kind === entry.kind))?.why;

const cell = (text) => text.replaceAll('|', '\\|').replaceAll('`', "'");
const percent = (part, whole) => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`);

function page() {
  const all = Object.keys(rooms).map((room) => (existsSync(`${results}/${room}.json`) ? JSON.parse(readFileSync(`${results}/${room}.json`, 'utf8')) : { room }));
  const table = all.map((result) => {
    if (result.counts === undefined) return `| \`${result.room}/\` | not measured | | | | | | |`;
    const { killed, timeout, survived, uncovered, onLoading, words: texts } = result.counts;
    const tried = killed + timeout + survived + uncovered;
    const excused = result.survivors.filter((survivor) => reasonOf(survivor) !== undefined).length;
    const { files } = result;
    return `| \`${result.room}/\`${files === undefined ? '' : ` (${files})`} | ${result.date} | ${tried} | ${killed + timeout} (${timeout}) | ${survived + uncovered} (${uncovered}) | ${excused} | **${percent(killed + timeout, tried)}** | ${onLoading} / ${texts} |`;
  });
  const sections = all.filter(({ survivors = [] }) => survivors.length > 0).map(({ room, tool, survivors }) => {
    const lines = survivors.map((survivor) => `| ${survivor.file.slice(room.length + 1)}:${survivor.line} | ${survivor.kind} | \`${cell(survivor.from)}\` | \`${cell(survivor.to)}\` | ${survivor.uncovered === true ? 'no test comes here; ' : ''}${reasonOf(survivor) ?? 'open'} |`);
    return `## ${room}\n\n${tool}.\n\n| where | kind | was | became | why it may stay |\n|---|---|---|---|---|\n${lines.join('\n')}\n`;
  });
  return `# What the tests notice

Made by \`npm run mutation\`; do not edit. The sources of a room are changed on purpose, one place at a time (a comparison turned, a term left out, a condition made always true), and the tests of that room must fail. What survives is either harmless, and the reason stands beside it, or a gap.

- Tried against the unit tests beside the sources, the laws about the room, the published values, the recomputation, the examples of the docs, the whole sheets as reviewed, and positions with their verdicts (\`tests/mutation/rooms.mjs\`); laws with 4 cases each, always the same ones. Single tests that take over 0.7 s (1.5 s in \`measure/\`) are not counted in, and what no test has noticed after 3 to 8 s of them (rows from 2026-11-29 on) counts as survived: the whole suite catches more. Rows measured before 2026-11-27 went without published values, recomputation, sheets and positions.
- Not changed: the generated tables (data; laws and the ledger prove every cell), the re-exports, and texts. A text that means something is a member of a closed union, so that the compiler refuses any other; the rest are labels, units and sentences, which the word tests read.
- What is built once on loading (schemas, labels, lists) is left out by the tool's \`ignoreStatic\`: such a change would ask for all tests anew each time. Left-out places are counted in the last column, with texts after the stroke.
- In brackets: of the noticed ones those that ran into the time limit (an endless loop); of the survivors those where no test of the room comes by.

| room | measured | tried | noticed | survived | of these argued | noticed | not tried: on loading / texts |
|---|---|---|---|---|---|---|---|
${table.join('\n')}

${sections.join('\n')}`;
}

for (const room of Object.keys(rooms)) summary(room);
writeFileSync(`${root}reference/mutation.md`, page().trimEnd() + '\n');
