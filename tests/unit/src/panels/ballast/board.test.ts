import { expect, test } from 'vitest';
import type { Mesh, PlacedHole } from '../../../../../sim/index.ts';
import { holeSides, labelRows, sideOutline } from '../../../../../src/panels/ballast/board.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';
import { answersOf } from '../../../../support/worked-bait.ts';

/** A wedge 10 mm long: 4 mm high at its fore end, 8 at its aft end, with a slot that reaches further out than its skin. */
const WEDGE: Mesh = {
  topology: {
    key: 'wedge',
    vertexCount: 5,
    index: new Uint32Array([0, 1, 2, 1, 3, 2, 0, 4, 1]),
    patches: [
      { kind: 'skin', from: 0, count: 2 },
      { kind: 'slot', from: 2, count: 1 },
    ],
  },
  positions: new Float64Array([0, 0, 2, 0, 0, -2, 10, 0, 4, 10, 0, -4, 5, 0, 9]),
};

test('A link is outlined by the highest and the lowest of its skin at every place, slots left out', () => {
  const points = sideOutline(WEDGE);
  for (const [x, z] of points) expect(Math.abs(z)).toBeCloseTo(2 + x / 5, 12);
  const half = points.length / 2;
  expect(points.slice(0, half).every(([, z]) => z > 0)).toBe(true);
  expect(points.slice(half).every(([, z]) => z < 0)).toBe(true);
  expect([points[0], points[half]]).toEqual([
    [0, 2],
    [10, -4],
  ]);
});

test('A real link is outlined without a gap or a jag', () => {
  const { links, bait } = answersOf(makeDesignFile(), { detail: 'drag' });
  const mesh = links[0]?.wetted.mesh as Mesh;
  const points = sideOutline(mesh);
  const half = points.length / 2;
  const back = points.slice(0, half);
  expect(points.every(([x, z]) => Number.isFinite(x) && Number.isFinite(z))).toBe(true);
  // the back rises to its peak, and does not go up again behind it
  const peak = back.reduce((best, [, z], i) => (z > (back[best]?.[1] ?? 0) ? i : best), 0);
  for (const [i, [, z]] of back.entries()) {
    const before = back[i - 1]?.[1] ?? z;
    if (i <= peak) expect(z).toBeGreaterThanOrEqual(before - 0.02);
    else expect(z).toBeLessThanOrEqual(before + 0.02);
  }
  expect(Math.max(...back.map(([, z]) => z))).toBeLessThanOrEqual(bait.design.body.back + 1);
});

const HOLE = {
  mouth: [30, 0, -12],
  inward: [0, 0, 1],
  hole: { diameter: 6 },
  depth: 10,
  pointDepth: 2,
  lead: { from: 4, to: 10, diameter: 5, fillsPoint: true },
} as unknown as PlacedHole;

test('A hole goes in from its mouth to its shoulder and point, with its lead at the bottom', () => {
  const { drilled, lead } = holeSides(HOLE);
  expect(drilled).toEqual([
    [27, -12],
    [27, -2],
    [30, 0],
    [33, -2],
    [33, -12],
  ]);
  expect(lead.map(([, z]) => z)).toEqual([-8, -2, 0, -2, -8]);
  const flat = holeSides({ ...HOLE, lead: { ...HOLE.lead, fillsPoint: false } } as PlacedHole);
  expect(flat.lead[2]).toEqual([30, -2]);
  const fromBack = holeSides({ ...HOLE, mouth: [30, 0, 12], inward: [0, 0, -1], lead: null } as PlacedHole);
  expect([fromBack.drilled[2], fromBack.lead]).toEqual([[30, 0], []]);
});

test('Labels that would run into each other stand in rows', () => {
  const at = (...places: readonly number[]) => labelRows(places.map((place) => ({ at: place, width: 40 })));
  expect(at(0, 50, 100)).toEqual([0, 0, 0]);
  expect(at(0, 30, 45, 60)).toEqual([0, 1, 0, 2]);
  expect(at()).toEqual([]);
});
