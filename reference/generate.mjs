// Turns the tables of reference/ into typed modules of packages/core/src/tables/generated/.
//
//   node reference/generate.mjs           check every table and write the modules
//   node reference/generate.mjs --check   check, write nothing, name each stale or orphaned module
//   node reference/generate.mjs --seal    renew the sha256 fields of the sidecars after a deliberate edit, then write
//
// A table is three files: <table>.csv as printed, <table>.json beside it, and, where cells differ in how they are
// held, <table>.held.csv with the key columns and a mark for each numeric cell.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const marks = ['page', 'computed', 'memory', 'practice'];

/** Units that a numeric column may end in, longest first where one ends another. */
const unitSuffixes = [
  'UmPerMK', 'MillionRev', 'KgPerM3', 'Mm2PerS', 'Mm2', 'PerK', 'Hours', 'Mpa', 'Gpa', 'Kpa', 'Thou', 'Rpm', 'Mps', 'Deg', 'Hrc', 'Cm3', 'Percent',
  'Mm', 'Um', 'In', 'Km', 'Nm', 'Kn', 'M', 'C', 'K', 'N', 'W', 'S',
  'Ratio', 'Factor', 'Coefficient', 'Probability', 'Count',
];

const requiredFields = ['id', 'title', 'source', 'clause', 'held', 'units', 'rowKey', 'typedBy', 'checkedBy', 'checkedOn', 'laws', 'notes', 'sha256'];
const optionalFields = [
  'table', 'page', 'edition', 'heldSha256', 'text', 'unions', 'omit', 'ordinals', 'sourceColumns', 'range', 'rangeColumns', 'groupBy', 'gapsAllowed', 'gapsReason', 'monotone',
];
const sourceFields = ['designation', 'title', 'part', 'publisher', 'year', 'clauses', 'held', 'note'];
const directions = {
  rising: (before, now) => now > before,
  falling: (before, now) => now < before,
  'not-falling': (before, now) => now >= before,
  'not-rising': (before, now) => now <= before,
};

/** Splits CSV text into rows of cells; quoted cells may hold commas, doubled quotes and line breaks. */
export function parseCsv(text) {
  const rows = [];
  let cells = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i];
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (text[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else quoted = false;
    } else if (sign === '"' && cell === '') quoted = true;
    else if (sign === ',') {
      cells.push(cell);
      cell = '';
    } else if (sign === '\n') {
      cells.push(cell);
      rows.push(cells);
      cells = [];
      cell = '';
    } else if (sign !== '\r') cell += sign;
  }
  if (quoted) throw new Error('a quoted cell is not closed');
  if (cell !== '' || cells.length > 0) {
    cells.push(cell);
    rows.push(cells);
  }
  return rows;
}

