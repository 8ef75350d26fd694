import { expect, test } from 'vitest';
import { cellsOf, sphereGrid } from '../../../../sim/numerics/sphere-grid.ts';
import { cross, dot, length, unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';

test.each([
  [0, 12],
  [1, 42],
  [2, 162],
  [3, 642],
])('halved %d times there are %d directions, each with five or six beside it in their order', (level, count) => {
  const { points, around, parents } = sphereGrid(level);
  expect(points).toHaveLength(count);
  expect(around.filter((beside) => beside.length === 5)).toHaveLength(12);
  expect(around.every((beside) => beside.length === 5 || beside.length === 6)).toBe(true);
  expect(parents.filter((pair) => pair === null)).toHaveLength(12);
  points.forEach((point, i) => {
    expect(length(point)).toBeCloseTo(1, 12);
    around[i].forEach((a, k) => {
      const b = around[i][(k + 1) % around[i].length];
      // next in the round: counter-clockwise as seen from outside, and beside each other
      expect(dot(point, cross(points[a], points[b]))).toBeGreaterThan(0);
      expect(around[a]).toContain(b);
    });
  });
});

test('the directions are even: none further than 12 degrees from one of the 162', () => {
  const { points } = sphereGrid(2);
  const worst = Math.min(...sphereGrid(3).points.map((p) => Math.max(...points.map((q) => dot(p, q)))));
  expect((Math.acos(worst) * 180) / Math.PI).toBeLessThan(12);
});

test('cells have their corners as far from their point as from two neighbours, and share the sphere out among them', () => {
  const grid = sphereGrid(2);
  let covered = 0;
  cellsOf(grid).forEach((corners, i) => {
    expect(corners).toHaveLength(grid.around[i].length);
    corners.forEach((corner, k) => {
      const [a, b] = [grid.around[i][k], grid.around[i][(k + 1) % corners.length]];
      const near = [i, a, b].map((each) => dot(grid.points[each], corner));
      expect(near[1]).toBeCloseTo(near[0], 12);
      expect(near[2]).toBeCloseTo(near[0], 12);
      expect(length(corner)).toBeCloseTo(1, 12);
      covered += solidAngle(grid.points[i], corner, corners[(k + 1) % corners.length]);
    });
  });
  expect(covered).toBeCloseTo(4 * Math.PI, 9);
});

/** Of a spherical triangle (A. van Oosterom, J. Strackee, IEEE Trans. Biomed. Eng. 30 (1983) 125). */
function solidAngle(a: Vec3, b: Vec3, c: Vec3): number {
  const [u, v, w] = [a, b, c].map(unit);
  return 2 * Math.atan2(dot(u, cross(v, w)), 1 + dot(u, v) + dot(v, w) + dot(w, u));
}
