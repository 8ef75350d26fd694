import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../../../sim/design/design.ts';
import { compareSetups } from '../../../../../sim/out/compare/compare.ts';
import { benchWords, changeWords } from '../../../../../sim/out/compare/words.ts';
import { makeComparedBait } from '../../../../support/make-compared-bait.ts';
import { makeHole } from '../../../../support/make-hole.ts';

const HOLE = makeHole();
const STOCK = HOLE.lead?.stock ?? null;

function leadOf(mass: number): Pick<Hole, 'lead'> {
  return { lead: STOCK && { stock: STOCK, mass } };
}

function compared(first: readonly Hole[], second: readonly Hole[]) {
  return compareSetups(makeComparedBait('topwater', first), makeComparedBait('slow-sink', second));
}

function wordsOf(first: readonly Hole[], second: readonly Hole[]): readonly (string | null)[] {
  const { links, setups } = compared(first, second);
  return links[0].holes.map((change) => changeWords(change, setups));
}

const bench = (first: readonly Hole[], second: readonly Hole[]) => benchWords(compared(first, second));

describe('what differs about a hole', () => {
  test.each<readonly [Partial<Hole>, string | null]>([
    [{}, null],
    [{ x: 26 }, '2.0 mm further aft'],
    [{ x: 22 }, '2.0 mm further forward'],
    [{ across: 1.5 }, '1.5 mm further to starboard'],
    [{ across: -1.5 }, '1.5 mm further to port'],
    [{ diameter: 9 }, '9.0 mm wide for 8.0 mm'],
    [{ depth: 12 }, '2.0 mm deeper'],
    [{ depth: 8 }, '2.0 mm less deep'],
    [leadOf(4.5), '0.5 g more lead'],
    [leadOf(3.5), '0.5 g less lead'],
    [{ point: (118 * Math.PI) / 180 }, 'a point of 118° for 180°'],
    [{ lead: STOCK && { stock: { ...STOCK, name: 'tungsten' }, mass: 4 } }, 'tungsten for 8 mm rod'],
    [{ lead: null }, '4.0 g less lead'],
    [{ lead: null, air: { plug: 5 } }, '4.0 g less lead, air under a plug of 5.0 mm'],
    [{ x: 26, depth: 12, ...leadOf(5) }, '2.0 mm further aft, 2.0 mm deeper, 1.0 g more lead'],
  ])('%o', (changes, words) => {
    expect(wordsOf([HOLE], [makeHole(changes)])).toEqual([words && `head, hole 1: ${words}`]);
  });

  test('across a flank is up or down', () => {
    const flank = (across: number) => makeHole({ from: 'port', across });
    expect(wordsOf([flank(-4)], [flank(-3)])).toEqual(['head, hole 1: 1.0 mm further up']);
    expect(wordsOf([flank(-3)], [flank(-4)])).toEqual(['head, hole 1: 1.0 mm further down']);
  });

  test('that a chamber is none any more is said', () => {
    expect(wordsOf([makeHole({ lead: null, air: { plug: 5 } })], [makeHole({ lead: null })])).toEqual([
      'head, hole 1: no air',
    ]);
  });

  test('of one setup alone is where it stands, whole', () => {
    expect(wordsOf([], [HOLE])).toEqual([
      'in slow-sink only: head, hole 1: from the belly at 24.0 mm, 8.0 mm wide, 10.0 mm deep, 4.0 g of 8 mm rod',
    ]);
    expect(wordsOf([HOLE], [])[0]).toMatch(/^in topwater only: /);
  });
});

describe('at the bench', () => {
  const DEEPER = makeHole({ depth: 12, ...leadOf(5) });

  test('two that are drilled alike are said to be', () => {
    expect(bench([HOLE], [HOLE])).toBe('slow-sink is drilled as topwater is.');
  });

  test('one comes from the other by drilling deeper, whichever is named first', () => {
    expect(bench([HOLE], [DEEPER])).toBe(
      'Slow-sink is topwater with 1 hole drilled deeper or filled further: 1.0 g more lead.',
    );
    expect(bench([DEEPER], [HOLE])).toBe(
      'Drill for slow-sink first: topwater is the same with 1 hole drilled deeper or filled further, 1.0 g more lead.',
    );
  });

  test('a hole that is only filled further is made from the one with less in it', () => {
    const more = makeHole(leadOf(5));
    expect(bench([HOLE], [more])).toBe(
      'Slow-sink is topwater with 1 hole drilled deeper or filled further: 1.0 g more lead.',
    );
    // lead does not come out again
    expect(bench([more], [HOLE])).toBe(
      'Drill for slow-sink first: topwater is the same with 1 hole drilled deeper or filled further, 1.0 g more lead.',
    );
  });

  test('of which one hole is deeper and another less deep neither comes from the other', () => {
    const second = makeHole({ x: 44 });
    const shallow = makeHole({ x: 44, depth: 8, ...leadOf(3) });
    expect(bench([HOLE, second], [DEEPER, shallow])).toBe('2 holes differ for slow-sink: 0.0 g more lead.');
  });

  test('of which a hole is deeper and holds less neither comes from the other', () => {
    expect(bench([HOLE], [makeHole({ depth: 12, ...leadOf(3) })])).toBe(
      '1 hole differs for slow-sink: 1.0 g less lead.',
    );
  });

  test('of which a hole is elsewhere, or in one alone, neither comes from the other', () => {
    expect(bench([HOLE], [makeHole({ x: 26, ...leadOf(5) })])).toBe('1 hole differs for slow-sink: 1.0 g more lead.');
    expect(bench([HOLE], [])).toBe('1 hole differs for slow-sink: 4.0 g less lead.');
  });
});
