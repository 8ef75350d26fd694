import { expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/index.ts';
import { createPipeline } from '../../../../sim/pipeline.ts';
import type { Answers } from '../../../../src/engine/answers.ts';
import { besideOf } from '../../../../src/engine/beside.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const PLAIN = makeDesignFile();
const [FIRST] = PLAIN.setups;
if (FIRST === undefined) throw new Error('the plain bait has a setup');
/** The answers about a setup as the page holds them, with what was good before. */
function answersOf(file: DesignFile, setup: string): Pick<Answers, 'bait' | 'lastGood' | 'settled'> {
  const bait: Record<string, unknown> = {};
  for (const { name, link, outcome } of createPipeline().steps(file, { setup, detail: 'drag' })) {
    if (link === null) bait[name] = outcome;
  }
  return { bait, lastGood: { bait: { name: 'good before' } as never, links: [] }, settled: { bait: {}, links: [] } };
}

test('The setup beside is known by its name: nothing while the answers are still those of another', () => {
  const answers = answersOf(PLAIN, FIRST.name);
  expect(besideOf(answers, FIRST.name)).toEqual({ known: answers.lastGood, settled: answers.settled, broken: false });
  expect(besideOf(answers, 'second')).toMatchObject({ known: { bait: {}, links: [] }, broken: false });
  expect(besideOf({ ...answers, bait: {} }, FIRST.name).broken).toBe(false);
});

test('A setup beside that cannot be made is not drawn as it was before, and is said to be broken', () => {
  const deep = {
    ...FIRST,
    name: 'second',
    holes: [{ name: 'too deep', from: 'belly', x_mm: 30, diameter_mm: 6, depth_mm: 60 }],
  };
  const file = { ...PLAIN, setups: [FIRST, deep] } as DesignFile;
  expect(besideOf(answersOf(file, FIRST.name), FIRST.name).broken).toBe(false);
  expect(besideOf(answersOf(file, 'second'), 'second')).toMatchObject({ known: { bait: {}, links: [] }, broken: true });
});
