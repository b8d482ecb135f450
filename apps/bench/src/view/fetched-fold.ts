import { allSentences } from '../words/sentences.js';

/** For a fold whose content is fetched when it is opened, after the sentences that it may say. What cannot be fetched is told by the page's notice. */
export function opening(fetch: () => Promise<unknown>): (event: Event) => void {
  return (event) => { if ((event.currentTarget as HTMLDetailsElement).open) void allSentences().then(fetch); };
}
