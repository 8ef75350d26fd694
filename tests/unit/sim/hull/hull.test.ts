import { describe, expect, test } from 'vitest';
import {
  buildHull,
  type Hull,
  sectionArea,
  sectionMeasure,
  skinHalfWidth,
  skinHeight,
  stationAt,
  stationOf,
} from '../../../../sim/hull/hull.ts';
import { ellipsoidBody, SHAD } from '../../../support/bodies.ts';

const ELLIPSOID = ellipsoidBody(60, 10, 18);

/** Share of an ellipse's height at x. */
function round(x: number): number {
  return Math.sqrt(1 - (x / 60 - 1) ** 2);
}

describe('a body of round quarters and round sections', () => {
  const hull = buildHull(ELLIPSOID);

  test('is an ellipsoid, to a millionth of a millimetre', () => {
    for (let x = 0; x <= 120; x += 0.25) {
      const station = stationOf(hull, x);
      expect(Math.abs(station.back - 18 * round(x))).toBeLessThan(1e-6);
      expect(Math.abs(station.belly + 18 * round(x))).toBeLessThan(1e-6);
      expect(Math.abs(station.halfWidth - 10 * round(x))).toBeLessThan(1e-6);
      expect(Math.abs(station.broadest)).toBeLessThan(1e-6);
    }
  });

  test('has sections of the area of an ellipse', () => {
    for (const x of [1, 30, 60, 111]) expect(sectionArea(hull, x)).toBeCloseTo(Math.PI * 10 * 18 * round(x) ** 2, 4);
    expect(sectionArea(hull, 0)).toBe(0);
  });

  test('has its skin where the equation of the ellipsoid says', () => {
    for (const [x, y] of [
      [60, 0],
      [40, 6],
      [95, -5],
    ]) {
      const z = 18 * Math.sqrt(1 - (x / 60 - 1) ** 2 - (y / 10) ** 2);
      expect(skinHeight(hull, 'back', x, y)).toBeCloseTo(z, 5);
      expect(skinHeight(hull, 'belly', x, y)).toBeCloseTo(-z, 5);
    }
    expect(skinHalfWidth(hull, 40, 9)).toBeCloseTo(10 * Math.sqrt(1 - 1 / 9 - 1 / 4), 5);
  });
});

describe('a body of dimensions that all differ', () => {
  const hull = buildHull(SHAD);

  test('has its height, width and stem where they were asked for', () => {
    const deepest = stationOf(hull, 50.4);
    expect(deepest.back).toBeCloseTo(22, 12);
    expect(deepest.belly).toBeCloseTo(-26, 12);
    expect(deepest.broadest).toBeCloseTo(-26 + 0.6 * 48, 12);
    expect(stationOf(hull, 47.6).halfWidth).toBeCloseTo(10, 12);
    expect(stationOf(hull, 0)).toEqual({ back: 0, belly: -0, halfWidth: 0, broadest: 0 });
    expect(stationOf(hull, 140)).toEqual({ back: 2, belly: 2, halfWidth: 0, broadest: 2 });
    // beyond the rounding the stem is at least as large as asked
    const stem = stationOf(hull, 137);
    expect(stem.back).toBeGreaterThan(7);
    expect(stem.belly).toBeLessThan(-3);
    expect(stem.halfWidth).toBeGreaterThan(2);
  });

  test('gives the slopes of its outlines beside them', () => {
    const [here, before, after] = [50, 49.999, 50.001].map((x) => {
      const out = new Float64Array(6);
      stationAt(hull, x, out);
      return out;
    });
    for (const i of [0, 2, 4]) expect(here[i + 1]).toBeCloseTo((after[i] - before[i]) / 0.002, 8);
  });

  test('has sections whose area is that of their width, added up over the height', () => {
    for (const x of [12, 50, 101]) {
      const { back, belly, broadest } = stationOf(hull, x);
      const halves = [
        [belly, broadest],
        [broadest, back],
      ] as const;
      // z = edge + span sin², which takes the roots at keel, breadth and back out of the integrand
      const steps = 400;
      const area = halves.reduce((sum, [from, to]) => {
        let half = 0;
        for (let i = 0; i < steps; i++) {
          const turn = ((i + 0.5) * Math.PI) / (2 * steps);
          const width = skinHalfWidth(hull, x, from + (to - from) * Math.sin(turn) ** 2) ?? Number.NaN;
          half += width * Math.sin(2 * turn) * (Math.PI / (2 * steps));
        }
        return sum + 2 * half * (to - from);
      }, 0);
      expect(Math.abs(area / sectionArea(hull, x) - 1)).toBeLessThan(1e-4);
    }
  });

  test('finds the same skin from above, from below and from the side', () => {
    for (const x of [5, 30, 47.6, 88, 136]) {
      const station = stationOf(hull, x);
      for (const share of [0.05, 0.3, 0.6, 0.9]) {
        const y = share * station.halfWidth;
        const [top, bottom] = (['back', 'belly'] as const).map((on) => skinHeight(hull, on, x, y) ?? Number.NaN);
        expect(skinHalfWidth(hull, x, top)).toBeCloseTo(y, 8);
        expect(skinHalfWidth(hull, x, bottom)).toBeCloseTo(y, 8);
        expect(skinHeight(hull, 'back', x, -y)).toBe(top);
        expect(sectionMeasure(hull, station, y, top)).toBeCloseTo(1, 10);
        expect(sectionMeasure(hull, station, -y, bottom)).toBeCloseTo(1, 10);
      }
    }
  });

  test('has no skin beside it, over it or beyond its ends', () => {
    expect(skinHeight(hull, 'back', 50, 10)).toBeNull();
    expect(skinHalfWidth(hull, 50, 23)).toBeNull();
    expect(skinHalfWidth(hull, 50, -27)).toBeNull();
    for (const x of [-1, 0, 140, 141]) {
      expect(skinHeight(hull, 'belly', x, 0)).toBeNull();
      expect(skinHalfWidth(hull, x, 2)).toBeNull();
      expect(sectionMeasure(hull, stationOf(hull, x), 0, 2)).toBe(Number.POSITIVE_INFINITY);
    }
  });

  test('measures a point as inside under 1 and outside over it', () => {
    const station = stationOf(hull, 50);
    expect(sectionMeasure(hull, station, 0, station.broadest)).toBe(0);
    expect(sectionMeasure(hull, station, 0.99 * station.halfWidth, station.broadest)).toBeLessThan(1);
    expect(sectionMeasure(hull, station, 1.01 * station.halfWidth, station.broadest)).toBeGreaterThan(1);
  });

  test('is plain data: it is the same after being posted', () => {
    const posted: Hull = structuredClone(hull);
    expect(posted).toStrictEqual(hull);
    expect(skinHeight(posted, 'back', 50, 3)).toBe(skinHeight(hull, 'back', 50, 3));
  });
});
