import { availableParallelism } from 'node:os';
import type { Readable, Writable } from 'node:stream';
import { answerBlock, type BlockAnswer } from '../internal/answer-block.js';
import { AnswerCrew } from '../internal/answer-crew.js';
import { lineBlocks } from '../internal/line-blocks.js';
import { wholeLines } from '../internal/whole-lines.js';

const mostJobs = 64;
/** Blocks under way for each thread: enough to keep it busy, few enough to bound memory. */
const blocksAhead = 2;

/** Reads JSON Lines and answers each in order, streaming: only a few blocks of lines are held at a time, however long the input. */
export async function batch(input: Readable, output: Writable, options: { readonly jobs?: string } = {}): Promise<void> {
  const jobs = jobsOf(options.jobs);
  const crew = jobs === 1 ? null : new AnswerCrew(jobs);
  const underWay: Promise<BlockAnswer>[] = [];
  let hasFailed = false;
  const writeOldest = async (): Promise<void> => {
    const answer = await underWay.shift();
    if (answer === undefined) return;
    hasFailed ||= answer.hasFailed;
    for (const piece of wholeLines(answer.text)) await written(output, piece);
  };
  try {
    for await (const block of lineBlocks(input)) {
      const answer = crew === null ? Promise.resolve(answerBlock(block)) : crew.answer(block);
      answer.catch(() => undefined); // told when its turn to be written comes
      underWay.push(answer);
      while (underWay.length >= (crew === null ? 1 : jobs * blocksAhead)) await writeOldest();
    }
    while (underWay.length > 0) await writeOldest();
  } finally {
    await crew?.dismiss();
  }
  if (hasFailed) process.exitCode = 1;
}

/** One piece after the other: pieces that wait together are written together, and could be cut in the middle of a line. */
function written(output: Writable, piece: Buffer): Promise<void> {
  return new Promise((done, fail) => output.write(piece, (error) => (error ? fail(error) : done())));
}

function jobsOf(text: string | undefined): number {
  if (text === undefined) return 1;
  const jobs = Number(text);
  if (!/^\d+$/.test(text) || jobs < 1 || jobs > mostJobs) throw new Error(`--jobs "${text}": expected a whole number from 1 to ${mostJobs}; this machine runs ${availableParallelism()} at once`);
  return jobs;
}
