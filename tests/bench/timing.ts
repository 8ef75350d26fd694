/** How long one run takes, in milliseconds. */
export interface Timing {
  /** The least of all batches: what the work itself costs when nothing else gets in the way. */
  readonly least: number;
  readonly median: number;
}

/** A piece of work; it is told how many runs went before. */
export type Run = (i: number) => void;

/** Long enough for the code to be compiled for speed. */
const WARM_MS = 200;
/** Short runs are timed in batches of at least this, so that the clock's own grain does not show. */
const BATCH_MS = 1;
const BUDGET_MS = 500;
const FEWEST_BATCHES = 15;

/** Times a piece of work after warming it up. */
export function timeOf(run: Run): Timing {
  return timeInTurn([run])[0];
}

/** Times pieces of work in turn, so that whatever else the machine does falls on all of them alike. */
export function timeInTurn(works: readonly Run[]): readonly Timing[] {
  const contenders = works.map(warmUp);
  const turns = Math.max(...contenders.map((contender) => contender.batches));
  for (let turn = 0; turn < turns; turn++) {
    for (const { batches, times, takeBatch } of contenders) {
      // slow work takes fewer batches, spread evenly over all turns
      if (times.length <= (turn * batches) / turns) takeBatch();
    }
  }
  return contenders.map(({ times }) => {
    const sorted = times.toSorted((a, b) => a - b);
    return { least: sorted[0], median: sorted[Math.floor(sorted.length / 2)] };
  });
}

interface Contender {
  readonly batches: number;
  readonly takeBatch: () => void;
  readonly times: readonly number[];
}

function warmUp(run: Run): Contender {
  let runs = 0;
  const start = performance.now();
  do run(runs++);
  while (performance.now() - start < WARM_MS);
  const roughly = (performance.now() - start) / runs;
  const size = Math.max(1, Math.ceil(BATCH_MS / roughly));
  const batches = Math.max(FEWEST_BATCHES, Math.ceil(BUDGET_MS / (size * roughly)));
  const times: number[] = [];
  const takeBatch = () => {
    const from = performance.now();
    for (let i = 0; i < size; i++) run(runs++);
    times.push((performance.now() - from) / size);
  };
  return { batches, takeBatch, times };
}
