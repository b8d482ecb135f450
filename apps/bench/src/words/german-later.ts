// The same for German as `later-words.ts` for English, and where it lies, to be kept for days without a network.
export const address = import.meta.url;
