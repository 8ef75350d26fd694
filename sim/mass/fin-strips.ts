import { type Hull, stationOf } from '../hull/hull.ts';
import type { Mm } from '../units/brand.ts';

/** A point of the centre plane: x, z. */
export type Point = readonly [Mm, Mm];

/** Back and belly at a station. */
export interface SideRow {
  readonly x: Mm;
  readonly back: Mm;
  readonly belly: Mm;
}

/** A trapezium of a fin between two stations. Heights are those at its fore and at its aft end. */
export interface Strip {
  readonly x: readonly [Mm, Mm];
  readonly low: readonly [Mm, Mm];
  readonly high: readonly [Mm, Mm];
  /** Where it stands: on the back, under the belly, or before the nose or behind the tail. */
  readonly place: 'back' | 'belly' | 'off';
  /** It begins at the skin. */
  readonly rooted: boolean;
}

/** Stations this close are one: far below what can be made, far above rounding. */
export const SAME_MM = 1e-6;
/**
 * Steps along the outline, as many on a long body as on a short one. A chord stands off by step²/8 over the radius: a
 * thousandth of a millimetre on a bait.
 */
const STEPS = 300;
/** The last step to a tip is cut up by squares, for the outline runs into it like a root. */
const TIP_STEPS = 8;

/** The bare side outline as a row of stations from fore to aft past both ends of a stretch, `extra` among them. */
export function sideRows(hull: Hull, extra: readonly Mm[], [from, to]: readonly [Mm, Mm]): readonly SideRow[] {
  const { length } = hull;
  const step = length / STEPS;
  const even = Array.from({ length: STEPS + 1 }, (_, i) => (i === STEPS ? length : i * step));
  const nearTip = Array.from({ length: TIP_STEPS - 1 }, (_, i) => step * ((i + 1) / TIP_STEPS) ** 2);
  const inside = extra.filter((x) => x > 0 && x < length);
  const all = distinct([...even, ...nearTip, ...nearTip.map((x) => length - x), ...inside]);
  const near = all.filter((x) => x >= from - 2 * step && x <= to + 2 * step);
  return near.map((x) => {
    const { back, belly } = stationOf(hull, x);
    return { x, back, belly };
  });
}

function distinct(values: readonly Mm[]): readonly Mm[] {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - sorted[i - 1] > SAME_MM);
}

interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Height of a line at a station; beyond its ends, that of the nearer end. */
function heightAt({ from, to }: Line, x: Mm): Mm {
  if (x <= from[0]) return from[1];
  if (x >= to[0]) return to[1];
  return from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0]);
}

/**
 * What of a closed outline lies outside the body, as strips from fore to aft. Between the stations of all corners and of
 * all crossings with the skin nothing crosses, so that each strip is a trapezium. The outline may lean and overhang as it
 * likes, but must not cross itself outside the body. rows: of the side outline, from fore to aft; a strip never runs past
 * one.
 */
export function finStrips(outline: readonly Point[], rows: readonly SideRow[]): readonly Strip[] {
  const lines = outline.flatMap((point, i): readonly Line[] => {
    const next = outline[(i + 1) % outline.length];
    if (Math.abs(next[0] - point[0]) <= SAME_MM) return [];
    return [next[0] > point[0] ? { from: point, to: next } : { from: next, to: point }];
  });
  const spans = rows.slice(1).map((aft, i) => ({
    back: lineOf(rows[i], aft, 'back'),
    belly: lineOf(rows[i], aft, 'belly'),
  }));
  const xs = outline.map(([x]) => x);
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const crossings = lines.flatMap((line) =>
    spans
      .slice(spanAt(rows, line.from[0]), spanAt(rows, line.to[0]) + 1)
      .flatMap(({ back, belly }) => [...crossing(line, back), ...crossing(line, belly)]),
  );
  const stations = distinct([...xs, ...rows.map(({ x }) => x), ...crossings].filter((x) => x >= first && x <= last));
  return stations.slice(1).flatMap((aft, i) => {
    const fore = stations[i];
    const middle = (fore + aft) / 2;
    const over = lines
      .filter((line) => line.from[0] <= middle && middle <= line.to[0])
      .toSorted((a, b) => heightAt(a, middle) - heightAt(b, middle));
    const alongBody = rows.length > 0 && middle >= rows[0].x && middle <= rows[rows.length - 1].x;
    const span = alongBody ? spans[spanAt(rows, middle)] : undefined;
    return pairs(over).flatMap(([low, high]) => outsideOf(low, high, span, fore, aft));
  });
}

