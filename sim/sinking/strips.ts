import type { Tree } from '../hydro/tree.ts';
import { dot, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm2 } from '../units/brand.ts';

/** The level axes and up of an attitude, written in the body frame: see `worldAxes`. */
export interface Axes {
  readonly along: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
}

/** A slice of a body square to its level axis, as it falls. */
export interface Strip {
  /** Where it stands on the level axis, from the body's origin, and how much of that axis it stands for. */
  readonly at: Mm;
  readonly step: Mm;
  /** What it shows to the fall, gaps in it left out, and the middle of that. */
  readonly width: Mm;
  readonly middle: Mm;
  /** Its flanks. */
  readonly from: Mm;
  readonly to: Mm;
  /** From its lowest to its highest point, and half way between them. */
  readonly height: Mm;
  readonly level: Mm;
  /** Share of its box that it fills. */
  readonly fullness: number;
}

/** Slices of one link. 40 give the area of a ball to 0.1 %, and of the demo baits' links to less. */
const SLICES = 40;
/** Slices of a fin. */
const FIN_SLICES = 12;

/** Cuts a closed mesh into slices of equal step along the level axis. Slices that meet nothing are left out. */
export function cutStrips(tree: Tree, axes: Axes, slices: number = SLICES): readonly Strip[] {
  const { points, shape, origin } = tree;
  const count = points.length / 3;
  const s = new Float64Array(count);
  const c = new Float64Array(count);
  const h = new Float64Array(count);
  const [ax, ay, az] = axes.along;
  const [bx, by, bz] = axes.across;
  const [ux, uy, uz] = axes.up;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    const [x, y, z] = [points[3 * i], points[3 * i + 1], points[3 * i + 2]];
    s[i] = ax * x + ay * y + az * z;
    c[i] = bx * x + by * y + bz * z;
    h[i] = ux * x + uy * y + uz * z;
    if (s[i] < low) low = s[i];
    if (s[i] > high) high = s[i];
  }
  const step = (high - low) / slices;
  if (!(step > 0)) return [];
  const cuts = Array.from({ length: slices }, (): Cut => ({ spans: [], low: Infinity, high: -Infinity, twice: 0 }));
  const { index } = shape;
  for (let t = 0; t < index.length; t += 3) {
    const i = index[t];
    const j = index[t + 1];
    const k = index[t + 2];
    const first = Math.max(0, Math.ceil((Math.min(s[i], s[j], s[k]) - low) / step - 0.5));
    const last = Math.min(slices - 1, Math.floor((Math.max(s[i], s[j], s[k]) - low) / step - 0.5));
    for (let n = first; n <= last; n++) {
      const at = low + (n + 0.5) * step;
      // an outward triangle enters the far side of the cut along one edge and leaves it along another
      let cIn = 0;
      let hIn = 0;
      let cOut = 0;
      let hOut = 0;
      let met = 0;
      for (let edge = 0; edge < 3; edge++) {
        const p = edge === 0 ? i : edge === 1 ? j : k;
        const q = edge === 0 ? j : edge === 1 ? k : i;
        const isNear = s[p] < at;
        if (isNear === s[q] < at) continue;
        const share = (at - s[p]) / (s[q] - s[p]);
        const cAt = c[p] + share * (c[q] - c[p]);
        const hAt = h[p] + share * (h[q] - h[p]);
        if (isNear) {
          cIn = cAt;
          hIn = hAt;
        } else {
          cOut = cAt;
          hOut = hAt;
        }
        met++;
      }
      if (met !== 2) continue;
      const cut = cuts[n];
      cut.twice += cIn * hOut - cOut * hIn;
      cut.spans.push(Math.min(cIn, cOut), Math.max(cIn, cOut));
      if (hIn < cut.low) cut.low = hIn;
      if (hOut < cut.low) cut.low = hOut;
      if (hIn > cut.high) cut.high = hIn;
      if (hOut > cut.high) cut.high = hOut;
    }
  }
  const [os, oc, oh] = [dot(origin, axes.along), dot(origin, axes.across), dot(origin, axes.up)];
  return cuts.flatMap((cut, n) => {
    const shadow = shadowOf(cut.spans);
    const height = cut.high - cut.low;
    if (!(shadow.width > 0 && height > 0)) return [];
    const area = Math.abs(cut.twice) / 2;
    return [
      {
        at: os + low + (n + 0.5) * step,
        step,
        width: shadow.width,
        middle: oc + shadow.middle,
        from: oc + shadow.from,
        to: oc + shadow.to,
        height,
        level: oh + (cut.low + cut.high) / 2,
        fullness: area / (shadow.width * height),
      },
    ];
  });
}