const camelCase = (id) => id.replace(/-([a-z0-9])/g, (_, letter) => letter.toUpperCase());
const sha256 = (text) => createHash('sha256').update(text).digest('hex');
const quote = (text) => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'").replaceAll('\n', '\\n')}'`;
const hasUnit = (column) => unitSuffixes.some((suffix) => column.endsWith(suffix) && column.length > suffix.length) || /^(ratio|factor|count)$/.test(column);
/** A letter, or two, for each of the few values of a column; `packages/core/src/tables/among.ts` reads them. */
const placeLetters = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const isPlainNumber = (text) => /^-?(0|[1-9]\d*)(\.\d+)?$/.test(text);

/** Reads and checks one table. Problems are pushed as sentences; the table is null when its shape is broken. */
function readTable(csvPath, shown, sources, problems, seal) {
  const sidecarPath = csvPath.replace(/\.csv$/, '.json');
  const heldPath = csvPath.replace(/\.csv$/, '.held.csv');
  const room = relative(dirname(dirname(csvPath)), csvPath);
  const say = (text) => problems.push(`${shown}: ${text}`);
  if (!existsSync(sidecarPath)) {
    say('has no sidecar .json');
    return null;
  }
  let sidecar;
  try {
    sidecar = JSON.parse(readFileSync(sidecarPath, 'utf8'));
  } catch (error) {
    say(`sidecar is not JSON (${error.message})`);
    return null;
  }
  for (const field of requiredFields) {
    if (sidecar[field] === undefined && !(seal && field === 'sha256')) say(`sidecar lacks "${field}"`);
  }
  for (const field of Object.keys(sidecar)) {
    if (!requiredFields.includes(field) && !optionalFields.includes(field)) say(`sidecar has the unknown field "${field}"`);
  }
  const id = basename(csvPath, '.csv');
  if (sidecar.id !== id) say(`sidecar id "${sidecar.id}" is not the file name`);
  if (!marks.includes(sidecar.held)) say(`held "${sidecar.held}" is none of ${marks.join(', ')}`);
  if (sources[sidecar.source] === undefined) say(`source "${sidecar.source}" is not in reference/sources.json`);

  const csvText = readFileSync(csvPath, 'utf8');
  const heldText = existsSync(heldPath) ? readFileSync(heldPath, 'utf8') : null;
  if (seal) {
    const sealed = { ...sidecar, sha256: sha256(csvText) };
    delete sealed.heldSha256;
    if (heldText !== null) sealed.heldSha256 = sha256(heldText);
    const text = `${JSON.stringify(sealed, null, 2)}\n`;
    if (text !== readFileSync(sidecarPath, 'utf8')) writeFileSync(sidecarPath, text);
    sidecar = sealed;
  }
  if (sidecar.sha256 !== sha256(csvText)) say('sha256 in the sidecar is not that of the CSV (after a deliberate edit: --seal)');
  if ((sidecar.heldSha256 ?? null) !== (heldText === null ? null : sha256(heldText))) say('heldSha256 in the sidecar is not that of the .held.csv (after a deliberate edit: --seal)');

  let cells;
  try {
    cells = parseCsv(csvText);
  } catch (error) {
    say(error.message);
    return null;
  }
  const [header, ...rows] = cells;
  if (header === undefined || rows.length === 0) {
    say('is empty');
    return null;
  }
  const where = (row, column) => `row ${row + 1} (line ${row + 2}), column ${column}`;
  for (const [i, row] of rows.entries()) {
    if (row.length !== header.length) {
      say(`row ${i + 1} (line ${i + 2}) has ${row.length} cells, the header ${header.length}`);
      return null;
    }
  }
  for (const column of header) {
    if (!/^[a-z][A-Za-z0-9]*$/.test(column)) say(`column "${column}" is not camelCase`);
    if (header.indexOf(column) !== header.lastIndexOf(column)) say(`column ${column} stands twice`);
  }

  const unions = sidecar.unions ?? {};
  const text = new Set([...(sidecar.text ?? []), ...Object.keys(unions)]);
  const ordinals = sidecar.ordinals ?? [];
  const omit = new Set(sidecar.omit ?? []);
  const named = [...text, ...omit, ...ordinals, ...(sidecar.groupBy ?? []), ...(sidecar.rangeColumns ?? []), ...(sidecar.sourceColumns ?? []), ...Object.keys(sidecar.monotone ?? {})];
  for (const column of [...named, ...(Array.isArray(sidecar.rowKey) ? sidecar.rowKey : [])]) {
    if (!header.includes(column)) say(`sidecar names the column ${column}, which the CSV has not`);
  }
  const columns = header.map((name, at) => {
    const cellsOfColumn = rows.map((row) => row[at]);
    if (text.has(name) || omit.has(name)) {
      const allowed = unions[name];
      if (allowed !== undefined) {
        for (const [i, cell] of cellsOfColumn.entries()) {
          if (!allowed.includes(cell)) say(`${where(i, name)}: "${cell}" is none of ${allowed.map((value) => `"${value}"`).join(', ')}`);
        }
        for (const value of allowed) if (!cellsOfColumn.includes(value)) say(`sidecar allows "${value}" in ${name}, which no row holds`);
      }
      return { name, kind: 'text', values: cellsOfColumn, allowed };
    }
    if (!hasUnit(name) && !ordinals.includes(name)) say(`numeric column ${name} does not end in a known unit`);
    const values = cellsOfColumn.map((cell, i) => {
      if (cell === '') return null;
      if (!isPlainNumber(cell)) say(`${where(i, name)}: "${cell}" is not a plain number`);
      return Number(cell);
    });
    return { name, kind: 'number', values };
  });
  const column = (name) => columns.find((candidate) => candidate.name === name);

  for (const name of new Set(['rowSource', ...(sidecar.sourceColumns ?? [])])) {
    for (const [i, cell] of (column(name)?.values ?? []).entries()) {
      if (sources[cell] === undefined) say(`${where(i, name)}: source "${cell}" is not in reference/sources.json`);
    }
  }
  const rowMarks = column('held');
  if (rowMarks !== undefined) {
    for (const [i, cell] of rowMarks.values.entries()) if (!marks.includes(cell)) say(`${where(i, 'held')}: "${cell}" is none of ${marks.join(', ')}`);
    if (heldText !== null) say('has both a held column and a .held.csv');
    rowMarks.allowed ??= marks;
  }

  const keyOf = (names, i) => names.map((name) => String(column(name)?.values[i])).join(' | ');
  const seen = new Map();
  for (const i of rows.keys()) {
    const key = keyOf(sidecar.rowKey ?? [], i);
    if (seen.has(key)) say(`row ${i + 1} (line ${i + 2}) has the same key as row ${seen.get(key) + 1}: ${key}`);
    else seen.set(key, i);
  }

  const groups = new Map();
  for (const i of rows.keys()) {
    const key = keyOf(sidecar.groupBy ?? [], i);
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  if (sidecar.range !== undefined) {
    if (sidecar.range !== 'half-open-upper') say(`range "${sidecar.range}" is unknown`);
    const [over, upTo] = sidecar.rangeColumns ?? [header.find((name) => /^over[A-Z]/.test(name)), header.find((name) => /^upTo[A-Z]/.test(name))];
    if (sidecar.gapsAllowed === true && !sidecar.gapsReason) say('gapsAllowed needs a gapsReason');
    if (column(over) === undefined || column(upTo) === undefined) say('has no range columns');
    else {
      for (const [key, members] of groups) {
        let before = null;
        for (const [at, i] of members.entries()) {
          const group = key === '' ? '' : ` of ${key}`;
          const low = column(over).values[i] ?? -Infinity;
          const high = column(upTo).values[i] ?? Infinity;
          if (!(low < high)) say(`${where(i, over)}: range from ${low} to ${high} is empty${group}`);
          if (at > 0 && low === -Infinity) say(`${where(i, over)}: only the first range${group} may be open below`);
          if (before !== null && low < before) say(`${where(i, over)}: overlaps the range before it${group}, which runs to ${before}`);
          if (before !== null && low > before && sidecar.gapsAllowed !== true) say(`${where(i, over)}: leaves a gap after ${before}${group}`);
          before = high;
        }
      }
    }
  }
  for (const [name, direction] of Object.entries(sidecar.monotone ?? {})) {
    const holds = directions[direction];
    if (holds === undefined) say(`monotone direction "${direction}" is unknown`);
    else {
      for (const members of groups.values()) {
        let before = null;
        for (const i of members) {
          const now = column(name)?.values[i] ?? null;
          if (now === null) continue;
          if (before !== null && !holds(before, now)) say(`${where(i, name)}: ${now} after ${before} is not ${direction}`);
          before = now;
        }
      }
    }
  }

  const cellMarks = {};
  if (heldText !== null) {
    const [heldHeader = [], ...heldRows] = parseCsv(heldText);
    if (heldRows.length !== rows.length) say(`.held.csv has ${heldRows.length} rows, the table ${rows.length}`);
    const keys = new Set(sidecar.rowKey ?? []);
    for (const name of columns.filter((each) => each.kind === 'number' && !keys.has(each.name)).map((each) => each.name)) {
      if (!heldHeader.includes(name)) say(`.held.csv has no column ${name}`);
    }
    for (const [at, name] of heldHeader.entries()) {
      const own = column(name);
      if (own === undefined) {
        say(`.held.csv has the column ${name}, which the table has not`);
        continue;
      }
      const list = [];
      for (const [i, heldRow] of heldRows.entries()) {
        if (heldRow.length !== heldHeader.length) say(`.held.csv row ${i + 1} has ${heldRow.length} cells, its header ${heldHeader.length}`);
        const mark = heldRow[at] ?? '';
        if (keys.has(name)) {
          if (mark !== rows[i]?.[header.indexOf(name)]) say(`.held.csv ${where(i, name)}: key "${mark}" is not that of the table`);
        } else if (own.kind === 'text') say(`.held.csv ${where(i, name)}: a text column other than a key has no place here`);
        else if (own.values[i] === null && mark !== '') say(`.held.csv ${where(i, name)}: marks a blank cell`);
        else if (own.values[i] !== null && !marks.includes(mark)) say(`.held.csv ${where(i, name)}: "${mark}" is none of ${marks.join(', ')}`);
        list.push(mark === '' ? sidecar.held : mark);
      }
      if (!keys.has(name) && list.some((mark) => mark !== sidecar.held)) cellMarks[name] = list;
    }
  }
  return { id, room, sidecar, columns: columns.filter(({ name }) => !omit.has(name)), cellMarks, rowCount: rows.length };
}

function columnType({ kind, values, allowed }) {
  if (kind === 'number') return values.includes(null) ? 'readonly (number | null)[]' : 'readonly number[]';
  if (allowed === undefined) return 'readonly string[]';
  return `readonly (${allowed.map(quote).join(' | ')})[]`;
}

/** The values of a column in TypeScript: one by one, as runs of the same value, or by their places in a list of the few that there are; whichever is shortest. */
function listText(texts) {
  const plain = `[${texts.join(', ')}]`;
  const runs = [];
  for (const text of texts) {
    const last = runs.at(-1);
    if (last?.text === text) last.count += 1;
    else runs.push({ text, count: 1 });
  }
  const inRuns = `runs([${runs.map(({ text, count }) => (count === 1 ? text : `[${text}, ${count}]`)).join(', ')}])`;
  const different = [...new Set(texts)];
  const letterCount = placeLetters.length;
  const isTwo = different.length > letterCount;
  const lettersOf = (place) => `${isTwo ? placeLetters[Math.floor(place / letterCount)] : ''}${placeLetters[place % letterCount]}`;
  const byPlace = `among([${different.join(', ')}], '${texts.map((text) => lettersOf(different.indexOf(text))).join('')}')`;
  const short = different.length <= letterCount ** 2 && byPlace.length < inRuns.length ? byPlace : inRuns;
  return short.length < 0.6 * plain.length ? short : plain;
}

function tableModule({ id, room, sidecar, columns, cellMarks, rowCount }) {
  const clause = sidecar.table ?? sidecar.clause;
  const lines = [
    `// Generated from reference/${room} by reference/generate.mjs: do not edit.`,
    "import type { Held } from '../held.js';",
    '',
    `/** ${sidecar.title} (source ${sidecar.source}; held as: ${sidecar.held}). */`,
    `export const ${camelCase(id)}: {`,
    '  readonly id: string;',
    '  readonly source: string;',
    '  readonly clause: string;',
    '  readonly held: Held;',
    '  readonly rowCount: number;',
    '  readonly columns: {',
    ...columns.map((each) => `    readonly ${each.name}: ${columnType(each)};`),
    '  };',
    Object.keys(cellMarks).length === 0 ? '  readonly marks: Readonly<Record<never, readonly Held[]>>;' : '  readonly marks: {',
    ...Object.keys(cellMarks).map((name) => `    readonly ${name}?: readonly Held[];`),
    ...(Object.keys(cellMarks).length === 0 ? [] : ['  };']),
    '} = {',
    `  id: ${quote(id)},`,
    `  source: ${quote(sidecar.source)},`,
    `  clause: ${quote(clause)},`,
    `  held: ${quote(sidecar.held)},`,
    `  rowCount: ${rowCount},`,
    '  columns: {',
    ...columns.map(({ name, kind, values }) => `    ${name}: ${listText(values.map((value) => (kind === 'number' ? String(value) : quote(value))))},`),
    '  },',
    '  marks: {',
    ...Object.entries(cellMarks).map(([name, list]) => `    ${name}: ${listText(list.map(quote))},`),
    '  },',
    '};',
    '',
  ];
  if (lines.some((line) => line.includes(': runs(['))) lines.splice(2, 0, "import { runs } from '../runs.js';");
  if (lines.some((line) => line.includes(': among(['))) lines.splice(2, 0, "import { among } from '../among.js';");
  return lines.join('\n');
}

