import { expect, test } from 'vitest';
import { gamma } from '../../../../sim/numerics/gamma.ts';

test.each([
  [1, 1],
  [2, 1],
  [5, 24],
  [11, 3_628_800],
  // (2k)! √π / (4^k k!) for halves
  [1.5, Math.sqrt(Math.PI) / 2],
  [2.5, (3 * Math.sqrt(Math.PI)) / 4],
  // mathjs 15.2.0, gamma(1.4)
  [1.4, 0.887263817503075],
])('gamma of %d is %d', (x, wanted) => {
  expect(Math.abs(gamma(x) / wanted - 1)).toBeLessThan(1e-13);
});

test('gamma grows by its own argument', () => {
  for (let x = 0.55; x < 9; x += 0.37) expect(Math.abs(gamma(x + 1) / (x * gamma(x)) - 1)).toBeLessThan(1e-13);
});

test.each([
  // superellipse area over a b = 4 Γ(1 + 1/n)² / Γ(1 + 2/n); digits computed apart from the product
  [1.5, 2.7378536239],
  [2, Math.PI],
  [2.5, 3.3809353625],
  [3, 3.5332775006],
  [4, 3.7081493546],
  [8, 3.9138432878],
])('a superellipse of exponent %d has an area of %d', (n, wanted) => {
  expect((4 * gamma(1 + 1 / n) ** 2) / gamma(1 + 2 / n)).toBeCloseTo(wanted, 9);
});
