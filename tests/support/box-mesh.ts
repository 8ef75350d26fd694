import type { Mesh, Patch } from '../../sim/mesh/mesh.ts';
import type { Vec3 } from '../../sim/numerics/vec3.ts';

/** Corner k has its x, y, z at the far end where bits 0, 1, 2 of k are set. Two triangles a side, outward. */
const SIDES: readonly (readonly number[])[] = [
  [0, 1, 5, 0, 5, 4],
  [2, 6, 7, 2, 7, 3],
  [0, 2, 3, 0, 3, 1],
  [4, 5, 7, 4, 7, 6],
  [0, 4, 6, 0, 6, 2],
  [1, 3, 7, 1, 7, 5],
];

export interface Box {
  readonly from: Vec3;
  readonly to: Vec3;
}

/**
 * A box as a link: flanks, belly and back are skin, its ends are faces. Each slot is a box wound inside out, standing
 * last, as in every mesh of a link.
 */
export function boxMesh(solid: Box, slots: readonly Box[] = []): Mesh {
  const boxes = [solid, ...slots];
  const positions = Float64Array.from(boxes.flatMap(corners).flat());
  const outward = SIDES.flat();
  const inward = outward.toReversed();
  const index = Uint32Array.from(boxes.flatMap((_, box) => (box === 0 ? outward : inward).map((k) => 8 * box + k)));
  const patches: Patch[] = [
    { kind: 'skin', from: 0, count: 8 },
    { kind: 'fore-face', from: 8, count: 2 },
    { kind: 'aft-face', from: 10, count: 2 },
    ...slots.map((_, slot): Patch => ({ kind: 'slot', from: 12 * (slot + 1), count: 12 })),
  ];
  return {
    topology: { key: `box with ${slots.length} slots`, vertexCount: 8 * boxes.length, index, patches },
    positions,
  };
}

function corners({ from, to }: Box): Vec3[] {
  return Array.from({ length: 8 }, (_, k): Vec3 => {
    const along = (axis: 0 | 1 | 2) => (k & (1 << axis) ? to[axis] : from[axis]);
    return [along(0), along(1), along(2)];
  });
}
