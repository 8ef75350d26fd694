import { describe, expect, test } from 'vitest';
import type { BoardSection, Body } from '../../../../sim/design/design.ts';
import {
  boardArea,
  boardHalfWidth,
  boardHeight,
  boardMeasure,
  boardStation,
  emptyBoardRing,
  fillBoardRing,
} from '../../../../sim/hull/board.ts';
import { buildHull, sectionArea, stationOf } from '../../../../sim/hull/hull.ts';
import { cutLinks } from '../../../../sim/links/cut.ts';
import { loftLink } from '../../../../sim/mesh/loft.ts';
import { measureArea, measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../../sim/mesh/topology.ts';
import { SHAD } from '../../../support/bodies.ts';
import { validateMesh } from '../../../support/meshes.ts';

const EDGED: BoardSection = { kind: 'board', backEdge: 6, bellyEdge: 3 };
/** 27 mm wide, from 30 mm under the datum to 22 mm over it. */
const STATION = boardStation(EDGED, 13.5, 22, -30);

/** A plank with a stem and a blunt nose, straight for half its length. */
const PLANK: Body = {
  ...SHAD,
  length: 180,
  height: 52,
  width: 27,
  back: 24,
  deepest: [70, 80],
  widest: [50, 86],
  nose: { depth: 14, width: 10, round: 8 },
  tail: { z: 0, depth: 16, width: 8, round: 6 },
  fullness: { back: { nose: 0.79, tail: 0.76 }, belly: { nose: 0.79, tail: 0.76 }, plan: { nose: 0.8, tail: 0.76 } },
  section: EDGED,
};

describe('a board section', () => {
  test('is a rectangle less what its four rounded edges lose', () => {
    // 27 × 52 less (2 - π/2)(36 + 9)
    expect(boardArea(STATION)).toBeCloseTo(27 * 52 - (2 - Math.PI / 2) * 45, 10);
    let sum = 0;
    const strips = 20000;
    for (let i = 0; i < strips; i++) sum += boardHalfWidth(STATION, -30 + (52 * (i + 0.5)) / strips) ?? Number.NaN;
    // midpoints of strips, with a root at each edge: error of strip^1.5
    expect((2 * sum * 52) / strips / boardArea(STATION) - 1).toBeCloseTo(0, 6);
  });

  test('is flat where it is flat and round where it is round', () => {
    expect(boardHeight(STATION, 'back', 7.4)).toBe(22);
    expect(boardHeight(STATION, 'belly', -10.4)).toBe(-30);
    expect(boardHalfWidth(STATION, 15)).toBe(13.5);
    // 3 mm out on an arc of 6: down by 6 - √27
    expect(boardHeight(STATION, 'back', 10.5)).toBeCloseTo(22 - (6 - Math.sqrt(27)), 12);
    expect(boardHalfWidth(STATION, 19)).toBeCloseTo(13.5 - (6 - Math.sqrt(27)), 12);
    expect(boardHeight(STATION, 'back', 13.5)).toBeNull();
    expect(boardHalfWidth(STATION, 22)).toBeNull();
  });

  test('knows inside from outside', () => {
    expect(boardMeasure(STATION, 13.5, 0)).toBe(1);
    expect(boardMeasure(STATION, 0, 22)).toBe(1);
    expect(boardMeasure(STATION, 10.5, 22 - (6 - Math.sqrt(27)))).toBeCloseTo(1, 12);
    expect(boardMeasure(STATION, 13.4, 21.9)).toBeGreaterThan(1);
    expect(boardMeasure(STATION, 12, -29)).toBeLessThan(1);
    expect(boardMeasure(boardStation(EDGED, 0, 0, 0), 0, 0)).toBe(Number.POSITIVE_INFINITY);
  });

  test('rounds no more than it has room for', () => {
    expect(boardStation(EDGED, 4, 22, -30)).toMatchObject({ backRadius: 4, bellyRadius: 3 });
    expect(boardStation(EDGED, 13, 2, -2)).toMatchObject({ backRadius: 2, bellyRadius: 2 });
  });

  test.each([
    ['as drawn', STATION],
    ['with square edges', boardStation({ kind: 'board', backEdge: 0, bellyEdge: 0 }, 13.5, 22, -30)],
    ['as round as a stadium', boardStation({ kind: 'board', backEdge: 50, bellyEdge: 50 }, 13.5, 22, -30)],
    ['as round as a rod', boardStation({ kind: 'board', backEdge: 50, bellyEdge: 50 }, 5, 5, -5)],
  ])('%s gives a ring of its own area with no step of nothing', (_, station) => {
    for (const steps of [16, 32]) {
      const ring = emptyBoardRing(steps);
      fillBoardRing(station, ring);
      let area = 0;
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i < steps; i++) {
        area += (ring.across[i] + ring.across[i + 1]) * (ring.upright[i + 1] - ring.upright[i]);
        least = Math.min(least, Math.hypot(ring.across[i + 1] - ring.across[i], ring.upright[i + 1] - ring.upright[i]));
      }
      expect(area / boardArea(station) - 1).toBeCloseTo(0, 12);
      expect(least).toBeGreaterThan(0.3);
      for (let i = 0; i <= steps; i++) {
        expect(Math.hypot(ring.normalAcross[i], ring.normalUpright[i])).toBeCloseTo(1, 12);
      }
    }
  });
});

