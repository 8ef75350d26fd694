import { describe, expect, test } from 'vitest';
import { firstContact, polarOf } from '../../../../sim/reach/polar.ts';
import type { Outline, Surface } from '../../../../sim/reach/slice.ts';

/** Corners anticlockwise seen from above: x aft, y starboard. */
function outline(corners: readonly (readonly [number, number])[], surface: Surface = 'face'): Outline {
  return { x: corners.map(([x]) => x), y: corners.map(([, y]) => y), surface: corners.map(() => surface) };
}

function box(x: readonly [number, number], y: readonly [number, number], surface: Surface = 'face'): Outline {
  const [[x0, x1], [y0, y1]] = [x, y];
  return outline(
    [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    surface,
  );
}

function angles(turning: readonly Outline[], standing: readonly Outline[], at = 0): readonly (number | null)[] {
  const { port, starboard } = firstContact(polarOf(turning, at), polarOf(standing, at));
  return [port, starboard].map((contact) => contact && (contact.angle * 180) / Math.PI);
}

describe('first contact in the plane', () => {
  test('of two square ends about the middle of the gap: twice atan(half gap / half width), at their corners', () => {
    const [port, starboard] = angles([box([1, 40], [-11, 11])], [box([-40, -1], [-11, 11])]);
    // 2 atan(1/11) = 10.389°
    expect(port).toBeCloseTo(10.389, 3);
    expect(starboard).toBeCloseTo(10.389, 3);
  });

  test('of a corner on a flat, neither of their corners being as far out', () => {
    // corner of the one at (3, 4), r = 5, bearing 53.130°; flat x = -1 of the other at r = 5: bearing 101.537°
    const { port, starboard } = firstContact(
      polarOf([box([3, 20], [-4, 4])], 0),
      polarOf([box([-20, -1], [-30, 30], 'slot')], 0),
    );
    expect(((starboard?.angle ?? 0) * 180) / Math.PI).toBeCloseTo(101.537 - 53.13, 3);
    expect(starboard?.radius).toBeCloseTo(5, 12);
    expect(starboard?.surfaces).toEqual(['face', 'slot']);
    // met on the flat, 1 mm before the line, to starboard; port is its mirror image
    expect(5 * Math.cos(starboard?.bearing ?? 0)).toBeCloseTo(-1, 9);
    expect(5 * Math.sin(starboard?.bearing ?? 0)).toBeCloseTo(Math.sqrt(24), 9);
    expect(5 * Math.sin(port?.bearing ?? 0)).toBeCloseTo(-Math.sqrt(24), 9);
  });

  test('is null where the two are never as far out as each other', () => {
    expect(angles([box([10, 12], [-1, 1])], [box([-5, -1], [-2, 2])])).toEqual([null, null]);
  });

  test('is 0 both ways where they overlap as they stand', () => {
    expect(angles([box([-2, 40], [-3, 3])], [box([-40, -1], [-11, 11])])).toEqual([0, 0]);
  });

  test('is 0 to one side where they touch as they stand', () => {
    // flush along y = 2: the one can only turn away from it
    const [port, starboard] = angles([box([3, 10], [-2, 2])], [box([4, 9], [2, 6])]);
    expect(starboard).toBe(0);
    expect(port).toBeGreaterThan(90);
  });

  test('counts what stands to one side to that side alone', () => {
    const [port, starboard] = angles([box([2, 20], [-1, 1])], [box([5, 8], [4, 6])]);
    expect(starboard).toBeLessThan(45);
    expect(port).toBeGreaterThan(270);
  });

  test('mirrored, port and starboard change places', () => {
    const turning = [
      outline([
        [2, -1],
        [20, -3],
        [22, 2],
        [3, 1.5],
      ]),
    ];
    const standing = [
      outline([
        [-20, -9],
        [-1, -5],
        [-2, 6],
        [-18, 8],
      ]),
    ];
    const mirrored = (all: readonly Outline[]) =>
      all.map(({ x, y, surface }) => ({
        x: x.toReversed(),
        y: y.toReversed().map((one) => -one),
        surface,
      }));
    const [port, starboard] = angles(turning, standing);
    const [otherPort, otherStarboard] = angles(mirrored(turning), mirrored(standing));
    expect(port).not.toBeCloseTo(starboard ?? 0, 1);
    expect(otherPort).toBeCloseTo(starboard ?? 0, 9);
    expect(otherStarboard).toBeCloseTo(port ?? 0, 9);
  });

  test('does not depend on where along the bait it is', () => {
    const [turning, standing] = [box([1, 40], [-11, 11]), box([-40, -1], [-11, 11])];
    const moved = ({ x, y, surface }: Outline): Outline => ({ x: x.map((one) => one + 73.25), y, surface });
    expect(angles([moved(turning)], [moved(standing)], 73.25)[0]).toBeCloseTo(10.389, 3);
  });

  test('a point of no width, that touches the line of the other corner, is no overlap', () => {
    const spike = outline([
      [-10, 0],
      [-1, 0],
      [-1, 0],
      [-10, 0],
    ]);
    const [port, starboard] = angles([box([1, 20], [-0.5, 0.5])], [spike]);
    expect(port).toBeGreaterThan(100);
    expect(starboard).toBeGreaterThan(100);
  });
});

test('an outline seen from a line has the nearest and the furthest of its edges, not of its corners alone', () => {
  const { nearest, furthest } = polarOf([box([3, 4], [-6, 8])], 0);
  expect(nearest).toBe(3);
  expect(furthest).toBeCloseTo(Math.hypot(4, 8), 12);
});
