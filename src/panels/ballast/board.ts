import type { Mesh, Mm, PlacedHole } from '../../../sim/index.ts';

/** A point of the side view: x from the nose tip, z over the datum. */
export type SidePoint = readonly [x: Mm, z: Mm];

/** Places along a link at which its outline is taken. */
const STATIONS = 80;

/** A link from its side: along its back to its tail end, and back along its belly; true at each station. */
export function sideOutline({ topology, positions }: Mesh): readonly SidePoint[] {
  const edges = skinEdges(topology, positions);
  const xs = edges.flatMap(([[a], [b]]) => [a, b]);
  const from = xs.reduce((least, x) => Math.min(least, x), Number.POSITIVE_INFINITY);
  const to = xs.reduce((most, x) => Math.max(most, x), Number.NEGATIVE_INFINITY);
  const step = (to - from) / STATIONS;
  const highest: number[] = [];
  const lowest: number[] = [];
  for (const [[xa, za], [xb, zb]] of edges) {
    for (let i = Math.ceil((xa - from) / step - DUST); i <= (xb - from) / step + DUST; i++) {
      const share = xb === xa ? 0 : Math.min(1, Math.max(0, (from + i * step - xa) / (xb - xa)));
      // an edge that lies at a station has its two ends there
      for (const z of xb === xa ? [za, zb] : [za + (zb - za) * share]) {
        highest[i] = Math.max(highest[i] ?? z, z);
        lowest[i] = Math.min(lowest[i] ?? z, z);
      }
    }
  }
  const along = (heights: readonly number[]) => heights.map((z, i): SidePoint => [from + i * step, z]);
  return [...along(highest), ...along(lowest).toReversed()];
}

const DUST = 1e-9;

/** Every edge of the skin from fore to aft; slots and faces lie within it. */
function skinEdges({ patches, index }: Mesh['topology'], positions: Float64Array) {
  const at = (vertex: number): SidePoint => [positions[3 * vertex] ?? 0, positions[3 * vertex + 2] ?? 0];
  return patches
    .filter(({ kind }) => kind === 'skin')
    .flatMap(({ from, count }) =>
      [...index.subarray(3 * from, 3 * (from + count))].map((vertex, i, all): readonly [SidePoint, SidePoint] => {
        const next = all[i % 3 === 2 ? i - 2 : i + 1] ?? vertex;
        const [a, b] = [at(vertex), at(next)];
        return a[0] <= b[0] ? [a, b] : [b, a];
      }),
    );
}

/** A hole that comes from belly or back, seen from its side: the wood that is drilled away, and the lead in it. */
export function holeSides({ mouth, inward, hole, depth, pointDepth, lead }: PlacedHole): {
  readonly drilled: readonly SidePoint[];
  readonly lead: readonly SidePoint[];
} {
  const [x, , skin] = mouth;
  const down = Math.sign(inward[2]);
  const shape = (from: Mm, shoulder: Mm, tip: Mm, diameter: Mm): readonly SidePoint[] => [
    [x - diameter / 2, skin + down * from],
    [x - diameter / 2, skin + down * shoulder],
    [x, skin + down * tip],
    [x + diameter / 2, skin + down * shoulder],
    [x + diameter / 2, skin + down * from],
  ];
  const tip = depth + pointDepth;
  return {
    drilled: shape(0, depth, tip, hole.diameter),
    lead: lead === null ? [] : shape(lead.from, lead.to, lead.fillsPoint ? tip : lead.to, lead.diameter),
  };
}

/** The row of each label under the drawing, so that none runs into another. Places and widths in pixels, from the left. */
export function labelRows(labels: readonly { readonly at: number; readonly width: number }[]): readonly number[] {
  const ends: number[] = [];
  return labels.map(({ at, width }) => {
    const free = ends.findIndex((end) => end <= at - width / 2);
    const row = free === -1 ? ends.length : free;
    ends[row] = at + width / 2;
    return row;
  });
}
