import type { Vec3 } from '../../sim/index.ts';

/** Point reached from `from` by going `by` along a vector of length 1. */
export function along(from: Vec3, direction: Vec3, by: number): Vec3 {
  return [from[0] + direction[0] * by, from[1] + direction[1] * by, from[2] + direction[2] * by];
}
