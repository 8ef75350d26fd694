import type { Body, Fullness, Section } from '../design/design.ts';
import type { Mm, Mm2 } from '../units/brand.ts';
import { type Bend, bendStation, buildBend } from './bend.ts';
import { boardArea, boardHalfWidth, boardMeasure, boardReach } from './board.ts';
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
  /** What readings make of the outlines; null: they are as drawn. */
  readonly bend: Bend | null;
}

/**
 * Turns the dimensions of a body into its three outlines, bent to its readings. Throws SimError where a reading is too
 * far from what the dimensions draw.
 */
export function buildHull(body: Body): Hull {
  const { length, nose, tail, fullness } = body;
  const end = (round: Mm, run: Mm, level: Mm, rise: Mm, half: Mm, share: number): End => ({
    run,
    level,
    rise,
    half,
    round,
    fullness: share,
  });
  /** One outline: its straight run or station, its peak, and at each end its half size. level: of the tail. */
  const outline = (
    peak: Body['deepest'],
    rise: Mm,
    level: Mm,
    half: { readonly nose: Mm; readonly tail: Mm },
    share: Fullness,
  ) =>
    buildOutline(
      peak[0],
      length,
      end(nose.round, peak[0], 0, rise, half.nose, share.nose),
      end(tail.round, length - peak[1], level, rise - level, half.tail, share.tail),
    );
  const depths = { nose: nose.depth / 2, tail: tail.depth / 2 };
  const widths = { nose: nose.width / 2, tail: tail.width / 2 };
  const back = outline(body.deepest, body.back, tail.z, depths, fullness.back);
  const belly = outline(body.deepest, body.height - body.back, -tail.z, depths, fullness.belly);
  const plan = outline(body.widest, body.width / 2, 0, widths, fullness.plan);
  const bend = buildBend({ length, back, belly, plan }, body.readings);
  return { length, back, belly, plan, section: body.section, bend };
}

/**
 * The section at x with its slopes along x: [back, back', belly, belly', half width, half width'], heights off the
 * datum (so the belly is negative under it). Written into `out`, six numbers.
 */
export function stationAt(hull: Hull, x: Mm, out: Float64Array): void {
  outlineAt(hull.back, x, out, 0);
  outlineAt(hull.belly, x, out, 2);
  out[2] = -out[2];
  out[3] = -out[3];
  outlineAt(hull.plan, x, out, 4);
  if (hull.bend) bendStation(hull.bend, x, out);
}

/** The section at x in words, for callers that are not in a hurry. */
export interface Station {
  readonly back: Mm;
  readonly belly: Mm;
  readonly halfWidth: Mm;
  /** Height of the greatest breadth; of a board, half way up. */
  readonly broadest: Mm;
}

export function stationOf(hull: Hull, x: Mm): Station {
  const out = new Float64Array(6);
  stationAt(hull, x, out);
  const [back, , belly, , halfWidth] = out as unknown as [number, number, number, number, number];
  return { back, belly, halfWidth, broadest: belly + breadthOf(hull.section) * (back - belly) };
}

function breadthOf(section: Section): number {
  return section.kind === 'board' ? 0.5 : section.breadth;
}

/** Area of the section at x: of an oval 2 w [(t - z_b) C(above) + (z_b - b) C(below)], see `sectionAreaFactor`. */
export function sectionArea(hull: Hull, x: Mm): Mm2 {
  const { section } = hull;
  const { back, belly, halfWidth, broadest } = stationOf(hull, x);
  if (section.kind === 'board') return boardArea(section, back, belly, halfWidth);
  const { above, below } = section;
  return 2 * halfWidth * ((back - broadest) * sectionAreaFactor(above) + (broadest - belly) * sectionAreaFactor(below));
}

/**
 * How far a point (y, z) at a station lies from the skin in the section's own measure, which is 1 on the skin, less
 * inside, more outside: of an oval |y/w|ⁿ + |(z - z_b)/h|ⁿ. Infinite where the section has no size.
 */
export function sectionMeasure({ section }: Hull, station: Station, y: Mm, z: Mm): number {
  const { back, belly, halfWidth, broadest } = station;
  const rise = z >= broadest ? back - broadest : broadest - belly;
  if (!(halfWidth > 0 && rise > 0)) return Number.POSITIVE_INFINITY;
  if (section.kind === 'board') return boardMeasure(section, back, belly, halfWidth, y, z);
  const n = z >= broadest ? section.above : section.below;
  return Math.abs(y / halfWidth) ** n + Math.abs((z - broadest) / rise) ** n;
}

/** Height of the skin over or under a point (x, y); null where the body has no wood there. */
export function skinHeight(hull: Hull, on: 'back' | 'belly', x: Mm, y: Mm): Mm | null {
  return heightAt(hull, stationOf(hull, x), on, y);
}

/** The same at a station that is at hand. */
export function heightAt({ section }: Hull, station: Station, on: 'back' | 'belly', y: Mm): Mm | null {
  const { back, belly, halfWidth, broadest } = station;
  const share = Math.abs(y) / halfWidth;
  if (!(share < 1)) return null;
  if (section.kind === 'board') {
    const reach = boardReach(section, on, back, belly, halfWidth, y);
    return on === 'back' ? broadest + reach : broadest - reach;
  }
  const n = on === 'back' ? section.above : section.below;
  const reach = (1 - share ** n) ** (1 / n);
  return on === 'back' ? broadest + (back - broadest) * reach : broadest - (broadest - belly) * reach;
}

/** Half width of the body at a height z of station x; null where the body has no wood there. */
export function skinHalfWidth(hull: Hull, x: Mm, z: Mm): Mm | null {
  return halfWidthAt(hull, stationOf(hull, x), z);
}

/** The same at a station that is at hand. */
export function halfWidthAt({ section }: Hull, station: Station, z: Mm): Mm | null {
  const { back, belly, halfWidth, broadest } = station;
  const above = z >= broadest;
  const rise = above ? back - broadest : broadest - belly;
  const share = Math.abs(z - broadest) / rise;
  if (!(share < 1)) return null;
  if (section.kind === 'board') return boardHalfWidth(section, back, belly, halfWidth, z);
  const n = above ? section.above : section.below;
  return halfWidth * (1 - share ** n) ** (1 / n);
}
