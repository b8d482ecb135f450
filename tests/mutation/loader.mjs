import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import ts from 'typescript';

/** Reads sources as they stand: packages by name from `src`, types stripped, `vitest` by the plain stand-in. */
const root = pathToFileURL(`${process.cwd()}/`);
const standIn = new URL('tests/mutation/plain-vitest.mjs', root).href;

export function resolve(specifier, context, next) {
  if (specifier === 'vitest') return { url: standIn, shortCircuit: true };
  const named = /^@seatwright\/core(?:\/([a-z]+))?$/.exec(specifier);
  if (named !== null) {
    const [, room] = named;
    const file = room === undefined ? 'index.ts' : room === 'registry' ? 'registry.ts' : `${room}/index.ts`;
    return { url: new URL(`packages/core/src/${file}`, root).href, shortCircuit: true };
  }
  if (/^\.{1,2}\//.test(specifier) && context.parentURL?.endsWith('.ts')) {
    const url = new URL(specifier.replace(/\.js$/, '.ts'), context.parentURL);
    if (existsSync(fileURLToPath(url))) return { url: url.href, shortCircuit: true };
  }
  return next(specifier, context);
}

/** What core remembers from one call to the next, and how the runner makes it forget: a change must not hide behind an answer worked out before it. */
const memories = {
  'tolerance/internal/class-limits.ts': 'columns.fill(undefined)',
  'handwork/internal/standard-tools.ts': 'built = null',
};

export function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const { outputText } = ts.transpileModule(readFileSync(fileURLToPath(url), 'utf8'), { compilerOptions: { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext } });
  const forget = Object.entries(memories).find(([file]) => url.endsWith(file))?.[1];
  const source = forget === undefined ? outputText : `${outputText}\n(globalThis.seatwrightForget ??= []).push(() => { ${forget}; });\n`;
  return { format: 'module', source, shortCircuit: true };
}
