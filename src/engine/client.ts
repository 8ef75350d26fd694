import { proxy, wrap } from 'comlink';
import type { EngineDoor, EngineWork } from './protocol.ts';

/** Starts a worker; what it works out is told to the one who listens. */
export function startEngine(onFault: (message: string) => void, work: EngineWork): EngineDoor {
  const worker = new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module', name: work });
  // a worker that could not be loaded would otherwise leave the page waiting without a word
  worker.addEventListener('error', (event) =>
    onFault(event.message === '' ? 'the worker did not start' : event.message),
  );
  const door = wrap<EngineDoor>(worker);
  const orFault = (error: unknown) => onFault(error instanceof Error ? error.message : String(error));
  return {
    listen: (tell) => void door.listen(proxy(tell)).catch(orFault),
    ask: (ask) => void door.ask(ask).catch(orFault),
  };
}
