import type { Body, Section } from '../design/design.ts';
import type { Mm, Mm2 } from '../units/brand.ts';
import { buildOutline, type End, type Outline, outlineAt } from './outline.ts';
import { sectionAreaFactor } from './section.ts';

/** The body's skin as plain data; the functions below read it. */
export interface Hull {
  readonly length: Mm;
  /** Height of the back over the datum. */
  readonly back: Outline;
  /** Depth of the belly under the datum, so that it too is positive downwards. */
  readonly belly: Outline;
  /** Half width. */
  readonly plan: Outline;
  readonly section: Section;
}

/** Turns the dimensions of a body into its three outlines. */
export function buildHull(body: Body): Hull {
  const { length, tail, fullness } = body;
  const deepest = body.deepest[0];
  const widest = body.widest[0];
  const end = (run: Mm, level: Mm, rise: Mm, half: Mm, share: number): End => ({
    run,
    level,
    rise,
    half,
    round: tail.round,
    fullness: share,
  });
  const bellyDepth = body.height - body.back;
  return {
    length,
    back: buildOutline(
      deepest,
      length,
      end(deepest, 0, body.back, 0, fullness.back.nose),
      end(length - deepest, tail.z, body.back - tail.z, tail.depth / 2, fullness.back.tail),
    ),
    belly: buildOutline(
      deepest,
      length,
      end(deepest, 0, bellyDepth, 0, fullness.belly.nose),
      end(length - deepest, -tail.z, bellyDepth + tail.z, tail.depth / 2, fullness.belly.tail),
    ),
    plan: buildOutline(
      widest,
      length,
      end(widest, 0, body.width / 2, 0, fullness.plan.nose),
      end(length - widest, 0, body.width / 2, tail.width / 2, fullness.plan.tail),
    ),
    section: body.section,
  };
}

/**
 * The section at x with its slopes along x: [back, back', belly, belly', half width, half width'], heights off the
 * datum (so the belly is negative under it). Written into `out`, six numbers.
 */
export function stationAt(hull: Hull, x: Mm, out: Float64Array): void {
  outlineAt(hull.back, x, out, 0);
  outlineAt(hull.belly, x, out, 2);
  out[2] = -out[2];
  out[3] = -(out[3] as number);
  outlineAt(hull.plan, x, out, 4);
}

/** The section at x in words, for callers that are not in a hurry. */
export interface Station {
  readonly back: Mm;
  readonly belly: Mm;
  readonly halfWidth: Mm;
  /** Height of the greatest breadth. */
  readonly broadest: Mm;
}

export function stationOf(hull: Hull, x: Mm): Station {
  const out = new Float64Array(6);
  stationAt(hull, x, out);
  const [back, , belly, , halfWidth] = out as unknown as [number, number, number, number, number];
  return { back, belly, halfWidth, broadest: belly + hull.section.breadth * (back - belly) };
}

/** Area of the section at x: 2 w [(t - z_b) C(above) + (z_b - b) C(below)], see `sectionAreaFactor`. */
export function sectionArea(hull: Hull, x: Mm): Mm2 {
  const { back, belly, halfWidth, broadest } = stationOf(hull, x);
  const { above, below } = hull.section;
  return 2 * halfWidth * ((back - broadest) * sectionAreaFactor(above) + (broadest - belly) * sectionAreaFactor(below));
}

/**
 * How far a point (y, z) at a station lies from the skin in the section's own measure: |y/w|ⁿ + |(z - z_b)/h|ⁿ, which
 * is 1 on the skin, less inside, more outside. Infinite where the section has no size.
 */
export function sectionMeasure(hull: Hull, station: Station, y: Mm, z: Mm): number {
  const rise = z >= station.broadest ? station.back - station.broadest : station.broadest - station.belly;
  if (!(station.halfWidth > 0 && rise > 0)) return Number.POSITIVE_INFINITY;
  const n = z >= station.broadest ? hull.section.above : hull.section.below;
  return Math.abs(y / station.halfWidth) ** n + Math.abs((z - station.broadest) / rise) ** n;
}

/** Height of the skin over or under a point (x, y); null where the body has no wood there. */
export function skinHeight(hull: Hull, on: 'back' | 'belly', x: Mm, y: Mm): Mm | null {
  const station = stationOf(hull, x);
  const share = Math.abs(y) / station.halfWidth;
  if (!(share < 1)) return null;
  const n = on === 'back' ? hull.section.above : hull.section.below;
  const reach = (1 - share ** n) ** (1 / n);
  return on === 'back'
    ? station.broadest + (station.back - station.broadest) * reach
    : station.broadest - (station.broadest - station.belly) * reach;
}

/** Half width of the body at a height z of station x; null where the body has no wood there. */
export function skinHalfWidth(hull: Hull, x: Mm, z: Mm): Mm | null {
  const station = stationOf(hull, x);
  const above = z >= station.broadest;
  const rise = above ? station.back - station.broadest : station.broadest - station.belly;
  const share = Math.abs(z - station.broadest) / rise;
  if (!(share < 1)) return null;
  const n = above ? hull.section.above : hull.section.below;
  return station.halfWidth * (1 - share ** n) ** (1 / n);
}
