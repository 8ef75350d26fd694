import { describe, expect, test } from 'vitest';
import { placeHole } from '../../../../sim/mass/hole.ts';
import { addRoundedBox, addWallShell, noTriangles, type Triangles } from '../../../../src/scene/shells.ts';
import { coreOf, nearestOnCore } from '../../../../src/scene/wall-mark.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { partsOf } from '../../../support/worked-bait.ts';

type Place = readonly [number, number, number];

function threes(numbers: readonly number[]): readonly Place[] {
  return Array.from(
    { length: numbers.length / 3 },
    (_, i): Place => [numbers[3 * i], numbers[3 * i + 1], numbers[3 * i + 2]],
  );
}

const far = (a: Place, b: Place) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Six times the volume that the triangles enclose: positive where they face outwards. */
function enclosed({ positions, index }: Triangles): number {
  const places = threes(positions);
  return threes(index).reduce((sum, [i, j, k]) => {
    const [a, b, c] = [places[i] ?? [0, 0, 0], places[j] ?? [0, 0, 0], places[k] ?? [0, 0, 0]];
    const cross = [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]];
    return sum + (a[0] * (cross[0] ?? 0) + a[1] * (cross[1] ?? 0) + a[2] * (cross[2] ?? 0)) / 6;
  }, 0);
}

/** Every edge of a closed surface is gone along once each way, by place: corners stand there more than once. */
function isClosed({ positions, index }: Triangles): boolean {
  const key = ([x, y, z]: Place) => [x, y, z].map((value) => (Math.round(value * 1e6) / 1e6 + 0).toFixed(6)).join();
  const keys = threes(positions).map(key);
  const open = new Map<string, number>();
  for (const corners of threes(index)) {
    for (const i of [0, 1, 2] as const) {
      const [a, b] = [keys[corners[i]] ?? '', keys[corners[(i + 1) % 3] ?? 0] ?? ''];
      if (a === b) continue;
      open.set(`${a} ${b}`, (open.get(`${a} ${b}`) ?? 0) + 1);
      open.set(`${b} ${a}`, (open.get(`${b} ${a}`) ?? 0) - 1);
    }
  }
  return [...open.values()].every((count) => count === 0);
}

describe.each([
  ['a shank', [10, 0, -4], [10, 0, 8], 0.8],
  ['a slot', [40, -3.5, -2], [48, 3.5, 6], 0],
  ['a ball', [1, 2, 3], [1, 2, 3], 3],
  ['a slot with room round it', [40, -3.5, -2], [48, 3.5, 6], 1.2],
] as const)('the keep-out of %s', (_, low, high, radius) => {
  const triangles = noTriangles();
  addRoundedBox(triangles, { low, high, radius });
  const places = threes(triangles.positions);
  const nearest = (place: Place): Place => [0, 1, 2].map((i) => Math.min(high[i], Math.max(low[i], place[i]))) as never;

  test('is everywhere its radius away from its box', () => {
    for (const place of places) expect(far(place, nearest(place))).toBeCloseTo(radius, 9);
  });

  test('reaches its radius past the box on all six sides', () => {
    for (const i of [0, 1, 2] as const) {
      const along = places.map((place) => place[i]);
      expect(Math.min(...along)).toBeCloseTo(low[i] - radius, 9);
      expect(Math.max(...along)).toBeCloseTo(high[i] + radius, 9);
    }
  });

  test('is closed, faces outwards, and holds what box, edges and corners hold', () => {
    expect(isClosed(triangles)).toBe(true);
    const [a, b, c] = [0, 1, 2].map((i) => high[i as 0] - low[i as 0]) as [number, number, number];
    const exact =
      a * b * c +
      2 * radius * (a * b + b * c + c * a) +
      Math.PI * radius ** 2 * (a + b + c) +
      (4 / 3) * Math.PI * radius ** 3;
    // chords of an eighth of a quarter turn enclose less
    expect(enclosed(triangles)).toBeLessThanOrEqual(exact + 1e-9);
    expect(enclosed(triangles)).toBeGreaterThan(0.93 * exact);
  });
});

describe('the wall wanted round a slug', () => {
  const { hull, setup } = partsOf(makeDesignFile());
  const [plain] = setup.holes;
  const WALL = 2.5;

  test.each([
    ['from the belly', {}],
    ['with a drill’s point', { point: Math.PI / 3 }],
    ['from a flank', { from: 'port', across: 2, depth: 5 }],
  ] as const)('%s lies that far from the lead', (_, change) => {
    const hole = placeHole(hull, { ...plain, ...change }, 0);
    const { from, to, apex } = coreOf(hole);
    const triangles = noTriangles();
    addWallShell(triangles, hole, WALL);
    const reach: number[] = [];
    for (const place of threes(triangles.positions)) {
      const away = far(place, nearestOnCore(hole, place));
      // the two shells, round the shaft and round the tip, run into each other
      expect(away).toBeLessThan(WALL + 1e-9);
      reach.push(place.reduce((sum, value, i) => sum + (value - hole.mouth[i]) * hole.inward[i], 0));
    }
    expect(Math.min(...reach)).toBeCloseTo(from - WALL, 9);
    expect(Math.max(...reach)).toBeCloseTo(Math.max(to, apex) + WALL, 9);
    expect(isClosed(triangles)).toBe(true);
    expect(enclosed(triangles)).toBeGreaterThan(0.9 * Math.PI * (hole.diameter / 2 + WALL) ** 2 * (to - from));
  });
});
