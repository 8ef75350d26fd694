import { expose } from 'comlink';
import { createAdvisor } from '../../sim/index.ts';
import { createEngine } from './engine.ts';

// a message to ourselves is taken after those already waiting, and unlike a timer it is not held back
const turns = new MessageChannel();
const takeBreath = () =>
  new Promise<void>((resolve) => {
    turns.port1.onmessage = () => resolve();
    turns.port2.postMessage(null);
  });

expose(createEngine(createAdvisor(), takeBreath));
