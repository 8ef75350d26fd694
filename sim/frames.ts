import { cross, dot, scale, subtract, unit, type Vec3 } from './numerics/vec3.ts';
import type { Radian } from './units/brand.ts';
import { radianFromDegree } from './units/convert.ts';

/*
 * Body frame                      World frame
 *
 *        z up   y starboard         z = 0 is still water, z up
 *        |    /                     x runs along the level shadow of the body's x
 *   nose |  /                       y completes the right hand
 *   -----o------------> x aft
 *
 * An attitude is a unit vector `up`, written in the body frame, and an offset: the water is where up·p < offset.
 * Trim turns the nose down, then heel turns the starboard side down:
 *     up = (sin trim, -sin heel · cos trim, cos heel · cos trim)
 */

/** The up-vector of a trim (nose-down positive) and a heel (starboard down positive). */
export function upFrom(trim: Radian, heel: Radian): Vec3 {
  return [Math.sin(trim), -Math.sin(heel) * Math.cos(trim), Math.cos(heel) * Math.cos(trim)];
}

/** Nose-down trim of an up-vector, -90…90 degrees. */
export function trimOf(up: Vec3): Radian {
  return Math.asin(Math.min(1, Math.max(-1, up[0])));
}

/** Starboard-down heel of an up-vector, -180…180 degrees. */
export function heelOf(up: Vec3): Radian {
  // + 0 turns the -0 of an upright body into 0
  return Math.atan2(-up[1], up[2]) + 0;
}

/** Beyond this trim a body stands on end, and heel is an angle about a line that is nearly plumb. */
const ON_END_RAD: Radian = radianFromDegree(80);

/** Whether a body trimmed like this stands on its nose or its tail. */
export function isOnEnd(trim: Radian): boolean {
  return Math.abs(trim) > ON_END_RAD;
}

/**
 * The world's axes written in the body frame: `along` is the level shadow of the body's x, `across` completes the
 * right hand, `up` is given. Standing on its nose or tail a body has no such shadow; its y axis then stays across.
 */
export function worldAxes(up: Vec3): { readonly along: Vec3; readonly across: Vec3; readonly up: Vec3 } {
  const shadow = subtract([1, 0, 0], scale(up, up[0]));
  const along = dot(shadow, shadow) > 1e-12 ? unit(shadow) : unit(cross([0, 1, 0], up));
  return { along, across: cross(up, along), up };
}
