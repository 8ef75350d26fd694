import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { KeepOut, Mm, PlacedHole, Vec3 } from '../../sim/index.ts';
import { along } from './along.ts';
import { coreOf } from './wall-mark.ts';

/** Triangles that are being gathered: three numbers to a vertex, three vertices to a triangle, outward. */
export interface Triangles {
  readonly positions: number[];
  readonly normals: number[];
  readonly index: number[];
}

export function noTriangles(): Triangles {
  return { positions: [], normals: [], index: [] };
}

/** Strips to half a quarter turn of a rounded edge. */
const ROUND_STEPS = 2;
/** Rounded corners along an axis: where on the cube, -1..1, and on which side of the box; two stand in the middle. */
const ACROSS: readonly { readonly slope: number; readonly side: 1 | -1 }[] = ([-1, 1] as const).flatMap((side) =>
  Array.from({ length: ROUND_STEPS + 1 }, (_, i) => {
    const step = (side < 0 ? ROUND_STEPS - i : i) / ROUND_STEPS;
    return { slope: side * Math.tan((step * Math.PI) / 4), side };
  }),
);
const COUNT = ACROSS.length;

/**
 * All that lies within a radius of a box along the axes: a box with rounded edges, a capsule where the box is a line, a
 * ball where it is a point, a plain box for radius 0. A ball's six faces, blown up from a cube, each cut through the
 * middle both ways and moved to its corner of the box; what was one line there becomes a flat strip.
 */
export function addRoundedBox(out: Triangles, { low, high, radius }: Pick<KeepOut, 'low' | 'high' | 'radius'>): void {
  for (const axis of [0, 1, 2] as const) {
    const [u, v] = [(axis + 1) % 3, (axis + 2) % 3];
    for (const side of [-1, 1] as const) {
      const first = out.positions.length / 3;
      for (const one of ACROSS) {
        for (const other of ACROSS) {
          const long = Math.hypot(1, one.slope, other.slope);
          const normal = [0, 0, 0];
          [normal[axis], normal[u], normal[v]] = [side / long, one.slope / long, other.slope / long];
          const sides = [0, 0, 0];
          [sides[axis], sides[u], sides[v]] = [side, one.side, other.side];
          for (const i of [0, 1, 2]) {
            out.positions.push((sides[i] > 0 ? high[i] : low[i]) + radius * normal[i]);
            out.normals.push(normal[i]);
          }
        }
      }
      addGrid(out, first, COUNT, COUNT, side < 0);
    }
  }
}

/** Strips to a turn, and to a quarter turn of a shell's edges. */
export const TURNS = 32;
const QUARTER_STEPS = 5;

/** All that lies within a wall of what a hole's wall is measured from: round lead, and round the tip of the drill's point. */
export function addWallShell(out: Triangles, hole: PlacedHole, wall: Mm): void {
  const { mouth, inward, diameter, pointDepth } = hole;
  const { from, to, apex } = coreOf(hole);
  const radius = diameter / 2;
  // along the axis, out from it, and how the shell faces there: up one end, round its edge, down the side, round, in
  const profile: ProfilePoint[] = [[from - wall, 0, -Math.PI / 2]];
  for (const [end, start] of [
    [from, -Math.PI / 2],
    [to, 0],
  ] as const) {
    for (let i = 0; i <= QUARTER_STEPS; i++) {
      const angle = start + ((Math.PI / 2) * i) / QUARTER_STEPS;
      profile.push([end + wall * Math.sin(angle), radius + wall * Math.cos(angle), angle]);
    }
  }
  profile.push([to + wall, 0, Math.PI / 2]);

  const [a, b] = acrossOf(inward);
  addTurned(out, { at: mouth, across: [a, b], axis: inward }, profile);
  const tip = along(mouth, inward, apex);
  if (pointDepth > 0) addRoundedBox(out, { low: tip, high: tip, radius: wall });
}

/** Of what is turned: how far along the axis, how far out, and which way it faces from straight out to along the axis. */
export type ProfilePoint = readonly [t: Mm, r: Mm, angle: number];

/** Where the axis begins, and two directions across it that make a right-handed set with its own. */
interface Turned {
  readonly at: Vec3;
  readonly across: readonly [Vec3, Vec3];
  readonly axis: Vec3;
}

/** A profile turned about an axis, its points in the order in which the axis goes. */
export function addTurned(
  out: Triangles,
  { at, across: [a, b], axis }: Turned,
  profile: readonly ProfilePoint[],
): void {
  const first = out.positions.length / 3;
  for (const [t, r, angle] of profile) {
    const middle = along(at, axis, t);
    for (let turn = 0; turn <= TURNS; turn++) {
      const [cos, sin] = [Math.cos((2 * Math.PI * turn) / TURNS), Math.sin((2 * Math.PI * turn) / TURNS)];
      for (const i of [0, 1, 2] as const) {
        const outward = cos * a[i] + sin * b[i];
        out.positions.push(middle[i] + r * outward);
        out.normals.push(Math.cos(angle) * outward + Math.sin(angle) * axis[i]);
      }
    }
  }
  addGrid(out, first, profile.length, TURNS + 1, true);
}

/** Two triangles for each field of a grid of vertices, row by row; turned: seen from the other side. */
function addGrid({ index }: Triangles, first: number, rows: number, columns: number, turned: boolean): void {
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const a = first + row * columns + column;
      const [b, c, d] = [a + columns, a + columns + 1, a + 1];
      index.push(...(turned ? [a, c, b, a, d, c] : [a, b, c, a, c, d]));
    }
  }
}

/** Two unit vectors across a third that make a right-handed set with it: a, b, axis. */
function acrossOf([x, y, z]: Vec3): readonly [Vec3, Vec3] {
  const flat = Math.hypot(y, z);
  const a: Vec3 = flat === 0 ? [0, 1, 0] : [0, z / flat, -y / flat];
  return [a, [y * a[2] - z * a[1], z * a[0] - x * a[2], x * a[1] - y * a[0]]];
}

/** Whoever calls disposes of it. */
export function geometryOf({ positions, normals, index }: Triangles): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.setAttribute('normal', new Float32BufferAttribute(normals, 3));
  geometry.setIndex(index);
  return geometry;
}
