import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../../../sim/design/design.ts';
import { compareSetups, type HoleChange } from '../../../../../sim/out/compare/compare.ts';
import { makeFloat } from '../../../../support/make-checked-bait.ts';
import { makeComparedBait } from '../../../../support/make-compared-bait.ts';
import { makeHole } from '../../../../support/make-hole.ts';

const HOLE = makeHole();
const [ROD] = [HOLE.lead?.stock].flatMap((stock) => stock ?? []);

/** What differs in the head between a setup with these holes and one with those. */
function changesOf(first: readonly Hole[], second: readonly Hole[]): readonly HoleChange[] {
  return compareSetups(makeComparedBait('a', first), makeComparedBait('b', second)).links[0].holes;
}

test('two setups have their names, lead, hung and floats side by side, whole and link by link', () => {
  const float = makeFloat({ proud: 9 });
  const [first, second] = [
    makeComparedBait('topwater', [HOLE], [makeHole({ x: 90, lead: { stock: ROD, mass: 1.5 } })]),
    makeComparedBait('slow-sink', [HOLE, makeHole({ x: 40 })], [], { assembled: float }),
  ];
  const compared = compareSetups(first, second);
  expect(compared).toMatchObject({ design: 'Boathouse Plain', setups: ['topwater', 'slow-sink'] });
  expect(compared.lead).toEqual([5.5, 8]);
  expect(compared.hung[0]).toBeCloseTo(4.1, 12);
  expect(compared.hung[1]).toBeCloseTo(4.1, 12);
  expect(compared.floats).toEqual([first.assembled, float]);
  expect(compared.links.map(({ name, lead }) => [name, lead])).toEqual([
    ['head', [4, 8]],
    ['tail', [1.5, 0]],
  ]);
  expect(compared.links[1].floats).toEqual([first.links[1].float, second.links[1].float]);
});

describe('a hole', () => {
  test('that both have alike is the same, whatever it is called', () => {
    expect(changesOf([HOLE], [makeHole({ name: 'other', done: true })])).toEqual([{ kind: 'same', hole: HOLE }]);
  });

  test('that is deeper and holds more is the same one, made further in place', () => {
    const to = makeHole({ depth: 12, lead: { stock: ROD, mass: 4.5 } });
    expect(changesOf([HOLE], [to])).toEqual([
      { kind: 'changed', from: HOLE, to, moved: 0, deeper: 2, lead: 0.5, inPlace: true },
    ]);
  });

  test.each<readonly [string, Partial<Hole>]>([
    ['further aft', { x: 25 }],
    ['to the side', { across: 2 }],
    ['by a wider drill', { diameter: 9 }],
    ['by a drill with another point', { point: 2 }],
    ['for other stock', { lead: { stock: { ...ROD, name: 'tungsten' }, mass: 4 } }],
    ['for a chamber', { lead: null, air: { plug: 4 } }],
    ['for no lead', { lead: null }],
  ])('%s is changed and not made in place', (_, changes) => {
    expect(changesOf([HOLE], [makeHole(changes)])).toMatchObject([{ kind: 'changed', inPlace: false }]);
  });

  test('whose chamber has another plug is changed', () => {
    const chamber = (plug: number) => makeHole({ lead: null, air: { plug } });
    expect(changesOf([chamber(4)], [chamber(4)])).toMatchObject([{ kind: 'same' }]);
    expect(changesOf([chamber(4)], [chamber(5)])).toMatchObject([{ kind: 'changed', inPlace: false }]);
  });

  test('further off than 8 mm, or from another side, is another hole', () => {
    expect(changesOf([HOLE], [makeHole({ x: 32 })]).map(({ kind }) => kind)).toEqual(['changed']);
    expect(changesOf([HOLE], [makeHole({ x: 32.1 })])).toMatchObject([
      { kind: 'only', in: 0, hole: { x: 24 } },
      { kind: 'only', in: 1, hole: { x: 32.1 } },
    ]);
    expect(changesOf([HOLE], [makeHole({ from: 'back' })]).map(({ kind }) => kind)).toEqual(['only', 'only']);
  });

  test('is paired with the nearest, each once', () => {
    const [a, b, c] = [makeHole({ x: 20 }), makeHole({ x: 26 }), makeHole({ x: 27 })];
    expect(changesOf([a, b], [c])).toMatchObject([
      { kind: 'only', in: 0, hole: { x: 20 } },
      { kind: 'changed', from: { x: 26 }, to: { x: 27 }, moved: 1 },
    ]);
    expect(changesOf([a, b], [makeHole({ x: 21 }), c])).toMatchObject([
      { from: { x: 20 }, to: { x: 21 } },
      { from: { x: 26 }, to: { x: 27 } },
    ]);
  });

  test('of a pair on either side is not taken for the other', () => {
    const [port, starboard] = [-3, 3].map((across) => makeHole({ across }));
    expect(changesOf([starboard, port], [port, starboard]).map(({ kind }) => kind)).toEqual(['same', 'same']);
  });
});

test('holes stand from nose to tail', () => {
  const holes = [40, 10, 25].map((x) => makeHole({ x }));
  const places = changesOf(holes, []).map((change) => (change.kind === 'only' ? change.hole.x : null));
  expect(places).toEqual([10, 25, 40]);
});

test('a setup against itself differs in nothing', () => {
  const bait = makeComparedBait('a', [HOLE], [makeHole({ x: 90 })]);
  const { links } = compareSetups(bait, bait);
  expect(links.flatMap(({ holes }) => holes).map(({ kind }) => kind)).toEqual(['same', 'same']);
});
