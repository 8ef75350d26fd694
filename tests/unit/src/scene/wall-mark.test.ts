import { describe, expect, test } from 'vitest';
import { placeHole } from '../../../../sim/mass/hole.ts';
import { wallOf } from '../../../../sim/mass/wall.ts';
import { along } from '../../../../src/scene/along.ts';
import {
  coreOf,
  dimensionLines,
  type HoleWall,
  markedWalls,
  nearestOnCore,
  tightest,
} from '../../../../src/scene/wall-mark.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { partsOf } from '../../../support/worked-bait.ts';

const { hull, hardware, setup } = partsOf(makeDesignFile());
const far = (a: readonly number[], b: readonly number[]) => Math.hypot(...a.map((value, i) => value - b[i]));

/** Holes of every kind: as the plain bait has them, and with a point, with a chamber, from a flank, of plug alone. */
const [plain] = setup.holes;
const changes = [
  {},
  { point: Math.PI / 3 },
  { point: (118 * Math.PI) / 180, diameter: 4, lead: null, air: { plug: 4 } },
  { from: 'port', across: 2, diameter: 4, depth: 8, lead: null, air: { plug: 3 } },
  { from: 'starboard', across: -3, diameter: 4, depth: 6, point: 2, lead: null },
  { lead: null },
] as const;
const holes = changes.map((change, i) => placeHole(hull, { ...plain, ...change, name: `hole ${i}` }, 0));

describe('the nearest point of what lies in a hole', () => {
  test.each(holes.map((hole) => [hole.name, hole] as const))('is as far from the skin as the wall of %s', (_, hole) => {
    const wall = wallOf(hull, hole);
    expect(wall.thickness).toBeGreaterThan(0);
    expect(far(nearestOnCore(hole, wall.at), wall.at)).toBeCloseTo(wall.thickness, 9);
  });

  test.each(holes.map((hole) => [hole.name, hole] as const))('lies on the lead, chamber or floor of %s', (_, hole) => {
    const { from, to, apex } = coreOf(hole);
    for (const place of [wallOf(hull, hole).at, [0, 0, 0], [60, 9, -9], hole.mouth] as const) {
      const nearest = nearestOnCore(hole, place);
      const away = nearest.map((value, i) => value - hole.mouth[i]);
      const t = away.reduce((sum, value, i) => sum + value * hole.inward[i], 0);
      const beside = Math.sqrt(Math.max(0, away.reduce((sum, value) => sum + value * value, 0) - t * t));
      const isTip = Math.abs(t - apex) < 1e-9 && beside < 1e-6;
      expect(isTip || (t >= from - 1e-9 && t <= to + 1e-9 && beside <= hole.diameter / 2 + 1e-9)).toBe(true);
    }
  });

  test('is the place itself inside, and straight up the axis under the mouth', () => {
    const [hole] = holes;
    if (!hole?.lead) throw new Error('the plain hole has lead');
    const inside = along(hole.mouth, hole.inward, (hole.lead.from + hole.lead.to) / 2);
    expect(far(nearestOnCore(hole, inside), inside)).toBeLessThan(1e-12);
    expect(far(nearestOnCore(hole, hole.mouth), along(hole.mouth, hole.inward, hole.lead.from))).toBeLessThan(1e-12);
  });
});

describe('walls that are marked', () => {
  const walls: readonly HoleWall[] = hardware.holes.map((hole) => ({ hole, wall: wallOf(hull, hole) }));
  const [one, other] = walls.toSorted((a, b) => a.wall.thickness - b.wall.thickness);
  if (!one || !other) throw new Error('the plain bait has two holes');
  const pick = ({ hole }: HoleWall) => `hole:${hole.name}`;

  test('none while nothing is asked, nor of a bait without holes', () => {
    expect(markedWalls(walls, { keepOuts: false, selected: null })).toEqual([]);
    expect(markedWalls([], { keepOuts: true, selected: pick(one) })).toEqual([]);
    expect(tightest([])).toBeNull();
  });

  test('the tightest with keep-outs, that of a hole when it is picked, each once', () => {
    expect(markedWalls(walls, { keepOuts: true, selected: null })).toEqual([one]);
    expect(markedWalls(walls, { keepOuts: false, selected: pick(other) })).toEqual([other]);
    expect(markedWalls(walls, { keepOuts: true, selected: pick(other) })).toEqual([one, other]);
    expect(markedWalls(walls, { keepOuts: true, selected: pick(one) })).toEqual([one]);
  });

  test('of several as tight the first', () => {
    expect(tightest([one, { ...other, wall: one.wall }])).toBe(one);
  });
});

describe('a dimension', () => {
  test.each([
    [0, 0, 3],
    [0, -2, 0],
    [1, 2, -2],
  ])('to (%d, %d, %d) has its ticks at both ends, square to its line', (...to) => {
    const lines = dimensionLines([0, 0, 0], to, 4);
    const long = Math.hypot(...to);
    const line = lines.slice(0, 2);
    expect(far(line[0] ?? [], [0, 0, 0])).toBe(0);
    // past the skin, in the same direction
    expect(far(line[1] ?? [], [0, 0, 0])).toBeCloseTo(long + 9 / 4, 9);
    expect(far(line[1] ?? [], to)).toBeCloseTo(9 / 4, 9);
    const ticks = lines.slice(2);
    expect(ticks).toHaveLength(8);
    for (let i = 0; i < ticks.length; i += 2) {
      const [a, b] = [ticks[i] ?? [], ticks[i + 1] ?? []];
      const middle = a.map((value, axis) => (value + (b[axis] ?? 0)) / 2);
      expect(far(middle, i < 4 ? [0, 0, 0] : to)).toBeLessThan(1e-12);
      expect(far(a, b)).toBeCloseTo(2, 9);
      expect(a.reduce((sum, value, axis) => sum + (value - (b[axis] ?? 0)) * to[axis], 0)).toBeCloseTo(0, 9);
    }
  });

  test('of no wall at all is no line', () => {
    expect(dimensionLines([1, 2, 3], [1, 2, 3], 4)).toEqual([]);
  });
});
