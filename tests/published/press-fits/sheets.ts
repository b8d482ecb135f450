import type { Sheet } from '../ledger/sheet.js';
import { printed } from './printed-examples.js';
import { recalled } from './recalled-examples.js';

/** Worked examples of press and shrink fits: read on a page, and recalled. */
export const pressFits: readonly Sheet[] = [...printed, ...recalled];
