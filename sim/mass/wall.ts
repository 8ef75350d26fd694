import { type Hull, halfWidthAt, heightAt, type Station, stationOf } from '../hull/hull.ts';
import { add, dot, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';
import type { PlacedHole } from './placed.ts';

/** Steps of the first look over the skin, and of the last. */
const COARSE_MM = 2;
const FINE_MM = 0.01;

/** The least wood round what lies in a hole, and where it is thinnest. */
export interface Wall {
  readonly thickness: Mm;
  /** On the bare skin. */
  readonly at: Vec3;
}

/**
 * Least distance from what lies in a hole to the bare skin: from its lead, or its chamber, or from the floor of a hole
 * that is all plug, each as wide as the hole, and from the drill's point. Through the plug it counts as well: lead just
 * under the skin has no wall. 0 where it breaks through.
 */
export function wallOf(hull: Hull, hole: PlacedHole): Wall {
  const core = coreOf(hole);
  const middle = add(hole.mouth, scale(hole.inward, (core.from + core.to) / 2));
  if (!isInside(hull, hole, core)) return { thickness: 0, at: middle };
  // no further than straight out from the floor: what is further off need not be looked at
  const reach = straightOut(hull, hole, core);
  let best: Wall = { thickness: Number.POSITIVE_INFINITY, at: middle };
  for (const sheet of sheetsRound(hull, hole, core, reach)) {
    const found = nearestOn(sheet, (point) => distanceTo(hole, core, point), best.thickness);
    if (found && found.thickness < best.thickness) best = found;
  }
  return best;
}

/** Where the lead or the chamber lies along the axis, from the mouth; apex: the drill's point. */
interface Core {
  readonly from: Mm;
  readonly to: Mm;
  readonly apex: Mm;
}

function coreOf({ lead, air, depth, pointDepth }: PlacedHole): Core {
  const from = Math.min(lead?.from ?? air?.from ?? depth, depth);
  return { from, to: depth, apex: depth + pointDepth };
}

function distanceTo({ mouth, inward, diameter }: PlacedHole, core: Core, point: Vec3): Mm {
  const away = subtract(point, mouth);
  const t = dot(away, inward);
  const beside = Math.sqrt(Math.max(0, dot(away, away) - t * t));
  const shaft = Math.hypot(Math.max(0, beside - diameter / 2), Math.max(core.from - t, 0, t - core.to));
  return Math.min(shaft, Math.hypot(beside, t - core.apex));
}

const TURNS = 12;

function rimPoints({ mouth, inward, diameter }: PlacedHole, t: Mm): readonly Vec3[] {
  const radius = diameter / 2;
  return Array.from({ length: TURNS }, (_, turn): Vec3 => {
    const angle = (2 * Math.PI * turn) / TURNS;
    const [a, b] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return add(add(mouth, scale(inward, t)), inward[2] !== 0 ? [a, b, 0] : [a, 0, b]);
  });
}

function isInside(hull: Hull, hole: PlacedHole, core: Core): boolean {
  const points = [
    ...rimPoints(hole, core.from),
    ...rimPoints(hole, core.to),
    add(hole.mouth, scale(hole.inward, core.apex)),
  ];
  return points.every(([x, y, z]) => {
    if (x < 0 || x > hull.length) return false;
    const station = stationOf(hull, x);
    const [half, top, bottom] = [
      halfWidthAt(hull, station, z),
      heightAt(hull, station, 'back', y),
      heightAt(hull, station, 'belly', y),
    ];
    return half !== null && top !== null && bottom !== null && Math.abs(y) < half && z < top && z > bottom;
  });
}

/** From the axis at the floor to the skin, straight out each way, less the radius where that is sideways. */
function straightOut(hull: Hull, { mouth, inward, diameter }: PlacedHole, core: Core): Mm {
  const [x, y, z] = add(mouth, scale(inward, core.to));
  const station = stationOf(hull, x);
  const half = halfWidthAt(hull, station, z) ?? 0;
  const top = heightAt(hull, station, 'back', y) ?? z;
  const bottom = heightAt(hull, station, 'belly', y) ?? z;
  const radius = diameter / 2;
  const [wide, tall] = inward[2] !== 0 ? [radius, 0] : [0, radius];
  return Math.max(0, Math.min(half - Math.abs(y) - wide, top - z - tall, z - bottom - tall));
}

/** A part of the skin over a rectangle of two coordinates. */
interface Sheet {
  readonly low: readonly [Mm, Mm];
  readonly high: readonly [Mm, Mm];
  readonly pointAt: (u: Mm, v: Mm, station: Station) => Vec3 | null;
  readonly stationAt: (u: Mm) => Station;
}

/** Flanks over (x, z), back and belly over (x, y): wherever the skin lies steep in one it lies flat in another. */
function sheetsRound(hull: Hull, hole: PlacedHole, core: Core, reach: Mm): readonly Sheet[] {
  const ends = [hole.mouth, add(hole.mouth, scale(hole.inward, core.apex))];
  const room = hole.diameter / 2 + reach;
  const range = (axis: 0 | 1 | 2): readonly [Mm, Mm] => {
    const inPlay = ends.map((end) => end[axis]);
    return [Math.min(...inPlay) - room, Math.max(...inPlay) + room];
  };
  const [xs, ys, zs] = [range(0), range(1), range(2)];
  const x0 = Math.max(0, xs[0]);
  const x1 = Math.min(hull.length, xs[1]);
  const at = (u: Mm) => stationOf(hull, u);
  const flank = (side: 1 | -1): Sheet => ({
    low: [x0, zs[0]],
    high: [x1, zs[1]],
    stationAt: at,
    pointAt: (u, v, station) => {
      const half = halfWidthAt(hull, station, v);
      return half === null ? null : [u, side * half, v];
    },
  });
  const face = (on: 'back' | 'belly'): Sheet => ({
    low: [x0, ys[0]],
    high: [x1, ys[1]],
    stationAt: at,
    pointAt: (u, v, station) => {
      const height = heightAt(hull, station, on, v);
      return height === null ? null : [u, v, height];
    },
  });
  // about the centre plane one flank is the image of the other
  const isMiddle = hole.inward[2] !== 0 && hole.mouth[1] === 0;
  return [flank(1), ...(isMiddle ? [] : [flank(-1)]), face('belly'), face('back')];
}

/** The nearest point of a sheet: a coarse look, then steps that halve. null: none of it can be nearer than `known`. */
function nearestOn(sheet: Sheet, distance: (point: Vec3) => Mm, known: Mm): Wall | null {
  const [counts, steps] = [0, 1]
    .map((axis) => {
      const width = sheet.high[axis] - sheet.low[axis];
      const count = Math.max(1, Math.ceil(width / COARSE_MM));
      return [count, width / count];
    })
    .reduce<readonly [number[], number[]]>(
      ([c, s], [count, step]) => [
        [...c, count],
        [...s, step],
      ],
      [[], []],
    );
  let [u, v, least] = [0, 0, Number.POSITIVE_INFINITY];
  let at: Vec3 | null = null;
  const look = (nu: Mm, nv: Mm, station: Station) => {
    const point = sheet.pointAt(nu, nv, station);
    if (!point) return;
    const far = distance(point);
    if (far < least) [u, v, least, at] = [nu, nv, far, point];
  };
  for (let i = 0; i <= counts[0]; i++) {
    const x = sheet.low[0] + i * steps[0];
    const station = sheet.stationAt(x);
    for (let j = 0; j <= counts[1]; j++) look(x, sheet.low[1] + j * steps[1], station);
  }
  // between two looks the skin may come nearer by a step at most
  if (!at || least > known + COARSE_MM) return null;
  for (let step = COARSE_MM / 2; step > FINE_MM / 2; ) {
    const [fromU, fromV] = [u, v];
    for (const du of [-step, 0, step]) {
      const x = Math.min(sheet.high[0], Math.max(sheet.low[0], fromU + du));
      const station = sheet.stationAt(x);
      for (const dv of [-step, 0, step]) look(x, fromV + dv, station);
    }
    if (u === fromU && v === fromV) step /= 2;
  }
  return { thickness: least, at };
}
