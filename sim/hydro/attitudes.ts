import { heelOf } from '../frames.ts';
import { cellsOf, sphereGrid } from '../numerics/sphere-grid.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { draftAt } from './draft.ts';
import { type Rest, restFrom } from './equilibrium.ts';
import { type Float, floatAt } from './float.ts';
import { climb, lowestWays, type Pass, searchPasses } from './pass.ts';
import { planeAxes } from './potential.ts';
import { angleBetween, createValleys, SAME_RAD } from './valleys.ts';

/** A way a body can rest other than the one it settles to from upright. */
export interface OtherRest {
  readonly float: Float;
  /** What it takes to get there from the first rest, over the lowest pass; null when no way was found. */
  readonly hump: GramMm | null;
  /** What it takes to get back over the same pass. */
  readonly back: GramMm | null;
  /** Up-vector on top of that pass. */
  readonly over: Vec3 | null;
  /** Share of the starts that end there: attitudes, not a forecast of throws. */
  readonly share: number;
  /** The rest it is the mirror image of, port for starboard: 0 is the first, 1 the first of the others; null: none. */
  readonly mirrorOf: number | null;
}

/** A start: let go from there, and where that ends. */
export interface Drop {
  readonly up: Vec3;
  /** 0: at the first rest; 1: at the first of the others, and so on. */
  readonly rest: number;
}

/** Every way a body can rest in still water. */
export interface Attitudes {
  /** Lowest energy first; none twice, and no run of equal attitudes listed one by one. */
  readonly others: readonly OtherRest[];
  /** The first rest is one of a whole run of attitudes among which it has no preference. */
  readonly firstIsNeutral: boolean;
  /** Share of the starts that end at the first. */
  readonly firstShare: number;
  /** Descents made, from attitudes spread evenly; a share is good to √(share (1 - share)/starts). 0 under water. */
  readonly starts: number;
  /** The starts themselves, in the order of the grid they stand on. None under water. */
  readonly drops: readonly Drop[];
}

/** What of the sphere of ways up each drop stands for, as the corners of its cell, in the order of the drops. */
export function dropCells({ drops }: Pick<Attitudes, 'drops'>): readonly (readonly Vec3[])[] {
  const grid = LEVELS.map(sphereGrid).find(({ points }) => points.length === drops.length);
  return grid === undefined ? [] : cellsOf(grid);
}

/** Sampling error of a share of so many starts: one standard deviation of a count drawn at random, √(p (1 - p)/N). */
export function shareError(share: number, starts: number): number {
  return starts > 0 ? Math.sqrt((share * (1 - share)) / starts) : 0;
}

/** 162 starts: on 421 attitudes of random bodies, 12 starts missed three and 42 none. */
const LEVEL = 2;
const LEVELS = [0, 1, LEVEL, 3];
/** Mirror images to this angle, and to this share of the energy that tells attitudes apart. */
const MIRROR_RAD = radianFromDegree(0.5);
const MIRROR_MM = 0.02;
/** Rests whose energies differ by less stand in the order of their heel, starboard first. */
const ORDER_MM = 1e-6;
/** A group of rests spread wider than this is a run among which there is no preference. */
const RUN_RAD = radianFromDegree(3);
/** A pass of the full mesh is looked for this near to that of the coarse one. */
const NEAR_RAD = radianFromDegree(10);

/**
 * All resting attitudes of a body but its first, and what it takes to get to them. Starts spread evenly over the
 * sphere descend on a coarse mesh; what is found is settled on the full one.
 *
 * first: how `body` rests from upright. coarse: the same body on a coarser mesh. level: of the grid of starts, 2 for
 * 162 and 3 for 642. A body under water has one rest, or no preference.
 */
