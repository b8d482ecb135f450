import { StringDecoder } from 'node:string_decoder';

/** Lines that arrived together. A line over the limit stands as null: its text was dropped as it came. */
export interface LineBlock {
  readonly firstLine: number;
  readonly texts: readonly (string | null)[];
}

const longestLine = 16 * 1024 * 1024;

/**
 * A stream cut into lines, a block for each piece read: as fast as it comes, and never more than one piece and one line held.
 * Lines end in \n or \r\n; the last needs no end. Numbers count from 1, blank lines included.
 */
export async function* lineBlocks(input: AsyncIterable<Buffer | string>, longest = longestLine): AsyncGenerator<LineBlock> {
  const decoder = new StringDecoder('utf8');
  let rest = '';
  let isOverlong = false;
  let firstLine = 1;
  for await (const piece of input) {
    const pieces = (typeof piece === 'string' ? piece : decoder.write(piece)).split('\n');
    const tail = pieces.pop() ?? '';
    if (pieces.length > 0) {
      pieces[0] = rest + (pieces[0] ?? '');
      const texts = pieces.map((text, i) => ((i === 0 && isOverlong) || text.length > longest ? null : withoutReturn(text)));
      yield { firstLine, texts };
      firstLine += texts.length;
      rest = tail;
      isOverlong = false;
    } else {
      rest += tail;
    }
    if (rest.length > longest) {
      isOverlong = true;
      rest = '';
    }
  }
  rest += decoder.end();
  if (rest !== '' || isOverlong) yield { firstLine, texts: [isOverlong || rest.length > longest ? null : withoutReturn(rest)] };
}

function withoutReturn(text: string): string {
  return text.endsWith('\r') ? text.slice(0, -1) : text;
}
