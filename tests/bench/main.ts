import { createPipeline } from '../../sim/pipeline.ts';
import { answersOf } from '../support/worked-bait.ts';
import { linkRows, logRow } from './accuracy.ts';
import { ballastRows } from './ballast.ts';
import { chainRows } from './chain.ts';
import { DEMO, readDemo, SETUP } from './demo.ts';
import { drawingRows } from './drawing.ts';
import { kernelRows } from './kernel.ts';
import { pageRows } from './page.ts';
import { drain, pipelineRows } from './pipeline.ts';
import { reachRows } from './reach.ts';
import { lastResults, saveResults } from './results.ts';
import { rollRows } from './roll.ts';
import { type Row, sectionText, valueRow, verdictOf } from './rows.ts';
import { sinkingRows } from './sinking.ts';

const lastOf = lastResults();
const all: Row[] = [];

function show(title: string, rows: readonly Row[]): void {
  all.push(...rows);
  console.log(sectionText(title, rows, lastOf));
}

const file = readDemo();
if (file) {
  const start = performance.now();
  drain(createPipeline(), file, 'full');
  const first = performance.now() - start;
  show(`Pipeline, ${DEMO}, setup ${SETUP}`, [
    valueRow('first run of the process, nothing compiled', first, 'ms', null),
    ...pipelineRows(file),
  ]);
  const answers = answersOf(file, { setup: SETUP });
  const { own, others } = kernelRows(answers);
  show('Kernel, head link', own);
  show('The same equilibrium by other means, head link', others);
  show('Roll', rollRows(answers));
  show('Accuracy', [logRow(), ...linkRows(answers)]);
  show('Ballast', ballastRows());
  show('Jointed', chainRows());
  show('Reach', reachRows());
  show('Sinking', sinkingRows());
  show('Picture, head link', drawingRows(answers));
  show(`Page, ${DEMO}`, await pageRows());
} else {
  console.log(`${DEMO} is not there: pipeline, kernel and link rows are left out\n`);
  show('Accuracy', [logRow()]);
}

const missed = all.filter((row) => verdictOf(row) === 'miss').length;
const judged = all.filter((row) => verdictOf(row) !== '').length;
console.log(`${judged - missed} of ${judged} targets reached`);
if (process.argv.includes('--save')) console.log(`saved to ${saveResults(all)}`);
