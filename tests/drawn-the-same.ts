import fc from 'fast-check';

/**
 * Laws draw the same cases on every machine, so that a change alone decides whether the tests pass.
 * `npm run soak` draws anew each time (`RUNS` set, no `SEED`); what it finds becomes an example of its own.
 */
if (process.env['RUNS'] === undefined || process.env['SEED'] !== undefined) fc.configureGlobal({ seed: Number(process.env['SEED'] ?? 20_260_101) });
