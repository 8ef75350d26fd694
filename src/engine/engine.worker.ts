import { expose } from 'comlink';
import { createAdvisor, createPipeline } from '../../sim/index.ts';
import { createEngine } from './engine.ts';
import type { EngineWork } from './protocol.ts';

// a message to ourselves is taken after those already waiting, and unlike a timer it is not held back
const turns = new MessageChannel();
const takeBreath = () =>
  new Promise<void>((resolve) => {
    turns.port1.onmessage = () => resolve();
    turns.port2.postMessage(null);
  });

const work: EngineWork = self.name === 'answer' ? 'answer' : 'advise';
expose(createEngine(work === 'advise' ? createAdvisor() : createPipeline(), takeBreath));
