import type { Mesh } from '../mesh/mesh.ts';
import type { Mm } from '../units/brand.ts';
import { SAME_MM, type Strip } from './fin-strips.ts';

/**
 * Plates of a thickness about the centre plane as one mesh: for each a closed, outward shell of its own, of two flat
 * faces and a rim. Strips that meet share all corners of the line between them, so that no edge is left open.
 */
export function plateMesh(plates: readonly (readonly Strip[])[], thickness: Mm): Mesh {
  const positions: number[] = [];
  const index: number[] = [];
  for (const plate of plates) {
    const { corners, triangles } = flatPlate(plate);
    const first = positions.length / 3;
    // each corner twice: to port, then to starboard
    for (const [x, z] of corners) positions.push(x, -thickness / 2, z, x, thickness / 2, z);
    const port = (corner: number) => first + 2 * corner;
    const starboard = (corner: number) => first + 2 * corner + 1;
    for (const [a, b, c] of triangles) {
      index.push(port(a), port(b), port(c), starboard(a), starboard(c), starboard(b));
    }
    for (const [a, b] of rimOf(triangles)) {
      index.push(port(b), port(a), starboard(a), port(b), starboard(a), starboard(b));
    }
  }
  const triangles = index.length / 3;
  return {
    topology: {
      key: `fin ${positions.length / 3} ${triangles}`,
      vertexCount: positions.length / 3,
      index: Uint32Array.from(index),
      patches: [{ kind: 'skin', from: 0, count: triangles }],
    },
    positions: Float64Array.from(positions),
  };
}

/** Corner numbers, anticlockwise with x to the right and z up. */
type Flat = readonly [number, number, number];

interface FlatPlate {
  readonly corners: readonly (readonly [Mm, Mm])[];
  readonly triangles: readonly Flat[];
}

function flatPlate(strips: readonly Strip[]): FlatPlate {
  const heights = new Map<Mm, number[]>();
  const note = (x: Mm, z: Mm) => {
    const column = heights.get(x) ?? [];
    if (!column.some((other) => Math.abs(other - z) <= SAME_MM)) column.push(z);
    heights.set(x, column);
  };
  for (const { x, low, high } of strips) {
    for (const end of [0, 1] as const) {
      note(x[end], low[end]);
      note(x[end], high[end]);
    }
  }
  const corners: (readonly [Mm, Mm])[] = [];
  const columns = new Map<Mm, readonly number[]>();
  for (const [x, column] of heights) {
    columns.set(
      x,
      column.toSorted((a, b) => a - b).map((z) => corners.push([x, z]) - 1),
    );
  }
  const chain = (x: Mm, low: Mm, high: Mm) =>
    (columns.get(x) ?? []).filter((corner) => {
      const z = corners[corner][1];
      return z >= low - SAME_MM && z <= high + SAME_MM;
    });
  const triangles = strips.flatMap(({ x, low, high }) =>
    between(chain(x[0], low[0], high[0]), chain(x[1], low[1], high[1]), corners),
  );
  return { corners, triangles };
}

/** Triangles between two upright lines of corners, from the bottom up. */
function between(fore: readonly number[], aft: readonly number[], corners: FlatPlate['corners']): readonly Flat[] {
  const triangles: Flat[] = [];
  let [i, j] = [0, 0];
  while (i + 1 < fore.length || j + 1 < aft.length) {
    const foreNext = i + 1 < fore.length ? corners[fore[i + 1]][1] : Number.POSITIVE_INFINITY;
    const aftNext = j + 1 < aft.length ? corners[aft[j + 1]][1] : Number.POSITIVE_INFINITY;
    if (aftNext <= foreNext) {
      triangles.push([fore[i], aft[j], aft[j + 1]]);
      j++;
    } else {
      triangles.push([fore[i], aft[j], fore[i + 1]]);
      i++;
    }
  }
  return triangles;
}

/** Edges that only one triangle has, in its direction. */
function rimOf(triangles: readonly Flat[]): readonly (readonly [number, number])[] {
  const edges = triangles.flatMap(([a, b, c]) => [[a, b] as const, [b, c] as const, [c, a] as const]);
  const known = new Set(edges.map(([a, b]) => `${a} ${b}`));
  return edges.filter(([a, b]) => !known.has(`${b} ${a}`));
}
