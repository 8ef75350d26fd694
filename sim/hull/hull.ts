import type { Body, Reading, Section } from '../design/design.ts';
import type { Mm, Mm2 } from '../units/brand.ts';
import { boardArea, boardHalfWidth, boardHeight, boardMeasure, boardStation } from './board.ts';
import { bend, buildOutline, type End, heightOf, type Outline, outlineAt, over } from './outline.ts';
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

/** Turns the dimensions of a body into its three outlines, and bends them through what was measured. */
export function buildHull(body: Body): Hull {
  const { length, nose, tail, fullness, deepest, widest } = body;
  const end = (at: Body['nose'], run: Mm, level: Mm, rise: Mm, half: Mm, share: number): End => ({
    run,
    level,
    rise,
    half,
    round: at.round,
    fullness: share,
  });
  const bellyDepth = body.height - body.back;
  const [deepFrom, deepTo] = [deepest[0], length - deepest[1]];
  const back = buildOutline(
    deepest,
    length,
    end(nose, deepFrom, 0, body.back, nose.depth / 2, fullness.back.nose),
    end(tail, deepTo, tail.z, body.back - tail.z, tail.depth / 2, fullness.back.tail),
  );
  const belly = buildOutline(
    deepest,
    length,
    end(nose, deepFrom, 0, bellyDepth, nose.depth / 2, fullness.belly.nose),
    end(tail, deepTo, -tail.z, bellyDepth + tail.z, tail.depth / 2, fullness.belly.tail),
  );
  const plan = buildOutline(
    widest,
    length,
    end(nose, widest[0], 0, body.width / 2, nose.width / 2, fullness.plan.nose),
    end(tail, length - widest[1], 0, body.width / 2, tail.width / 2, fullness.plan.tail),
  );
  return { length, ...bent({ back, belly, plan }, body.readings), section: body.section };
}

/** The outlines through the readings: the ratio of measured to drawn at each, 1 at a peak where nothing was read. */
function bent(drawn: Pick<Hull, 'back' | 'belly' | 'plan'>, readings: Body['readings']): typeof drawn {
  if (readings.length === 0) return drawn;
  const tallAt = (x: Mm) => over(drawn.back, x) + over(drawn.belly, x);
  const lineAt = (outline: Outline, x: Mm) => heightOf(outline, x) - over(outline, x);
  const ratios = (outline: Outline, own: (reading: Reading) => Mm | null, both: boolean) =>
    readings.flatMap((reading): (readonly [Mm, number])[] => {
      const { x, height } = reading;
      const measured = own(reading);
      if (measured !== null) return [[x, (measured - lineAt(outline, x)) / over(outline, x)]];
      return both && height !== null ? [[x, height / tallAt(x)]] : [];
    });
  return {
    back: bend(
      drawn.back,
      ratios(drawn.back, ({ back }) => back, true),
    ),
    belly: bend(
      drawn.belly,
      ratios(drawn.belly, ({ belly }) => belly, true),
    ),
    plan: bend(
      drawn.plan,
      ratios(drawn.plan, ({ width }) => (width === null ? null : width / 2), false),
    ),
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
  return { back, belly, halfWidth, broadest: belly + breadthOf(hull.section) * (back - belly) };
}

/** Height of the greatest breadth as a share of the section; half way up the flat flank of a board. */
function breadthOf(section: Section): number {
  return section.kind === 'board' ? 1 / 2 : section.breadth;
}

/**
 * Area of the section at x. Oval: 2 w [(t - z_b) C(above) + (z_b - b) C(below)], see `sectionAreaFactor`; board: see
 * `boardArea`.
 */
export function sectionArea(hull: Hull, x: Mm): Mm2 {
  const { section } = hull;
  const { back, belly, halfWidth, broadest } = stationOf(hull, x);
  if (section.kind === 'board') return boardArea(boardStation(section, halfWidth, back, belly));
  const { above, below } = section;
  return 2 * halfWidth * ((back - broadest) * sectionAreaFactor(above) + (broadest - belly) * sectionAreaFactor(below));
}

/**
 * How far a point (y, z) at a station lies from the skin in the section's own measure, which is 1 on the skin, less
 * inside, more outside: |y/w|ⁿ + |(z - z_b)/h|ⁿ for an oval. Infinite where the section has no size.
 */
export function sectionMeasure({ section }: Hull, station: Station, y: Mm, z: Mm): number {
  const { back, belly, halfWidth, broadest } = station;
  if (section.kind === 'board') return boardMeasure(boardStation(section, halfWidth, back, belly), y, z);
  const rise = z >= broadest ? back - broadest : broadest - belly;
  if (!(halfWidth > 0 && rise > 0)) return Number.POSITIVE_INFINITY;
  const n = z >= broadest ? section.above : section.below;
  return Math.abs(y / halfWidth) ** n + Math.abs((z - broadest) / rise) ** n;
}

/** Height of the skin over or under a point (x, y); null where the body has no wood there. */
export function skinHeight(hull: Hull, on: 'back' | 'belly', x: Mm, y: Mm): Mm | null {
  const { section } = hull;
  const { back, belly, halfWidth, broadest } = stationOf(hull, x);
  if (section.kind === 'board') return boardHeight(boardStation(section, halfWidth, back, belly), on, y);
  const share = Math.abs(y) / halfWidth;
  if (!(share < 1)) return null;
  const n = on === 'back' ? section.above : section.below;
  const reach = (1 - share ** n) ** (1 / n);
  return on === 'back' ? broadest + (back - broadest) * reach : broadest - (broadest - belly) * reach;
}

/** Half width of the body at a height z of station x; null where the body has no wood there. */
export function skinHalfWidth(hull: Hull, x: Mm, z: Mm): Mm | null {
  const { section } = hull;
  const { back, belly, halfWidth, broadest } = stationOf(hull, x);
  if (section.kind === 'board') return boardHalfWidth(boardStation(section, halfWidth, back, belly), z);
  const above = z >= broadest;
  const rise = above ? back - broadest : broadest - belly;
  const share = Math.abs(z - broadest) / rise;
  if (!(share < 1)) return null;
  const n = above ? section.above : section.below;
  return halfWidth * (1 - share ** n) ** (1 / n);
}
