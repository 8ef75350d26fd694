import type { Mesh, Mm, PlacedHole, Vec3 } from '../../sim/index.ts';

/** A piece of what a hole holds, on its axis: a rod, a cone that ends in a tip, or a plug that begins at the skin. Distances from the mouth, inward. */
export interface BallastPiece {
  readonly of: 'plug' | 'lead' | 'air';
  readonly shape: 'rod' | 'point' | 'plug';
  readonly from: Mm;
  readonly long: Mm;
  readonly diameter: Mm;
  /** What the hole was drilled for: lead, or a chamber, or the plug where there is nothing else. */
  readonly isCore: boolean;
}

/**
 * What is drawn of a hole, from the mouth inward.
 *
 *   mouth        lead.from         depth
 *     | plug         | lead        | point: of lead that fills it, of the chamber it belongs to, else of the plug
 *     |______________|_____________|\
 *     |              |             | >   inward
 *     |______________|_____________|/      an air chamber lies where the lead would
 *
 * Lead may fill no more than the tip of the point. What of the plug stands round a thinner slug, or over such a tip in
 * the point, is left out: it would hide the lead.
 */
export function ballastPieces({ diameter, depth, pointDepth, lead, air }: PlacedHole): readonly BallastPiece[] {
  const core = lead ? 'lead' : air ? 'air' : 'plug';
  const coreFrom = Math.min(lead?.from ?? air?.from ?? depth, depth);
  const apex = depth + pointDepth;
  const pieces: BallastPiece[] = [];
  const add = (of: BallastPiece['of'], shape: BallastPiece['shape'], from: Mm, to: Mm, wide: Mm = diameter) => {
    if (to > from) pieces.push({ of, shape, from, long: to - from, diameter: wide, isCore: of === core });
  };
  add('plug', 'plug', 0, coreFrom);
  if (lead) add('lead', 'rod', coreFrom, depth, lead.diameter);
  else if (air) add('air', 'rod', coreFrom, depth);
  if (lead?.fillsPoint) {
    const share = Math.min(1, (apex - lead.from) / pointDepth);
    add('lead', 'point', apex - share * pointDepth, apex, share * diameter);
  } else {
    add(air && !lead ? 'air' : 'plug', 'point', depth, apex);
  }
  return pieces;
}

/**
 * How far in from a hole's mouth the bare skin is at places round its rim, mm along the hole's axis; 0 where the mesh has
 * no skin there. mesh: coated; coats: how thick. across: unit vectors from the axis to the places.
 */
export function rimDrops(mesh: Mesh, coats: Mm, hole: PlacedHole, across: readonly Vec3[]): readonly Mm[] {
  const { positions, topology } = mesh;
  const { mouth, inward, diameter } = hole;
  const [u, v] = [0, 1, 2].filter((axis) => inward[axis] === 0) as [number, number];
  const w = 3 - u - v;
  const radius = diameter / 2;
  const near = trianglesOver(mesh, [u, v], [mouth[u], mouth[v]], radius);
  return across.map((direction) => {
    const [pu, pv] = [mouth[u] + radius * direction[u], mouth[v] + radius * direction[v]];
    let drop: Mm | null = null;
    for (const first of near) {
      const [a, b, c] = [0, 1, 2].map((corner) => 3 * topology.index[first + corner]) as [number, number, number];
      const [bu, bv] = [positions[b + u] - positions[a + u], positions[b + v] - positions[a + v]];
      const [cu, cv] = [positions[c + u] - positions[a + u], positions[c + v] - positions[a + v]];
      const twice = bu * cv - bv * cu;
      if (twice === 0) continue;
      const [du, dv] = [pu - positions[a + u], pv - positions[a + v]];
      const [s, t] = [(du * cv - dv * cu) / twice, (bu * dv - bv * du) / twice];
      if (s < 0 || t < 0 || s + t > 1) continue;
      const [bw, cw] = [positions[b + w] - positions[a + w], positions[c + w] - positions[a + w]];
      // straight through the coats is further the steeper they lie
      const slope = Math.hypot(bv * cw - bw * cv, bw * cu - bu * cw, twice) / Math.abs(twice);
      const found = (positions[a + w] + s * bw + t * cw - mouth[w]) * inward[w] + coats * slope;
      if (drop === null || Math.abs(found) < Math.abs(drop)) drop = found;
    }
    return drop ?? 0;
  });
}

/** Where in the index those triangles begin that may lie over a disc, seen along an axis. */
function trianglesOver(
  { positions, topology: { index } }: Mesh,
  axes: readonly [number, number],
  middle: readonly [Mm, Mm],
  radius: Mm,
): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < index.length; i += 3) {
    const over = axes.every((axis, n) => {
      const [a, b, c] = [
        positions[3 * index[i] + axis],
        positions[3 * index[i + 1] + axis],
        positions[3 * index[i + 2] + axis],
      ];
      return Math.min(a, b, c) <= middle[n] + radius && Math.max(a, b, c) >= middle[n] - radius;
    });
    if (over) found.push(i);
  }
  return found;
}
