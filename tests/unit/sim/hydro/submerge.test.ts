import { describe, expect, test } from 'vitest';
import { planeAxes } from '../../../../sim/hydro/potential.ts';
import { submerge, WET } from '../../../../sim/hydro/submerge.ts';
import type { Tree } from '../../../../sim/hydro/tree.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { dot, unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { clipByHand } from '../../../support/clip-by-hand.ts';
import { treeOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, joinMeshes, mapMesh } from '../../../support/meshes.ts';

const HERE: Vec3 = [0, 0, 0];

function passOver(trees: readonly Tree[], n: Vec3, d: number, pivot: Vec3 = HERE): Float64Array {
  const out = new Float64Array(WET.size);
  for (const tree of trees) submerge(tree, n, ...planeAxes(n), d, pivot, out);
  return out;
}

function expectSame(found: Float64Array, wanted: ArrayLike<number>, tolerance: number): void {
  found.forEach((value, i) => {
    expect(Math.abs(value - (wanted[i] ?? Number.NaN)), `integral ${i}`).toBeLessThan(tolerance);
  });
}

describe('a water surface half way up a box of 60 by 20 by 30', () => {
  const box = mapMesh(barMesh(60, 20, 30), ([x, y, z]) => [x + 30, y, z + 15]);
  // u = x, v = y over a plane z = 10: ∫ x dA = 1200 · 30, ∫ x² dA = 20 · 60³/3, ∫ y² dA = 60 · 20³/12
  const wanted = [12_000, 360_000, 0, 60_000, 1200, 36_000, 0, 1_440_000, 0, 40_000];

  test('finds volume, moment and the waterplane', () => {
    expectSame(passOver([treeOf(box)], [0, 0, 1], 10), wanted, 1e-8);
  });

  test('finds the same from another pivot, moved', () => {
    const out = passOver([treeOf(box)], [0, 0, 1], 10, [30, 0, 10]);
    // moment about the pivot: 12000 · (0, 0, 5 - 10); second moment about the middle: 20 · 60³/12
    expectSame(out, [12_000, 0, 0, -60_000, 1200, 0, 0, 360_000, 0, 40_000], 1e-8);
  });

  test('adds to what is there already', () => {
    const out = passOver([treeOf(box), treeOf(box)], [0, 0, 1], 10);
    expectSame(
      out,
      wanted.map((value) => 2 * value),
      1e-8,
    );
  });
});

describe('a surface that lies on a face', () => {
  const tree = treeOf(barMesh(60, 20, 30));

  test('of the deck finds the whole box and its deck', () => {
    const out = passOver([tree], [0, 0, 1], 15);
    expect(out[WET.volume]).toBeCloseTo(36_000, 9);
    expect(out[WET.area]).toBeCloseTo(1200, 9);
  });

  test('of the keel finds nothing', () => {
    expect([...passOver([tree], [0, 0, 1], -15)]).toEqual(new Array(WET.size).fill(0));
  });

  test('of a step in a stair finds what lies under it', () => {
    const stair = joinMeshes(
      barMesh(60, 20, 30),
      mapMesh(barMesh(60, 20, 10), ([x, y, z]) => [x, y + 40, z + 10]),
      false,
    );
    expect(passOver([treeOf(stair)], [0, 0, 1], 5)[WET.volume]).toBeCloseTo(24_000, 9);
    expect(passOver([treeOf(stair)], [0, 0, 1], 15)[WET.volume]).toBeCloseTo(48_000, 9);
  });
});

describe('a surface that misses', () => {
  const mesh = mapMesh(ellipsoidMesh([40, 9, 17], 12, 17), ([x, y, z]) => [x + 90, y - 3, z]);
  const tree = treeOf(mesh);
  const n = unit([1, 2, 3]);

  test('below finds nothing at all', () => {
    expect([...passOver([tree], n, -1000)]).toEqual(new Array(WET.size).fill(0));
  });

  test('above finds the whole and no waterplane', () => {
    const out = passOver([tree], n, 1000);
    const whole = clipByHand(mesh, n, ...planeAxes(n), 1000);
    expect(out[WET.volume] / whole.volume).toBeCloseTo(1, 11);
    expect([...out.slice(WET.area)]).toEqual([0, 0, 0, 0, 0, 0]);
  });
});

describe('a hollow', () => {
  const skin = barMesh(60, 20, 30);
  const hole = barMesh(40, 10, 10);
  const hollow = joinMeshes(skin, hole, true);

  test.each([
    [0, 36_000 / 2 - 4000 / 2, 1200 - 400],
    [-4, 1200 * 11 - 400, 800],
    [8, 1200 * 23 - 4000, 1200],
  ])('is taken off: water at %d mm', (level, volume, area) => {
    const out = passOver([treeOf(hollow)], [0, 0, 1], level);
    expect(out[WET.volume]).toBeCloseTo(volume, 9);
    expect(out[WET.area]).toBeCloseTo(area, 9);
  });

  test('as a mesh of its own is the same as in one with the skin', () => {
    const n = unit([3, -1, 4]);
    const one = passOver([treeOf(hollow)], n, 1.7);
    const outer = passOver([treeOf(skin)], n, 1.7);
    const inner = passOver([treeOf(hole)], n, 1.7);
    expectSame(
      one,
      outer.map((value, i) => value - inner[i]),
      1e-7,
    );
  });
});

/** All triangles in one leaf: nothing is passed over unseen. */
function singleLeaf(mesh: Mesh): Tree {
  const tree = treeOf(mesh);
  const triangles = mesh.topology.index.length / 3;
  const shape = {
    index: tree.shape.index,
    skip: Int32Array.of(1),
    first: Int32Array.of(0),
    count: Int32Array.of(triangles),
  };
  return { ...tree, shape, boxes: tree.boxes.slice(0, 6), sums: tree.sums.slice(0, 4) };
}

test('a tree finds what looking at every triangle finds', () => {
  const mesh = ellipsoidMesh([40, 9, 17], 24, 30);
  const [tree, leaf] = [treeOf(mesh), singleLeaf(mesh)];
  for (let k = 0; k < 200; k++) {
    const n = unit([Math.sin(k), Math.sin(1.7 * k + 1), Math.cos(2.3 * k)]);
    const d = 30 * Math.sin(0.9 * k);
    const found = passOver([tree], n, d);
    const wanted = passOver([leaf], n, d);
    // rounding on the largest of the integrals, moments of 25 000 mm³ at 40 mm
    expectSame(found, wanted, 1e-13 * 25_000 * 40 * 40);
    expect(found[WET.area] > 0).toBe(wanted[WET.area] > 0);
  }
});

test('a body and its upside-down plane add up to the whole, with one waterplane', () => {
  const mesh = ellipsoidMesh([40, 9, 17], 12, 17);
  const tree = treeOf(mesh);
  const n = unit([2, -1, 2]);
  const under = passOver([tree], n, 4);
  const over = passOver([tree], [-n[0], -n[1], -n[2]], -4);
  const whole = passOver([tree], n, 1000);
  expect(under[WET.volume] + over[WET.volume]).toBeCloseTo(whole[WET.volume], 8);
  expect(under[WET.area]).toBeCloseTo(over[WET.area], 9);
  const lever = (out: Float64Array): Vec3 => [out[1], out[2], out[3]];
  expect(dot(lever(under), n) + dot(lever(over), n)).toBeCloseTo(dot(lever(whole), n), 6);
});
