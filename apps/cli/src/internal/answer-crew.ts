import { Worker } from 'node:worker_threads';
import type { BlockAnswer } from './answer-block.js';
import type { LineBlock } from './line-blocks.js';

interface Member {
  readonly worker: Worker;
  readonly waiting: { readonly resolve: (answer: BlockAnswer) => void; readonly reject: (error: unknown) => void }[];
}

/** Worker threads that answer blocks of lines; each block goes to the one with the least to do. */
export class AnswerCrew {
  readonly #members: readonly Member[];

  constructor(jobs: number) {
    this.#members = Array.from({ length: jobs }, () => {
      const member: Member = { worker: new Worker(new URL('./answer-worker.js', import.meta.url)), waiting: [] };
      member.worker.on('message', (answer: BlockAnswer) => member.waiting.shift()?.resolve(answer));
      member.worker.on('error', (error) => {
        for (const { reject } of member.waiting.splice(0)) reject(error);
      });
      return member;
    });
  }

  answer(block: LineBlock): Promise<BlockAnswer> {
    const member = this.#members.reduce((least, other) => (other.waiting.length < least.waiting.length ? other : least));
    return new Promise((resolve, reject) => {
      member.waiting.push({ resolve, reject });
      member.worker.postMessage(block);
    });
  }

  async dismiss(): Promise<void> {
    await Promise.all(this.#members.map(({ worker }) => worker.terminate()));
  }
}
