import fc from 'fast-check';

/**
 * The same random baits at every push, so that a push is judged by its own changes only. `npm run test:property` asks
 * for more of them, and for new ones each time; FLOATWRIGHT_SEED repeats one of those runs.
 */
const { FLOATWRIGHT_RUNS: runs, FLOATWRIGHT_SEED: seed } = process.env;
if (seed !== undefined || runs === undefined) fc.configureGlobal({ seed: Number(seed ?? 26112501) });