export function findAttitudes(body: FloatingBody, coarse: FloatingBody, first: Float, level = LEVEL): Attitudes {
  if (first.state !== 'floats') {
    return { others: [], firstIsNeutral: first.neutral, firstShare: 1, starts: 0, drops: [] };
  }
  // a body that barely floats may not do so on the coarse mesh
  const rough = floats(coarse) ? coarse : body;
  const valleys = createValleys(rough);
  const home = valleys.settle(first.up);
  const { points } = sphereGrid(level);
  const ends = points.map((start) => valleys.settle(start));
  const passes = valleys.groups().length > 1 ? searchPasses(rough, valleys) : [];
  const ways = lowestWays(valleys.groupOf(home), passes);

  const shareOf = (group: number) => ends.filter((end) => valleys.groupOf(end) === group).length / ends.length;
  const [own, foreign] = parted(valleys.groups(), ({ group }) => group === valleys.groupOf(home));
  const found = foreign.map(({ group, rest, spread }) => ({
    groups: [group],
    rest: restFrom(body, rest.up, rest),
    share: shareOf(group),
    isRun: spread > RUN_RAD,
    pass: ways.get(group) ?? null,
  }));
  // rests of the coarse mesh that the full one does not tell apart
  const [same, other] = parted(found, ({ rest }) => angleBetween(rest.up, first.up) < SAME_RAD);
  const listed = inOrder(body, withoutTwins(other));
  // by the group it belongs to; one that is none of the others is the first
  const restOf = (end: number) => 1 + listed.findIndex(({ groups }) => groups.includes(valleys.groupOf(end)));
  return {
    others: listOthers(body, first, listed),
    firstIsNeutral: first.neutral || own.some(({ spread }) => spread > RUN_RAD),
    firstShare: same.reduce((sum, { share }) => sum + share, shareOf(valleys.groupOf(home))),
    starts: ends.length,
    drops: points.map((up, i) => ({ up, rest: restOf(ends[i]) })),
  };
}

interface Found {
  /** Valleys of the coarse mesh that lead there. */
  readonly groups: readonly number[];
  readonly rest: Rest;
  readonly share: number;
  readonly isRun: boolean;
  readonly pass: Pass | null;
}

interface Bottom {
  readonly up: Vec3;
  readonly value: GramMm;
}

function parted<Item>(items: readonly Item[], isFirst: (item: Item) => boolean): readonly [Item[], Item[]] {
  return [items.filter(isFirst), items.filter((item) => !isFirst(item))];
}

function withoutTwins(found: readonly Found[]): readonly Found[] {
  const kept: Found[] = [];
  for (const one of found) {
    const twin = kept.findIndex(({ rest }) => angleBetween(rest.up, one.rest.up) < SAME_RAD);
    if (twin < 0) kept.push(one);
    else {
      const { groups, share, ...same } = kept[twin];
      kept[twin] = { ...same, groups: [...groups, ...one.groups], share: share + one.share };
    }
  }
  return kept;
}

/** Lowest energy first. */
function inOrder(body: FloatingBody, found: readonly Found[]): readonly Found[] {
  const { mass } = totalsOf(body);
  return found.toSorted((a, b) => {
    const apart = a.rest.potential.value - b.rest.potential.value;
    return Math.abs(apart) > ORDER_MM * mass ? apart : heelOf(b.rest.up) - heelOf(a.rest.up);
  });
}

function listOthers(body: FloatingBody, first: Float, listed: readonly Found[]): readonly OtherRest[] {
  const { mass } = totalsOf(body);
  const home: Bottom = { up: first.up, value: restFrom(body, first.up, first).potential.value };
  return listed.map(({ rest, share, isRun, pass }, i) => {
    const float = floatAt(body, rest);
    const top = pass === null ? null : topOf(body, pass);
    return {
      float: isRun ? { ...float, neutral: true, tender: true } : float,
      hump: top === null ? null : Math.max(0, top.value - home.value),
      back: top === null ? null : Math.max(0, top.value - rest.potential.value),
      over: top === null ? null : top.up,
      share,
      mirrorOf: mirrorOf(rest, [home, ...listed.slice(0, i).map(placeOf)], mass),
    };
  });
}

function floats(body: FloatingBody): boolean {
  const { mass, volume } = totalsOf(body);
  return body.waterDensity * volume > mass;
}

/** The top of a pass on the full mesh; where that has none close by, the coarse one's place on the full mesh's energy. */
function topOf(body: FloatingBody, { saddle }: Pass): Bottom {
  const settled = climb(body, saddle.up);
  if (settled && angleBetween(settled.up, saddle.up) < NEAR_RAD) return settled;
  const axes = planeAxes(saddle.up);
  const { potential } = draftAt(body, saddle.up, axes[0], axes[1], null, 1e-9 * totalsOf(body).mass);
  return { up: saddle.up, value: potential.value };
}

function placeOf({ rest }: Found): Bottom {
  return { up: rest.up, value: rest.potential.value };
}

function mirrorOf({ up, potential }: Rest, before: readonly Bottom[], mass: Gram): number | null {
  const image: Vec3 = [up[0], -up[1], up[2]];
  if (angleBetween(up, image) < MIRROR_RAD) return null;
  const found = before.findIndex(
    (other) => angleBetween(other.up, image) < MIRROR_RAD && Math.abs(other.value - potential.value) < MIRROR_MM * mass,
  );
  return found < 0 ? null : found;
}
