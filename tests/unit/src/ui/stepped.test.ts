import { expect, test } from 'vitest';
import { stepped } from '../../../../src/ui/stepped.ts';

test.each([
  [140, 0.5, 1, 140.5],
  [140, 0.5, -10, 135],
  // off the steps: the first one lands on a whole step
  [58.8, 0.5, 1, 59],
  [58.8, 0.5, -1, 58.5],
  [0.1 + 0.2, 0.1, 1, 0.4],
  [0, 1, -1, -1],
])('From %d in steps of %d, %d of them, comes to %d', (value, step, by, next) => {
  expect(stepped(value, step, by)).toBe(next);
});
