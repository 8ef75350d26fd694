import { add, dot, scale, unit, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm, Radian } from '../units/brand.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { draftAt, reachAlong } from './draft.ts';
import { type Potential, planeAxes, potentialAt } from './potential.ts';

/** A resting attitude in the water surface, found by descent. */
export interface Rest {
  readonly up: Vec3;
  readonly offset: Mm;
  readonly potential: Potential;
  /** Plane axes that the potential's slopes and curvatures belong to. */
  readonly axes: readonly [Vec3, Vec3];
  /** It stood on a knife's edge on the way and was let fall to starboard (or nose-down). */
  readonly mirrored: boolean;
  readonly converged: boolean;
  readonly steps: number;
  readonly passes: number;
  readonly force: Gram;
  readonly moment: GramMm;
}

/** Shares of weight and of weight times size: about a hundred times the rounding of one pass. */
const FORCE_TOLERANCE = 1e-11;
const MOMENT_TOLERANCE = 1e-11;
/** Slope below which the body cannot tell which way to fall: well over rounding, far under any real imbalance. */
const KNIFE_EDGE = 1e-10;
/** Upright is a saddle, not a rest, when a metacentric height is below minus this (mm). */
const SADDLE_MM = 1e-6;
/** Turned this far off the knife's edge before descending again. */
const NUDGE_RAD = 0.03;
/** Longest turn in one step: short, so that descent does not hop into another valley. */
const LONGEST_RAD: Radian = 0.25;
/** A turn below the rounding of an up-vector is none: its reciprocal may not even be a number. */
const LEAST_RAD: Radian = 1e-17;
/** Beyond these, the draft is solved anew before a step is judged. */
const FAR_TURN_RAD = 0.05;
const FAR_FORCE = 1e-2;
const MOST_STEPS = 120;

/** How a descent may differ from one that starts from nothing known. */
interface Descent {
  /** Where the water about stands at the start, mm: of a rest that is nearly this one. Else it is looked for. */
  readonly offset?: Mm | null;
  /** True for an up-vector from which the rest is known; the descent ends there, not converged. */
  readonly isHome?: (up: Vec3) => boolean;
  /** Longest turn in one step. */
  readonly longest?: Radian;
}

/**
 * The resting attitude reached from `start` (an up-vector) by trust-region Newton on the potential over attitude and
 * draft together. The body must be able to float. On the way it never climbs; from an exact balance it falls to
 * starboard and says that it was mirrored. From near the rest, with its offset, it takes about half as many passes.
 */
export function restFrom(body: FloatingBody, start: Vec3, descent: Descent = {}): Rest {
  const { isHome = () => false, longest = LONGEST_RAD } = descent;
  let n = unit(start);
  let axes = planeAxes(n);
  const mass = body.mass + body.hung.reduce((sum, item) => sum + item.mass, 0);
  const [low, high] = reachAlong(body, n);
  const size = high - low;
  // less than what floats it, or a step could end under water without a draft solve noticing
  const far = Math.min(FAR_FORCE * mass, (body.waterDensity * totalsOf(body).volume - mass) / 10);
  let { offset, potential, passes } = draftAt(body, n, axes[0], axes[1], descent.offset ?? null, far);
  let radius = longest;
  let mirrored = false;
  let steps = 0;
  let converged = false;
  while (steps < MOST_STEPS && !isHome(n)) {
    const valley = principalAxes(potential);
    const slope = Math.hypot(potential.slopeU, potential.slopeV);
    if (Math.abs(potential.force) <= FORCE_TOLERANCE * mass && slope <= MOMENT_TOLERANCE * mass * size) {
      if (valley.low >= -SADDLE_MM * mass) {
        converged = true;
        break;
      }
      steps++;
      mirrored = true;
      n = turn(n, starboardOf(inBody(valley.lowAxis, axes)), NUDGE_RAD);
      axes = planeAxes(n);
      const fallen = draftAt(body, n, axes[0], axes[1], offset, far);
      passes += fallen.passes;
      offset = fallen.offset;
      potential = fallen.potential;
      radius = longest;
      continue;
    }
    steps++;
    const step = boundedStep(potential, valley, radius, KNIFE_EDGE * mass * size);
    const turned = Math.hypot(step[0], step[1]);
    const nextN = turned > LEAST_RAD ? turn(n, scale(inBody(step, axes), 1 / turned), turned) : n;
    const nextAxes = planeAxes(nextN);
    const sink = potential.curveDD > 0 ? -potential.force / potential.curveDD : 0;
    const guess = offset - dot(n, potential.centre) + sink + dot(nextN, potential.centre);
    let next: { offset: Mm; potential: Potential };
    if (turned > FAR_TURN_RAD || Math.abs(potential.force) > far || potential.curveDD === 0) {
      const draft = draftAt(body, nextN, nextAxes[0], nextAxes[1], guess, 1e-3 * far);
      passes += draft.passes;
      next = draft;
    } else {
      next = { offset: guess, potential: potentialAt(body, nextN, nextAxes[0], nextAxes[1], guess) };
      passes++;
    }
    const promised = promise(potential, step, sink);
    const gained = potential.value - next.potential.value;
    const noise = 1e-14 * mass * size;
    const nextSlope = Math.hypot(next.potential.slopeU, next.potential.slopeV);
    const better =
      promised > noise
        ? gained > 1e-4 * promised
        : nextSlope + Math.abs(next.potential.force) * size < slope + Math.abs(potential.force) * size;
    if (better) {
      if (gained > 0.75 * promised && turned > 0.9 * radius) radius = Math.min(longest, 2 * radius);
      else if (promised > noise && gained < 0.25 * promised) radius = turned / 2;
      n = nextN;
      axes = nextAxes;
      offset = next.offset;
      potential = next.potential;
    } else {
      radius = Math.min(radius, turned) / 4;
      // nothing left to gain that the sums could still resolve
      if (radius < 1e-12 || promised <= noise) break;
    }
  }
  const moment = Math.hypot(potential.slopeU, potential.slopeV);
  return {
    up: n,
    offset,
    potential,
    axes,
    mirrored,
    // where the sums end before the tolerance, what is left is reported and judged by its size
    converged:
      converged || (Math.abs(potential.force) < 1e-8 * mass && moment < 1e-8 * mass * size && steps < MOST_STEPS),
    steps,
    passes,
    force: potential.force,
    moment,
  };
}

