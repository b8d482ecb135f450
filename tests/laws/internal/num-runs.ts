/** How often a law is tried: 200 times at the desk, 2 000 times where `CI` is set, as often as `RUNS` says in `npm run soak`. */
export const numRuns = process.env['RUNS'] === undefined ? (process.env['CI'] === undefined ? 200 : 2000) : Number(process.env['RUNS']);
