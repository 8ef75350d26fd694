import { describe, expect, test } from 'vitest';
import type { Body } from '../../../../sim/design/design.ts';
import { boardPoint } from '../../../../sim/hull/board.ts';
import {
  buildHull,
  sectionArea,
  sectionMeasure,
  skinHalfWidth,
  skinHeight,
  stationAt,
  stationOf,
} from '../../../../sim/hull/hull.ts';
import { BOARD } from '../../../support/bodies.ts';

const HULL = buildHull(BOARD);
/** Along straight runs, where section is 18 mm by 40 mm; in the nose; where the stem is about as round as it is wide. */
const PLACES = [70, 12, 3, 145, 149.5] as const;

function edged(backEdge: number, bellyEdge: number): Body {
  return { ...BOARD, section: { kind: 'board', backEdge, bellyEdge } };
}

/** Points of half a ring of the mesh, keel to back, as (y, z). */
function halfRing(body: Body, x: number, steps: number, growth = 0): readonly (readonly [number, number, number])[] {
  const hull = buildHull(body);
  if (hull.section.kind !== 'board') throw new Error('a board is wanted');
  const ring = { kind: 'board', steps, section: hull.section } as const;
  const station = new Float64Array(6);
  stationAt(hull, x, station);
  return Array.from({ length: steps + 1 }, (_, k) => {
    const point = new Float64Array([x, 0, 0]);
    boardPoint(ring, k, station, growth, point);
    return [point[0], point[1], point[2]] as const;
  });
}

