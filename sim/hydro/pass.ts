import { type SphereGrid, sphereGrid } from '../numerics/sphere-grid.ts';
import { dot, scale, unit, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm } from '../units/brand.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { draftAt, reachAlong } from './draft.ts';
import { type InPlane, inBody, principalAxes, turn } from './equilibrium.ts';
import { NEUTRAL_MM } from './float.ts';
import { type Potential, planeAxes } from './potential.ts';
import { angleBetween, SAME_RAD, type Valleys } from './valleys.ts';

/** A saddle of the energy over attitude, draft relaxed: the top of a lowest way from one valley to another. */
export interface Saddle {
  readonly up: Vec3;
  readonly value: GramMm;
  /** Moment left over. */
  readonly moment: GramMm;
  /** Up-vectors a little way down to either side. */
  readonly sides: readonly [Vec3, Vec3];
}

export interface Pass {
  readonly saddle: Saddle;
  /** Groups of the valleys to its sides. */
  readonly between: readonly [number, number];
}

/** 642 places: 8 degrees apart. */
const LEVEL = 3;
const MOST_CLIMBS = 48;
const MOST_STEPS = 80;
const RIDGE_STEPS = 16;
/** Longest turn of one step, and how far to step off a saddle before going down. */
const LONGEST_RAD = 0.12;
const OFF_RAD = 0.03;
/** Share of weight times size below which no moment is left. */
const MOMENT_TOLERANCE = 1e-10;
const GOOD_MOMENT = 1e-6;

/**
 * Every pass between the valleys of a body that can float: energies on an even grid show where saddles are (round such
 * a place the energy goes up and down more than once), and so do the floors that lead out of each rest. Each saddle is
 * climbed to, and what lies to its sides is gone down to.
 */
export function searchPasses(body: FloatingBody, valleys: Valleys): readonly Pass[] {
  const grid = sphereGrid(LEVEL);
  const heights = heightsOn(body, grid);
  const candidates = grid.points
    .map((_, i) => i)
    .filter((i) => turnsRound(grid.around[i], heights, i) >= 4)
    .sort((a, b) => heights[a] - heights[b])
    .map((i) => grid.points[i]);
  const passes: Pass[] = [];
  // a way down from a saddle may lead to a rest not known before, with tops of its own
  const tops = valleys.tops();
  for (let i = 0, j = 0; i + j < MOST_CLIMBS; ) {
    const place = i < tops.length ? tops[i++] : candidates[j++];
    if (place === undefined) break;
    const saddle = climb(body, place);
    if (!saddle || passes.some((known) => angleBetween(known.saddle.up, saddle.up) < SAME_RAD)) continue;
    const [a, b] = saddle.sides.map((side) => valleys.descend(side));
    passes.push({ saddle, between: [a, b] });
  }
  // groups may have grown together meanwhile
  return passes.map(({ saddle, between: [a, b] }) => ({ saddle, between: [valleys.groupOf(a), valleys.groupOf(b)] }));
}

/** Energy at every point of a grid, draft relaxed. */
function heightsOn(body: FloatingBody, { points, parents }: SphereGrid): readonly GramMm[] {
  const { mass } = totalsOf(body);
  const drafts: { readonly offset: Mm; readonly potential: Potential }[] = [];
  points.forEach((up, i) => {
    const [u, v] = planeAxes(up);
    const parent = parents[i]?.[0];
    let guess: Mm | null = null;
    if (parent !== undefined) {
      const { offset, potential } = drafts[parent];
      guess = offset + dot(up, potential.centre) - dot(points[parent], potential.centre);
    }
    drafts.push(draftAt(body, up, u, v, guess, 1e-3 * mass));
  });
  // what the draft is still short of lowers the energy by half its square over the stiffness
  return drafts.map(({ potential: { value, force, curveDD } }) =>
    curveDD > 0 ? value - force ** 2 / (2 * curveDD) : value,
  );
}

/** How often the neighbours of a point, taken in a round, change from higher to lower or back: 4 or more at a saddle. */
function turnsRound(around: readonly number[], heights: readonly number[], point: number): number {
  const higher = around.map((i) => heights[i] > heights[point]);
  return higher.filter((is, k) => is !== higher[(k + 1) % higher.length]).length;
}

