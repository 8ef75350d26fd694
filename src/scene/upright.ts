import { type BufferGeometry, ConeGeometry, Quaternion, Vector3 } from 'three';
import type { Vec3 } from '../../sim/index.ts';
import { addTurned, geometryOf, noTriangles, TURNS } from './shells.ts';

const UP = new Vector3(0, 0, 1);
const UPRIGHT = {
  at: [0, 0, 0],
  across: [
    [1, 0, 0],
    [0, 1, 0],
  ],
  axis: [0, 0, 1],
} as const;

/** The turn that lays a shape's own z along a unit vector. */
export function turnTo(direction: Vec3): Quaternion {
  return new Quaternion().setFromUnitVectors(UP, new Vector3(...direction));
}

/** Its ends turn into its side within this share of the radius: seen from its end, a rod has an outline too. */
const EDGE_SHARE = 0.25;
const [ALONG, OUT] = [Math.PI / 2, 0];

/** A rod of radius 1 from z = 0 to z = 1: scaled, it is every pin, shank and slug. */
export function makeRod(): BufferGeometry {
  const triangles = noTriangles();
  addTurned(triangles, UPRIGHT, [
    [0, 0, -ALONG],
    [0, 1 - EDGE_SHARE, -ALONG],
    [0, 1, OUT],
    [1, 1, OUT],
    [1, 1 - EDGE_SHARE, ALONG],
    [1, 0, ALONG],
  ]);
  return geometryOf(triangles);
}

/** A point of radius 1 at z = 0 that ends at z = 1: the end of a drilled hole. */
export function makePoint(): BufferGeometry {
  return new ConeGeometry(1, 1, 24).rotateX(Math.PI / 2).translate(0, 0, 0.5);
}

/** Where a plug's rim stands round a hole's axis: unit vectors, as `turnTo` turns them. */
export function plugRim(inward: Vec3): readonly Vec3[] {
  const turn = turnTo(inward);
  return Array.from({ length: TURNS }, (_, i): Vec3 => {
    const angle = (2 * Math.PI * i) / TURNS;
    const { x, y, z } = new Vector3(Math.cos(angle), Math.sin(angle), 0).applyQuaternion(turn);
    return [x, y, z];
  });
}

/** A rod as `makeRod` makes it, but that its near end follows a rim: z at each of the rim's places, the middle at 0. */
export function makePlug(rim: readonly number[]): BufferGeometry {
  const geometry = makeRod();
  const position = geometry.getAttribute('position');
  for (let i = 0; i < position.count; i++) {
    // the near end: its middle, its edge's inner and its outer ring
    const out = Math.hypot(position.getX(i), position.getY(i));
    if (position.getZ(i) === 0) position.setZ(i, out * (rim[(i % (TURNS + 1)) % TURNS] ?? 0));
  }
  return geometry;
}
