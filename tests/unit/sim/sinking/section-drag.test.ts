import { describe, expect, test } from 'vitest';
import {
  addPowers,
  barDrag,
  endRelief,
  likenessDrag,
  NO_DRAG,
  powersAt,
  sectionDrag,
} from '../../../../sim/sinking/section-drag.ts';

const ROUND = Math.PI / 4;

describe('powers of the speed', () => {
  test('are summed', () => {
    expect(powersAt({ constant: 1, half: 2, twoThirds: 3, whole: 4 }, 64)).toBeCloseTo(1 + 2 / 8 + 3 / 16 + 4 / 64, 12);
    expect(addPowers(NO_DRAG, { constant: 1, half: 2, twoThirds: 3, whole: 4 }, 2)).toEqual({
      constant: 2,
      half: 4,
      twoThirds: 6,
      whole: 8,
    });
  });
});

describe('a bar across the flow', () => {
  test.each([20, 400, 3000])('that is round is the round bar of the correlation, at Re %d', (reynolds) => {
    const found = powersAt(sectionDrag(1, ROUND, 1, 1), reynolds);
    expect(found).toBeCloseTo(powersAt(barDrag(1), reynolds), 12);
  });

  test.each([
    // White, Fluid mechanics, table 7.2, elliptical cylinders, laminar, from memory; at Re 10⁴ of the width
    [2, 0.6],
    [4, 0.35],
    [8, 0.25],
  ])('%d times as deep as wide has about C_d %d', (depth, wanted) => {
    expect(Math.abs(powersAt(sectionDrag(depth, ROUND, 1, 1), 1e4) - wanted)).toBeLessThan(0.1);
  });

  test('has the more drag the wider it lies and the squarer it is, and less with its ends free', () => {
    const at = (depth: number, fullness: number, relief: number) =>
      powersAt(sectionDrag(depth, fullness, relief, 20), 100);
    for (const depth of [0.1, 0.5, 0.9, 1, 1.5, 3]) {
      expect(at(depth, ROUND, 1)).toBeGreaterThan(at(depth + 0.1, ROUND, 1));
      expect(at(depth, 0.95, 1)).toBeGreaterThan(at(depth, 0.85, 1));
      expect(at(depth, ROUND, 0.7)).toBeLessThan(at(depth, ROUND, 1));
    }
    expect(at(2, 0.5, 1)).toBe(at(2, ROUND, 1));
    expect(at(10, 1, 1)).toBeGreaterThan(0.9);
    expect(at(1e-9, 1, 1)).toBeCloseTo(1.98, 2);
  });
});

test('ends leave of a long bar what is measured', () => {
  // the table in the comment of `endRelief`
  const measured = [0.64, 0.68, 0.74, 0.74, 0.82, 0.91, 0.98].map((drag) => drag / 1.2);
  [1, 2, 3, 5, 10, 20, 40].forEach((slender, i) => {
    expect(Math.abs(endRelief(slender) - measured[i])).toBeLessThan(0.035);
  });
  expect(endRelief(1e9)).toBeCloseTo(1, 6);
});

test('a body by its sphericities is never more like a ball than a ball', () => {
  const ball = likenessDrag({ sphericity: 1, crosswise: 1, reynolds: 1 });
  expect(likenessDrag({ sphericity: 1.02, crosswise: 1, reynolds: 1 })).toEqual(ball);
  expect(powersAt(ball, 1e9)).toBeCloseTo(0.42, 3);
});
