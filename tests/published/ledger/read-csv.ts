import { readFileSync } from 'node:fs';

/** Cells of one line; a cell with a comma stands in quotes. */
function cellsOf(line: string): readonly string[] {
  return [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^",]*))(?=,|$)/gu)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

/** Rows of a CSV beside the module that names it, by the names of its header. */
export function readCsv(url: URL): readonly Readonly<Record<string, string>>[] {
  const [header = '', ...lines] = readFileSync(url, 'utf8').trimEnd().split('\n');
  const names = cellsOf(header);
  return lines.map((line, i) => {
    const cells = cellsOf(line);
    if (cells.length !== names.length) throw new Error(`${url.pathname}: line ${i + 2} has ${cells.length} cells, its header ${names.length}`);
    return Object.fromEntries(names.map((name, at) => [name, cells[at] ?? '']));
  });
}
