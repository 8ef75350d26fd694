import type { DesignFile, Step } from '../../sim/index.ts';
import { type Ask, type Detail, type EngineDoor, type Report, stepKey, type Told } from './protocol.ts';

/** The recipe that the engine drains; the worker hands in the real one. */
export interface StepSource {
  steps(file: DesignFile, request: Pick<Ask, 'setup' | 'detail'>): Iterable<Step>;
}

/**
 * Longest stretch of work between two looks at what has arrived. Half a frame: shorter only costs turns, longer is
 * felt in a drag.
 */
const STRETCH_MS = 8;

/**
 * With each of these a part of a full run is there that stands for itself, and is told of: all that is drawn, the ballast
 * that is planned, and how good the sums are with every other way to rest.
 */
const MILESTONES: ReadonlySet<string> = new Set<Step['name']>(['warnings', 'planned', 'allWarnings']);
/** Lists that are told again as they grow. */
const GROWING: ReadonlySet<string> = new Set<Step['name']>(['cures', 'whatIfs']);
/** Growth that comes faster than this is told of together: no one reads faster. */
const GROWTH_MS = 120;

/**
 * Drains the pipeline, one run at a time, newest design first.
 *
 * Between steps it takes a breath, in which newer designs arrive. A full run ends there and then when one has: what it
 * would show is out of date. It tells of each part that stands for itself before it goes on to what takes longer. A drag
 * run is short and is let finish, or else a hand that never rests would see nothing on a slow machine; of the designs that
 * came meanwhile only the newest is worked out.
 *
 * takeBreath lets waiting messages in; now is a clock in milliseconds.
 */
export function createEngine(
  source: StepSource,
  takeBreath: () => Promise<void>,
  now: () => number = () => performance.now(),
): EngineDoor {
  // what the page holds of the last run of each detail: an answer is sent again only when it is another object
  const heldOf: Record<Detail, ReadonlyMap<string, Step>> = { drag: new Map(), full: new Map() };
  let tell: (told: Told) => void = () => {};
  let waiting: Ask | null = null;
  let busy = false;

  /** The run's last report, or null when it gave way to a newer design. */
  async function run(ask: Ask): Promise<Report | null> {
    const made = new Map<string, Step>();
    let breathedAt = now();
    let toldAt = breathedAt;
    let hasGrown = false;
    for (const step of source.steps(ask.file, ask)) {
      const isMilestone = MILESTONES.has(step.name) && ask.detail === 'full';
      hasGrown ||= GROWING.has(step.name) && made.get(stepKey(step))?.outcome !== step.outcome;
      made.set(stepKey(step), step);
      const isDue = isMilestone || (hasGrown && now() - toldAt >= GROWTH_MS);
      if (!isDue && now() - breathedAt < STRETCH_MS) continue;
      await takeBreath();
      if (waiting !== null && ask.detail === 'full') return null;
      if (isDue) {
        tell({ kind: 'report', report: reportOf(ask, made, false) });
        toldAt = now();
        hasGrown = false;
      }
      breathedAt = now();
    }
    return reportOf(ask, made, true);
  }

  function reportOf(ask: Ask, made: ReadonlyMap<string, Step>, done: boolean): Report {
    const held = heldOf[ask.detail];
    heldOf[ask.detail] = new Map(done ? made : [...held, ...made]);
    const changed = [...made].filter(([key, step]) => held.get(key)?.outcome !== step.outcome).map(([, step]) => step);
    return { seq: ask.seq, detail: ask.detail, done, present: [...made.keys()], changed };
  }

  async function drain(): Promise<void> {
    busy = true;
    while (waiting !== null) {
      const ask: Ask = waiting;
      waiting = null;
      try {
        const report = await run(ask);
        if (report !== null) tell({ kind: 'report', report });
      } catch (error) {
        tell({ kind: 'fault', message: error instanceof Error ? error.message : String(error) });
      }
      // a design that arrived during the last stretch is newer than the one just told of
      await takeBreath();
    }
    busy = false;
  }

  return {
    listen(listener) {
      tell = listener;
    },
    ask(ask) {
      waiting = ask;
      if (!busy) void drain();
    },
  };
}
