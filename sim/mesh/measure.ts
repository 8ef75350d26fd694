import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm2, Mm3 } from '../units/brand.ts';
import type { Mesh } from './mesh.ts';
import { slotMouth } from './topology.ts';

export interface VolumeMeasure {
  readonly volume: Mm3;
  readonly centre: Vec3;
}

/**
 * Volume and centre of what a closed mesh encloses (what its slots take away counts as taken away):
 *
 *   V = Σ a·(b × c)/6,   M = Σ (a + b + c)/4 · a·(b × c)/6      (divergence theorem; exact for the mesh)
 *
 * Measured from the first vertex, so that a link far from the nose keeps its digits. A volume of 0 has its centre there.
 */
export function measureVolume(mesh: Mesh): VolumeMeasure {
  const { positions } = mesh;
  const { index } = mesh.topology;
  const [ox, oy, oz] = positions;
  let sum = 0;
  let mx = 0;
  let my = 0;
  let mz = 0;
  for (let i = 0; i < index.length; i += 3) {
    const a = 3 * index[i];
    const b = 3 * index[i + 1];
    const c = 3 * index[i + 2];
    const ax = positions[a] - ox;
    const ay = positions[a + 1] - oy;
    const az = positions[a + 2] - oz;
    const bx = positions[b] - ox;
    const by = positions[b + 1] - oy;
    const bz = positions[b + 2] - oz;
    const cx = positions[c] - ox;
    const cy = positions[c + 1] - oy;
    const cz = positions[c + 2] - oz;
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    sum += six;
    mx += six * (ax + bx + cx);
    my += six * (ay + by + cy);
    mz += six * (az + bz + cz);
  }
  if (sum === 0) return { volume: 0, centre: [ox, oy, oz] };
  return { volume: sum / 6, centre: [ox + mx / (4 * sum), oy + my / (4 * sum), oz + mz / (4 * sum)] };
}

/**
 * How many times what side grain drinks end grain does, before the sealer sets. Common practice: makers flood end grain
 * three to five times for each coat on the flanks. The total stays as the maker says it, grams over all the bare area;
 * this only shifts where it lies.
 */
export const END_GRAIN = 4;

/**
 * Area of all surfaces and its centre. A slot's mouth lies on the joint face and neither has wood there: what the face
 * counts too much, the mouth takes off again. endGrain: how many times its area a face counts that is square to the
 * grain, which runs along x; a face at a slant counts 1 + (endGrain - 1)|n_x|.
 */
export function measureArea(mesh: Mesh, endGrain = 1): { readonly area: Mm2; readonly centre: Vec3 } {
  const { positions } = mesh;
  const { index, patches } = mesh.topology;
  let area = 0;
  let mx = 0;
  let my = 0;
  let mz = 0;
  for (const patch of patches) {
    const [mouthFrom, mouthTo] = patch.kind === 'slot' ? slotMouth(patch) : [0, 0];
    for (let triangle = 0; triangle < patch.count; triangle++) {
      const i = 3 * (patch.from + triangle);
      const a = 3 * index[i];
      const b = 3 * index[i + 1];
      const c = 3 * index[i + 2];
      const ax = positions[a];
      const ay = positions[a + 1];
      const az = positions[a + 2];
      const bx = positions[b];
      const by = positions[b + 1];
      const bz = positions[b + 2];
      const cx = positions[c];
      const cy = positions[c + 1];
      const cz = positions[c + 2];
      const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
      const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
      const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
      const mouth = triangle >= mouthFrom && triangle < mouthTo;
      const counted = (Math.sqrt(nx * nx + ny * ny + nz * nz) + (endGrain - 1) * Math.abs(nx)) / 2;
      const piece = mouth ? -counted : counted;
      area += piece;
      mx += (piece * (ax + bx + cx)) / 3;
      my += (piece * (ay + by + cy)) / 3;
      mz += (piece * (az + bz + cz)) / 3;
    }
  }
  return { area, centre: area > 0 ? [mx / area, my / area, mz / area] : [0, 0, 0] };
}

/** Lowest and highest place of points (x, y, z of each in turn) along a unit vector. */
export function measureReach(points: Float64Array, direction: Vec3): readonly [Mm, Mm] {
  const [x, y, z] = direction;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 3) {
    const height = x * points[i] + y * points[i + 1] + z * points[i + 2];
    if (height < low) low = height;
    if (height > high) high = height;
  }
  return [low, high];
}