describe('a section of a board', () => {
  test('has the area of its rectangle less what its edges lost', () => {
    // 18 · 40 - (2 - π/2)(4² + 2.5²) at the straight runs
    expect(sectionArea(HULL, 70)).toBeCloseTo(720 - (2 - Math.PI / 2) * (16 + 6.25), 10);
    expect(sectionArea(buildHull(edged(0, 0)), 70)).toBeCloseTo(720, 10);
    // radii that the width bounds: a bar with two round ends
    expect(sectionArea(buildHull(edged(100, 100)), 70)).toBeCloseTo(18 * 22 + Math.PI * 81, 10);
  });

  test.each(PLACES)('has that area also by its widths added up over its height, at %d mm', (x) => {
    const { back, belly } = stationOf(HULL, x);
    const strips = 20_000;
    let sum = 0;
    for (let i = 0; i < strips; i++) {
      sum += 2 * (skinHalfWidth(HULL, x, belly + ((back - belly) * (i + 0.5)) / strips) ?? Number.NaN);
    }
    expect(Math.abs((sum * (back - belly)) / strips / sectionArea(HULL, x) - 1)).toBeLessThan(1e-5);
  });

  test('has flat flanks, and edges round by their radii', () => {
    expect(skinHalfWidth(HULL, 70, 0)).toBeCloseTo(9, 12);
    expect(skinHalfWidth(HULL, 70, 14.9)).toBeCloseTo(9, 12);
    expect(skinHeight(HULL, 'back', 70, 4.9)).toBeCloseTo(19, 12);
    expect(skinHeight(HULL, 'belly', 70, -6.4)).toBeCloseTo(-21, 12);
    // the middle of the upper round: 4 - 4/√2 in from the corner both ways
    const off = 4 - 4 / Math.SQRT2;
    expect(skinHeight(HULL, 'back', 70, 9 - off)).toBeCloseTo(19 - off, 12);
    expect(skinHalfWidth(HULL, 70, 19 - off)).toBeCloseTo(9 - off, 12);
    expect(skinHeight(HULL, 'back', 70, 9)).toBeNull();
    expect(skinHalfWidth(HULL, 70, 19)).toBeNull();
  });

  test('measures 1 on its skin, less inside and more outside', () => {
    for (const x of PLACES) {
      const station = stationOf(HULL, x);
      for (const share of [0, 0.3, 0.7, 0.9, 0.99]) {
        const y = share * station.halfWidth;
        for (const on of ['back', 'belly'] as const) {
          const z = skinHeight(HULL, on, x, y) ?? Number.NaN;
          expect(sectionMeasure(HULL, station, -y, z)).toBeCloseTo(1, 9);
          const [out, deeper] = on === 'back' ? [0.01, -0.01] : [-0.01, 0.01];
          expect(sectionMeasure(HULL, station, y, z + out)).toBeGreaterThan(1);
          expect(sectionMeasure(HULL, station, y, z + deeper)).toBeLessThan(1);
        }
      }
      expect(sectionMeasure(HULL, station, station.halfWidth * 1.01, station.broadest)).toBeGreaterThan(1);
    }
    expect(sectionMeasure(HULL, stationOf(HULL, 0), 0, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});

const EDGES: readonly (readonly [string, Body])[] = [
  ['rounded by a bit of its own above and below', BOARD],
  ['square', edged(0, 0)],
  ['square at the belly alone', edged(5, 0)],
  ['rounder than the board is thick', edged(100, 100)],
  ['a hair off square', edged(1e-9, 1e-9)],
];

describe.each(EDGES)('the ring of a board whose edges are %s', (_, body) => {
  const hull = buildHull(body);

  test.each(PLACES)('encloses the area of the smooth section at %d mm, whatever its count', (x) => {
    for (const steps of [4, 16, 32, 64]) {
      const ring = halfRing(body, x, steps);
      let area = 0;
      for (let k = 0; k < steps; k++) area += (ring[k][1] + ring[k + 1][1]) * (ring[k + 1][2] - ring[k][2]);
      expect(Math.abs(area / sectionArea(hull, x) - 1)).toBeLessThan(1e-9);
    }
  });

  test.each(PLACES)('runs from keel to back with no step of nothing at %d mm', (x) => {
    const ring = halfRing(body, x, 32);
    expect([ring[0][1], ring[32][1]]).toEqual([0, 0]);
    const { halfWidth, back, belly } = stationOf(hull, x);
    const least = Math.min(halfWidth, (back - belly) / 2);
    for (let k = 0; k < 32; k++) {
      expect(Math.hypot(ring[k + 1][1] - ring[k][1], ring[k + 1][2] - ring[k][2])).toBeGreaterThan(least / 20);
      expect(ring[k + 1][2]).toBeGreaterThanOrEqual(ring[k][2] - 1e-12);
    }
  });

  test('is grown straight off the skin, by the slopes of the outlines', () => {
    for (const x of [12, 30, 70, 110, 145]) {
      const bare = halfRing(body, x, 32);
      const grown = halfRing(body, x, 32, 0.5);
      const out = new Float64Array(6);
      stationAt(hull, x, out);
      bare.forEach((point, k) => {
        const normal = grown[k].map((part, axis) => (part - point[axis]) / 0.5);
        // a square edge moves out to where both grown flats meet
        if (k !== 8 && k !== 24) expect(Math.hypot(...normal)).toBeCloseTo(1, 9);
        if (k === 0 || k === 16 || k === 32) {
          const slope = k === 0 ? -out[3] : k === 16 ? out[5] : out[1];
          expect(normal[0]).toBeCloseTo(-slope / Math.hypot(1, slope), 9);
        }
      });
    }
  });
});

test('a square edge is grown to where its two grown flats meet', () => {
  for (const x of [20, 70, 120]) {
    const out = new Float64Array(6);
    stationAt(buildHull(edged(0, 0)), x, out);
    const flank = [-out[5], 1, 0].map((part) => part / Math.hypot(1, out[5]));
    for (const [k, slope, up] of [
      [8, -out[3], -1],
      [24, out[1], 1],
    ]) {
      const crown = [-slope, 0, up].map((part) => part / Math.hypot(1, slope));
      const [bare, grown] = [0, 0.5].map((growth) => halfRing(edged(0, 0), x, 32, growth)[k]);
      for (const normal of [flank, crown]) {
        const moved = normal.reduce((sum, part, axis) => sum + part * (grown[axis] - bare[axis]), 0);
        expect(moved).toBeCloseTo(0.5, 9);
      }
    }
  }
});

test('a round is grown off its own skin, as differences of the skin tell', () => {
  const body = edged(6, 5);
  const hull = buildHull(body);
  for (const x of [20, 120]) {
    const bare = halfRing(body, x, 32);
    const grown = halfRing(body, x, 32, 0.5);
    // inside the upper round, then inside the lower one
    for (const k of [23, 24, 25, 8, 7]) {
      // back onto the smooth skin along the height, since the ring is a little larger
      const y = bare[k][1] * 0.999;
      const z = skinHeight(hull, k > 16 ? 'back' : 'belly', x, y) ?? Number.NaN;
      const step = 1e-5;
      // the distance outside the skin is (measure - 1) times the smaller half size of its own station
      const distance = (dx: number, dy: number, dz: number) => {
        const there = stationOf(hull, x + dx);
        const smaller = Math.min(there.halfWidth, (there.back - there.belly) / 2);
        return (sectionMeasure(hull, there, y + dy, z + dz) - 1) * smaller;
      };
      const gradient = [
        (distance(step, 0, 0) - distance(-step, 0, 0)) / (2 * step),
        (distance(0, step, 0) - distance(0, -step, 0)) / (2 * step),
        (distance(0, 0, step) - distance(0, 0, -step)) / (2 * step),
      ];
      const long = Math.hypot(...gradient);
      gradient.forEach((part, axis) => {
        // the point itself is a hundredth of the round away
        expect(Math.abs((grown[k][axis] - bare[k][axis]) / 0.5 - part / long)).toBeLessThan(0.04);
      });
    }
  }
});