function sourcesModule(sources) {
  const entry = (source) => `{ ${sourceFields.filter((field) => source[field] !== undefined).map((field) => `${field}: ${typeof source[field] === 'number' ? source[field] : quote(source[field])}`).join(', ')} }`;
  return [
    '// Generated from reference/sources.json by reference/generate.mjs: do not edit.',
    "import type { SourceEntry } from '../source-entry.js';",
    '',
    '/** Every source that a table, a finding or a step may name, by id. */',
    'export const sources: Readonly<Record<string, SourceEntry>> = {',
    ...Object.keys(sources).sort().map((id) => `  ${quote(id)}: ${entry(sources[id])},`),
    '};',
    '',
  ].join('\n');
}

/** Designations and titles alone: a sheet names its sources, and a page has no use for the rest. */
function sourceTitlesModule(sources) {
  return [
    '// Generated from reference/sources.json by reference/generate.mjs: do not edit.',
    '',
    '/** Title of every source, by id. */',
    'export const sourceTitles: Readonly<Record<string, string>> = {',
    ...Object.keys(sources).sort().map((id) => `  ${quote(id)}: ${quote(sources[id].title)},`),
    '};',
    '',
    '/** What a standard is called by, by the id of the source; books and handbooks have none. */',
    'export const sourceDesignations: Readonly<Record<string, string>> = {',
    ...Object.keys(sources).sort().filter((id) => sources[id].designation !== undefined).map((id) => `  ${quote(id)}: ${quote(sources[id].designation)},`),
    '};',
    '',
  ].join('\n');
}

