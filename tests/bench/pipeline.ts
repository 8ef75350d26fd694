import type { DesignFile } from '../../sim/design/file.ts';
import { withValueAt } from '../../sim/design/place.ts';
import { evaluateDesign } from '../../sim/design/validate.ts';
import type { Detail } from '../../sim/mesh/wetted.ts';
import { createPipeline, type Pipeline } from '../../sim/pipeline.ts';
import { goodOf } from '../support/change-file.ts';
import { SETUP } from './demo.ts';
import { atMost, type Row, timeRow, valueRow } from './rows.ts';
import { timeInTurn, timeOf } from './timing.ts';

interface Edit {
  readonly name: string;
  readonly target_ms: number;
  readonly path: string;
  readonly from: number;
}

/** Each goes up by a hundredth at a time, as a value that is dragged does. */
const EDITS: readonly Edit[] = [
  { name: 'hook mass', target_ms: 5, path: 'setups.1.hung.0.mass_g', from: 2.1 },
  { name: 'joint moved', target_ms: 25, path: 'dimensions.tail_mm', from: 98 },
  { name: 'length', target_ms: 60, path: 'body.length_mm', from: 140 },
];
const VALUES = 30;
/** The whole recipe is much code: it takes this many runs until all of it is compiled for speed. */
const WARM_RUNS = 40;

/** From file to last answer on the three-link demo: from scratch, and after an edit with the memory of the run before. */
export function pipelineRows(file: DesignFile): readonly Row[] {
  for (let i = 0; i < WARM_RUNS; i++) drain(createPipeline(), file, 'full');
  const evaluate = timeOf(() => goodOf(evaluateDesign(file)));
  const scratch = timeOf(() => drain(createPipeline(), file, 'full'));
  return [
    timeRow('reading the design alone', evaluate, 'ms', null),
    timeRow('from scratch, full', scratch, 'ms', atMost(60)),
    ...EDITS.flatMap((edit) => [...editRows(file, edit, 'full'), ...editRows(file, edit, 'drag')]),
  ];
}

function editRows(file: DesignFile, edit: Edit, detail: Detail): readonly Row[] {
  const designs = Array.from({ length: VALUES }, (_, i) => withValueAt(file, edit.path, edit.from + (i + 1) / 100));
  const pipeline = createPipeline();
  const [kept, plain] = timeInTurn([
    (i) => drain(pipeline, designs[i % VALUES], detail),
    (i) => drain(createPipeline(), designs[i % VALUES], detail),
  ]);
  return [
    timeRow(`${edit.name}, ${detail}`, kept, 'ms', atMost(edit.target_ms)),
    timeRow(`${edit.name}, ${detail}: plain rebuild`, plain, 'ms', null),
    valueRow(`${edit.name}, ${detail}: plain rebuild over ours`, plain.least / kept.least, '×', null),
  ];
}

/** Throws when an answer is missing: a design that fails half way would look quick. */
export function drain(pipeline: Pipeline, file: DesignFile, detail: Detail): void {
  for (const { name, outcome } of pipeline.steps(file, { setup: SETUP, detail })) {
    goodOf<unknown>(outcome);
    // what comes after is worked out when nobody is waiting
    if (name === 'warnings') return;
  }
}
