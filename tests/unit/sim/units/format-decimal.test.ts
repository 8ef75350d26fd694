import { expect, test } from 'vitest';
import { formatDecimal } from '../../../../sim/units/format-decimal.ts';

test.each([
  [58.8, [1, 3], '58.8'],
  [140, [1, 3], '140.0'],
  [100, [0, 0], '100'],
  [100, [0, 2], '100'],
  [0.36, [2, 5], '0.36'],
  // a double holds 1.0005 as 1.000499999999999989…
  [1.0005, [1, 3], '1.001'],
  [-0.0001, [1, 3], '0.0'],
  [-1.5, [1, 3], '-1.5'],
] as const)('%d with %j decimals is %j', (value, digits, text) => {
  expect(formatDecimal(value, digits)).toBe(text);
});
