import { heelOf, isOnEnd, trimOf, upFrom } from '../frames.ts';
import { cross, dot, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { draftAt, reachAlong } from './draft.ts';
import { type Potential, potentialAt } from './potential.ts';

/** A body held at a heel, free to trim and to rise. */
export interface HeldAt {
  readonly heel: Radian;
  readonly trim: Radian;
  readonly offset: Mm;
  /** Slope of the energy over heel, divided by weight: positive turns it to port. */
  readonly arm: Mm;
  /** Energy over weight, from that of the rest. */
  readonly energy: Mm;
}

/** How a body stands up to being heeled one way. */
export interface WayOver {
  /** Heel from which it no longer comes back; null when the curve ends before that. */
  readonly limit: Radian | null;
  /** Longest arm that brings it back, as a length, and its heel. */
  readonly most: { readonly heel: Radian; readonly arm: Mm };
  /** Area under the arms up to the limit, or to the end of the curve: energy over weight. */
  readonly area: Mm;
  /** The heel at which it would go on to stand on end, where heel means nothing and the curve ends; null: it never does. */
  readonly onEnd: Radian | null;
}

export interface RightingCurve {
  /** From port to starboard, at whole multiples of the step. */
  readonly points: readonly HeldAt[];
  readonly starboard: WayOver;
  readonly port: WayOver;
  /** Largest difference between the arms summed up and the energy, mm: a jump from valley to valley shows here. */
  readonly mismatch: Mm;
}

const STEP = radianFromDegree(5);
/** Longest turn in trim at once: short, so that it stays in the valley it is in. */
const LONGEST_RAD = 0.15;
/** Shares of weight, and of weight times size. */
const FORCE_TOLERANCE = 1e-9;
const MOMENT_TOLERANCE = 1e-9;
const FAR_FORCE = 1e-2;
const MOST_STEPS = 60;
/** Where trim runs away faster than this from heel, it is searched for from where it was. */
const MOST_TRIMMING = 3;
const ROOT_STEPS = 30;
/** Rounding of an arm: upside down a symmetric body has none, and no limit there. */
const NO_ARM_MM: Mm = 1e-7;
/** Arms about their longest change by the square of the heel: this near, by a millionth. */
const PEAK_RAD: Radian = 1e-3;
const MOST_PARABOLAS = 4;

/**
 * Righting arms GZ(heel) = (∂U/∂heel)/W with trim and draft relaxed, half a turn to either side of a rest. The curve
 * ends early where the body would go on to stand on end. The body must be able to float.
 *
 * rest: the up-vector it rests at; it must not stand on end there. step: of heel, a whole fraction of half a turn.
 */
export function rightingCurve(body: FloatingBody, rest: Vec3, step: Radian = STEP): RightingCurve {
  const hold = holderOf(body);
  const start = hold(heelOf(rest), trimOf(rest), null);
  const middle = Math.round(start.heel / step);
  const half = Math.round(Math.PI / step);
  const sweep = (way: 1 | -1, first: number): readonly Held[] => {
    const points: Held[] = [];
    let last = start;
    for (let k = first; Math.abs(k) <= half; k += way) {
      const next = hold(k * step, last.trim + trimming(last) * (k * step - last.heel), last);
      if (isOnEnd(next.trim)) break;
      points.push(next);
      last = next;
    }
    return points;
  };
  const starboard = sweep(1, middle);
  const port = sweep(-1, middle - 1);
  const points = [...port.toReversed(), ...starboard];
  // a point as good as at the rest has no arm to tell by
  const past = (way: 1 | -1) =>
    (way === 1 ? points : points.toReversed()).filter((p) => way * (p.heel - start.heel) > 1e-3 * step);
  const over = (way: 1 | -1) => {
    const last = past(way).at(-1) ?? start;
    const whole = Math.abs(last.heel) > (half - 0.5) * step;
    return wayOver({ hold, start, points: past(way), way, onEnd: whole ? null : last.heel });
  };
  return {
    points: points.map(({ heel, trim, offset, arm, energy }) => {
      return { heel, trim, offset, arm, energy: energy - start.energy };
    }),
    starboard: over(1),
    port: over(-1),
    mismatch: mismatchOf(points, step),
  };
}

/**
 * A body held upright, free to trim and to rise: its metacentric height there, the curvature of the energy over heel divided
 * by weight, and its trim. At a rest that is upright they are those of the rest. The body must be able to float.
 */
export function heldUpright(body: FloatingBody): { readonly gm: Mm; readonly trim: Radian } {
  const { mass } = totalsOf(body);
  const { potential, trim } = holderOf(body)(0, 0, null);
  return { gm: potential.curveVV / mass, trim };
}

interface Held extends HeldAt {
  readonly up: Vec3;
  readonly potential: Potential;
}

type Holder = (heel: Radian, trim: Radian, near: Held | null) => Held;

/** Makes the search for the trim and draft at which a body held at a heel is at ease; `near`: one at a heel close by. */
function holderOf(body: FloatingBody): Holder {
  const { mass } = totalsOf(body);
  const [low, high] = reachAlong(body, [1, 0, 0]);
  const size = Math.max(high - low, 1);
  return (heel, trim, near) => {
    let here = placeAt(body, mass, heel, trim, near, near === null ? FORCE_TOLERANCE : null);
    let radius = LONGEST_RAD;
    for (let i = 0; i < MOST_STEPS; i++) {
      // at a fixed heel n runs along a great circle as trim grows: slopeU and curveUU are those over trim
      const { slopeU, curveUU, curveDD, force, value } = here.potential;
      if (Math.abs(slopeU) <= MOMENT_TOLERANCE * mass * size && Math.abs(force) <= FORCE_TOLERANCE * mass) break;
      const newton = curveUU > 0 ? -slopeU / curveUU : -Math.sign(slopeU) * radius;
      const turn = Math.max(-radius, Math.min(radius, newton));
      const far = Math.abs(turn) > 0.05 || Math.abs(force) > FAR_FORCE * mass || curveDD === 0;
      const next = placeAt(body, mass, heel, here.trim + turn, here, far ? FAR_FORCE * 1e-3 : null);
      // a step that settles draft alone may climb by what the draft was short of
      if (next.potential.value <= value + 1e-13 * mass * size || Math.abs(turn) < 1e-9) here = next;
      else radius = Math.abs(turn) / 4;
      if (radius < 1e-10) break;
    }
    return here;
  };
}

/** How trim changes with heel while the slope over trim stays nothing. */
function trimming({ trim, potential }: Held): number {
  const { slopeV, curveUU, curveUV } = potential;
  if (!(curveUU > 0)) return 0;
  const rate = (Math.cos(trim) * curveUV - Math.sin(trim) * slopeV) / curveUU;
  return Math.abs(rate) < MOST_TRIMMING ? rate : 0;
}

/** Held at a heel and trim. tolerance: share of weight to which the draft is found; null: by one step from `near`. */
function placeAt(
  body: FloatingBody,
  mass: Gram,
  heel: Radian,
  trim: Radian,
  near: Held | null,
  tolerance: number | null,
): Held {
  const up = upFrom(trim, heel);
  const u: Vec3 = [Math.cos(trim), Math.sin(heel) * Math.sin(trim), -Math.cos(heel) * Math.sin(trim)];
  const v = cross(up, u);
  let guess: Mm | null = null;
  if (near) {
    const { curveDD, force, centre } = near.potential;
    guess = near.offset + dot(up, centre) - dot(near.up, centre) - (curveDD > 0 ? force / curveDD : 0);
  }
  const { offset, potential } =
    tolerance === null && guess !== null
      ? { offset: guess, potential: potentialAt(body, up, u, v, guess) }
      : draftAt(body, up, u, v, guess, (tolerance ?? FORCE_TOLERANCE) * mass);
  // more heel turns up towards -v, by cos(trim) for each radian
  const arm = (-Math.cos(trim) * potential.slopeV) / mass;
  return { heel, trim, offset, arm, energy: potential.value / mass, up, potential };
}

interface Way {
  readonly hold: Holder;
  readonly start: Held;
  /** Away from the rest. */
  readonly points: readonly Held[];
  readonly way: 1 | -1;
  readonly onEnd: Radian | null;
}

function wayOver({ hold, start, points, way, onEnd }: Way): WayOver {
  const back = (point: Held) => way * point.arm;
  const lost = points.findIndex((point) => back(point) < -NO_ARM_MM);
  const kept = lost < 0 ? points : points.slice(0, lost);
  const most = longest(hold, [start, ...kept], back);
  const limit = lost < 0 ? null : crossing(hold, kept.at(-1) ?? start, points[lost]);
  const end = limit ?? kept.at(-1) ?? start;
  return {
    limit: limit === null ? null : limit.heel,
    most: { heel: most.heel, arm: Math.max(0, back(most)) },
    area: end.energy - start.energy,
    onEnd,
  };
}

/** The longest arm: that of the points, then by parabolas through the three about it, as long as that finds a longer one. */
function longest(hold: Holder, points: readonly Held[], back: (point: Held) => Mm): Held {
  const top = points.reduce((best, point, i) => (back(point) > back(points[best]) ? i : best), 0);
  let [a, b, c] = [points[top - 1], points[top], points[top + 1]];
  for (let i = 0; i < MOST_PARABOLAS && a !== undefined && c !== undefined; i++) {
    const heel = vertexOf([a, b, c], back);
    if (heel === null || Math.abs(heel - b.heel) < PEAK_RAD) break;
    const next = hold(heel, b.trim, b);
    if (back(next) <= back(b)) break;
    const isPast = Math.abs(heel - a.heel) > Math.abs(b.heel - a.heel);
    [a, b, c] = isPast ? [b, next, c] : [a, next, b];
  }
  return b;
}

/** Heel at the top of the parabola through three arms; null where they have none between the outer two. */
function vertexOf([a, b, c]: readonly [Held, Held, Held], back: (point: Held) => Mm): Radian | null {
  const [left, right] = [b.heel - a.heel, b.heel - c.heel];
  const [rise, fall] = [back(b) - back(a), back(b) - back(c)];
  const bend = left * fall - right * rise;
  if (bend === 0) return null;
  const heel = b.heel - (left ** 2 * fall - right ** 2 * rise) / (2 * bend);
  return (heel - a.heel) * (c.heel - heel) > 0 ? heel : null;
}

/** Where the arm goes through nothing between two heels, by false position with halving (Illinois). */
function crossing(hold: Holder, from: Held, to: Held): Held {
  let [a, b] = [from, to];
  let [armA, armB] = [a.arm, b.arm];
  let found = b;
  for (let i = 0; i < ROOT_STEPS && Math.abs(armB - armA) > 0; i++) {
    const heel = (a.heel * armB - b.heel * armA) / (armB - armA);
    const next = hold(heel, found.trim, found);
    found = next;
    if (Math.abs(next.arm) < 1e-9) break;
    if (next.arm > 0 === armB > 0) {
      b = next;
      armB = next.arm;
      armA /= 2;
    } else {
      a = next;
      armA = next.arm;
      armB /= 2;
    }
  }
  return found;
}

/** Arms are summed by the cubic through four points in a row: h/24 (-a + 13 b + 13 c - d) from b to c. */
function mismatchOf(points: readonly Held[], step: Radian): Mm {
  let summed = 0;
  let worst = 0;
  for (let i = 1; i + 2 < points.length; i++) {
    const [a, b, c, d] = points.slice(i - 1, i + 3).map(({ arm }) => arm);
    summed += (step / 24) * (13 * (b + c) - a - d);
    worst = Math.max(worst, Math.abs(summed - (points[i + 1].energy - points[1].energy)));
  }
  return worst;
}