/** The month of `reference/edition.json` with a hash over every table and source: any cell that changes makes another edition. */
function editionOf(tables, sources, month) {
  const parts = tables.map(({ id, sidecar }) => `${id} ${sidecar.sha256} ${sidecar.heldSha256 ?? ''}`);
  return `${month}-${sha256([...parts, JSON.stringify(sources)].join('\n')).slice(0, 8)}`;
}

function editionModule(edition, version) {
  return [
    '// Generated from reference/ and packages/core/package.json by reference/generate.mjs: do not edit.',
    '',
    '/** Edition of the tables: year and month, and a hash over every table and source. Another cell is another edition. */',
    `export const tablesEdition = ${quote(edition)};`,
    '/** Version of this library. */',
    `export const libraryVersion = ${quote(version)};`,
    '',
  ].join('\n');
}

function indexModule(tables) {
  return [
    '// Generated from reference/ by reference/generate.mjs: do not edit.',
    ...tables.map(({ id }) => `export { ${camelCase(id)} } from './${id}.js';`),
    "export { sourceDesignations, sourceTitles } from './source-titles.js';",
    "export { sources } from './sources.js';",
    '',
  ].join('\n');
}

function readSources(path, problems) {
  const sources = JSON.parse(readFileSync(path, 'utf8'));
  for (const [id, source] of Object.entries(sources)) {
    const say = (text) => problems.push(`reference/sources.json: ${id} ${text}`);
    if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) say('is not kebab case');
    if (typeof source.title !== 'string' || source.title === '') say('has no title');
    if (!marks.includes(source.held)) say(`is held as "${source.held}", which is none of ${marks.join(', ')}`);
    for (const field of Object.keys(source)) if (!sourceFields.includes(field)) say(`has the unknown field "${field}"`);
  }
  return sources;
}

