import { expect, test } from 'vitest';
import { add, cross, dot, length, scale, subtract, unit } from '../../../../sim/numerics/vec3.ts';

test('vectors add, subtract and stretch part by part', () => {
  expect(add([1, 2, 3], [10, 20, 30])).toEqual([11, 22, 33]);
  expect(subtract([1, 2, 3], [10, 20, 30])).toEqual([-9, -18, -27]);
  expect(scale([1, -2, 3], -2)).toEqual([-2, 4, -6]);
});

test('the dot product of (1, 2, 3) and (4, -5, 6) is 4 - 10 + 18', () => {
  expect(dot([1, 2, 3], [4, -5, 6])).toBe(12);
});

test('the cross product is right-handed and square to both', () => {
  expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
  expect(cross([1, 2, 3], [4, -5, 6])).toEqual([27, 6, -13]);
});

test('the length of (2, 3, 6) is 7, even where squares would overflow', () => {
  expect(length([2, 3, 6])).toBe(7);
  expect(length([2e200, 3e200, 6e200]) / 7e200).toBeCloseTo(1, 14);
});

test('a unit vector points the same way with length 1', () => {
  expect(unit([0, -5, 0])).toEqual([0, -1, 0]);
  const [x, y, z] = unit([2, 3, 6]);
  expect([7 * x, 7 * y, 7 * z].map((part) => Math.round(part * 1e12) / 1e12)).toEqual([2, 3, 6]);
});
