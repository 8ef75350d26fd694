import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { caseOf, KINDS, type Kind } from './cases.ts';
import { examine, type Finding, UNSETTLED } from './examine.ts';

/** A share of the seeds for one thread. */
interface Errand {
  readonly kind: Kind;
  readonly first: number;
  readonly step: number;
  readonly end: number;
  /** The seed it is at, for whoever waits for it. */
  readonly at: Int32Array;
}

/** What a case gave, as it comes back from the thread. */
interface Reply extends Finding {
  readonly kind: Kind;
  readonly seed: number;
  readonly ms: number;
}

const THREADS = 2;
/** A case takes milliseconds. In time of the processor: on a busy machine a thread may well wait for a minute. */
const LONGEST_MS = 60_000;
/** Of one cause there may be thousands. */
const MOST_SAVED = 10;
/** Read from the top of the checkout, where npm starts its scripts. */
const PRESETS = 'presets';
const REGRESSIONS = 'tests/fuzz/regressions';

function presetTexts(): readonly string[] {
  const names = readdirSync(PRESETS).filter((name) => name.endsWith('.json'));
  return names.map((name) => readFileSync(`${PRESETS}/${name}`, 'utf8'));
}

function work({ kind, first, step, end, at }: Errand): void {
  const presets = presetTexts();
  for (let seed = first; seed < end; seed += step) {
    at[0] = seed;
    const { source, detail } = caseOf(kind, seed, presets);
    const start = performance.now();
    const finding = examine(source, detail);
    const reply: Reply = { ...finding, kind, seed, ms: performance.now() - start };
    parentPort?.postMessage(reply);
  }
}

/** Time of the processor that all threads took so far. */
function workedMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Sends one thread through its seeds; ends with an error that names the seed where it stands still. */
function sent(errand: Omit<Errand, 'at'>, take: (reply: Reply) => void): Promise<void> {
  return new Promise((done, fail) => {
    const at = new Int32Array(new SharedArrayBuffer(4));
    const worker = new Worker(fileURLToPath(import.meta.url), { workerData: { ...errand, at } satisfies Errand });
    let [last, since] = [at[0], workedMs()];
    const watch = setInterval(() => {
      if (at[0] !== last) [last, since] = [at[0], workedMs()];
      if (workedMs() - since < LONGEST_MS) return;
      clearInterval(watch);
      void worker.terminate();
      fail(new Error(`seed ${last} of ${errand.kind} takes more than ${LONGEST_MS / 1000} s`));
    }, 1000);
    worker.on('message', take);
    worker.on('error', fail);
    worker.on('exit', () => {
      clearInterval(watch);
      done();
    });
  });
}

/** Causes that differ only in their numbers are one. */
function causeOf(fault: string): string {
  return fault.split('\n')[0].replace(/-?\d+(\.\d+)?(e[+-]?\d+)?/g, '#');
}

async function fuzz(kind: Kind, seed: number, count: number): Promise<number> {
  const start = performance.now();
  const reached = new Map<string, number>();
  const causes = new Map<string, number>();
  let slowest = { seed, ms: 0 };
  let saved = 0;
  const take = (reply: Reply) => {
    reached.set(reply.reached, (reached.get(reply.reached) ?? 0) + 1);
    if (reply.ms > slowest.ms) slowest = reply;
    if (reply.reached === UNSETTLED) console.log(`seed ${reply.seed} of ${kind}: ${UNSETTLED}`);
    for (const fault of reply.faults) {
      const cause = causeOf(fault);
      const known = causes.get(cause) ?? 0;
      causes.set(cause, known + 1);
      if (known > 0 || saved >= MOST_SAVED) continue;
      saved++;
      const name = `${REGRESSIONS}/${kind}-${reply.seed}.design`;
      writeFileSync(name, caseOf(kind, reply.seed, presetTexts()).source);
      console.log(`seed ${reply.seed} of ${kind}, kept as ${name}:\n  ${fault}`);
    }
  };
  const share = (first: number) => sent({ kind, first: seed + first, step: THREADS, end: seed + count }, take);
  await Promise.all(Array.from({ length: THREADS }, (_, first) => share(first)));
  const seconds = (performance.now() - start) / 1000;
  const tally = [...reached].map(([what, times]) => `${what} ${times}`).toSorted();
  console.log(`${count} ${kind} in ${seconds.toFixed(0)} s: ${tally.join(', ')}`);
  console.log(`  slowest: seed ${slowest.seed}, ${slowest.ms.toFixed(0)} ms`);
  for (const [cause, times] of causes) console.log(`  ${times} times: ${cause}`);
  const cases = [...reached.values()].reduce((sum, times) => sum + times, 0);
  if (cases !== count) console.log(`  only ${cases} of them came back`);
  return causes.size + Math.abs(count - cases);
}

async function main(): Promise<void> {
  const seed = Number(process.env.FLOATWRIGHT_SEED ?? Date.now() % 1_000_000_000);
  const count = Number(process.env.FLOATWRIGHT_COUNT ?? 20_000);
  console.log(`seed ${seed}, ${count} of each kind`);
  let faults = 0;
  for (const kind of KINDS) faults += await fuzz(kind, seed, count);
  console.log(faults === 0 ? 'no fault found' : `${faults} causes of fault; repeat with FLOATWRIGHT_SEED=${seed}`);
  process.exitCode = faults === 0 ? 0 : 1;
}

if (isMainThread) await main();
else work(workerData);
