import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, sectionArea, skinHalfWidth } from '../../../sim/hull/hull.ts';
import { given, expect as wanted } from './case.json';

const { a_mm: a, b_mm: b } = given;
const rows = given.n.map((n, i) => ({
  n,
  share: wanted.area_over_ab.value[i],
  second: wanted.second_moment_over_ab3.value[i],
  centre: wanted.half_centre_over_b.value[i],
}));

/** Sum of the section's widths times a power of the height over its breadth, half way up in this body. */
function momentOf(hull: Hull, power: number, from: number): number {
  const breadth = (0.46 - 0.5) * 2 * b;
  const strips = 4000;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    // z = b sin takes the roots at keel and back out of the integrand
    const turn = from + ((Math.PI / 2 - from) * (i + 0.5)) / strips;
    const z = b * Math.sin(turn);
    sum += 2 * (skinHalfWidth(hull, 50, breadth + z) ?? Number.NaN) * z ** power * b * Math.cos(turn);
  }
  return (sum * (Math.PI / 2 - from)) / strips;
}

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

describe.each(rows)('a section of exponent $n', ({ n, share, second, centre }) => {
  test(`has a second moment of ${second} about its breadth`, () => {
    const { tolerance } = wanted.second_moment_over_ab3;
    const moment = momentOf(bodyOf(n, n, 0.5), 2, -Math.PI / 2);
    expect(Math.abs(moment / (a * b ** 3) - second)).toBeLessThan(tolerance);
  });

  test(`has the centre of its upper half ${centre} of the way up`, () => {
    const hull = bodyOf(n, n, 0.5);
    const height = momentOf(hull, 1, 0) / (sectionArea(hull, 50) / 2);
    expect(Math.abs(height / b - centre)).toBeLessThan(wanted.half_centre_over_b.tolerance);
  });

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
