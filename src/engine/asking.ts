import type { DesignFile } from '../../sim/index.ts';
import type { EngineDoor } from './protocol.ts';

/** Rest of the hand after which the full sums are worth starting. */
const REST_MS = 120;

export interface Asking {
  /** The design or the setup is another one. */
  changed(file: DesignFile, setup: string | null): void;
}

/**
 * Asks for each design twice: coarsely at once, fully when the hand rests. Changes within one turn of the event loop
 * are one design.
 */
export function createAsking(door: Pick<EngineDoor, 'ask'>, onAsked: (seq: number) => void): Asking {
  let seq = 0;
  let newest: { file: DesignFile; setup: string | null } | null = null;
  let isTurnTaken = false;
  let rest: ReturnType<typeof setTimeout> | undefined;

  const askFully = () => {
    if (newest !== null) door.ask({ ...newest, seq, detail: 'full' });
  };

  const askCoarsely = () => {
    isTurnTaken = false;
    if (newest !== null) door.ask({ ...newest, seq, detail: 'drag' });
  };

  return {
    changed(file, setup) {
      newest = { file, setup };
      seq += 1;
      // before the page is told: it would draw itself anew first, while the worker waits
      if (!isTurnTaken) queueMicrotask(askCoarsely);
      isTurnTaken = true;
      onAsked(seq);
      clearTimeout(rest);
      rest = setTimeout(askFully, REST_MS);
    },
  };
}
