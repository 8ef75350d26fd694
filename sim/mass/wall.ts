import { type Hull, skinHalfWidth, skinHeight } from '../hull/hull.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';
import type { PlacedHole } from './placed.ts';

const DEPTHS = 6;
const TURNS = 12;

/**
 * Least wood between a hole's wall and the bare skin, looked for straight out sideways and straight up and down from
 * points all over the hole below its mouth. Where the skin slopes the true wall is thinner by the cosine of the slope.
 */
export function thinnestWall(hull: Hull, hole: PlacedHole): Mm {
  const { mouth, inward, depth } = hole;
  const radius = hole.diameter / 2;
  const vertical = inward[2] !== 0;
  let least = Number.POSITIVE_INFINITY;
  for (let level = 1; level <= DEPTHS; level++) {
    // the mouth itself is open, so the upper third of the way in is left to the plug
    const centre = add(mouth, scale(inward, depth * (1 / 3 + (2 / 3) * (level / DEPTHS))));
    for (let turn = 0; turn < TURNS; turn++) {
      const angle = (2 * Math.PI * turn) / TURNS;
      const [a, b] = [radius * Math.cos(angle), radius * Math.sin(angle)];
      least = Math.min(least, clearAt(hull, add(centre, vertical ? [a, b, 0] : [a, 0, b]), inward));
    }
  }
  return least;
}

/** From a point in the wood to the skin: sideways either way, and ahead of the drill. */
function clearAt(hull: Hull, [x, y, z]: Vec3, inward: Vec3): Mm {
  const half = skinHalfWidth(hull, x, z);
  const top = skinHeight(hull, 'back', x, y);
  const bottom = skinHeight(hull, 'belly', x, y);
  if (half === null || top === null || bottom === null) return 0;
  const ahead = inward[2] > 0 ? top - z : inward[2] < 0 ? z - bottom : half - y * inward[1];
  const across = inward[2] !== 0 ? half - Math.abs(y) : Math.min(top - z, z - bottom);
  return Math.min(across, ahead);
}
