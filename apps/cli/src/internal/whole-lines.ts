/** [bytes] What a pipe takes whole or not at all (`PIPE_BUF` on Linux). */
const takenWhole = 4096;

/** A text in pieces of whole lines, each small enough to be taken whole: whoever is killed between two of them leaves no half line. A line longer than that is a piece of its own. */
export function* wholeLines(text: string): Generator<Buffer> {
  const bytes = Buffer.from(text);
  for (let from = 0; from < bytes.length; ) {
    const lastEnd = bytes.subarray(from, from + takenWhole).lastIndexOf(0x0a);
    const nextEnd = lastEnd >= 0 ? from + lastEnd : bytes.indexOf(0x0a, from);
    const to = nextEnd < 0 ? bytes.length : nextEnd + 1;
    yield bytes.subarray(from, to);
    from = to;
  }
}
