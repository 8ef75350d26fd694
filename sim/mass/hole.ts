import type { Hole } from '../design/design.ts';
import { type Hull, skinHalfWidth, skinHeight } from '../hull/hull.ts';
import { add, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm3 } from '../units/brand.ts';
import type { PlacedHole } from './placed.ts';

/**
 * The skin over a hole's disc, seen along its axis: `at` gives the point of the skin over a place on the disc, `drop`
 * how far that lies inward of the mouth.
 */
export interface HoleSkin {
  readonly mouth: Vec3;
  readonly inward: Vec3;
  /** null where the disc reaches past the body. */
  readonly drop: (alongX: Mm, across: Mm) => Mm | null;
}

/** The skin a hole is drilled through; null where its axis misses the body. */
export function holeSkin(hull: Hull, hole: Hole): HoleSkin | null {
  const { x, across } = hole;
  if (hole.from === 'belly' || hole.from === 'back') {
    const on = hole.from;
    const z = skinHeight(hull, on, x, across);
    if (z === null) return null;
    const up = on === 'belly' ? 1 : -1;
    const drop = (dx: Mm, dy: Mm) => {
      const there = skinHeight(hull, on, x + dx, across + dy);
      return there === null ? null : (there - z) * up;
    };
    return { mouth: [x, across, z], inward: [0, 0, up], drop };
  }
  const half = skinHalfWidth(hull, x, across);
  if (half === null) return null;
  const side = hole.from === 'starboard' ? 1 : -1;
  const drop = (dx: Mm, dz: Mm) => {
    const there = skinHalfWidth(hull, x + dx, across + dz);
    return there === null ? null : half - there;
  };
  return { mouth: [x, side * half, across], inward: [0, -side, 0], drop };
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

/** Height of the drill's point: radius over the tangent of half its angle; 0 for a flat bottom. */
export function pointHeight(hole: Hole): Mm {
  return hole.point >= Math.PI ? 0 : hole.diameter / 2 / Math.tan(hole.point / 2);
}

/** Volume with its moment; parts add up exactly. */
interface Part {
  readonly volume: Mm3;
  readonly moment: Vec3;
}

/**
 * Drills and fills a hole: the wood that goes out (skin to shoulder over the disc, and the point), the lead at its
 * floor or air under a plug, the plug in all that is left up to the bare skin. A hole whose axis misses the body takes nothing out; the
 * checks refuse it.
 */
export function placeHole(hull: Hull, hole: Hole, link: number): PlacedHole {
  const skin = holeSkin(hull, hole);
  const { mouth, inward } = skin ?? { mouth: [hole.x, 0, 0] as const, inward: [0, 0, 1] as const };
  const along = (distance: Mm): Vec3 => add(mouth, scale(inward, distance));
  const radius = hole.diameter / 2;
  const point = pointHeight(hole);
  const area = Math.PI * radius * radius;
  const tip: Part = cylinderPart((area * point) / 3, along(hole.depth + point / 4));

  const shaftTo = (depth: Mm): Part => {
    let shaft: Part = { volume: 0, moment: [0, 0, 0] };
    for (const { a, b, weight } of skin ? DISC : []) {
      const drop = skin?.drop(a * radius, b * radius);
      if (drop === null || drop === undefined) continue;
      const piece = weight * area * (depth - drop);
      const sideways: Vec3 = inward[2] === 0 ? [a * radius, 0, b * radius] : [a * radius, b * radius, 0];
      shaft = addParts(shaft, cylinderPart(piece, add(along((depth + drop) / 2), sideways)));
    }
    return shaft;
  };
  const shaft = shaftTo(hole.depth);
  const taken = skin ? addParts(shaft, tip) : shaft;
  const lead = hole.lead && placeLead(hole, hole.lead, point, tip.volume, along);
  const rest = hole.air
    ? shaftTo(hole.air.plug)
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
