import { parentPort } from 'node:worker_threads';
import { answerBlock } from './answer-block.js';
import type { LineBlock } from './line-blocks.js';

/** A worker thread: a block of lines in, their answers out. */
parentPort?.on('message', (block: LineBlock) => parentPort?.postMessage(answerBlock(block)));
