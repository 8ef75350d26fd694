import type { Body } from '../../sim/design/design.ts';
import { buildHull, type Hull } from '../../sim/hull/hull.ts';

/** A plain round tip at the tail, on the datum. */
const NO_STEM: Body['tail'] = { z: 0, depth: 0, width: 0, round: 1 };

/** A body whose four outlines have one fullness all round and peak half way along, between tips on the datum. */
function evenBody(length: number, width: number, height: number, share: number, exponent: number): Body {
  const fullness = { nose: share, tail: share };
  return {
    length,
    height,
    width,
    back: height / 2,
    deepest: [length / 2, length / 2],
    widest: [length / 2, length / 2],
    fullness: { back: fullness, belly: fullness, plan: fullness },
    nose: { depth: 0, width: 0, round: 1 },
    readings: [],
    tail: NO_STEM,
    section: { kind: 'oval', above: exponent, below: exponent, breadth: 0.5 },
  };
}

/** An exact ellipsoid by its semi-axes along x, y and z: quarters that fill π/4 of their box, round sections. */
export function ellipsoidBody(a: number, b: number, c: number): Body {
  return evenBody(2 * a, 2 * b, 2 * c, Math.PI / 4, 2);
}

/** As good as a plank with square edges: ten kilometres long, so that half way, at x = 5e6, it is as wide as it is. */
export function plankHull(width: number, height: number): Hull {
  return buildHull(evenBody(1e7, width, height, 0.87, 400));
}

/** Nothing about it is symmetric but port and starboard. */
export const SHAD: Body = {
  length: 140,
  height: 48,
  width: 20,
  back: 22,
  deepest: [50.4, 50.4],
  widest: [47.6, 47.6],
  fullness: { back: { nose: 0.79, tail: 0.74 }, belly: { nose: 0.8, tail: 0.6 }, plan: { nose: 0.83, tail: 0.78 } },
  nose: { depth: 0, width: 0, round: 1 },
  readings: [],
  tail: { z: 2, depth: 10, width: 4, round: 3 },
  section: { kind: 'oval', above: 2.6, below: 1.7, breadth: 0.6 },
};

/** Cut from a board: flat flanks with edges of two radii, straight runs of their own, blunt at both ends. */
export const BOARD: Body = {
  length: 150,
  height: 40,
  width: 18,
  back: 19,
  deepest: [50, 80],
  widest: [40, 95],
  fullness: { back: { nose: 0.8, tail: 0.74 }, belly: { nose: 0.78, tail: 0.76 }, plan: { nose: 0.6, tail: 0.8 } },
  nose: { depth: 8, width: 10, round: 6 },
  readings: [],
  tail: { z: 1.5, depth: 12, width: 8, round: 6 },
  section: { kind: 'board', backEdge: 4, bellyEdge: 2.5 },
};