/** The saddle near a place: uphill along the softer axis, downhill along the stiffer. null when there is none. */
export function climb(body: FloatingBody, start: Vec3): Saddle | null {
  const { mass } = totalsOf(body);
  const [low, high] = reachAlong(body, start);
  const good = GOOD_MOMENT * mass * (high - low);
  let { here, moment } = ascend(body, placeAt(body, mass, unit(start), null), true, MOST_STEPS);
  if (moment > good) return null;
  if (momentAt(here.potential) > good) {
    // a ridge without preference; if it has a lowest place after all, that is close by
    const lowest = ascend(body, here, false, RIDGE_STEPS);
    if (lowest.moment <= good) here = lowest.here;
  }
  const { low: falling, lowAxis } = principalAxes(here.potential);
  if (!(falling < 0)) return null;
  const side = inBody(lowAxis, here.axes);
  return {
    up: here.up,
    value: here.potential.value,
    moment: momentAt(here.potential),
    sides: [turn(here.up, side, OFF_RAD), turn(here.up, side, -OFF_RAD)],
  };
}

/** Newton's way towards a saddle, and the moment still to be dealt with where it ends; on a level ridge, that along it. */
function ascend(
  body: FloatingBody,
  start: Place,
  mayBeLevel: boolean,
  most: number,
): { readonly here: Place; readonly moment: GramMm } {
  const { mass } = totalsOf(body);
  const [low, high] = reachAlong(body, start.up);
  let radius = LONGEST_RAD;
  let here = start;
  let turned = radius;
  let before = Number.POSITIVE_INFINITY;
  for (let steps = 0; ; steps++) {
    const { step, left } = uphillStep(here.potential, mass, mayBeLevel);
    const long = Math.hypot(...step);
    if (left <= MOMENT_TOLERANCE * mass * (high - low) || long < 1e-13 || steps === most) return { here, moment: left };
    // near the top every step should leave less moment; one that does not was too long for the bends of the skin
    if (left > before && turned < 0.9 * radius) radius = Math.max(turned / 2, 1e-6);
    before = left;
    turned = Math.min(long, radius);
    here = placeAt(body, mass, turn(here.up, scale(inBody(step, here.axes), 1 / long), turned), here);
  }
}

function momentAt({ slopeU, slopeV }: Potential): GramMm {
  return Math.hypot(slopeU, slopeV);
}

interface Place {
  readonly up: Vec3;
  readonly axes: readonly [Vec3, Vec3];
  readonly offset: Mm;
  readonly potential: Potential;
}

function placeAt(body: FloatingBody, mass: Gram, up: Vec3, near: Place | null): Place {
  const axes = planeAxes(up);
  const guess = near && near.offset + dot(up, near.potential.centre) - dot(near.up, near.potential.centre);
  const { offset, potential } = draftAt(body, up, axes[0], axes[1], guess, 1e-11 * mass);
  return { up, axes, offset, potential };
}

/** Newton's step to a saddle, and the moment it has to deal with. */
function uphillStep(
  potential: Potential,
  mass: Gram,
  mayBeLevel: boolean,
): { readonly step: InPlane; readonly left: GramMm } {
  const { low, high, lowAxis, highAxis } = principalAxes(potential);
  const along = (axis: InPlane) => potential.slopeU * axis[0] + potential.slopeV * axis[1];
  const up = along(lowAxis);
  const down = along(highAxis);
  // along a ridge without preference there is nothing to go down to but facets
  const level = mayBeLevel && Math.abs(high) < NEUTRAL_MM * mass && Math.abs(down) < NEUTRAL_MM * mass;
  const a = low < 0 ? up / -low : Math.sign(up) * LONGEST_RAD;
  const b = level || down === 0 ? 0 : high > 0 ? -down / high : -Math.sign(down) * LONGEST_RAD;
  return {
    step: [a * lowAxis[0] + b * highAxis[0], a * lowAxis[1] + b * highAxis[1]],
    left: Math.hypot(up, level ? 0 : down),
  };
}

/** For each group that can be reached, the pass whose top is the highest on the lowest way there. */
export function lowestWays(from: number, passes: readonly Pass[]): ReadonlyMap<number, Pass> {
  const tops = new Map<number, Pass>();
  const reached = new Set([from]);
  for (;;) {
    // the lowest pass out of what is reached so far
    const out = passes
      .filter(({ between: [a, b] }) => reached.has(a) !== reached.has(b))
      .reduce<Pass | null>((best, pass) => (best && best.saddle.value <= pass.saddle.value ? best : pass), null);
    if (!out) return tops;
    const [near, far] = reached.has(out.between[0]) ? out.between : [out.between[1], out.between[0]];
    const before = tops.get(near);
    tops.set(far, before && before.saddle.value > out.saddle.value ? before : out);
    reached.add(far);
  }
}
