import { useStore } from 'zustand';
import type { DesignFile } from '../../sim/index.ts';
import { type Answers, besideStore, type LastGood } from './answers.ts';
import type { Asking } from './asking.ts';
import { startAsking } from './start.ts';

let asking: Asking | null = null;

/**
 * Works a second setup out beside the first. It has a worker of its own, started when it is first wanted, so that it
 * never holds up the answers about the setup that is looked at.
 */
export function askBeside(file: DesignFile, setup: string): void {
  asking ??= startAsking(besideStore, 'answer');
  asking.changed(file, setup);
}

const NOTHING: LastGood = { bait: {}, links: [] };

/** What stands of the setup of a name that is worked out beside. */
export interface Beside {
  /** Nothing while the answers are still those of another setup, or when it cannot be worked out. */
  readonly known: LastGood;
  /** The same as its last full run left it. */
  readonly settled: LastGood;
  /** It was asked for and cannot be worked out. */
  readonly broken: boolean;
}

export function besideOf(
  { bait, lastGood, settled }: Pick<Answers, 'bait' | 'lastGood' | 'settled'>,
  setup: string | null,
): Beside {
  const isThis = bait.setup?.status === 'ok' && bait.setup.value.name === setup;
  const isDone = isThis && bait.assembled?.status === 'ok';
  return { known: isDone ? lastGood : NOTHING, settled: isDone ? settled : NOTHING, broken: isThis && !isDone };
}

/** Reads what stands of the setup beside inside a component. */
export function useBeside<Part>(setup: string | null, select: (beside: Beside) => Part): Part {
  return useStore(besideStore, (answers) => select(besideOf(answers, setup)));
}
