import { type answersStore, markAsked, takeFault, takeReport } from './answers.ts';
import { type Asking, createAsking } from './asking.ts';
import { startEngine } from './client.ts';
import type { EngineWork } from './protocol.ts';

/** Starts an engine in a worker of its own, whose answers go into this store. */
export function startAsking(store: typeof answersStore, work: EngineWork): Asking {
  const engine = startEngine(takeFault, work);
  engine.listen((told) => {
    if (told.kind === 'report') takeReport(told.report, store);
    else takeFault(told.message);
  });
  return createAsking(engine, (seq) => markAsked(seq, store));
}
