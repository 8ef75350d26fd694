import { expect, test } from 'vitest';
import { totalsOf } from '../../../../sim/hydro/body.ts';
import { bodyOf, treeOf } from '../../../support/float-mesh.ts';
import { barMesh, mapMesh } from '../../../support/meshes.ts';

test('weights and volumes add up, hung items at their eyes and apart', () => {
  const near = barMesh(10, 10, 10);
  const far = mapMesh(near, ([x, y, z]) => [x + 40, y, z]);
  const totals = totalsOf({
    ...bodyOf(near, 0.5),
    trees: [treeOf(near), treeOf(far)],
    mass: 3,
    centre: [20, 0, 0],
    outside: [{ volume: 500, at: [0, 0, 20] }],
    hung: [{ mass: 1, volume: 100, eye: [0, 4, -8], hang: 30 }],
  });
  expect(totals.mass).toBe(4);
  expect(totals.massCentre).toEqual([15, 1, -2]);
  expect(totals.fixedVolume).toBeCloseTo(2500, 9);
  // (0 · 1000 + 40 · 1000)/2500, (20 · 500)/2500
  expect(totals.fixedVolumeCentre[0]).toBeCloseTo(16, 12);
  expect(totals.fixedVolumeCentre[2]).toBeCloseTo(4, 12);
  expect(totals.volume).toBeCloseTo(2600, 9);
  expect(totals.hungVolume).toBeCloseTo(100, 9);
  expect(totals.volumeCentre[1]).toBeCloseTo(400 / 2600, 12);
  expect(totals.volumeCentre[2]).toBeCloseTo((10_000 - 800) / 2600, 12);
});

test('a centre far from the nose keeps its digits', () => {
  const mesh = mapMesh(barMesh(10, 10, 10), ([x, y, z]) => [x + 1e6, y, z]);
  expect(totalsOf(bodyOf(mesh, 0.5)).volumeCentre[0] - 1e6).toBeCloseTo(0, 8);
});
