import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, sectionArea, skinHalfWidth } from '../../../sim/hull/hull.ts';
import { given, expect as wanted } from './case.json';

const { a_mm: a, b_mm: b } = given;
const rows = given.n.map((n, i) => ({ n, share: wanted.area_over_ab.value[i] }));

/** A body whose widest and deepest station is a superellipse of these semi-axes, its breadth anywhere. */
function bodyOf(above: number, below: number, breadth: number): Hull {
  const round = { nose: 0.8, tail: 0.76 };
  return buildHull({
    length: 140,
    height: 2 * b,
    width: 2 * a,
    back: 0.46 * 2 * b,
    deepest: [50, 50],
    widest: [50, 50],
    fullness: { back: round, belly: round, plan: round },
    nose: { depth: 0, width: 0, round: 1 },
    readings: [],
    tail: { z: 0, depth: 0, width: 0, round: 1 },
    section: { kind: 'oval', above, below, breadth },
  });
}

describe.each(rows)('a section of exponent $n', ({ n, share }) => {
  test(`has an area of ${share} times its semi-axes`, () => {
    const area = sectionArea(bodyOf(n, n, 0.5), 50);
    expect(Math.abs(area / (a * b * share) - 1)).toBeLessThan(wanted.area_over_ab.tolerance);
  });

  test('keeps that area when its greatest breadth stands lower, since its halves only share the height anew', () => {
    const area = sectionArea(bodyOf(n, n, 0.3), 50);
    expect(Math.abs(area / (a * b * share) - 1)).toBeLessThan(wanted.area_over_ab.tolerance);
  });

  test('over a round belly fills half of its own and half of an ellipse', () => {
    const area = sectionArea(bodyOf(n, 2, 0.5), 50);
    expect(Math.abs(area / ((a * b * (share + Math.PI)) / 2) - 1)).toBeLessThan(wanted.area_over_ab.tolerance);
  });

  test('has its skin where |y/a|ⁿ + |z/b|ⁿ is 1', () => {
    // half way up from the breadth, which lies 0.04 of the height under the datum
    const z = (0.46 - 0.5) * 2 * b + b / 2;
    expect(skinHalfWidth(bodyOf(n, n, 0.5), 50, z)).toBeCloseTo(a * (1 - 0.5 ** n) ** (1 / n), 9);
  });
});
