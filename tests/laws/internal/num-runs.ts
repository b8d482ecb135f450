/** How often a law is tried: 200 times at the desk, 2 000 times where `CI` is set. */
export const numRuns = process.env['CI'] === undefined ? 200 : 2000;
