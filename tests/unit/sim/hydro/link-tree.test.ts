import { expect, test } from 'vitest';
import { linkTree } from '../../../../sim/hydro/link-tree.ts';
import { measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../../sim/mesh/topology.ts';
import { treeOf } from '../../../support/float-mesh.ts';
import { ellipsoidMesh, mapMesh } from '../../../support/meshes.ts';

/** Positions for a link's topology: here any will do that are not alike. */
function scattered(vertexCount: number, seed: number): Float64Array {
  return Float64Array.from({ length: 3 * vertexCount }, (_, i) => Math.sin(seed + 12.9898 * i) * 50);
}

test('links of one kind share one order of triangles, whichever came first', () => {
  const topology = linkTopology({ bands: 12, steps: 6, foreTip: true, aftTip: false, slots: 1 });
  const link = (seed: number): Mesh => ({ topology, positions: scattered(topology.vertexCount, seed) });
  const first = linkTree(link(1));
  const second = linkTree(link(2));
  expect(second.shape).toBe(first.shape);
  expect(second.points).not.toEqual(first.points);
  // made from neither: both would have given another order
  for (const seed of [1, 2]) expect(treeOf(link(seed)).shape.index).not.toEqual(first.shape.index);
});

test.each([
  { foreTip: true, aftTip: false, slots: 0 },
  { foreTip: false, aftTip: true, slots: 2 },
  { foreTip: false, aftTip: false, slots: 3 },
])('the order holds every triangle of its kind once: %o', (kind) => {
  const topology = linkTopology({ bands: 10, steps: 6, ...kind });
  const { shape } = linkTree({ topology, positions: scattered(topology.vertexCount, 3) });
  const sorted = (index: Uint32Array) =>
    Array.from({ length: index.length / 3 }, (_, t) => index.slice(3 * t, 3 * t + 3).join(' ')).toSorted();
  expect(sorted(shape.index)).toEqual(sorted(topology.index));
});

test('a mesh that is no link gets an order of its own', () => {
  const mesh = ellipsoidMesh([20, 5, 9], 8, 9);
  const wide = { topology: mesh.topology, positions: mapMesh(mesh, ([x, y, z]) => [x, 9 * y, z]).positions };
  const tree = linkTree(mesh);
  expect(tree.sums[0] / 6).toBeCloseTo(measureVolume(mesh).volume, 6);
  expect(linkTree(wide).shape).toBe(tree.shape);
  expect(linkTree(wide).sums[0] / 6).toBeCloseTo(9 * measureVolume(mesh).volume, 5);
});
