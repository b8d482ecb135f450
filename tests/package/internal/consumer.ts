import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const root = new URL('../../../', import.meta.url).pathname;

/** A folder with the packages as their tarballs would install, and nothing else of this repository but what they depend on. */
export interface Consumer {
  readonly folder: string;
  readonly modules: string;
  /** Paths in each tarball. */
  readonly files: Readonly<Record<'core' | 'elements' | 'command', readonly string[]>>;
}

export function makeConsumer(): Consumer {
  const folder = mkdtempSync(join(tmpdir(), 'seatwright-consumer-'));
  const modules = join(folder, 'node_modules');
  mkdirSync(join(modules, '.bin'), { recursive: true });
  const files = { core: install(folder, 'packages/core', '@seatwright/core'), elements: install(folder, 'packages/elements', '@seatwright/elements'), command: install(folder, 'apps/cli', 'seatwright') };
  for (const name of ['zod', 'lit', 'lit-html', 'lit-element', '@lit']) symlinkSync(join(root, 'node_modules', name), join(modules, name));
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  const command = join(modules, 'seatwright/dist/main.js');
  chmodSync(command, 0o755);
  symlinkSync(command, join(modules, '.bin/seatwright'));
  return { folder, modules, files };
}

/** Packs a workspace as it would be published and unpacks it where a consumer's installer would. */
function install(folder: string, workspace: string, name: string): readonly string[] {
  const [packed] = JSON.parse(execFileSync('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], { cwd: join(root, workspace), encoding: 'utf8' })) as { filename: string; files: { path: string }[] }[];
  if (packed === undefined) throw new Error(`${workspace} could not be packed`);
  const target = join(folder, 'node_modules', name);
  mkdirSync(target, { recursive: true });
  execFileSync('tar', ['xzf', join(folder, packed.filename), '-C', target, '--strip-components', '1']);
  return packed.files.map(({ path }) => path);
}
