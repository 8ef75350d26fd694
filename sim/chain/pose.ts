import { add, cross, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Radian } from '../units/brand.ts';

/** Where a link is: its body frame's axes and origin in the world, whose water is z = 0. */
export interface Pose {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  readonly origin: Vec3;
}

export const IN_PLACE: Pose = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], origin: [0, 0, 0] };

/** A point of the body frame in the world. */
export function pointAt({ x, y, z, origin }: Pose, p: Vec3): Vec3 {
  return [
    origin[0] + x[0] * p[0] + y[0] * p[1] + z[0] * p[2],
    origin[1] + x[1] * p[0] + y[1] * p[1] + z[1] * p[2],
    origin[2] + x[2] * p[0] + y[2] * p[1] + z[2] * p[2],
  ];
}

/** The pose moved by so much along one of its own axes. */
export function slid(pose: Pose, axis: 'x' | 'y' | 'z', by: number): Pose {
  return by === 0 ? pose : { ...pose, origin: add(pose.origin, scale(pose[axis], by)) };
}

/** The pose turned about one of its own axes, right-handed. */
export function turned(pose: Pose, axis: 'x' | 'y' | 'z', by: Radian): Pose {
  if (by === 0) return pose;
  const [c, s] = [Math.cos(by), Math.sin(by)];
  const mix = (p: Vec3, q: Vec3): readonly [Vec3, Vec3] => [
    add(scale(p, c), scale(q, s)),
    add(scale(q, c), scale(p, -s)),
  ];
  const { x, y, z } = pose;
  if (axis === 'x') {
    const [newY, newZ] = mix(y, z);
    return { ...pose, y: newY, z: newZ };
  }
  if (axis === 'y') {
    const [newZ, newX] = mix(z, x);
    return { ...pose, x: newX, z: newZ };
  }
  const [newX, newY] = mix(x, y);
  return { ...pose, x: newX, y: newY };
}

/** The pose turned in the world about a level axis through a point. */
export function tilted(pose: Pose, axis: 'x' | 'y', by: Radian, about: Vec3): Pose {
  const e: Vec3 = axis === 'x' ? [1, 0, 0] : [0, 1, 0];
  const [c, s] = [Math.cos(by), Math.sin(by)];
  const spin = (p: Vec3): Vec3 => {
    const along = axis === 'x' ? p[0] : p[1];
    return add(add(scale(p, c), scale(cross(e, p), s)), scale(e, along * (1 - c)));
  };
  const { x, y, z, origin } = pose;
  const from: Vec3 = [origin[0] - about[0], origin[1] - about[1], origin[2] - about[2]];
  return { x: spin(x), y: spin(y), z: spin(z), origin: add(about, spin(from)) };
}
