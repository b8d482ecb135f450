import type { JsonObject } from '../document/raw-document.js';
import { isFinished } from '../document/without-unfinished.js';
import type { OwnTool } from '../keeping/own-tools.js';
import { faultOfTools } from './fault-of-tools.js';

/** What a new job begins with: of one's own, those that have all they need to count and can be read. The others stay in the list, and hold up no job. */
export function toolsForNewJob(own: readonly OwnTool[]): readonly JsonObject[] {
  return own.map(({ tool }) => tool).filter((tool) => isFinished('toolsAtHand', tool) && faultOfTools([tool]) === null);
}
