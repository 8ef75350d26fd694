import { describe, expect, test } from 'vitest';
import type { Mesh } from '../../../../sim/index.ts';
import { createDrawnMeshes, fillDrawnMesh, layOut, makeDrawnMesh } from '../../../../src/scene/drawn-mesh.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { outcomesOf } from '../../../support/worked-bait.ts';

/** Semi-axes of the plain bait of tests/support/make-design.ts, an exact ellipsoid about x = 60. */
const [A, B, C] = [60, 10, 18];
const FLAT_FACE_AT = 59;

function meshOf(pieces: 1 | 2, link: number): Mesh {
  const outcome = outcomesOf(makeDesignFile({ pieces, coats: [] })).links[link]?.wetted;
  if (!outcome) throw new Error(`the plain bait of ${pieces} has no link ${link}`);
  return goodOf(outcome).mesh;
}

describe('the buffers of a link', () => {
  const [coarse, full, other] = [meshOf(1, 0), meshOf(2, 0), meshOf(2, 1)].map(({ topology }) => topology);

  test('are the same ones for two meshes that take turns, as they do while a value is dragged', () => {
    const meshes = createDrawnMeshes();
    const [first, second] = [meshes.of(coarse), meshes.of(full)];
    expect(second).not.toBe(first);
    for (let turn = 0; turn < 3; turn++) {
      expect(meshes.of(coarse)).toBe(first);
      expect(meshes.of(full)).toBe(second);
    }
  });

  test('are given back when a third takes their place, and all of them at the end', () => {
    const meshes = createDrawnMeshes();
    const disposed: string[] = [];
    const watched = (name: string, topology: typeof coarse) => {
      const { whole, skin, edges } = meshes.of(topology);
      for (const geometry of [whole, skin, edges]) geometry.addEventListener('dispose', () => disposed.push(name));
    };
    watched('coarse', coarse);
    watched('full', full);
    meshes.of(coarse);
    watched('other', other);
    expect(disposed).toEqual(['full', 'full', 'full']);
    meshes.dispose();
    expect(disposed.slice(3).sort()).toEqual(['coarse', 'coarse', 'coarse', 'other', 'other', 'other']);
  });
});

describe('a link as it is drawn', () => {
  test('keeps every triangle and every corner of the mesh', () => {
    const mesh = meshOf(2, 0);
    const drawn = makeDrawnMesh(mesh.topology);
    fillDrawnMesh(drawn, mesh);
    const { source, index } = drawn.layout;
    const cornersOf = (triangles: Iterable<number>) => {
      const numbers = [...triangles];
      return Array.from({ length: numbers.length / 3 }, (_, i) => numbers.slice(3 * i, 3 * i + 3).join(' ')).sort();
    };
    expect(cornersOf(Array.from(index, (vertex) => source[vertex]))).toEqual(cornersOf(mesh.topology.index));
    const place = drawn.whole.getAttribute('position');
    source.forEach((vertex, i) => {
      expect(place.getX(i)).toBe(Math.fround(mesh.positions[3 * vertex]));
      expect(place.getZ(i)).toBe(Math.fround(mesh.positions[3 * vertex + 2]));
    });
  });

  test('has its skin first, and no vertex in two patches', () => {
    const { topology } = meshOf(2, 0);
    const { kind, index, skinCount } = layOut(topology);
    const kinds = Array.from(index, (vertex) => kind[vertex]);
    expect(new Set(kinds.slice(0, skinCount))).toEqual(new Set([0]));
    // no fore face at the nose
    expect(new Set(kinds.slice(skinCount))).toEqual(new Set([2, 3]));
    for (let i = 0; i < kinds.length; i += 3) expect(new Set(kinds.slice(i, i + 3)).size).toBe(1);
  });

  test('is shaded along the normal of its skin: on the plain ellipsoid, the closed form', () => {
    const mesh = meshOf(1, 0);
    const drawn = makeDrawnMesh(mesh.topology);
    fillDrawnMesh(drawn, mesh);
    const normal = drawn.whole.getAttribute('normal');
    for (let i = 0; i < normal.count; i++) {
      const [x, y, z] = mesh.positions.subarray(3 * drawn.layout.source[i]);
      const gradient = [(x - 60) / A ** 2, y / B ** 2, z / C ** 2];
      const long = Math.hypot(...gradient);
      const cosine =
        (normal.getX(i) * gradient[0] + normal.getY(i) * gradient[1] + normal.getZ(i) * gradient[2]) / long;
      // 5 degrees: what a facet of the mesh turns by at the tips; an inward or a flat normal misses by far more
      expect(cosine).toBeGreaterThan(Math.cos((5 * Math.PI) / 180));
    }
  });

  test('has a rim drawn where skin meets face, and none where there is no face', () => {
    const cut = meshOf(2, 0);
    const { edges, source } = layOut(cut.topology);
    expect(edges.length).toBeGreaterThan(0);
    for (const vertex of edges) expect(cut.positions[3 * source[vertex]]).toBeCloseTo(FLAT_FACE_AT, 9);
    expect(layOut(meshOf(1, 0).topology).edges).toHaveLength(0);
  });

  test('is redrawn in the same buffers when only its dimensions change', () => {
    const mesh = meshOf(1, 0);
    const drawn = makeDrawnMesh(mesh.topology);
    fillDrawnMesh(drawn, mesh);
    const place = drawn.whole.getAttribute('position');
    const before = place.array;
    const version = drawn.skin.getAttribute('position');
    fillDrawnMesh(drawn, { topology: mesh.topology, positions: mesh.positions.map((value) => 2 * value) });
    expect(drawn.whole.getAttribute('position').array).toBe(before);
    expect(drawn.skin.getAttribute('position')).toBe(version);
    expect(place.getX(5)).toBe(Math.fround(2 * mesh.positions[3 * drawn.layout.source[5]]));
  });
});
