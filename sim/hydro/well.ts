import { add, dot, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import type { FloatingBody } from './body.ts';
import { draftAt } from './draft.ts';
import { inBody, principalAxes, type Rest, turn } from './equilibrium.ts';
import { type Potential, planeAxes } from './potential.ts';

/** The ground about a rest, looked at in rings of the sphere. */
export interface Well {
  readonly up: Vec3;
  /** Inside when up·n is more: out of there no descent leads. 1 when not even the first ring rises all round. */
  readonly cosine: number;
  /** Where its ring first falls, and where the floors that lead out of it along its softer axis do: near a pass. */
  readonly tops: readonly Vec3[];
}

/** Close together at first, so that a twin a few degrees off is seen; then as dense as the starts are. */
const RINGS: readonly Radian[] = [
  0.02,
  0.05,
  0.1,
  0.17,
  0.26,
  0.38,
  0.52,
  ...Array.from({ length: 13 }, (_, k) => 0.52 + 0.18 * (k + 1)),
];
const RAYS = 20;
/** Drafts are found to this share of weight: slopes are wanted for their sign. */
const FORCE_SHARE = 1e-3;
/** Rising is a slope of at least this share of what the softer curvature would give at the first ring. */
const SLOPE_SHARE = 0.1;
const FLOOR_STEPS = 3;
const LONGEST_SWING = 0.4;

/** One line of places outward from a rest. `bearing` is its direction on the sphere as seen from the rest. */
interface Ray {
  bearing: Radian;
  at: Place;
}

interface Place {
  readonly up: Vec3;
  readonly offset: Mm;
  readonly potential: Potential;
  /** Slopes away from the rest and round it, g·mm; curvature round it. */
  readonly outwards: number;
  readonly sideways: number;
  readonly curve: number;
}

/**
 * Looks at the ground about a rest, ring by ring. For as long as the energy rises outwards all round, no other rest
 * lies inside, and descent from anywhere inside leads further in. Narrow floors could slip between rays, so two places
 * keep to the lowest of each ring, starting out along the softer axis: where they begin to fall a pass is near.
 */
export function wellOf(body: FloatingBody, rest: Rest, mass: Gram): Well {
  const { low, lowAxis } = principalAxes(rest.potential);
  const soft = inBody(lowAxis, rest.axes);
  const stiff = inBody([-lowAxis[1], lowAxis[0]], rest.axes);
  const least = SLOPE_SHARE * Math.max(low, 0) * RINGS[0];
  const start: Place = { ...rest, outwards: 0, sideways: 0, curve: 0 };
  const look = (angle: Radian, bearing: Radian, near: Place): Place => {
    const towards = add(scale(soft, Math.cos(bearing)), scale(stiff, Math.sin(bearing)));
    const beside = add(scale(soft, -Math.sin(bearing)), scale(stiff, Math.cos(bearing)));
    const up = turn(rest.up, towards, angle);
    const [u, v] = planeAxes(up);
    const guess = near.offset + dot(up, near.potential.centre) - dot(near.up, near.potential.centre);
    const { offset, potential } = draftAt(body, up, u, v, guess, FORCE_SHARE * mass);
    const away = add(scale(towards, Math.cos(angle)), scale(rest.up, -Math.sin(angle)));
    const { slopeU, slopeV, curveUU, curveUV, curveVV } = potential;
    const [bu, bv] = [dot(beside, u), dot(beside, v)];
    return {
      ...{ up, offset, potential },
      outwards: slopeU * dot(u, away) + slopeV * dot(v, away),
      sideways: slopeU * bu + slopeV * bv,
      curve: curveUU * bu * bu + 2 * curveUV * bu * bv + curveVV * bv * bv,
    };
  };
  const floor = (angle: Radian, ray: Ray) => {
    ray.at = look(angle, ray.bearing, ray.at);
    for (let i = 0; i < FLOOR_STEPS; i++) {
      const { sideways, outwards, curve } = ray.at;
      const round = Math.sin(angle);
      // round a ring the energy bends by the sphere's curvature and by the ring's own
      const bend = curve * round * round + outwards * round * Math.cos(angle);
      if (!(bend > 0)) return;
      const swing = (-sideways * round) / bend;
      ray.bearing += Math.max(-LONGEST_SWING, Math.min(LONGEST_SWING, swing));
      ray.at = look(angle, ray.bearing, ray.at);
      if (Math.abs(swing * round) < 0.01) return;
    }
  };
  let rays: Ray[] = Array.from({ length: RAYS }, (_, k) => ({ bearing: (2 * Math.PI * (k + 0.5)) / RAYS, at: start }));
  let floors: Ray[] = [0, Math.PI].map((bearing) => ({ bearing, at: start }));
  const tops: Vec3[] = [];
  let radius = 0;
  for (const angle of RINGS) {
    for (const ray of floors) floor(angle, ray);
    const fallen = floors.filter(({ at }) => at.outwards < least);
    tops.push(...fallen.map(({ at }) => at.up));
    floors = floors.filter((ray) => !fallen.includes(ray));
    for (const ray of rays) ray.at = look(angle, ray.bearing, ray.at);
    // the first ring that does not rise all round ends the well; floors are followed on
    const steepest = rays.reduce<Ray | null>((a, b) => (a && a.at.outwards <= b.at.outwards ? a : b), null);
    if (steepest && steepest.at.outwards < least) tops.push(steepest.at.up);
    if (fallen.length > 0 || (steepest && steepest.at.outwards < least)) rays = [];
    if (rays.length > 0) radius = angle;
    else if (floors.length === 0) break;
  }
  return { up: rest.up, cosine: Math.cos(radius), tops };
}
