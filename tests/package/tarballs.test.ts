import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { beforeAll, expect, test } from 'vitest';
import { makeConsumer, root } from './internal/consumer.js';

let consumer: string;
let modules: string;
let files: Readonly<Record<'core' | 'elements' | 'command', readonly string[]>>;

beforeAll(() => {
  const made = makeConsumer();
  consumer = made.folder;
  modules = made.modules;
  files = made.files;
});

function node(script: string): string {
  writeFileSync(join(consumer, 'try.js'), script);
  const { stdout, stderr, status } = spawnSync(process.execPath, ['try.js'], { cwd: consumer, encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return stdout.trim();
}

test('the tarballs hold what is used and nothing of the bench they were made on', () => {
  for (const path of Object.values(files).flat()) expect(path).not.toMatch(/\.test\.|tsbuildinfo|^src\/|\.vitest|\.config\.|\.mjs$/);
  for (const list of Object.values(files)) expect(list).toEqual(expect.arrayContaining(['LICENSE', 'README.md', 'package.json']));
  expect(files.command).toContain('NOTICE.md');
});

test('a plain script imports every room by its own entry', () => {
  const { exports } = JSON.parse(readFileSync(join(modules, '@seatwright/core/package.json'), 'utf8')) as { exports: Record<string, unknown> };
  const entries = Object.keys(exports).filter((entry) => !entry.endsWith('.json')).map((entry) => `@seatwright/core${entry.slice(1)}`);
  const script = `${entries.map((entry, i) => `import * as m${i} from '${entry}';`).join('\n')}\nconsole.log([${entries.map((_, i) => `Object.keys(m${i}).length`).join(', ')}].every((count) => count > 0));`;
  expect(node(script)).toBe('true');
  expect(entries.length).toBeGreaterThanOrEqual(12);
});

test('the examples of the README give what they say', () => {
  expect(node("import { lipSpeed } from '@seatwright/core/seal';\nimport { toleranceZone } from '@seatwright/core/tolerance';\nconsole.log(lipSpeed.run({ shaftDiameterMm: '3/4 in', speedRpm: 7800 }).peripheralSpeedMps.toFixed(2), toleranceZone.run({ nominalMm: 25, toleranceClass: 'p6' }).upperLimitDeviationUm);")).toBe('7.78 35');
});

test('the command runs alone, without a library beside it, and with its threads', () => {
  const alone = mkdtempSync(join(tmpdir(), 'seatwright-alone-'));
  execFileSync('cp', ['-r', join(modules, 'seatwright'), alone]);
  const command = join(alone, 'seatwright/dist/main.js');
  expect(spawnSync(process.execPath, [command, 'fit', '25', 'H7/p6'], { encoding: 'utf8' }).stdout).toContain('interference');
  const { stdout, status } = spawnSync(process.execPath, [command, 'batch', '--jobs', '2'], { input: '{"calc":"lip-speed","input":{"shaftDiameterMm":20,"speedRpm":7800}}\n', encoding: 'utf8' });
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ ok: true });
  expect(readdirSync(join(modules, 'seatwright'))).not.toContain('src');
});

test.each(['nodenext', 'bundler'])('a strict TypeScript consumer with module resolution %s compiles', (resolution) => {
  const folder = join(consumer, resolution);
  mkdirSync(folder);
  writeFileSync(
    join(folder, 'use.ts'),
    `import { sealCheck, type Situation } from '@seatwright/core/seal';
import { pressJoint } from '@seatwright/core/joint';
import { conformity } from '@seatwright/core/measure';
const situation: Situation = { seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } };
export const verdict: 'suits' | 'suits with care' | 'cannot tell' | 'does not suit' = sealCheck.compute(situation).verdict;
export const pressure: number = pressJoint.run({}).contactPressureMpa;
export const decision: string = conformity.run({}).decision;
// @ts-expect-error a length is no boolean
sealCheck.compute({ seal: { shaftMm: true } });
`,
  );
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions: { target: 'es2022', module: resolution === 'bundler' ? 'esnext' : 'nodenext', moduleResolution: resolution, strict: true, noEmit: true, types: [], lib: ['es2022', 'dom'], skipLibCheck: false }, files: ['use.ts'] }));
  const { stdout, status } = spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], { encoding: 'utf8' });
  expect(stdout).toBe('');
  expect(status).toBe(0);
});

test.each(['@seatwright/core', '@seatwright/elements', 'seatwright'])('%s is published as the rules of packages want it', async (name) => {
  const pkg = JSON.parse(readFileSync(join(modules, name, 'package.json'), 'utf8')) as Record<string, unknown>;
  const { messages } = await publint({ pkgDir: join(modules, name), level: 'suggestion', strict: true });
  expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
});

test.each(['packages/core', 'packages/elements'])('the types of %s are found by every way of resolving modules', (workspace) => {
  const { stdout, status } = spawnSync(process.execPath, [join(root, 'node_modules/@arethetypeswrong/cli/dist/index.js'), '--pack', '.', '--profile', 'esm-only', '--format', 'ascii', '--exclude-entrypoints', 'schemas/*.json', 'custom-elements.json', 'html-custom-data.json', 'web-types.json'], { cwd: join(root, workspace), encoding: 'utf8' });
  expect(status, stdout).toBe(0);
});

test('every schema in the package is the one that the library checks by', () => {
  expect(node(`import { readFileSync } from 'node:fs';
import { inputSchemaOf, jsonSchemasOf } from '@seatwright/core';
import { workshopFileField } from '@seatwright/core/job';
import { calculations } from '@seatwright/core/registry';
const schema = (name) => { const { $id, ...rest } = JSON.parse(readFileSync(new URL(import.meta.resolve('@seatwright/core/schemas/' + name + '.json')), 'utf8')); return JSON.stringify(rest); };
const alike = calculations.every((each) => { const { input, output } = jsonSchemasOf(each); return schema(each.name + '.input') === JSON.stringify(input) && schema(each.name + '.output') === JSON.stringify(output); });
console.log(alike, schema('workshop-file') === JSON.stringify(inputSchemaOf(workshopFileField)));`)).toBe('true true');
});

test('the manifest of the elements names only what the tarball holds, and every tag', () => {
  const { modules: listed } = JSON.parse(readFileSync(join(modules, '@seatwright/elements/custom-elements.json'), 'utf8')) as { modules: { path: string; exports?: { kind: string; name: string }[] }[] };
  for (const { path } of listed) expect(files.elements).toContain(path);
  const { exports } = JSON.parse(readFileSync(join(modules, '@seatwright/elements/package.json'), 'utf8')) as { exports: Record<string, unknown> };
  const tags = Object.keys(exports).flatMap((entry) => /^\.\/(seat-[a-z-]+)\.define\.js$/.exec(entry)?.[1] ?? []).sort();
  expect(listed.flatMap((each) => each.exports ?? []).filter(({ kind }) => kind === 'custom-element-definition').map(({ name }) => name).sort()).toEqual(tags);
  for (const tag of tags) expect(readdirSync(join(root, 'docs/elements'))).toContain(`${tag}.html`);
  const { tags: completed } = JSON.parse(readFileSync(join(modules, '@seatwright/elements/html-custom-data.json'), 'utf8')) as { tags: { name: string; description: string }[] };
  expect(completed.map(({ name }) => name)).toEqual(tags);
  expect(completed.every(({ description }) => description !== '')).toBe(true);
});
