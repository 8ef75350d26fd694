import type { FloatingBody } from '../../sim/hydro/body.ts';
import { draftAt } from '../../sim/hydro/draft.ts';
import { type Float, floatBody } from '../../sim/hydro/float.ts';
import { planeAxes } from '../../sim/hydro/potential.ts';
import { buildTreeShape, fitTree, type Tree } from '../../sim/hydro/tree.ts';
import { measureVolume } from '../../sim/mesh/measure.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import type { Vec3 } from '../../sim/numerics/vec3.ts';

/** A tree of a mesh that no link ever had. */
export function treeOf(mesh: Mesh): Tree {
  return fitTree(buildTreeShape(mesh.topology, mesh.positions), mesh.positions);
}

/** Grams per cubic millimetre; any other would do as well. */
export const WATER = 0.001;

/** A body of one mesh that weighs a share of its full displacement, its weight at a point (its own middle if not told). */
export function bodyOf(mesh: Mesh, share: number, centre?: Vec3, more: Partial<FloatingBody> = {}): FloatingBody {
  const { volume, centre: middle } = measureVolume(mesh);
  return {
    trees: [treeOf(mesh)],
    waterDensity: WATER,
    mass: share * WATER * volume,
    centre: centre ?? middle,
    outside: [],
    hung: [],
    ...more,
  };
}

/** How a homogeneous mesh of this relative density rests. */
export function floatHomogeneous(mesh: Mesh, density: number): Float {
  return floatBody(bodyOf(mesh, density));
}

/**
 * Righting arm of a body held at a heel (starboard down), trim held level, draft free: the potential's slope over heel
 * divided by weight; positive rights it.
 */
export function rightingArm(body: FloatingBody, heel: number): number {
  const up: Vec3 = [0, -Math.sin(heel), Math.cos(heel)];
  const [u, v] = planeAxes(up);
  const { potential } = draftAt(body, up, u, v, null, 1e-13 * body.mass);
  // more heel turns up towards this
  const further: Vec3 = [0, -Math.cos(heel), -Math.sin(heel)];
  const along = (axis: Vec3) => axis[0] * further[0] + axis[1] * further[1] + axis[2] * further[2];
  return (potential.slopeU * along(u) + potential.slopeV * along(v)) / body.mass;
}
