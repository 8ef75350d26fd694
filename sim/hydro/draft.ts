import { dot, type Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';
import { type FloatingBody, meshesOf } from './body.ts';
import { type Potential, potentialAt } from './potential.ts';

export interface Draft {
  readonly offset: Mm;
  readonly potential: Potential;
  readonly passes: number;
}

/** Offsets between which every part of the body, hung items included, goes from dry to wet. */
export function reachAlong(body: FloatingBody, n: Vec3): readonly [Mm, Mm] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const take = (middle: number, below: number, above: number) => {
    low = Math.min(low, middle - below);
    high = Math.max(high, middle + above);
  };
  for (const { boxes, origin } of meshesOf(body)) {
    const reach = Math.abs(n[0]) * boxes[3] + Math.abs(n[1]) * boxes[4] + Math.abs(n[2]) * boxes[5];
    take(dot(n, origin) + n[0] * boxes[0] + n[1] * boxes[1] + n[2] * boxes[2], reach, reach);
  }
  for (const part of body.outside) {
    const radius = Math.cbrt((3 * part.volume) / (4 * Math.PI));
    take(dot(n, part.at), radius, radius);
  }
  for (const item of body.hung) take(dot(n, item.eye), item.hang, 0);
  return [low, high];
}

const MOST_PASSES = 60;

/**
 * Offset at which a body held at an attitude displaces its weight, to |ρV - m| <= tolerance (grams). Force grows with
 * the offset, so Newton's step is kept inside a bracket and halved when it would leave it. The body must be able to
 * float: ρV > m with everything wet.
 */
export function draftAt(body: FloatingBody, n: Vec3, u: Vec3, v: Vec3, guess: Mm | null, tolerance: number): Draft {
  let [low, high] = reachAlong(body, n);
  let offset = guess !== null && guess > low && guess < high ? guess : (low + high) / 2;
  for (let passes = 1; ; passes++) {
    const potential = potentialAt(body, n, u, v, offset);
    if (
      Math.abs(potential.force) <= tolerance ||
      passes === MOST_PASSES ||
      high - low < 1e-13 * (Math.abs(high) + Math.abs(low))
    ) {
      return { offset, potential, passes };
    }
    if (potential.force < 0) low = offset;
    else high = offset;
    const next = potential.curveDD > 0 ? offset - potential.force / potential.curveDD : Number.NaN;
    offset = next > low && next < high ? next : (low + high) / 2;
  }
}
