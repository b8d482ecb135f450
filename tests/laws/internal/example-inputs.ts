import { readFileSync, readdirSync } from 'node:fs';

const source = new URL('../../../packages/core/src/', import.meta.url);

/** A good input for as many calculations as their doc comments give one; the rest gets the input of the sheet below. */
export const exampleInputs = new Map<string, unknown>();
for (const path of readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))) {
  const text = readFileSync(new URL(path, source), 'utf8');
  const [, name] = /defineCalculation\(\{\s*name: '([a-z-]+)'/u.exec(text) ?? [];
  const [, input] = /@example \w+\.run\((\{.*\})\)[.\s[]/u.exec(text) ?? [];
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  if (name !== undefined && input !== undefined) exampleInputs.set(name, (new Function(`return (${input});`) as () => unknown)());
}
const sample = JSON.parse(readFileSync(new URL('../../../apps/bench/public/samples/bearing-outboard-crank.json', import.meta.url), 'utf8')) as unknown;
exampleInputs.set('job', { workshop: sample });
exampleInputs.set('service-record', { workshop: sample });
exampleInputs.set('workshop-file', sample);

/** The value with one leaf, or one whole branch, replaced. */
export function replaced(value: unknown, path: readonly number[], by: unknown): unknown {
  const [head, ...rest] = path;
  if (head === undefined || typeof value !== 'object' || value === null) return by;
  if (Array.isArray(value)) return value.length === 0 ? [by] : value.map((item: unknown, i) => (i === head % value.length ? replaced(item, rest, by) : item));
  const keys = Object.keys(value);
  if (keys.length === 0) return by;
  const key = keys[head % keys.length] ?? '';
  return { ...value, [key]: replaced((value as Readonly<Record<string, unknown>>)[key], rest, by) };
}
