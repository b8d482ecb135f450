import { answerLine } from './answer-line.js';
import type { LineBlock } from './line-blocks.js';

export interface BlockAnswer {
  /** Answer lines, each with its line end; empty when the block held blank lines alone. */
  readonly text: string;
  readonly hasFailed: boolean;
}

/** The answers to a block of request lines, in order; blank lines are passed over. */
export function answerBlock({ firstLine, texts }: LineBlock): BlockAnswer {
  let text = '';
  let hasFailed = false;
  texts.forEach((request, i) => {
    if (request?.trim() === '') return;
    const { answer, ok } = answerLine(request, firstLine + i);
    text += `${answer}\n`;
    hasFailed ||= !ok;
  });
  return { text, hasFailed };
}
