import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { makeConsumer, root, type Consumer } from './internal/consumer.js';

const folder = join(root, 'docs/cookbook');
const recipes = readdirSync(folder).filter((name) => name.endsWith('.md')).sort();

interface Block {
  readonly language: string;
  /** A name after the language: the block is a file for those after it, and is not run by itself. */
  readonly file: string;
  readonly text: string;
}

function blocksOf(markdown: string): readonly Block[] {
  return [...markdown.matchAll(/^```(\w+)(?: (\S+))?\n([\s\S]*?)^```$/gmu)].map(([, language = '', file = '', text = '']) => ({ language, file, text }));
}

let consumer: Consumer;
beforeAll(() => { consumer = makeConsumer(); }, 120_000);

/** Runs one block where the packages are installed; what it printed. */
function run({ language, text }: Block, at: string): string {
  const env = { ...process.env, PATH: `${join(consumer.modules, '.bin')}${delimiter}${process.env['PATH'] ?? ''}` };
  const [command, args] = language === 'js' ? [process.execPath, ['recipe.mjs']] : language === 'python' ? ['python3', ['recipe.py']] : ['bash', ['-e', 'recipe.sh']];
  writeFileSync(join(at, args.at(-1) ?? ''), text);
  const { stdout, stderr, status, error } = spawnSync(command, args, { cwd: at, env, encoding: 'utf8' });
  if (error !== undefined) throw new Error(`${command} is needed to try this recipe`, { cause: error });
  expect(stderr, language).toBe('');
  expect(status).toBe(0);
  return stdout;
}

test.each(recipes)('%s does what it says', (name) => {
  const blocks = blocksOf(readFileSync(join(folder, name), 'utf8')).filter(({ language }) => language !== 'html');
  const at = join(consumer.folder, name.replace('.md', ''));
  mkdirSync(at);
  blocks.forEach((block, i) => {
    if (block.language === 'text') return;
    if (block.file !== '') return writeFileSync(join(at, block.file), block.text);
    const printed = run(block, at);
    const next = blocks[i + 1];
    expect(printed.trim()).not.toBe('');
    expect(printed).not.toMatch(/NaN|undefined/u);
    if (next?.language === 'text') expect(printed).toBe(next.text);
  });
});

test('there are ten recipes or more, each named in the list', () => {
  expect(recipes.length).toBeGreaterThanOrEqual(10);
  const list = readFileSync(join(root, 'docs/README.md'), 'utf8');
  for (const name of recipes) expect(list).toContain(`cookbook/${name}`);
});
