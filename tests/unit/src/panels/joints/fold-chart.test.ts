import { expect, test } from 'vitest';
import { CHART, foldChart } from '../../../../../src/panels/joints/fold-chart.ts';
import { makeFolded } from '../../../../support/make-checked-bait.ts';

test('a bait that stays upright however it is folded has no curve', () => {
  expect(foldChart(makeFolded())).toBeNull();
  expect(foldChart(makeFolded(0.005))).toBeNull();
});

test('heel runs from as far as it folds to port to as far to starboard, level at straight', () => {
  const chart = foldChart(makeFolded(0.2));
  if (!chart) throw new Error('it heels');
  expect(chart.folds[0]).toBeCloseTo(-45, 9);
  expect(chart.folds[1]).toBeCloseTo(45, 9);
  // 11.5° at most
  expect(chart.heels).toEqual([-15, 15]);
  expect(chart.across(0)).toBeCloseTo((CHART.left + CHART.right) / 2, 9);
  expect(chart.down(0)).toBeCloseTo((CHART.top + CHART.bottom) / 2, 9);
  // folded to port it heels to starboard, which is up
  const [first] = chart.path.slice(1).split('L');
  expect(Number(first?.split(' ')[1])).toBeLessThan(chart.down(0));
  expect(chart.path.split('L')).toHaveLength(5);
});
