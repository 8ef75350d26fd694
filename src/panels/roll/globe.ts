import type { Drop, Vec3 } from '../../../sim/index.ts';

/** The drawing's own units. Two discs side by side: back up at the left, belly up at the right. */
export const SIZE = { width: 372, height: 222 } as const;
export const RADIUS = 80;
export const MIDDLES = [
  { x: 93, y: 112 },
  { x: 279, y: 112 },
] as const;

/** A place on the map. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** What one rest catches, as a path, and the lines between what two rests catch. */
export interface Globe {
  readonly regions: readonly { readonly rest: number; readonly path: string }[];
  readonly borders: string;
}

type Half = 0 | 1;

/** A disc and a step along a great circle: 18 degrees of a cell's side bend too little to be seen after three. */
const PIECES = 3;
const DUST = 1e-9;

/**
 * Where an up-vector stands on the map: the bait seen from above, nose to the left, starboard at the top; towards the side
 * that is down, by Lambert's equal areas (distance from the middle √(1 - |n_z|) of the radius), so that areas are shares.
 */
export function placeOf(up: Vec3): Place {
  return onHalf(up, up[2] >= 0 ? 0 : 1);
}

function onHalf([x, y, z]: Vec3, half: Half): Place {
  const middle = MIDDLES[half];
  const flat = Math.hypot(x, y);
  const away = RADIUS * Math.sqrt(Math.max(0, 1 - Math.abs(z)));
  if (flat < DUST) return middle;
  // down is where up is not: nose-down has x > 0 and goes left, starboard down has y < 0 and goes up
  return { x: middle.x - (away * x) / flat, y: middle.y + (away * y) / flat };
}

/** Lays out what each drop's cell ends in. cells: corners of each drop's cell, in its order. */
export function layOutGlobe(drops: readonly Drop[], cells: readonly (readonly Vec3[])[]): Globe {
  const paths = new Map<number, string[]>();
  const sides = new Map<string, { readonly rest: number; readonly from: Vec3; readonly to: Vec3 }>();
  const borders: string[] = [];
  drops.forEach(({ rest }, i) => {
    const corners = cells[i];
    if (corners === undefined) return;
    const path = paths.get(rest) ?? [];
    paths.set(rest, path);
    for (const half of [0, 1] as const) path.push(pathOf(clipped(finely(corners), half), half));
    corners.forEach((from, k) => {
      const to = corners[(k + 1) % corners.length] ?? from;
      const key = [keyOf(from), keyOf(to)].toSorted().join(' ');
      const other = sides.get(key);
      if (other === undefined) sides.set(key, { rest, from, to });
      else if (other.rest !== rest) borders.push(borderOf(from, to));
    });
  });
  return {
    regions: [...paths].toSorted(([a], [b]) => a - b).map(([rest, path]) => ({ rest, path: path.join('') })),
    borders: borders.join(''),
  };
}

function keyOf(point: Vec3): string {
  return point.map((part) => Math.round(part * 1e6)).join();
}

/** A closed run of great circles in short pieces. */
function finely(corners: readonly Vec3[]): readonly Vec3[] {
  return corners.flatMap((from, k) => pieces(from, corners[(k + 1) % corners.length] ?? from).slice(0, -1));
}

function pieces(from: Vec3, to: Vec3): readonly Vec3[] {
  return Array.from({ length: PIECES + 1 }, (_, i) => between(from, to, i / PIECES));
}

function between(a: Vec3, b: Vec3, share: number): Vec3 {
  const point: Vec3 = [0, 1, 2].map((axis) => (a[axis] ?? 0) * (1 - share) + (b[axis] ?? 0) * share) as unknown as Vec3;
  const size = Math.hypot(...point);
  return [point[0] / size, point[1] / size, point[2] / size];
}

/** What of a closed run lies on a half of the sphere; where it is cut it follows the rim. */
function clipped(points: readonly Vec3[], half: Half): readonly Vec3[] {
  const height = (point: Vec3) => (half === 0 ? point[2] : -point[2]);
  const kept: Vec3[] = [];
  points.forEach((point, i) => {
    const next = points[(i + 1) % points.length] ?? point;
    const [a, b] = [height(point), height(next)];
    if (a >= 0) kept.push(point);
    if (a >= 0 !== b >= 0) kept.push(between(point, next, a / (a - b)));
  });
  return kept.flatMap((point, i) => {
    const next = kept[(i + 1) % kept.length] ?? point;
    const isRim = Math.abs(point[2]) < 1e-6 && Math.abs(next[2]) < 1e-6;
    return isRim ? pieces(point, next).slice(0, -1) : [point];
  });
}

function pathOf(points: readonly Vec3[], half: Half): string {
  if (points.length < 3) return '';
  return `M${points.map((point) => written(onHalf(point, half))).join('L')}Z`;
}

/** A line that leaves one disc comes into the other: each has its part of it. */
function borderOf(from: Vec3, to: Vec3): string {
  const run = pieces(from, to);
  return ([0, 1] as const)
    .map((half) => {
      const own = run.flatMap((point, i) => {
        const inside = (each: Vec3) => (half === 0 ? each[2] >= 0 : each[2] < 0);
        const next = run[i + 1];
        const cut =
          next !== undefined && inside(point) !== inside(next)
            ? [between(point, next, point[2] / (point[2] - next[2]))]
            : [];
        return [...(inside(point) ? [point] : []), ...cut];
      });
      return own.length < 2 ? '' : `M${own.map((point) => written(onHalf(point, half))).join('L')}`;
    })
    .join('');
}

function written({ x, y }: Place): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}

/** The name of a rest on the map: A for the first, then B, C and so on; past Z with a number. */
export function letterOf(rest: number): string {
  const letter = String.fromCharCode(65 + (rest % 26));
  return rest < 26 ? letter : `${letter}${Math.floor(rest / 26) + 1}`;
}
