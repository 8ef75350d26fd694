import { type BufferGeometry, ConeGeometry, CylinderGeometry, Quaternion, Vector3 } from 'three';
import type { Vec3 } from '../../sim/index.ts';

const UP = new Vector3(0, 0, 1);

/** The turn that lays a shape's own z along a unit vector. */
export function turnTo(direction: Vec3): Quaternion {
  return new Quaternion().setFromUnitVectors(UP, new Vector3(...direction));
}

/** A rod of radius 1 from z = 0 to z = 1: scaled, it is every pin, shank, slug and plug. */
export function makeRod(): BufferGeometry {
  return new CylinderGeometry(1, 1, 1, 24).rotateX(Math.PI / 2).translate(0, 0, 0.5);
}

/** A point of radius 1 at z = 0 that ends at z = 1: the end of a drilled hole. */
export function makePoint(): BufferGeometry {
  return new ConeGeometry(1, 1, 24).rotateX(Math.PI / 2).translate(0, 0, 0.5);
}

/** Point reached from `from` by going `by` along a unit vector. */
export function along(from: Vec3, direction: Vec3, by: number): Vec3 {
  return [from[0] + direction[0] * by, from[1] + direction[1] * by, from[2] + direction[2] * by];
}
