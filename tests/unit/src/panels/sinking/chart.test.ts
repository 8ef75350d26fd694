import { expect, test } from 'vitest';
import { CHART, fallChart } from '../../../../../src/panels/sinking/chart.ts';

/** 80, 100 and 125 mm/s from the first moment: a metre in 12.5, 10 and 8 s. */
const CURVE = Array.from({ length: 26 }, (_, i) => ({
  time: i / 2,
  depth: [40 * i, 50 * i, 62.5 * i] as const,
  speed: [80, 100, 125] as const,
}));

test('a fall is drawn from rest to its metre, each line ending where it comes to that', () => {
  const { band, middle, across, down } = fallChart({ curve: CURVE });
  expect(down(0)).toBe(CHART.top);
  expect(down(1000)).toBe(CHART.bottom);
  expect(across(12.5)).toBe(CHART.right);
  const end = `${across(10).toFixed(1)} ${CHART.bottom.toFixed(1)}`;
  expect(middle.startsWith(`M${CHART.left.toFixed(1)} ${CHART.top.toFixed(1)}L`)).toBe(true);
  expect(middle.endsWith(end)).toBe(true);
  expect(band).toContain(`${across(12.5).toFixed(1)} ${CHART.bottom.toFixed(1)}`);
  expect(band).toContain(`${across(8).toFixed(1)} ${CHART.bottom.toFixed(1)}`);
  expect(`${band}${middle}`).not.toMatch(/NaN|Infinity|undefined/);
});

test('its clock has at most ten whole steps', () => {
  expect(fallChart({ curve: CURVE }).ticks).toEqual([0, 2, 4, 6, 8, 10, 12]);
  const slow = CURVE.map(({ time, ...rest }) => ({ ...rest, time: 8 * time }));
  expect(fallChart({ curve: slow }).ticks).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
});
