import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineBlocks } from './line-blocks.js';

async function linesFrom(pieces: readonly (Buffer | string)[], longest?: number): Promise<readonly (string | null)[]> {
  const lines: (string | null)[] = [];
  async function* stream(): AsyncGenerator<Buffer | string> {
    for (const piece of pieces) yield await Promise.resolve(piece);
  }
  for await (const { firstLine, texts } of lineBlocks(stream(), longest)) {
    expect(firstLine).toBe(lines.length + 1);
    lines.push(...texts);
  }
  return lines;
}

/** One text cut at any bytes, also inside a character. */
const cutText = fc
  .tuple(fc.array(fc.string({ unit: 'grapheme', maxLength: 12 }).map((text) => text.replaceAll(/[\r\n]/g, ''))), fc.array(fc.nat({ max: 200 })), fc.constantFrom('\n', '\r\n'))
  .map(([lines, cuts, end]) => {
    const bytes = Buffer.from(lines.map((line) => line + end).join(''));
    const edges = [0, ...cuts.filter((cut) => cut < bytes.length).sort((a, b) => a - b), bytes.length];
    return { lines, pieces: edges.slice(1).map((edge, i) => bytes.subarray(edges[i], edge)) };
  });

test('however a text is cut on its way, its lines arrive whole, in order and numbered', async () => {
  await fc.assert(
    fc.asyncProperty(cutText, async ({ lines, pieces }) => {
      expect(await linesFrom(pieces)).toEqual(lines.map((line) => Buffer.from(line).toString()));
    }),
  );
});

test('the last line needs no end, and no line comes of nothing', async () => {
  expect(await linesFrom(['a\nb'])).toEqual(['a', 'b']);
  expect(await linesFrom(['a\n'])).toEqual(['a']);
  expect(await linesFrom([])).toEqual([]);
});

test('an overlong line is dropped as it comes and the next is read', async () => {
  expect(await linesFrom(['1234', '5678', '90\nok\n', '123456789\n', 'end'], 5)).toEqual([null, 'ok', null, 'end']);
  expect(await linesFrom(['123456'], 5)).toEqual([null]);
});