/** Reads `referenceFolder`, returns the modules to be written by file name and the problems found. */
export function generate(referenceFolder, { seal = false } = {}) {
  const problems = [];
  const sources = readSources(join(referenceFolder, 'sources.json'), problems);
  const { month } = JSON.parse(readFileSync(join(referenceFolder, 'edition.json'), 'utf8'));
  if (!/^\d{4}\.\d\d$/.test(month)) problems.push(`reference/edition.json: month "${month}" is not like 2026.11`);
  const { version } = JSON.parse(readFileSync(join(referenceFolder, '../packages/core/package.json'), 'utf8'));
  const tables = [];
  for (const room of readdirSync(referenceFolder, { withFileTypes: true }).filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort()) {
    const files = readdirSync(join(referenceFolder, room)).sort();
    for (const file of files) {
      const shown = `reference/${room}/${file}`;
      if (file.endsWith('.held.csv')) {
        if (!files.includes(file.replace('.held.csv', '.csv'))) problems.push(`${shown}: has no table beside it`);
      } else if (file.endsWith('.csv')) {
        const table = readTable(join(referenceFolder, room, file), shown, sources, problems, seal);
        if (table !== null) {
          const twin = tables.find((other) => camelCase(other.id) === camelCase(table.id));
          if (twin !== undefined || ['index', 'source-titles', 'sources'].includes(table.id)) problems.push(`${shown}: the id ${table.id} is taken`);
          tables.push(table);
        }
      } else if (!file.endsWith('.json') || !files.includes(file.replace(/\.json$/, '.csv'))) problems.push(`${shown}: belongs to no table`);
    }
  }
  tables.sort((one, other) => (one.id < other.id ? -1 : 1));
  const modules = new Map(problems.length > 0 ? [] : [
    ...tables.map((table) => [`${table.id}.ts`, tableModule(table)]),
    ['../../result/edition.ts', editionModule(editionOf(tables, sources, month), version)],
    ['source-titles.ts', sourceTitlesModule(sources)],
    ['sources.ts', sourcesModule(sources)],
    ['index.ts', indexModule(tables)],
  ]);
  return { modules, problems };
}

