import type { Mesh, Mm, Vec3 } from '../../sim/index.ts';

/** A place on a flank, and the direction out of the wood there. */
export interface FlankPoint {
  readonly at: Vec3;
  readonly outward: Vec3;
}

/**
 * The outermost place of a mesh's skin straight abeam of (x, z), to port (side -1) or starboard (1); null where the mesh
 * has nothing there.
 */
export function flankAt({ topology, positions }: Mesh, x: Mm, z: Mm, side: 1 | -1): FlankPoint | null {
  const { index } = topology;
  let best: FlankPoint | null = null;
  for (let i = 0; i < index.length; i += 3) {
    const [a, b, c] = [3 * index[i], 3 * index[i + 1], 3 * index[i + 2]];
    const [ux, uz] = [positions[b] - positions[a], positions[b + 2] - positions[a + 2]];
    const [vx, vz] = [positions[c] - positions[a], positions[c + 2] - positions[a + 2]];
    const twice = ux * vz - uz * vx;
    if (twice === 0) continue;
    const [dx, dz] = [x - positions[a], z - positions[a + 2]];
    const s = (dx * vz - dz * vx) / twice;
    const t = (ux * dz - uz * dx) / twice;
    if (s < 0 || t < 0 || s + t > 1) continue;
    const [uy, vy] = [positions[b + 1] - positions[a + 1], positions[c + 1] - positions[a + 1]];
    const y = positions[a + 1] + s * uy + t * vy;
    if (best !== null && side * y <= side * best.at[1]) continue;
    const normal: Vec3 = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const long = Math.hypot(...normal);
    best = { at: [x, y, z], outward: [normal[0] / long, normal[1] / long, normal[2] / long] };
  }
  return best;
}
