import { once } from 'node:events';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { answerLine } from '../internal/answer-line.js';

/** Reads JSON Lines and answers each in order, streaming: what is not yet written is never more than a few lines. */
export async function batch(input: Readable, output: Writable): Promise<void> {
  let line = 0;
  let failed = false;
  for await (const text of createInterface({ input, crlfDelay: Infinity })) {
    line += 1;
    if (text.trim() === '') continue;
    const { answer, ok } = answerLine(text, line);
    failed ||= !ok;
    if (!output.write(`${answer}\n`)) await once(output, 'drain');
  }
  if (failed) process.exitCode = 1;
}