/** Those of some strips that lie between two stations that are among those of their rows. */
export function stripsWithin(strips: readonly Strip[], [from, to]: readonly [Mm, Mm]): readonly Strip[] {
  return strips.filter(({ x: [fore, aft] }) => fore + aft > 2 * from && fore + aft < 2 * to);
}

/** The number of the stretch between two rows that a station lies in; the first or the last if before or past them. */
function spanAt(rows: readonly SideRow[], x: Mm): number {
  let low = 0;
  let high = rows.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (rows[middle].x <= x) low = middle;
    else high = middle;
  }
  return low;
}

function lineOf(fore: SideRow, aft: SideRow, side: 'back' | 'belly'): Line {
  return { from: [fore.x, fore[side]], to: [aft.x, aft[side]] };
}

/** Where two lines change places, if they do. */
function crossing(a: Line, b: Line): readonly Mm[] {
  const [from, to] = [Math.max(a.from[0], b.from[0]), Math.min(a.to[0], b.to[0])];
  if (from >= to) return [];
  const [fore, aft] = [from, to].map((x) => heightAt(a, x) - heightAt(b, x));
  return fore * aft < 0 ? [from + ((to - from) * fore) / (fore - aft)] : [];
}

function pairs(lines: readonly Line[]): readonly (readonly [Line, Line])[] {
  return lines.flatMap((line, i) => (i % 2 === 0 && i + 1 < lines.length ? [[line, lines[i + 1]] as const] : []));
}

/** The parts of a strip over the back and under the belly; the whole of it where there is no body. */
function outsideOf(
  low: Line,
  high: Line,
  body: { readonly back: Line; readonly belly: Line } | undefined,
  fore: Mm,
  aft: Mm,
): readonly Strip[] {
  const middle = (fore + aft) / 2;
  const at = (line: Line) => heightAt(line, middle);
  const strip = (bottom: Line, top: Line, place: Strip['place'], rooted: boolean): readonly Strip[] => {
    if (at(top) - at(bottom) <= SAME_MM) return [];
    const [low0, low1] = [heightAt(bottom, fore), heightAt(bottom, aft)];
    const high0 = Math.max(low0, heightAt(top, fore));
    const high1 = Math.max(low1, heightAt(top, aft));
    return [{ x: [fore, aft], low: [low0, low1], high: [high0, high1], place, rooted }];
  };
  if (!body) return strip(low, high, 'off', false);
  const { back, belly } = body;
  const reachesIn = { back: at(low) < at(back), belly: at(high) > at(belly) };
  return [
    ...strip(low, at(high) < at(belly) ? high : belly, 'belly', reachesIn.belly),
    ...strip(at(low) > at(back) ? low : back, high, 'back', reachesIn.back),
  ];
}

/** Strips that hang together, each group one plate. Touching at a point alone does not hold. */
export function plates(strips: readonly Strip[]): readonly (readonly Strip[])[] {
  const groups: Strip[][] = [];
  for (const strip of strips) {
    const joined = groups.filter((group) => group.some((other) => areJoined(other, strip)));
    const merged = [...joined.flat(), strip];
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups;
}

/** fore comes before aft, and they share a part of the line between them. */
function areJoined(fore: Strip, aft: Strip): boolean {
  if (fore.x[1] !== aft.x[0]) return false;
  return Math.min(fore.high[1], aft.high[0]) - Math.max(fore.low[1], aft.low[0]) > SAME_MM;
}

/** Whether two fins would stand in the same place. */
export function overlap(some: readonly Strip[], others: readonly Strip[]): boolean {
  return some.some((a) =>
    others.some((b) => {
      const [from, to] = [Math.max(a.x[0], b.x[0]), Math.min(a.x[1], b.x[1])];
      if (to - from <= SAME_MM) return false;
      const [one, other] = [a, b].map((strip) => edgesAt(strip, (from + to) / 2));
      return Math.min(one[1], other[1]) - Math.max(one[0], other[0]) > SAME_MM;
    }),
  );
}

function edgesAt({ x, low, high }: Strip, at: Mm): readonly [Mm, Mm] {
  const share = (at - x[0]) / (x[1] - x[0]);
  return [low[0] + share * (low[1] - low[0]), high[0] + share * (high[1] - high[0])];
}
