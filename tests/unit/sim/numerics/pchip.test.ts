import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildPchip, type Pchip, pchipAt } from '../../../../sim/numerics/pchip.ts';

function at(curve: Pchip, x: number): readonly [number, number] {
  const out = new Float64Array(2);
  pchipAt(curve, x, out);
  return [out[0], out[1]];
}

/** Random knots, at least a tenth apart. */
const KNOTS = fc
  .array(
    fc.record({ step: fc.double({ min: 0.1, max: 9, noNaN: true }), y: fc.double({ min: -5, max: 5, noNaN: true }) }),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((knots) => {
    let x = 0;
    return buildPchip(
      knots.map(({ step }) => {
        x += step;
        return x;
      }),
      knots.map(({ y }) => y),
    );
  });

describe('a monotone cubic', () => {
  test('runs through its knots and never leaves the values of the two beside it', () => {
    fc.assert(
      fc.property(KNOTS, fc.double({ min: 0, max: 1, noNaN: true }), (curve, share) => {
        const { x, y } = curve;
        x.forEach((knot, i) => {
          expect(at(curve, knot)[0]).toBeCloseTo(y[i], 12);
        });
        for (let i = 1; i < x.length; i++) {
          const [value] = at(curve, x[i - 1] + share * (x[i] - x[i - 1]));
          expect(value).toBeGreaterThanOrEqual(Math.min(y[i - 1], y[i]) - 1e-12);
          expect(value).toBeLessThanOrEqual(Math.max(y[i - 1], y[i]) + 1e-12);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('rises all the way where its knots rise, and has the slope of its own values', () => {
    const curve = buildPchip([0, 1, 1.5, 4, 9], [0, 0.1, 3, 3.2, 8]);
    let last = Number.NEGATIVE_INFINITY;
    for (let x = 0; x <= 9; x += 0.01) {
      const [value] = at(curve, x);
      expect(value).toBeGreaterThan(last);
      last = value;
    }
    for (const x of [0.3, 1.2, 2, 3.9, 7]) {
      const slope = (at(curve, x + 1e-6)[0] - at(curve, x - 1e-6)[0]) / 2e-6;
      expect(at(curve, x)[1]).toBeCloseTo(slope, 7);
    }
  });

  test('is the straight line through knots on one, and through two knots', () => {
    for (const curve of [buildPchip([0, 2, 3, 7], [1, 5, 7, 15]), buildPchip([0, 7], [1, 15])]) {
      for (const x of [0, 0.7, 2, 2.5, 6.9, 7]) {
        expect(at(curve, x)[0]).toBeCloseTo(1 + 2 * x, 12);
        expect(at(curve, x)[1]).toBeCloseTo(2, 12);
      }
    }
  });

  test('stays level beyond its ends', () => {
    const curve = buildPchip([1, 2, 4], [3, 5, 4]);
    expect(at(curve, 0)).toEqual([3, 0]);
    expect(at(curve, 9)).toEqual([4, 0]);
    expect(at(curve, 4)[0]).toBe(4);
  });

  test('is level where its knots turn', () => {
    expect(at(buildPchip([0, 1, 3], [0, 2, 1]), 1)).toEqual([2, 0]);
  });
});
