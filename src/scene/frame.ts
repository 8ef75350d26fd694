import { Matrix4, type Vector3 } from 'three';
import type { Mm } from '../../sim/index.ts';

/*
 * World (sim/frames.ts)            Scene
 *
 *       z up   y starboard              y up
 *       |    /                          |
 *       |  /                            |
 *       o-------> x aft                 o-------> x aft
 *                                      /
 *                                    z to port, towards the viewer of the side view
 *
 * Both in millimetres. Everything under the tub's root group is written in the world frame; the group turns it once.
 */

/** Matrix of the tub's root group: millimetres, z up, to millimetres, y up. */
export const SCENE_FROM_WORLD: Matrix4 = new Matrix4().set(1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1);

/** A direction or point of the world, written into `out` as the scene has it. */
export function toScene(x: number, y: number, z: number, out: Vector3): Vector3 {
  return out.set(x, y, z).applyMatrix4(SCENE_FROM_WORLD);
}

/** Below this the body's x stands upright and has no level shadow (the square of a sine, as in sim/frames.ts). */
const UPRIGHT = 1e-12;

/**
 * World from body for an attitude: `up` is a unit vector in the body frame, the water is where up·p < offset. World x
 * runs along the level shadow of the body's x, world z = 0 is still water. Written into `out`, without garbage.
 */
export function worldFromBody(up: Vector3, offset: Mm, out: Matrix4): Matrix4 {
  const { x, y, z } = up;
  const shadow = 1 - x * x;
  let [ax, ay, az] = [1 - x * x, -x * y, -x * z];
  if (shadow <= UPRIGHT) [ax, ay, az] = [z, 0, -x];
  const long = Math.hypot(ax, ay, az);
  ax /= long;
  ay /= long;
  az /= long;
  // across = up × along
  const [cx, cy, cz] = [y * az - z * ay, z * ax - x * az, x * ay - y * ax];
  return out.set(ax, ay, az, 0, cx, cy, cz, 0, x, y, z, -offset, 0, 0, 0, 1);
}
