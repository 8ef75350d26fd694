import { expect, test } from 'vitest';
import { meant } from '../../../../sim/units/meant.ts';

test('The noise of a factor goes, and what was meant stays', () => {
  // a double makes 0.1 + 0.2 into 0.30000000000000004
  expect(meant(0.1 + 0.2)).toBe(0.3);
  expect(meant(7.08738078125)).toBe(7.08738078125);
});

test('Nothing has no sign', () => {
  expect(meant(-0)).toBe(0);
});