interface Cut {
  /** From where to where each piece of its outline goes across: two numbers a piece. */
  readonly spans: number[];
  low: number;
  high: number;
  /** Twice its area. */
  twice: number;
}

type Shadow = Pick<Strip, 'width' | 'middle' | 'from' | 'to'>;

/**
 * What the pieces of an outline cover together, each place counted once. A closed outline covers every place an even
 * number of times: where the pieces together are just twice as long as from end to end, it is one piece without gaps.
 */
function shadowOf(spans: Cut['spans']): Shadow {
  let [from, to, length] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (let i = 0; i < spans.length; i += 2) {
    if (spans[i] < from) from = spans[i];
    if (spans[i + 1] > to) to = spans[i + 1];
    length += spans[i + 1] - spans[i];
  }
  if (!(to > from)) return { width: 0, middle: 0, from: 0, to: 0 };
  const isWhole = Math.abs(length / 2 / (to - from) - 1) < 1e-9;
  return isWhole ? { width: to - from, middle: (from + to) / 2, from, to } : coveredBy(spans, from, to);
}

/** The same one after another, where there are gaps or slots. */
function coveredBy(spans: Cut['spans'], from: number, to: number): Shadow {
  const order = Array.from({ length: spans.length / 2 }, (_, i) => 2 * i).sort((a, b) => spans[a] - spans[b]);
  let width = 0;
  let moment = 0;
  let end = from;
  for (const i of order) {
    const start = Math.max(spans[i], end);
    const stop = spans[i + 1];
    if (stop <= start) continue;
    width += stop - start;
    moment += (stop - start) * ((start + stop) / 2);
    end = stop;
  }
  return { width, middle: moment / width, from, to };
}

/** A fin's slices that the wood does not shade: only what stands out to a side of it, or before or behind. */
export function cutFinStrips(fin: Tree, wood: readonly Strip[], axes: Axes): readonly Strip[] {
  return cutStrips(fin, axes, FIN_SLICES).flatMap((strip) => {
    const over = wood.find(({ at, step }) => Math.abs(at - strip.at) <= step / 2);
    if (!over) return [strip];
    const port = Math.max(0, Math.min(over.from, strip.to) - strip.from);
    const starboard = Math.max(0, strip.to - Math.max(over.to, strip.from));
    const width = port + starboard;
    if (width === 0) return [];
    const middle = (port * (strip.from + port / 2) + starboard * (strip.to - starboard / 2)) / width;
    return [{ ...strip, width, middle }];
  });
}

/**
 * Outer area of a body from its slices in order: between two of them as between two rings of their girth, and to either
 * end. A link's flat face comes out whole. Where slices of two links meet, nothing is closed between them.
 */
export function girthArea(strips: readonly Strip[]): Mm2 {
  if (strips.length === 0) return 0;
  const rings = strips.map((strip) => ({ at: strip.at, radius: girth(strip) / (2 * Math.PI) }));
  const [first, last] = [strips[0], strips[strips.length - 1]];
  const all = [{ at: first.at - first.step / 2, radius: 0 }, ...rings, { at: last.at + last.step / 2, radius: 0 }];
  return all.slice(1).reduce((sum, { at, radius }, i) => {
    const before = all[i];
    return sum + Math.PI * (radius + before.radius) * Math.hypot(at - before.at, radius - before.radius);
  }, 0);
}

/**
 * Girth of a section: of an ellipse π (a + b)(1 + 3h/(10 + √(4 - 3h))), h = ((a - b)/(a + b))² (Ramanujan, from memory),
 * and in between that and its box as its fullness is.
 */
function girth({ width, height, fullness }: Strip): Mm {
  const [a, b] = [width / 2, height / 2];
  const h = ((a - b) / (a + b)) ** 2;
  const ellipse = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  const square = Math.min(1, Math.max(0, (fullness - Math.PI / 4) / (1 - Math.PI / 4)));
  return ellipse + square * (2 * (width + height) - ellipse);
}
