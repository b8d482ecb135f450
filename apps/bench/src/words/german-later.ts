// The same for German as `later-words.ts` for English.
export const address = import.meta.url;
