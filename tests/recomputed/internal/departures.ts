import { readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

/** A printed cell that is not what the rounded formula gives. */
export interface Departure {
  readonly over: number;
  readonly upTo: number;
  readonly column: string;
  readonly printed: number;
  readonly formula: number;
  readonly rounded: number;
  readonly step: number;
}

const page = new URL('../iso-286-departures.md', import.meta.url);

function reason({ upTo, printed, formula, rounded, step }: Departure): string {
  if (Math.abs(printed - formula) < Math.abs(rounded - formula)) return 'kept nearer to the formula than its step of rounding';
  if (Math.abs(printed - formula) <= step) return 'rounded the other way';
  return upTo <= 18 ? 'set by the standard at small sizes, where the formula does not reach' : 'set by the standard, off its formula';
}

const rowOf = (departure: Departure): string => {
  const { over, upTo, column, printed, formula, rounded } = departure;
  return `| ${column} | over ${over} up to ${upTo} | ${printed} | ${formula.toFixed(2)} | ${rounded} | ${reason(departure)} |`;
};

/**
 * The cells that depart are those on the page under this heading, no more and no fewer.
 * `REGEN=1` writes them anew; a new one means that a table changed: read the difference.
 */
export function expectListed(heading: string, found: readonly (Departure | null)[]): void {
  const departures = found.filter((departure) => departure !== null);
  const rows = departures.map(rowOf);
  const [intro = '', ...sections] = readFileSync(page, 'utf8').split(/^## /m);
  const text = `${heading}\n\n${found.length} cells recomputed, ${found.length - rows.length} as by the rounded formula, ${rows.length} not:\n\n| column | size (mm) | printed (µm) | formula | rounded | why it stays |\n|---|---|---|---|---|---|\n${rows.join('\n')}\n\n`;
  if (process.env['REGEN'] !== undefined) {
    const others = sections.filter((section) => !section.startsWith(`${heading}\n`));
    writeFileSync(page, [intro.trimEnd() + '\n\n', ...[...others.map((section) => section.trimEnd() + '\n\n'), text].sort().map((section) => `## ${section}`)].join('').trimEnd() + '\n');
    return;
  }
  expect(`## ${sections.find((section) => section.startsWith(`${heading}\n`)) ?? ''}`.trim()).toBe(`## ${text}`.trim());
}
