import { readFileSync } from 'node:fs';

/** Rows of a CSV beside the module that names it, by the names of its header. No cell is quoted. */
export function readCsv(url: URL): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(url, 'utf8');
  if (text.includes('"')) throw new Error(`${url.pathname}: quoted cells are not read here`);
  const [header = '', ...lines] = text.trimEnd().split('\n');
  const names = header.split(',');
  return lines.map((line, i) => {
    const cells = line.split(',');
    if (cells.length !== names.length) throw new Error(`${url.pathname}: line ${i + 2} has ${cells.length} cells, its header ${names.length}`);
    return Object.fromEntries(names.map((name, at) => [name, cells[at] ?? '']));
  });
}
