import { expect, test } from 'vitest';
import { pinLine } from '../../../../../src/panels/joints/pin-drawing.ts';
import { makeAssembly } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;
const hanging = (...trims: readonly number[]) =>
  makeAssembly({ links: trims.map((trim) => ({ up: [0, 0, 1], offset: 12, trim: trim * DEGREE, heel: 0 })) });

test('a bait that hangs straight is drawn straight, however it trims as a whole', () => {
  const { points, times } = pinLine(hanging(3, 3), [60], 120, 6);
  expect(times).toBe(1);
  for (const [, up] of points) expect(up).toBeCloseTo(0, 9);
});

test('the line sags at a pin between links that dip towards it, as high as there is room and no more', () => {
  // the fore link tail low, the aft one nose down: the pin is the lowest
  const { points, times } = pinLine(hanging(-2, 2), [60], 120, 6);
  expect(points.map(([x]) => x)).toEqual([0, 60, 120]);
  expect(points[1]?.[1]).toBeCloseTo(-6, 9);
  expect(times).toBeCloseTo(6 / (60 * Math.tan(2 * DEGREE)), 9);
  expect(pinLine(hanging(2, -2), [60], 120, 6).points[1]?.[1]).toBeCloseTo(6, 9);
});

test('what hardly gives is drawn twenty times as much at most', () => {
  const { points, times } = pinLine(hanging(-0.1, 0.1), [60], 120, 6);
  expect(times).toBe(20);
  expect(Math.abs(points[1]?.[1] ?? 0)).toBeLessThan(6);
});
