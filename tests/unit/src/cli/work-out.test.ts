import { describe, expect, test } from 'vitest';
import type { Step } from '../../../../sim/index.ts';
import { Refusal } from '../../../../src/cli/exit.ts';
import { collectAnswers, workOut } from '../../../../src/cli/work-out.ts';
import { makeCheckedBait, makeWhatIf } from '../../../support/make-checked-bait.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const BAIT = makeCheckedBait();

/** The answers of the bait as the pipeline gives them, one by one. */
function stepsOf(bait = BAIT): Step[] {
  const { design, setup, water, hardware, assembled, target, warnings } = bait;
  const { assembledAccuracy, assembledAttitudes, assembledRoll, ballast, planned, reach, jointed, folded, whatIfs } =
    bait;
  const { drop, assembledSinking } = bait;
  const whole = { design, setup, water, links: bait.links.map(({ spec }) => spec), hardware, sound: true };
  const judged = { assembledAccuracy, assembledAttitudes, assembledRoll, allWarnings: warnings, whatIfs };
  const after = {
    assembled,
    drop,
    assembledSinking,
    target,
    warnings: [],
    ballast,
    planned,
    reach,
    jointed,
    folded,
    ...judged,
  };
  const step = (name: string, link: number | null, value: unknown) =>
    ({ name, link, outcome: { status: 'ok', value } }) as Step;
  return [
    ...Object.entries(whole).map(([name, value]) => step(name, null, value)),
    ...bait.links.flatMap(({ spec: { index }, ...link }) =>
      Object.entries(link).map(([name, value]) => step(name, index, value)),
    ),
    ...Object.entries(after).map(([name, value]) => step(name, null, value)),
  ];
}

describe('answers gathered for a report', () => {
  test('each stands in its place', () => {
    expect(collectAnswers(stepsOf(), 'shad.json')).toEqual(BAIT);
  });

  test('of an answer that is told again as it grows the last counts', () => {
    const steps = stepsOf();
    const early = { name: 'whatIfs', link: null, outcome: { status: 'ok', value: [] } } as Step;
    const rows = [makeWhatIf()];
    const late = { ...early, outcome: { status: 'ok', value: rows } } as Step;
    expect(collectAnswers([...steps, early, late], 'shad.json').whatIfs).toBe(rows);
  });

  test('a failure refuses the whole, each reason once, after the name of the file where it has no field', () => {
    const steps: Step[] = stepsOf().map((step) => {
      if (step.name === 'hull') return step;
      if (step.name === 'hardware') return { ...step, outcome: { status: 'blocked', by: ['sound'] } };
      if (step.name !== 'float') return step;
      const issues = [
        { code: 'a', path: 'joints.0.x_mm', message: 'too far aft', hint: 'move it' },
        { code: 'b', path: '', message: 'cannot float' },
      ];
      return { ...step, outcome: { status: 'failed', issues } };
    });
    expect(() => collectAnswers(steps, 'shad.json')).toThrow(
      new Refusal(['joints.0.x_mm: too far aft (move it)', 'shad.json: cannot float']),
    );
  });

  test('an answer that is missing although nothing failed is a fault of the program, not of the design', () => {
    const steps = stepsOf().filter(({ name }) => name !== 'assembled');
    expect(() => collectAnswers(steps, 'shad.json')).toThrow('an answer is missing although nothing failed');
    expect(() => collectAnswers(steps, 'shad.json')).not.toThrow(Refusal);
  });
});

test('a setup that the design does not have is refused with those it has', () => {
  const file = makeDesignFile();
  const [setup] = file.setups;
  if (setup === undefined) throw new Error('the plain bait has a setup');
  const two = { ...file, setups: [setup, { ...setup, name: 'deep' }] };
  expect(() => workOut({ from: 'plain.json', file: two }, 'Deep')).toThrow(
    new Refusal(['--setup: the design has no setup "Deep" (choose one of "still pond", "deep")']),
  );
});
