import { dot, scale, subtract, unit, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { draftAt } from './draft.ts';
import { principalAxes, type Rest, restFrom, turn } from './equilibrium.ts';
import { NEUTRAL_MM } from './float.ts';
import { planeAxes } from './potential.ts';
import { type Well, wellOf } from './well.ts';

/** The rests that descents have led to so far, and which of them are one and the same. */
export interface Valleys {
  /** Goes down from an up-vector, as far as the well of a known rest; the number of the rest it ends at. */
  readonly settle: (start: Vec3) => number;
  /**
   * Goes all the way down in short steps: from beside a pass. There a well, which is looked at along rays, may seem to
   * reach over it, and a long step may leave a shallow valley.
   */
  readonly descend: (start: Vec3) => number;
  /** Up-vectors near passes, where floors that lead out of the rests begin to fall. */
  readonly tops: () => readonly Vec3[];
  /** The number of the group an end belongs to: the lowest of its members'. */
  readonly groupOf: (end: number) => number;
  /** Groups of ends, in the order of their numbers. */
  readonly groups: () => readonly Valley[];
}

export interface Valley {
  readonly group: number;
  /** The lowest of its rests. */
  readonly rest: Rest;
  /** How far the others of the group stand from it: more than a solver leaves means a run without preference. */
  readonly spread: Radian;
}

/** Two rests this near are one: far over what a solver leaves, far under what a maker can see. */
export const SAME_RAD: Radian = 2e-3;
/** Soft rests further apart are not looked at as one; by way of others between them they may still be. */
const REACH = Math.cos(radianFromDegree(45));
/** A rest whose least GM is below this is soft: facets may have made several of one. */
const SOFT_MM = 0.1;
/** Longest turn in one step of a descent that must not leave its valley. */
const SHORT_RAD: Radian = 0.08;
/** Passes between soft rests lower than this share of weight times a millimetre are facets of the mesh. */
const FACET_MM = 3e-4;
/** Places looked at between two soft rests. */
const PLACES = [1 / 4, 1 / 2, 3 / 4];

/** Makes an empty record for a body that can float. */
export function createValleys(body: FloatingBody): Valleys {
  const { mass } = totalsOf(body);
  const ends: { readonly rest: Rest; readonly soft: boolean; group: number }[] = [];
  const wells: { readonly well: Well; readonly end: number }[] = [];
  const tops: Vec3[] = [];
  const wellWith = (up: Vec3) => wells.find(({ well }) => dot(well.up, up) > well.cosine);
  const unite = (a: number, b: number) => {
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    for (const end of ends) if (end.group === high) end.group = low;
  };

  function settle(start: Vec3): number {
    let home = wellWith(start);
    const isHome = (up: Vec3) => {
      home = wellWith(up);
      return home !== undefined;
    };
    const rest = restFrom(body, start, { isHome });
    return home ? home.end : endAt(rest);
  }

  function endAt(rest: Rest): number {
    const nearness = (end: number) => dot(ends[end].rest.up, rest.up);
    const near = ends.map((_, end) => end).sort((a, b) => nearness(b) - nearness(a));
    if (near.length > 0 && angleBetween(ends[near[0]].rest.up, rest.up) < SAME_RAD) return near[0];

    const least = principalAxes(rest.potential).low / mass;
    const found = ends.length;
    ends.push({ rest, soft: least < SOFT_MM, group: found });
    if (least < SOFT_MM) {
      for (const other of near) {
        if (nearness(other) < REACH) break;
        if (!ends[other].soft || ends[other].group === ends[found].group) continue;
        if (isRun(body, mass, ends[other].rest, rest)) unite(ends[other].group, ends[found].group);
      }
    }
    // nothing is to be seen from a run of attitudes, and others of it are to be found
    if (least < NEUTRAL_MM) return found;
    const well = wellOf(body, rest, mass);
    tops.push(...well.tops);
    if (least >= SOFT_MM) wells.push({ well, end: found });
    return found;
  }

  return {
    settle,
    descend: (start) => endAt(restFrom(body, start, { longest: SHORT_RAD })),
    tops: () => tops,
    groupOf: (end) => ends[end].group,
    groups: () =>
      [...new Set(ends.map(({ group }) => group))].map((group) => {
        const members = ends.filter((end) => end.group === group);
        const rest = members.reduce((a, b) => (b.rest.potential.value < a.rest.potential.value ? b : a)).rest;
        return { group, rest, spread: Math.max(...members.map((end) => angleBetween(end.rest.up, rest.up))) };
      }),
  };
}

/** Angle between two unit vectors, exact for small ones too. */
export function angleBetween(a: Vec3, b: Vec3): Radian {
  return 2 * Math.asin(Math.min(1, Math.hypot(...subtract(a, b)) / 2));
}

/** Whether two soft rests lie in one level run: no pass between them that is more than mesh and sandpaper leave. */
function isRun(body: FloatingBody, mass: Gram, a: Rest, b: Rest): boolean {
  const angle = angleBetween(a.up, b.up);
  const bothNeutral = [a, b].every(({ potential }) => Math.abs(principalAxes(potential).low) < NEUTRAL_MM * mass);
  // a stiffness that counts as none may raise this much over half the way
  const allowed = (FACET_MM + (bothNeutral ? (NEUTRAL_MM * angle ** 2) / 8 : 0)) * mass;
  const top = Math.max(a.potential.value, b.potential.value);
  const bottom = Math.min(a.potential.value, b.potential.value);
  if (top - bottom > allowed) return false;
  const towards = unit(subtract(b.up, scale(a.up, dot(a.up, b.up))));
  return PLACES.every((place) => levelNear(body, mass, turn(a.up, towards, place * angle), towards) < top + allowed);
}

/** Energy at the bottom of the trough that runs on past a place, found by going square to it. */
function levelNear(body: FloatingBody, mass: Gram, start: Vec3, along: Vec3): GramMm {
  let up = start;
  let offset: number | null = null;
  let value = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 4; i++) {
    const [u, v] = planeAxes(up);
    const draft = draftAt(body, up, u, v, offset, 1e-7 * mass);
    value = Math.min(value, draft.potential.value);
    offset = draft.offset;
    const [pu, pv] = [-dot(along, v), dot(along, u)];
    const size = Math.hypot(pu, pv);
    const [cu, cv] = [pu / size, pv / size];
    const { slopeU, slopeV, curveUU, curveUV, curveVV } = draft.potential;
    const slope = slopeU * cu + slopeV * cv;
    const curve = curveUU * cu * cu + 2 * curveUV * cu * cv + curveVV * cv * cv;
    if (!(curve > 0)) break;
    const step = Math.max(-0.1, Math.min(0.1, -slope / curve));
    up = turn(up, [cu * u[0] + cv * v[0], cu * u[1] + cv * v[1], cu * u[2] + cv * v[2]], step);
  }
  return value;
}
