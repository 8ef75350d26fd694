import type { Hole } from '../design/design.ts';
import { type Hull, halfWidthAt, heightAt, skinHalfWidth, skinHeight, stationOf } from '../hull/hull.ts';
import { add, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm3 } from '../units/brand.ts';
import type { PlacedHole } from './placed.ts';

/**
 * Where a drill enters: the skin over its disc, averaged, so that a hole of any depth follows without looking again.
 * `drop` is how far the skin lies inward of the mouth at a place of the disc.
 */
export interface Mouth {
  /** Where the axis meets the bare skin. */
  readonly at: Vec3;
  readonly inward: Vec3;
  readonly radius: Mm;
  /** The whole disc lies on the body; else only the share of it that does is averaged. */
  readonly whole: boolean;
  readonly share: number;
  readonly meanDrop: Mm;
  readonly meanSquare: number;
  /** Mean of the place on the disc, and of that times the drop. */
  readonly aside: Vec3;
  readonly lean: Vec3;
  readonly deepest: Mm;
}

/** What says where a drill enters. */
export type Entry = Pick<Hole, 'from' | 'x' | 'across' | 'diameter'>;

/** The mouth of a hole; null where its axis misses the body. */
export function holeMouth(hull: Hull, entry: Entry): Mouth | null {
  const skin = skinOver(hull, entry);
  if (!skin) return null;
  const radius = entry.diameter / 2;
  let [whole, share, meanDrop, meanSquare, deepest] = [true, 0, 0, 0, 0];
  let [aside, lean]: readonly Vec3[] = [
    [0, 0, 0],
    [0, 0, 0],
  ];
  for (const { a, places } of COLUMNS) {
    const column = skin.column(a * radius);
    for (const { b, weight } of places) {
      const drop = column(b * radius);
      if (drop === null) {
        whole = false;
        continue;
      }
      const place: Vec3 = skin.inward[2] === 0 ? [a * radius, 0, b * radius] : [a * radius, b * radius, 0];
      share += weight;
      meanDrop += weight * drop;
      meanSquare += weight * drop * drop;
      aside = add(aside, scale(place, weight));
      lean = add(lean, scale(place, weight * drop));
      deepest = Math.max(deepest, drop);
    }
  }
  return { at: skin.at, inward: skin.inward, radius, whole, share, meanDrop, meanSquare, aside, lean, deepest };
}

interface Skin {
  readonly at: Vec3;
  readonly inward: Vec3;
  /** How far the skin lies inward of the mouth at a place of the disc, column by column; null past the body. */
  readonly column: (alongX: Mm) => (across: Mm) => Mm | null;
}

function skinOver(hull: Hull, { from, x, across }: Entry): Skin | null {
  if (from === 'belly' || from === 'back') {
    const z = skinHeight(hull, from, x, across);
    if (z === null) return null;
    const up = from === 'belly' ? 1 : -1;
    const column = (dx: Mm) => {
      const station = stationOf(hull, x + dx);
      return (dy: Mm) => {
        const there = heightAt(hull, station, from, across + dy);
        return there === null ? null : (there - z) * up;
      };
    };
    return { at: [x, across, z], inward: [0, 0, up], column };
  }
  const half = skinHalfWidth(hull, x, across);
  if (half === null) return null;
  const side = from === 'starboard' ? 1 : -1;
  const column = (dx: Mm) => {
    const station = stationOf(hull, x + dx);
    return (dz: Mm) => {
      const there = halfWidthAt(hull, station, across + dz);
      return there === null ? null : half - there;
    };
  };
  return { at: [x, side * half, across], inward: [0, -side, 0], column };
}

/** Gauss–Legendre nodes and weights on 0…1, four points (Abramowitz & Stegun, table 25.4). */
const NODES = [0.0694318442029737, 0.3300094782075719, 0.6699905217924281, 0.9305681557970263] as const;
const WEIGHTS = [0.1739274225687269, 0.3260725774312731, 0.3260725774312731, 0.1739274225687269] as const;
const TURNS = 16;

/** Points of a disc of radius 1 with weights that add up to 1: exact for smooth skins far beyond what a drill holds. */
export const DISC: readonly { readonly a: number; readonly b: number; readonly weight: number }[] = NODES.flatMap(
  (share, i) =>
    Array.from({ length: TURNS }, (_, turn) => {
      const angle = (2 * Math.PI * (turn + 0.5)) / TURNS;
      const radius = Math.sqrt(share);
      return { a: radius * Math.cos(angle), b: radius * Math.sin(angle), weight: WEIGHTS[i] / TURNS };
    }),
);

/** The same, column by column along x: points to either side of the middle share the body's section. */
const COLUMNS = DISC.filter(({ b }) => b > 0).map(({ a, b, weight }) => ({
  a,
  places: [
    { b, weight },
    { b: -b, weight },
  ],
}));

/** Height of the drill's point: radius over the tangent of half its angle; 0 for a flat bottom. */
export function pointHeight(hole: Pick<Hole, 'diameter' | 'point'>): Mm {
  return hole.point >= Math.PI ? 0 : hole.diameter / 2 / Math.tan(hole.point / 2);
}

