import { expect, test } from 'vitest';
import { skinOf } from '../../../../sim/ballast/skin.ts';
import { plankHull } from '../../../support/bodies.ts';

/** A plank 24 wide and 50 high: its belly at -25, its flanks at 12. */
const PLANK = plankHull(24, 50);
const MIDDLE = 5e6;

test('a hole near the flank of a plank keeps its wall to it: no lead there where that is not left', () => {
  const room = (row: number) => skinOf(PLANK).wallRoom({ from: 'belly', row }, 3, 3)(MIDDLE, [MIDDLE, row, -25]);
  // 12 mm of half width less 6 of drill and wall
  expect(room(6).shoulderTo).toBeCloseTo(47, 6);
  for (const row of [7, -7]) expect(room(row).shoulderTo).toBeLessThan(room(row).leadFrom);
});

test('a body drawn again just the same is not looked at again', () => {
  const skin = skinOf(PLANK);
  expect(skinOf(structuredClone(PLANK))).toBe(skin);
  for (const width of [20, 22, 26]) expect(skinOf(plankHull(width, 50))).not.toBe(skin);
  expect(skinOf(PLANK)).toBe(skin);
});
