import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';

const reference = new URL('../../reference/', import.meta.url);
const sidecars = readdirSync(reference, { recursive: true, encoding: 'utf8' }).filter((path) => /^[a-z]+\/[a-z0-9-]+\.json$/.test(path));

test.each(sidecars)('%s names laws that exist and read its table', (path) => {
  const { id, laws } = JSON.parse(readFileSync(new URL(path, reference), 'utf8')) as { id: string; laws: readonly string[] };
  expect(laws).not.toEqual([]);
  for (const law of laws) {
    const file = new URL(`./${law}.test.ts`, import.meta.url);
    expect(existsSync(file), law).toBe(true);
    // Laws over zones and fits read their tables through the calculations.
    if (/^(iso-286-zones|iso-286-and-inch-fits)$/.test(law)) continue;
    expect(readFileSync(file, 'utf8')).toContain(`generated/${id}.js`);
  }
});
