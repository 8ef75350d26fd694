import type { Mm, Sinking, Vec3 } from '../../sim/index.ts';
import type { Pose } from './motion.ts';

/** A reader who wants no motion sees the fall at every so many seconds. */
const STILL_S = 0.5;

/**
 * A bait that has been let go, so many seconds after that, as its equation of motion has it: the middle of its band. It
 * turns from rest to its way up in the fall as drag grows, which goes by the square of its speed. null: it has sunk
 * further than `floor`, and is out of sight.
 */
export function fallingPose(rest: Pose, sinking: Sinking, time: number, floor: Mm, still: boolean): Pose | null {
  const { depth, speed } = curveAt(sinking.curve, still ? Math.floor(time / STILL_S) * STILL_S : time);
  if (depth > floor) return null;
  const share = Math.min(1, speed / sinking.speed[1]) ** 2;
  const up = rest.up.map((part, i) => part + share * (sinking.up[i] - part)) as unknown as Vec3;
  const size = Math.hypot(...up);
  const turned: Vec3 = size > 0 ? [up[0] / size, up[1] / size, up[2] / size] : sinking.up;
  return { up: turned, offset: rest.offset + depth };
}

/** Depth and speed at a time; between two points a cubic with the speeds at both, after the last at its speed. */
function curveAt(curve: Sinking['curve'], time: number): { readonly depth: Mm; readonly speed: number } {
  const next = curve.findIndex((point) => point.time > time);
  const end = curve[curve.length - 1];
  if (next < 0) {
    const speed = end?.speed[1] ?? 0;
    return { depth: (end?.depth[1] ?? 0) + speed * (time - (end?.time ?? 0)), speed };
  }
  const [a, b] = [curve[Math.max(0, next - 1)], curve[Math.max(1, next)]];
  const width = b.time - a.time;
  const u = Math.max(0, (time - a.time) / width);
  const rise = b.depth[1] - a.depth[1];
  const [p, q] = [width * a.speed[1], width * b.speed[1]];
  const [square, cube] = [3 * rise - 2 * p - q, p + q - 2 * rise];
  return {
    depth: a.depth[1] + u * (p + u * (square + u * cube)),
    speed: (p + u * (2 * square + 3 * u * cube)) / width,
  };
}
