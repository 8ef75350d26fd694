import { useStore } from 'zustand';
import type { DesignFile } from '../../sim/index.ts';
import { besideStore, type LastGood, markAsked, takeFault, takeReport } from './answers.ts';
import { type Asking, createAsking } from './asking.ts';
import { startEngine } from './client.ts';

let asking: Asking | null = null;

/**
 * Works a second setup out beside the first. It has a worker of its own, started when it is first wanted, so that it
 * never holds up the answers about the setup that is looked at.
 */
export function askBeside(file: DesignFile, setup: string): void {
  asking ??= startBeside();
  asking.changed(file, setup);
}

function startBeside(): Asking {
  const engine = startEngine(takeFault);
  engine.listen((told) => {
    if (told.kind === 'report') takeReport(told.report, besideStore);
    else takeFault(told.message);
  });
  return createAsking(engine, (seq) => markAsked(seq, besideStore));
}

const NOTHING: LastGood = { bait: {}, links: [] };

/** What is known of the setup of this name, nothing while the answers are still those of another. */
export function useBeside<Part>(setup: string | null, select: (known: LastGood) => Part): Part {
  return useStore(besideStore, ({ lastGood }) => select(lastGood.bait.setup?.name === setup ? lastGood : NOTHING));
}
