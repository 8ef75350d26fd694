import { describe, expect, test } from 'vitest';
import { evaluateDesign } from '../../../../../sim/design/validate.ts';
import { type Hole, withEdit } from '../../../../../sim/index.ts';
import { drillEdit, isDrilled, isSameHole, leadIn } from '../../../../../src/panels/ballast/drill.ts';
import { goodOf } from '../../../../support/change-file.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';

const PLAIN = makeDesignFile();
const [SETUP] = PLAIN.setups;
if (SETUP === undefined) throw new Error('the plain bait has a setup');
const FILE = makeDesignFile({
  setups: [
    SETUP,
    {
      ...SETUP,
      name: 'second',
      holes: [
        { name: 'glued in', from: 'belly', x_mm: 'length_mm / 4', diameter_mm: 6, depth_mm: 9, done: true },
        { name: 'open', from: 'belly', x_mm: 90, diameter_mm: 6, depth_mm: 9 },
      ],
    },
  ],
} as never);
const DESIGN = goodOf(evaluateDesign(FILE));
const [GLUED, OPEN] = DESIGN.setups[1]?.holes ?? [];
if (GLUED === undefined || OPEN === undefined) throw new Error('the second setup has two holes');
/** As it comes out of the worker: a copy. */
const copy = (hole: Hole, changes: Partial<Hole> = {}): Hole => ({ ...structuredClone(hole), ...changes });

describe('Two holes are the same', () => {
  test('by what is drilled and filled, whatever they are called and however the number came about', () => {
    expect(isSameHole(GLUED, copy(GLUED, { name: 'other', done: false, x: GLUED.x + 1e-9 }))).toBe(true);
  });

  test.each<Partial<Hole>>([
    { from: 'back' },
    { x: GLUED.x + 0.5 },
    { across: 1 },
    { diameter: 6.5 },
    { depth: 9.5 },
    { point: 2 },
    { air: { plug: 3 } },
    { plugDensity: GLUED.plugDensity * 1.1 },
    { lead: { stock: { name: 'rod', kind: 'filled', density: 0.0113 }, mass: 0 } },
  ])('and not where they differ: %o', (changes) => {
    expect(isSameHole(GLUED, copy(GLUED, changes))).toBe(false);
  });
});

test('A plan is drilled where its holes are the holes there are, in any order, each once', () => {
  expect(isDrilled([GLUED, OPEN], [copy(OPEN), copy(GLUED)])).toBe(true);
  expect(isDrilled([GLUED, OPEN], [copy(GLUED), copy(GLUED)])).toBe(false);
  expect(isDrilled([GLUED, OPEN], [copy(GLUED)])).toBe(false);
  expect(isDrilled([], [])).toBe(true);
});

test('Drilling puts the plan into its own setup, and what is there already keeps how it is written', () => {
  const planned = copy(OPEN, { name: 'tail 1', x: 84, depth: 12 });
  const edit = drillEdit(FILE, DESIGN, 'second', { holes: [copy(GLUED), planned] });
  if (edit === null) throw new Error('there is something to drill');
  expect(edit.says).toBe('drill "second" as planned');
  const drilled = withEdit(FILE, edit);
  expect(drilled.setups[0]).toBe(FILE.setups[0]);
  expect(drilled.setups[1]?.holes[0]).toEqual(FILE.setups[1]?.holes[0]);
  const design = goodOf(evaluateDesign(drilled));
  expect(isDrilled(design.setups[1]?.holes ?? [], [GLUED, planned])).toBe(true);
  expect(drillEdit(drilled, design, 'second', { holes: [copy(GLUED), planned] })).toBeNull();
});

test('Nothing is drilled into a setup that there is not, or that has the plan', () => {
  expect(drillEdit(FILE, DESIGN, 'third', { holes: [] })).toBeNull();
  expect(drillEdit(FILE, DESIGN, 'second', { holes: [copy(GLUED), copy(OPEN)] })).toBeNull();
});

test('Lead is that of all holes together', () => {
  const stock = { name: 'rod', kind: 'filled', density: 0.0113 } as const;
  const leaded = (mass: number) => copy(OPEN, { lead: { stock, mass } });
  expect(leadIn([leaded(2), OPEN, leaded(1.5)])).toBe(3.5);
});
