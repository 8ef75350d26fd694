import { readFileSync } from 'node:fs';
import type { DesignFile } from '../../sim/index.ts';
import { createPipeline, setValue } from '../../sim/index.ts';

/** The three-link demo, worked out as the page and the command line do. Run from the top of the checkout. */
const file = JSON.parse(readFileSync('presets/slate-shad-140.json', 'utf8')) as DesignFile;
const REPEATS = 30;

type Pipeline = ReturnType<typeof createPipeline>;

function drain(pipeline: Pipeline, design: DesignFile, detail: 'full' | 'drag'): void {
  for (const _ of pipeline.steps(design, { setup: null, detail }));
}

/** Least of many runs, in milliseconds. */
function leastOf(run: (i: number) => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < REPEATS; i++) {
    const start = performance.now();
    run(i);
    least = Math.min(least, performance.now() - start);
  }
  return least;
}

const edits: readonly (readonly [name: string, target_ms: number, path: readonly (string | number)[], from: number])[] =
  [
    ['hook edit', 5, ['setups', 0, 'hung', 0, 'mass_g'], 2.1],
    ['joint moved', 25, ['dimensions', 'tail_mm'], 98],
    ['length changed', 60, ['body', 'length_mm'], 140],
  ];

for (let i = 0; i < REPEATS; i++) drain(createPipeline(), file, 'full');
const scratch = leastOf(() => drain(createPipeline(), file, 'full'));
console.log(`from scratch: ${scratch.toFixed(1)} ms (target 60)`);
for (const [name, target, path, from] of edits) {
  for (const detail of ['full', 'drag'] as const) {
    const pipeline = createPipeline();
    drain(pipeline, file, detail);
    const designs = Array.from({ length: REPEATS }, (_, i) => setValue(file, path, from + 0.01 * (i + 1)));
    const warm = leastOf((i) => drain(pipeline, designs[i], detail));
    const cold = leastOf((i) => drain(createPipeline(), designs[i], detail));
    console.log(
      `${name}, ${detail}: ${warm.toFixed(1)} ms (target ${target}); plain rebuild ${cold.toFixed(1)} ms, ${(cold / warm).toFixed(1)}×`,
    );
  }
}