/** Volume with its moment; parts add up exactly. */
export interface Part {
  readonly volume: Mm3;
  readonly moment: Vec3;
}

/**
 * Drills and fills a hole: the wood that goes out (skin to shoulder over the disc, and the point), the lead at its
 * floor or air under a plug, the plug in all that is left up to the bare skin. A hole whose axis misses the body takes nothing out; the
 * checks refuse it.
 */
export function placeHole(hull: Hull, hole: Hole, link: number): PlacedHole {
  return fillHole(holeMouth(hull, hole), hole, link);
}

/** The same where the mouth is at hand. */
export function fillHole(entered: Mouth | null, hole: Hole, link: number): PlacedHole {
  const { at: mouth, inward } = entered ?? { at: [hole.x, 0, 0] as const, inward: [0, 0, 1] as const };
  const along = (distance: Mm): Vec3 => add(mouth, scale(inward, distance));
  const point = pointHeight(hole);
  const taken = entered ? takenOut(entered, hole.depth, point) : NOTHING;
  const pointVolume = coneVolume(hole.diameter / 2, point);
  const lead = hole.lead && placeLead(hole, hole.lead, point, pointVolume, along);
  const rest = hole.air
    ? takenOut(entered, hole.air.plug, 0)
    : lead
      ? subtractParts(taken, cylinderPart(lead.volume, lead.centre))
      : taken;
  const chamber = subtractParts(taken, rest);
  return {
    name: hole.name,
    link,
    hole,
    mouth,
    inward,
    diameter: hole.diameter,
    depth: hole.depth,
    pointDepth: point,
    volume: taken.volume,
    centre: centreOf(taken, mouth),
    lead,
    air: hole.air && { volume: chamber.volume, centre: centreOf(chamber, mouth), from: hole.air.plug },
    plug: { mass: rest.volume * hole.plugDensity, volume: rest.volume, centre: centreOf(rest, mouth) },
  };
}

const NOTHING: Part = { volume: 0, moment: [0, 0, 0] };

/** From the skin to a shoulder, and a point beyond it. */
export function takenOut(mouth: Mouth | null, depth: Mm, point: Mm): Part {
  if (!mouth) return NOTHING;
  const { at, inward, radius, share, meanDrop, meanSquare, aside, lean } = mouth;
  const area = Math.PI * radius * radius;
  const volume = area * (share * depth - meanDrop);
  const inwardMoment = (area * (share * depth * depth - meanSquare)) / 2;
  const sideways = scale(subtract(scale(aside, depth), lean), area);
  const shaft = { volume, moment: add(add(scale(at, volume), scale(inward, inwardMoment)), sideways) };
  const tip = cylinderPart(coneVolume(radius, point), add(at, scale(inward, depth + point / 4)));
  return addParts(shaft, tip);
}

function coneVolume(radius: Mm, height: Mm): Mm3 {
  return (Math.PI * radius * radius * height) / 3;
}

function placeLead(
  hole: Hole,
  { stock, mass }: NonNullable<Hole['lead']>,
  point: Mm,
  pointVolume: Mm3,
  along: (distance: Mm) => Vec3,
): NonNullable<PlacedHole['lead']> {
  const volume = mass / stock.density;
  const diameter = stock.kind === 'slug' ? stock.diameter : hole.diameter;
  const area = (Math.PI * diameter * diameter) / 4;
  if (stock.kind === 'slug' || point === 0) {
    // a slug stands on the shoulder, over the point
    const from = hole.depth - volume / area;
    return { mass, volume, centre: along((from + hole.depth) / 2), diameter, from, to: hole.depth, fillsPoint: false };
  }
  const apex = hole.depth + point;
  if (volume <= pointVolume) {
    const height = point * Math.cbrt(volume / pointVolume);
    return {
      mass,
      volume,
      centre: along(apex - (3 / 4) * height),
      diameter,
      from: apex - height,
      to: apex,
      fillsPoint: true,
    };
  }
  const from = hole.depth - (volume - pointVolume) / area;
  const inShaft = cylinderPart(volume - pointVolume, along((from + hole.depth) / 2));
  const whole = addParts(inShaft, cylinderPart(pointVolume, along(hole.depth + point / 4)));
  return { mass, volume, centre: centreOf(whole, along(from)), diameter, from, to: apex, fillsPoint: true };
}

function cylinderPart(volume: Mm3, centre: Vec3): Part {
  return { volume, moment: scale(centre, volume) };
}

function addParts(a: Part, b: Part): Part {
  return { volume: a.volume + b.volume, moment: add(a.moment, b.moment) };
}

function subtractParts(a: Part, b: Part): Part {
  return { volume: a.volume - b.volume, moment: subtract(a.moment, b.moment) };
}

function centreOf(part: Part, otherwise: Vec3): Vec3 {
  return part.volume === 0 ? otherwise : scale(part.moment, 1 / part.volume);
}
