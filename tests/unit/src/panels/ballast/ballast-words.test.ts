import { describe, expect, test } from 'vitest';
import { amountsIn, type Cure, type Hole, type SettledPlan } from '../../../../../sim/index.ts';
import {
  changeKey,
  cureWords,
  forgivingWords,
  holeRows,
  isPointed,
} from '../../../../../src/panels/ballast/ballast-words.ts';
import { makeFloat } from '../../../../support/make-checked-bait.ts';

const METRIC = amountsIn('mm-g');
const INCHES = amountsIn('in-oz');
const degrees = (angle: number) => (angle * Math.PI) / 180;

const hole = (changes: Partial<Hole> = {}): Hole => ({
  name: 'tail 1',
  from: 'belly',
  x: 50.8,
  across: 0,
  diameter: 6.35,
  depth: 12.7,
  point: Math.PI,
  lead: { stock: { name: '1/4 in rod', kind: 'slug', diameter: 6.2, density: 0.0113 }, mass: 2.5 },
  air: null,
  plugDensity: 0.00115,
  done: false,
  ...changes,
});
const settled = (holes: readonly Hole[], thickness: number): Pick<SettledPlan, 'holes'> =>
  ({ holes: holes.map((each) => ({ hole: { name: each.name, hole: { ...each } }, wall: { thickness } })) }) as never;

describe('A planned hole as a row', () => {
  test('is ruled as it is marked out, with the wall that it leaves', () => {
    const holes = [hole()];
    expect(holeRows({ holes }, settled(holes, 3.25), METRIC)).toEqual([
      {
        name: 'tail 1',
        side: 'belly',
        x: '50.8 mm',
        across: '',
        drill: '6.4 mm',
        depth: '12.7 mm',
        lead: '2.5 g',
        stock: '1/4 in rod',
        wall: '3.3 mm',
      },
    ]);
    // 50.8, 6.35 and 12.7 mm over 25.4 mm to the inch
    expect(holeRows({ holes }, settled(holes, 3.25), INCHES)[0]).toMatchObject({
      x: '2 in',
      drill: '1/4 in',
      depth: '1/2 in',
    });
  });

  test('says to which side of its line it stands', () => {
    const across = (changes: Partial<Hole>) => holeRows({ holes: [hole(changes)] }, { holes: [] }, METRIC)[0]?.across;
    expect(across({ across: 2 })).toBe('2.0 mm to starboard');
    expect(across({ from: 'back', across: -2 })).toBe('2.0 mm to port');
    expect(across({ from: 'port', across: -4 })).toBe('4.0 mm under the datum');
    expect(across({ from: 'starboard', across: 4 })).toBe('4.0 mm over the datum');
  });

  test('leaves empty what is not there or not known', () => {
    expect(holeRows({ holes: [hole({ lead: null })] }, { holes: [] }, METRIC)[0]).toMatchObject({
      lead: '',
      stock: '',
      wall: '',
    });
  });

  test('has a shoulder where the drill is pointed', () => {
    expect(isPointed({ holes: [hole()] })).toBe(false);
    expect(isPointed({ holes: [hole(), hole({ point: degrees(118) })] })).toBe(true);
  });
});

test('A cure says how link and bait rest after it, and what the pin bears', () => {
  const after = {
    link: makeFloat({ trim: degrees(0.8) }),
    assembled: makeFloat({ trim: degrees(-0.3), netWet: -1.234 }),
    speeds: { link: null, assembled: null },
    lead: 2,
    met: true,
    pin: null,
  };
  const cure = { kind: 'hook', edit: { says: 'hang a lighter hook', sets: [] }, after } as Cure;
  expect(cureWords(cure, METRIC)).toBe(
    'alone 0.8° nose-down; whole bait 0.3° tail low, -1.23 g in the water; aim met; 2.0 g of lead in it',
  );
  const borne = { ...cure, after: { ...after, lead: 0, met: false, pin: { force: -0.5, moment: 12, curl: null } } };
  expect(cureWords(borne, METRIC)).toBe(
    'alone 0.8° nose-down; whole bait 0.3° tail low, -1.23 g in the water; aim missed; the pin carries 0.50 g and 12 g mm; let go it stays straight',
  );
});

test('How forgiving a link is comes in the steps that a maker reckons by', () => {
  const forgiveness = { perMm: degrees(2), perGram: [degrees(4), degrees(-3)], hung: [] } as const;
  expect(forgivingWords(forgiveness, 'mm-g')).toBe(
    '2.0° nose-down for each mm that its weight lies further forward; a gram more at its nose 4.0° nose-down, at its tail 3.0° tail low.',
  );
  // 25.4 / 32 = 0.794 mm and 28.35 / 20 = 1.417 g
  expect(forgivingWords(forgiveness, 'in-oz')).toBe(
    '1.6° nose-down for each 1/32 in that its weight lies further forward; 1/20 oz more at its nose 5.7° nose-down, at its tail 4.3° tail low.',
  );
});

test('Each change of a hole has a key of its own', () => {
  const changed = { kind: 'changed', from: hole(), to: hole({ name: 'tail 2' }) } as never;
  const keys = [changed, { kind: 'same', hole: hole() }, { kind: 'only', in: 0, hole: hole() }].map((change) =>
    changeKey(change as never),
  );
  expect(new Set(keys).size).toBe(3);
});
