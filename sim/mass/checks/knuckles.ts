import type { Design } from '../../design/design.ts';
import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import type { Mm } from '../../units/brand.ts';
import { mm, widestOf } from './wood.ts';

/** A radius is asked for to this, rounded up. */
const SAID_TO_MM = 0.01;

/**
 * Every knuckle is as wide as the coated body from the bottom of its hollow to its axis, so that nose and hollow meet
 * the skin before they have turned along it.
 */
export function knuckleIssues(hull: Hull, joints: Design['joints'], skinGrowth: Mm): readonly Issue[] {
  return joints.flatMap(({ x, gap, faces }, j): Issue[] => {
    if (faces.kind !== 'knuckle') return [];
    const aft = faces.on === 'aft' ? 1 : -1;
    const needed = (radius: Mm) => {
      const ends = [x - (aft * gap) / 2, x + aft * (gap / 2 + radius)].toSorted((a, b) => a - b);
      return widestOf(hull, [Math.max(0, ends[0]), Math.min(hull.length, ends[1])]) + skinGrowth;
    };
    if (faces.radius >= needed(faces.radius)) return [];
    const message = `a knuckle of radius ${mm(faces.radius)} is slimmer than half the coated body there; at least ${mm(leastRadius(needed, faces.radius))} is needed`;
    const hint = 'take a larger radius, or move the joint to where the body is slimmer';
    return [{ code: 'joints/knuckle-too-small', path: `joints.${j}.faces.radius_mm`, message, hint }];
  });
}

/** A larger knuckle reaches further along the body, where that may be wider still: raised until it is enough. */
function leastRadius(needed: (radius: Mm) => Mm, given: Mm): Mm {
  let radius = given;
  for (let least = needed(radius); least > radius; least = needed(radius)) {
    // by rounding the next hundredth may come out a hair under what is needed
    radius = Math.max(least, Math.ceil(least / SAID_TO_MM) * SAID_TO_MM);
  }
  return radius;
}
