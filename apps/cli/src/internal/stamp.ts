import { libraryVersion, tablesEdition } from '@seatwright/core';

/** What an answer was computed with: goes along with every one. */
const stamp = { libraryVersion, tablesEdition } as const;

/** The same as the last line of an answer in text. */
export const stampLine = `Seatwright ${libraryVersion}, tables ${tablesEdition}\n`;

/** An answer as JSON, without a line end. */
export function answerJson(output: unknown, working?: unknown, id?: unknown): string {
  return JSON.stringify({ ...(id === undefined ? {} : { id }), ok: true, output, ...(working === undefined ? {} : { working }), ...stamp });
}
