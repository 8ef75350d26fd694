import { describe, expect, test } from 'vitest';
import { buildTreeShape, fitTree, type Tree } from '../../../../sim/hydro/tree.ts';
import { measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { treeOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, mapMesh } from '../../../support/meshes.ts';

const MESHES: readonly (readonly [string, Mesh])[] = [
  ['a box, of three leaves at most', barMesh(60, 20, 30)],
  ['an ellipsoid', ellipsoidMesh([40, 9, 17], 12, 17)],
  ['an ellipsoid far from the nose', mapMesh(ellipsoidMesh([40, 9, 17], 12, 17), ([x, y, z]) => [x + 500, y, z + 3])],
];

function triangles(index: Uint32Array): readonly string[] {
  return Array.from({ length: index.length / 3 }, (_, t) => index.slice(3 * t, 3 * t + 3).join(' ')).toSorted();
}

/** Nodes under a node, itself first. */
function under({ shape }: Tree, node: number): readonly number[] {
  return Array.from({ length: shape.skip[node] - node }, (_, i) => node + i);
}

describe.each(MESHES)('the tree of %s', (_, mesh) => {
  const tree = treeOf(mesh);
  const { shape } = tree;

  test('holds every triangle once, its corners in their own order', () => {
    expect(triangles(shape.index)).toEqual(triangles(mesh.topology.index));
    const leaves = under(tree, 0).filter((node) => shape.count[node] > 0);
    const held = leaves.flatMap((leaf) =>
      Array.from({ length: shape.count[leaf] }, (_unused, i) => shape.first[leaf] + i),
    );
    expect(held).toEqual(Array.from({ length: mesh.topology.index.length / 3 }, (_unused, i) => i));
  });

  test('has no leaf of more than 8 triangles, and each inner node two halves', () => {
    for (const node of under(tree, 0)) {
      expect(shape.count[node]).toBeLessThanOrEqual(8);
      if (shape.count[node] === 0) expect(shape.skip[shape.skip[node + 1]]).toBe(shape.skip[node]);
      else expect(shape.skip[node]).toBe(node + 1);
    }
  });

  test('has boxes that hold all triangles under them', () => {
    for (const node of under(tree, 0)) {
      for (const leaf of under(tree, node).filter((inner) => shape.count[inner] > 0)) {
        const corners = shape.index.subarray(3 * shape.first[leaf], 3 * (shape.first[leaf] + shape.count[leaf]));
        for (const corner of corners) {
          for (let axis = 0; axis < 3; axis++) {
            const away = Math.abs(tree.points[3 * corner + axis] - tree.boxes[6 * node + axis]);
            expect(away).toBeLessThanOrEqual(tree.boxes[6 * node + 3 + axis] + 1e-12);
          }
        }
      }
    }
  });

  test('sums up volume and moment at its root', () => {
    const { volume, centre } = measureVolume(mesh);
    expect(tree.sums[0] / 6 / volume).toBeCloseTo(1, 12);
    for (let axis = 0; axis < 3; axis++) {
      expect(tree.origin[axis] + tree.sums[1 + axis] / (4 * tree.sums[0])).toBeCloseTo(centre[axis], 9);
    }
  });
});

test('a tree fitted to other positions keeps its order and sums the new ones', () => {
  const before = ellipsoidMesh([40, 9, 17], 12, 17);
  const after = mapMesh(before, ([x, y, z]) => [2 * x, z + 4, -3 * y]);
  const shape = buildTreeShape(before.topology, before.positions);
  const tree = fitTree(shape, after.positions);
  expect(tree.shape).toBe(shape);
  expect(tree.sums[0] / 6 / measureVolume(after).volume).toBeCloseTo(1, 12);
  // half sizes of a box around it: 2 · 40 long, 3 · 9 high
  expect(tree.boxes[3]).toBeCloseTo(80, 4);
  expect(tree.boxes[5]).toBeCloseTo(27, 0);
  for (let side = 3; side < 6; side++) expect(tree.boxes[side]).toBeCloseTo(treeOf(after).boxes[side], 12);
});
