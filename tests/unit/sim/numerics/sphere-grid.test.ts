import { expect, test } from 'vitest';
import { sphereGrid } from '../../../../sim/numerics/sphere-grid.ts';
import { cross, dot, length } from '../../../../sim/numerics/vec3.ts';

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