function main(argv) {
  const unknown = argv.find((word) => word !== '--check' && word !== '--seal');
  if (unknown !== undefined) {
    process.stderr.write(`unknown option ${unknown}\nusage: node reference/generate.mjs [--check | --seal]\n`);
    return 2;
  }
  const check = argv.includes('--check');
  const referenceFolder = dirname(fileURLToPath(import.meta.url));
  const generatedFolder = join(referenceFolder, '../packages/core/src/tables/generated');
  const { modules, problems } = generate(referenceFolder, { seal: argv.includes('--seal') && !check });
  if (problems.length > 0) {
    process.stderr.write(`${problems.join('\n')}\n${problems.length} problem${problems.length === 1 ? '' : 's'}; nothing written\n`);
    return 1;
  }
  mkdirSync(generatedFolder, { recursive: true });
  const present = readdirSync(generatedFolder);
  const stale = [...modules].filter(([file, text]) => !existsSync(join(generatedFolder, file)) || readFileSync(join(generatedFolder, file), 'utf8') !== text);
  const orphans = present.filter((file) => !modules.has(file));
  const shown = (file) => `packages/core/src/tables/generated/${file}`;
  if (check) {
    for (const [file] of stale) process.stderr.write(`stale: ${shown(file)}\n`);
    for (const file of orphans) process.stderr.write(`orphan: ${shown(file)}\n`);
    if (stale.length + orphans.length > 0) process.stderr.write('run: node reference/generate.mjs\n');
    return stale.length + orphans.length > 0 ? 1 : 0;
  }
  for (const [file, text] of stale) writeFileSync(join(generatedFolder, file), text);
  for (const file of orphans) rmSync(join(generatedFolder, file));
  process.stdout.write(`${modules.size - 4} tables; ${stale.length} modules written, ${orphans.length} removed\n`);
  return 0;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = main(process.argv.slice(2));
