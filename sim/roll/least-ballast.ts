import { isOnEnd } from '../frames.ts';
import { type FloatingBody, totalsOf } from '../hydro/body.ts';
import { HANGS_G, HANGS_SHARE } from '../hydro/float.ts';
import { heldUpright } from '../hydro/righting-arm.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { add, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, Mm } from '../units/brand.ts';

/** Weights that are tried before a root is looked for between two of them. */
const TRIED = 32;
/** It may come to stand only when it hangs or sinks: so much over what floats it is tried too. */
const OVER = 1.25;
const TOLERANCE_MM: Mm = 1e-7;
/** Halvings to where it no longer stands on end: a millionth of what is tried. */
const HALVINGS = 16;

/**
 * Least net ballast at a place that gives a body at least this GM held upright, its draft and trim found anew for each
 * weight: the first root of GM(m) = gm. Under water GM is the height of B over G. 0: it has as much without any; null:
 * no ballast there does it, not even as much as sinks it. The body must have no ballast of its own.
 *
 * known: no less is tried; what a lower GM was found to need.
 */
export function leastBallast(body: FloatingBody, at: Vec3, gm: Mm, known: Gram = 0): Gram | null {
  const { mass, volume } = totalsOf(body);
  const lift = body.waterDensity * volume;
  if (!(mass > 0 && lift > 0)) return null;
  const gmWith = (ballast: Gram) => gmOf(loaded(body, at, ballast));
  const does = (ballast: Gram) => (gmWith(ballast) ?? Number.NEGATIVE_INFINITY) >= gm;
  if (does(known)) return known;
  const most = Math.max(lift - mass, 0) * OVER + HANGS_SHARE * lift + HANGS_G;
  const tried = (i: number): Gram => known + ((most - known) * i) / TRIED;
  const enough = Array.from({ length: TRIED }, (_, i) => i + 1).find((i) => does(tried(i)));
  if (enough === undefined) return null;
  let [low, high] = [tried(enough - 1), tried(enough)];
  for (let i = 0; i < HALVINGS && gmWith(low) === null; i++) {
    const middle = (low + high) / 2;
    if (does(middle)) high = middle;
    else low = middle;
  }
  const short = (ballast: Gram) => (gmWith(ballast) ?? 0) - gm;
  return gmWith(low) === null ? high : bracketedRoot(short, low, high, TOLERANCE_MM).x;
}

function loaded(body: FloatingBody, at: Vec3, ballast: Gram): FloatingBody {
  const mass = body.mass + ballast;
  return { ...body, mass, centre: scale(add(scale(body.centre, body.mass), scale(at, ballast)), 1 / mass) };
}

/** GM held upright, free to trim; null: it stands on end then. */
function gmOf(body: FloatingBody): Mm | null {
  const { mass, volume, massCentre, volumeCentre } = totalsOf(body);
  if (mass - body.waterDensity * volume < -Math.max(HANGS_G, HANGS_SHARE * mass)) {
    const { gm, trim } = heldUpright(body);
    return isOnEnd(trim) ? null : gm;
  }
  const [along, , height] = subtract(volumeCentre, massCentre);
  if (isOnEnd(Math.atan2(along, Math.abs(height)))) return null;
  return height > 0 ? Math.hypot(along, height) : height;
}