/** Components along the plane's two axes. */
export type InPlane = readonly [number, number];

interface PrincipalAxes {
  readonly low: number;
  readonly high: number;
  /** Unit vectors in (u, v). */
  readonly lowAxis: InPlane;
  readonly highAxis: InPlane;
}

/** Eigenvalues and axes of the curvature over attitude. */
export function principalAxes(potential: Potential): PrincipalAxes {
  const { curveUU: a, curveUV: b, curveVV: c } = potential;
  const middle = (a + c) / 2;
  const spread = Math.hypot((a - c) / 2, b);
  const angle = Math.atan2(2 * b, a - c) / 2;
  const highAxis: InPlane = [Math.cos(angle), Math.sin(angle)];
  return { low: middle - spread, high: middle + spread, lowAxis: [-highAxis[1], highAxis[0]], highAxis };
}

/**
 * The step that lowers the quadratic model most within the radius (Moré & Sorensen, SIAM J. Sci. Stat. Comput. 4 (1983)
 * 553), in the two principal axes. Along an axis that curves down but has no slope to speak of it stays put: descent
 * does not leave a plane of symmetry by rounding.
 */
function boundedStep(potential: Potential, axes: PrincipalAxes, radius: number, knifeEdge: number): InPlane {
  const along = (axis: InPlane) => potential.slopeU * axis[0] + potential.slopeV * axis[1];
  // along an axis that falls away either way, rounding must not decide which
  const slopeAlong = (axis: InPlane, curve: number) =>
    curve < 0 && Math.abs(along(axis)) < knifeEdge ? 0 : along(axis);
  const slopeHigh = slopeAlong(axes.highAxis, axes.high);
  const slopeLow = slopeAlong(axes.lowAxis, axes.low);
  const stepFor = (shift: number): InPlane => [
    slopeLow === 0 ? 0 : -slopeLow / (axes.low + shift),
    slopeHigh === 0 ? 0 : -slopeHigh / (axes.high + shift),
  ];
  const size = (step: InPlane) => Math.hypot(step[0], step[1]);
  let step = stepFor(0);
  const lowest = slopeLow === 0 ? axes.high : axes.low;
  if (lowest <= 0 || size(step) > radius) {
    // |step| falls steadily as the shift grows past -lowest: Newton on 1/|step| - 1/radius, kept above that
    let shift = Math.max(0, -lowest) + (Math.abs(slopeLow) + Math.abs(slopeHigh)) / radius;
    let floor = Math.max(0, -lowest);
    for (let i = 0; i < 40; i++) {
      step = stepFor(shift);
      const long = size(step);
      if (Math.abs(long - radius) < 1e-3 * radius || long === 0) break;
      if (long > radius) floor = shift;
      const fall =
        (slopeLow === 0 ? 0 : step[0] ** 2 / (axes.low + shift)) +
        (slopeHigh === 0 ? 0 : step[1] ** 2 / (axes.high + shift));
      const next = shift + ((long - radius) / radius) * (long ** 2 / fall);
      shift = next > floor ? next : (floor + shift) / 2;
    }
    const long = size(step);
    if (long > radius) step = [(step[0] * radius) / long, (step[1] * radius) / long];
  }
  return [
    step[0] * axes.lowAxis[0] + step[1] * axes.highAxis[0],
    step[0] * axes.lowAxis[1] + step[1] * axes.highAxis[1],
  ];
}

/** How much the quadratic model says a step will lower the potential. */
function promise(p: Potential, step: InPlane, sink: Mm): number {
  const [a, b] = step;
  const attitude = p.slopeU * a + p.slopeV * b + (p.curveUU * a * a + 2 * p.curveUV * a * b + p.curveVV * b * b) / 2;
  return -attitude - p.force * sink - (p.curveDD * sink * sink) / 2;
}

/** A step along the plane's axes as a vector of the body frame. */
export function inBody(step: InPlane, [u, v]: readonly [Vec3, Vec3]): Vec3 {
  return add(scale(u, step[0]), scale(v, step[1]));
}

/** n turned by an angle towards a unit vector square to it. */
export function turn(n: Vec3, towards: Vec3, angle: number): Vec3 {
  return unit(add(scale(n, Math.cos(angle)), scale(towards, Math.sin(angle))));
}

/** Of the two ways along an axis, the one that puts the starboard side down, or failing that the nose. */
function starboardOf(axis: Vec3): Vec3 {
  const sideways = Math.abs(axis[1]) > 1e-6;
  return (sideways ? axis[1] > 0 : axis[0] < 0) ? scale(axis, -1) : axis;
}
