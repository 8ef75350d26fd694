import { expect, test } from 'vitest';
import { isThin } from '../../../../src/view/walls.ts';

test('a wall is thin where it reads as less than is wanted', () => {
  expect([3, 2.96, 2.94, 0].map((thickness) => isThin(thickness, 3))).toEqual([false, false, true, true]);
});
