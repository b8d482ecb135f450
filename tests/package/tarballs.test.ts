import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;
const consumer = mkdtempSync(join(tmpdir(), 'seatwright-consumer-'));
const modules = join(consumer, 'node_modules');

/** Packs a workspace as it would be published and unpacks it where a consumer's installer would. */
function install(workspace: string, name: string): readonly string[] {
  const [packed] = JSON.parse(execFileSync('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', consumer], { cwd: join(root, workspace), encoding: 'utf8' })) as { filename: string; files: { path: string }[] }[];
  if (packed === undefined) throw new Error(`${workspace} could not be packed`);
  const target = join(modules, name);
  mkdirSync(target, { recursive: true });
  execFileSync('tar', ['xzf', join(consumer, packed.filename), '-C', target, '--strip-components', '1']);
  return packed.files.map(({ path }) => path);
}

let files: Readonly<Record<'core' | 'command', readonly string[]>>;

beforeAll(() => {
  mkdirSync(modules, { recursive: true });
  files = { core: install('packages/core', '@seatwright/core'), command: install('apps/cli', 'seatwright') };
  symlinkSync(join(root, 'node_modules/zod'), join(modules, 'zod'));
  writeFileSync(join(consumer, 'package.json'), '{"type":"module"}');
});

function node(script: string): string {
  writeFileSync(join(consumer, 'try.js'), script);
  const { stdout, stderr, status } = spawnSync(process.execPath, ['try.js'], { cwd: consumer, encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return stdout.trim();
}

test('the tarballs hold what is used and nothing of the bench they were made on', () => {
  for (const path of [...files.core, ...files.command]) expect(path).not.toMatch(/\.test\.|tsbuildinfo|^src\/|\.vitest/);
  for (const list of [files.core, files.command]) expect(list).toEqual(expect.arrayContaining(['LICENSE', 'README.md', 'package.json']));
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
