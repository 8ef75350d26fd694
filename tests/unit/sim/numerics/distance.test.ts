import { describe, expect, test } from 'vitest';
import {
  type Plate,
  segmentBoxDistance,
  segmentCylinderDistance,
  segmentPlateDistance,
} from '../../../../sim/numerics/distance.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';

/** A distance is searched by thirds: 60 of them leave nothing, but flat minima are only felt to half the digits. */
const NEAR = 7;

describe('the distance of a segment from a round bar', () => {
  const bar = { from: [0, 0, 0], to: [0, 0, 10], radius: 2 } as const;

  test('beside it is that of the axes less the radius', () => {
    expect(segmentCylinderDistance({ from: [5, -8, 1], to: [5, 9, 6] }, bar)).toBeCloseTo(3, NEAR);
  });

  test('over its flat end is square to it', () => {
    expect(segmentCylinderDistance({ from: [1, -3, 14], to: [1, 3, 14] }, bar)).toBeCloseTo(4, NEAR);
    expect(segmentCylinderDistance({ from: [1, -3, -6], to: [1, 3, -6] }, bar)).toBeCloseTo(6, NEAR);
  });

  test('past its rim is slanting: 3 up and 4 out', () => {
    expect(segmentCylinderDistance({ from: [6, 0, 13], to: [9, 0, 20] }, bar)).toBeCloseTo(5, NEAR);
  });

  test('is nought where it runs through', () => {
    expect(segmentCylinderDistance({ from: [-9, 0.5, 4], to: [9, 0.5, 6] }, bar)).toBe(0);
  });

  test('holds for a segment that is a point, and for a bar that is a disc', () => {
    expect(segmentCylinderDistance({ from: [7, 0, 5], to: [7, 0, 5] }, bar)).toBeCloseTo(5, NEAR);
    const disc = { from: [0, 0, 0], to: [0, 0, 0], radius: 2 } as const;
    expect(segmentCylinderDistance({ from: [4, 3, 0], to: [4, 3, 0] }, disc)).toBeCloseTo(3, NEAR);
  });
});

describe('the distance of a segment from a box', () => {
  const box = { low: [-1, -2, -3], high: [1, 2, 3] } as const;

  test('beside a face is square to it', () => {
    expect(segmentBoxDistance({ from: [4, -9, 0], to: [4, 9, 1] }, box)).toBeCloseTo(3, NEAR);
  });

  test('off a corner is to the corner: 2, 3 and 6 make 7', () => {
    expect(segmentBoxDistance({ from: [3, 5, 9], to: [10, 20, 30] }, box)).toBeCloseTo(7, NEAR);
    expect(segmentBoxDistance({ from: [-3, -5, -9], to: [-10, -20, -30] }, box)).toBeCloseTo(7, NEAR);
  });

  test('is nought inside', () => {
    expect(segmentBoxDistance({ from: [0, 0, -9], to: [0, 0, 9] }, box)).toBe(0);
  });
});

describe('the distance of a segment from a three-cornered plate', () => {
  const [a, b, c] = [
    [0, 0],
    [8, 0],
    [0, 6],
  ] as const;
  const from = (at: Vec3, to: Vec3 = at, corners: Plate['corners'] = [a, b, c]) =>
    segmentPlateDistance({ from: at, to }, { corners, thickness: 2 });

  test('is nought inside, whichever way round the corners run', () => {
    expect(from([2, 0.9, 2])).toBe(0);
    expect(from([2, 0.9, 2], [2, 0.9, 2], [c, b, a])).toBe(0);
  });

  test('beside a side is square to it, past a corner to the corner', () => {
    expect(from([4, 0, -3])).toBeCloseTo(3, NEAR);
    // the long side is 10; its middle is (4, 3), and (3, 4)/5 is square to it
    expect(from([4 + 3, 0, 3 + 4])).toBeCloseTo(5, NEAR);
    expect(from([-3, 0, -4])).toBeCloseTo(5, NEAR);
  });

  test('off a flank is what is left beyond half the thickness, and at an edge both together', () => {
    expect(from([2, 4, 2])).toBeCloseTo(3, NEAR);
    expect(from([4, 1 + 4, -3])).toBeCloseTo(5, NEAR);
  });

  test('along a segment is that of its nearest point, nought where it goes through', () => {
    expect(from([4, 0, -9], [4, 0, -3])).toBeCloseTo(3, NEAR);
    expect(from([2, 0, -9], [2, 0, 9])).toBe(0);
    expect(from([-9, 5, 2], [9, 5, 2])).toBeCloseTo(4, NEAR);
  });
});
