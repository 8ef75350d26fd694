import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthClearOf, type KeepOut, keepOutsOf } from '../../../../sim/mass/keep-out.ts';
import { segmentBoxDistance, segmentCylinderDistance } from '../../../../sim/numerics/distance.ts';
import { add, scale, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { number } from '../../../support/arbitrary-body.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';
import { partsOf } from '../../../support/worked-bait.ts';

const INWARD: readonly Vec3[] = [
  [0, 0, 1],
  [0, 0, -1],
  [0, 1, 0],
  [0, -1, 0],
];

/** A shank or a bore along one of the axes: a box of no width. */
function rod(): fc.Arbitrary<KeepOut> {
  return fc
    .record({
      at: fc.tuple(number(-9, 9), number(-9, 9), number(-9, 9)),
      axis: fc.constantFrom(0, 1, 2),
      long: number(1, 15),
      radius: number(0.3, 3),
    })
    .map(({ at, axis, long, radius }) => {
      const high: Vec3 = [
        at[0] + (axis === 0 ? long : 0),
        at[1] + (axis === 1 ? long : 0),
        at[2] + (axis === 2 ? long : 0),
      ];
      return { name: 'rod', low: at, high, radius };
    });
}

function slot(): fc.Arbitrary<KeepOut> {
  return fc
    .record({
      low: fc.tuple(number(-9, 9), number(-9, 9), number(-9, 9)),
      size: fc.tuple(number(1, 12), number(1, 12), number(1, 12)),
    })
    .map(({ low, size }) => ({ name: 'slot', low, high: add(low, size), radius: 0 }));
}

interface Drilled {
  readonly at: Vec3;
  readonly inward: Vec3;
  readonly radius: number;
}

/** A drill that starts well short of everything. */
function drilled(): fc.Arbitrary<Drilled> {
  return fc
    .record({ at: fc.tuple(number(-9, 9), number(-9, 9)), way: fc.constantFrom(...INWARD), radius: number(0.5, 6) })
    .map(({ at: [x, side], way, radius }) => {
      const start = scale(way, -40);
      return { at: way[2] !== 0 ? [x, side, start[2]] : [x, start[1], side], inward: way, radius };
    });
}

/** Least distance between a hole of a depth, flat-ended, and a piece: by the searches over segments that checks go by. */
function distance({ low, high, radius: own }: KeepOut, { at, inward, radius }: Drilled, depth: number): number {
  const hole = { from: at, to: add(at, scale(inward, depth)) };
  return segmentCylinderDistance({ from: low, to: high }, { ...hole, radius }) - own;
}

/** The deepest that keeps the distance, by halving. */
function deepest(keepsClear: (depth: number) => boolean): number {
  if (keepsClear(80)) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, 80];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (keepsClear(middle)) low = middle;
    else high = middle;
  }
  return low;
}

describe('how deep a hole may go', () => {
  test('beside and towards a shank or a bore is as far as it keeps its distance to it', () => {
    let barred = 0;
    fc.assert(
      fc.property(rod(), drilled(), number(0.5, 4), (piece, drill, clear) => {
        const found = depthClearOf([piece], drill, clear);
        const wanted = deepest((depth) => distance(piece, drill, depth) >= clear);
        if (Number.isFinite(wanted)) barred++;
        if (Number.isFinite(found) && Number.isFinite(wanted)) expect(found).toBeCloseTo(wanted, 5);
        // which of the two sees a piece that is just as far off as it must be is a matter of rounding
        else if (found !== wanted) expect(Math.abs(distance(piece, drill, 80) - clear)).toBeLessThan(1e-6);
      }),
      { numRuns: 300 },
    );
    expect(barred).toBeGreaterThan(60);
  });

  test('of a drill as thin as a needle, towards a slot, is as far as it keeps its distance to the box', () => {
    let barred = 0;
    fc.assert(
      fc.property(slot(), drilled(), number(0.5, 4), (piece, drill, clear) => {
        const needle = { ...drill, radius: 0 };
        const found = depthClearOf([piece], needle, clear);
        const to = (depth: number) => ({ from: drill.at, to: add(drill.at, scale(drill.inward, depth)) });
        const wanted = deepest((depth) => segmentBoxDistance(to(depth), piece) >= clear);
        if (Number.isFinite(wanted)) barred++;
        if (Number.isFinite(found) && Number.isFinite(wanted)) expect(found).toBeCloseTo(wanted, 5);
        else if (found !== wanted) expect(Math.abs(segmentBoxDistance(to(80), piece) - clear)).toBeLessThan(1e-6);
      }),
      { numRuns: 300 },
    );
    expect(barred).toBeGreaterThan(40);
  });

  test('among several pieces is what the nearest of them leaves', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(rod(), slot()), { maxLength: 6 }),
        drilled(),
        number(0.5, 4),
        (pieces, drill, clear) => {
          const each = pieces.map((piece) => depthClearOf([piece], drill, clear));
          expect(depthClearOf(pieces, drill, clear)).toBe(Math.min(Number.POSITIVE_INFINITY, ...each));
        },
      ),
    );
  });
});

test('no lead may go near the shanks, the bores, the slots and the holes of its own link', () => {
  const { links, hardware } = partsOf(PLAIN_DESIGN);
  const names = links.map((spec) => keepOutsOf(spec, hardware).map(({ name }) => name));
  expect(names[0].filter((name) => name === 'a hinge slot')).toHaveLength(2);
  expect(names[0]).toEqual(
    expect.arrayContaining(['the shank of "line tie"', 'the shank of "belly, fore"', 'hole "head hole"']),
  );
  expect(names[0].some((name) => name.startsWith('the bore of'))).toBe(true);
  expect(names[1]).toEqual(expect.arrayContaining(['the shank of "belly, aft"', 'hole "middle hole"']));
  expect(names[1]).not.toContain('a hinge slot');
  expect(names[1]).not.toContain('hole "head hole"');
});
