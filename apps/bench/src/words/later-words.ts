// Puts the English sentences that are seldom said beside those that came with the page. The build writes what stands in here (`words-in-two.ts`);
// while developing all of them are there at once.
export {};
