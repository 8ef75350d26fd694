import { createPipeline } from '../../sim/index.ts';

createPipeline();