describe('a board', () => {
  const hull = buildHull(PLANK);
  const [whole] = cutLinks(180, [{ name: 'whole', density: null }], []);

  function meshOf(fineness: number, skin: number): Mesh {
    const counts = { bands: 30 * fineness, steps: 16 * fineness, foreTip: true, aftTip: true, slots: 0 };
    return { topology: linkTopology(counts), positions: loftLink(hull, whole, counts, { skin, face: 0 }) };
  }

  test('is closed and outward, bare and coated, fine and coarse', () => {
    for (const fineness of [1, 2])
      for (const skin of [0, 0.4]) expect(validateMesh(meshOf(fineness, skin))).toEqual([]);
  });

  test('closes in on the volume of its sections by the square of its step', () => {
    const strips = 20000;
    let wanted = 0;
    for (let i = 0; i < strips; i++) {
      // sin² crowds the strips at the round ends
      const turn = ((i + 0.5) / strips) * (Math.PI / 2);
      wanted += sectionArea(hull, 180 * Math.sin(turn) ** 2) * 180 * Math.sin(2 * turn);
    }
    wanted *= Math.PI / (2 * strips);
    const errors = [1, 2, 4].map((fineness) => Math.abs(measureVolume(meshOf(fineness, 0)).volume - wanted));
    for (const i of [1, 2]) {
      const order = Math.log2(errors[i - 1] / errors[i]);
      expect(order).toBeGreaterThan(1.8);
      expect(order).toBeLessThan(2.2);
    }
  });

  test('grows by its area times its coat, the closer the finer its mesh', () => {
    // volume = area × coat + (curvature) coat²: twice the half coat's share less the coat's leaves what the mesh errs by
    const excess = (fineness: number) => {
      const bare = meshOf(fineness, 0);
      const [volume, { area }] = [measureVolume(bare).volume, measureArea(bare)];
      const [thick, thin] = [0.02, 0.01].map(
        (coat) => (measureVolume(meshOf(fineness, coat)).volume - volume) / (area * coat) - 1,
      );
      return Math.abs(2 * thin - thick);
    };
    const errors = [2, 4, 8].map(excess);
    expect(errors[2]).toBeLessThan(1e-3);
    expect(errors[0] / errors[2]).toBeGreaterThan(8);
  });

  test('is as wide and as deep as asked all along its straight runs', () => {
    for (const x of [50, 60, 86]) expect(2 * stationOf(hull, x).halfWidth).toBeCloseTo(27, 12);
    for (const x of [70, 75, 80]) expect(stationOf(hull, x).back - stationOf(hull, x).belly).toBeCloseTo(52, 12);
  });

  test('has a nose of the size asked for once it is rounded', () => {
    // where the rounding ends the end's own square is all there
    const { back, halfWidth } = stationOf(hull, 8);
    expect(back).toBeGreaterThan(7);
    expect(halfWidth).toBeGreaterThan(5);
    expect(stationOf(hull, 0.001).back).toBeLessThan(1);
  });
});
