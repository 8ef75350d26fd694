import { describe, expect, test } from 'vitest';
import { upFrom, worldAxes } from '../../../../sim/frames.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { cutFinStrips, cutStrips, girthArea } from '../../../../sim/sinking/strips.ts';
import { treeOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, joinMeshes, mapMesh } from '../../../support/meshes.ts';

const LEVEL = worldAxes([0, 0, 1]);
const shown = (strips: readonly { readonly width: number; readonly step: number }[]) =>
  strips.reduce((sum, { width, step }) => sum + width * step, 0);

describe('slices of a bar', () => {
  const strips = cutStrips(treeOf(mapMesh(barMesh(60, 20, 30), ([x, y, z]) => [x + 100, y + 2, z - 5])), LEVEL);

  test('are its section, all along it', () => {
    expect(strips).toHaveLength(40);
    for (const strip of strips) {
      expect(strip.width).toBeCloseTo(20, 9);
      expect(strip.height).toBeCloseTo(30, 9);
      expect(strip.middle).toBeCloseTo(2, 9);
      expect(strip.level).toBeCloseTo(-5, 9);
      expect(strip.fullness).toBeCloseTo(1, 9);
      expect(strip.step).toBeCloseTo(1.5, 9);
    }
    expect(strips[0].at).toBeCloseTo(70.75, 9);
    expect(shown(strips)).toBeCloseTo(1200, 6);
  });

  test('nose-down are as long as it then is', () => {
    const axes = worldAxes(upFrom(Math.PI / 6, 0));
    const area = shown(cutStrips(treeOf(barMesh(60, 20, 30)), axes));
    // the shadow of a box: 20 (60 cos 30° + 30 sin 30°)
    expect(area).toBeCloseTo(20 * (60 * Math.cos(Math.PI / 6) + 15), 6);
  });

  test('have an outer area of its flanks and its two faces', () => {
    // the faces come out round: a face of the girth 100 is 795.8 where it is 600
    expect(girthArea(strips)).toBeGreaterThan(100 * 58 + 2 * 600);
    expect(girthArea(strips)).toBeLessThan(100 * 60 + 2 * 800);
  });
});

test('slices of a ball show its section, and have its area', () => {
  const strips = cutStrips(treeOf(ellipsoidMesh([10, 10, 10], 120, 96)), LEVEL);
  expect(Math.abs(shown(strips) / (100 * Math.PI) - 1)).toBeLessThan(2e-3);
  expect(Math.abs(girthArea(strips) / (400 * Math.PI) - 1)).toBeLessThan(1e-2);
});

test('a hole inside changes what it fills, and not what it shows', () => {
  const solid = barMesh(60, 20, 30);
  const hollow = joinMeshes(solid, barMesh(50, 10, 10), true);
  const [strips, plain] = [hollow, solid].map((mesh) => cutStrips(treeOf(mesh), LEVEL));
  const [middle, whole] = [strips[20], plain[20]];
  expect(middle.width).toBeCloseTo(whole.width, 9);
  expect(middle.fullness).toBeCloseTo(1 - 100 / 600, 9);
});

test('a gap between two pieces side by side is not shown', () => {
  const side = mapMesh(barMesh(60, 4, 30), ([x, y, z]) => [x, y + 8, z]);
  const other = mapMesh(barMesh(60, 6, 30), ([x, y, z]) => [x, y - 7, z]);
  const [strip] = cutStrips(treeOf(joinMeshes(side, other, false)), LEVEL);
  expect(strip.width).toBeCloseTo(10, 9);
  expect([strip.from, strip.to]).toEqual([expect.closeTo(-10, 9), expect.closeTo(10, 9)]);
  expect(strip.middle).toBeCloseTo((4 * 8 + 6 * -7) / 10, 9);
});

describe('a fin', () => {
  const wood = cutStrips(treeOf(barMesh(60, 20, 30)), LEVEL);
  const plate = (at: Vec3) => treeOf(mapMesh(barMesh(20, 1, 12), ([x, y, z]) => [x + at[0], y + at[1], z + at[2]]));

  test('over the back is in the shade of the wood', () => {
    expect(cutFinStrips(plate([0, 0, 20]), wood, LEVEL)).toEqual([]);
  });

  test('behind it is not', () => {
    expect(shown(cutFinStrips(plate([45, 0, 0]), wood, LEVEL))).toBeCloseTo(20, 6);
  });

  test('shows what of it stands out to a side', () => {
    const axes = worldAxes([0, 1, 0]);
    const flank = cutStrips(treeOf(barMesh(60, 20, 30)), axes);
    // 12 high about z = 20: from 14 to 26, the wood reaches to 15
    const strips = cutFinStrips(plate([0, 0, 20]), flank, axes);
    expect(shown(strips)).toBeCloseTo(20 * 11, 6);
    expect(Math.abs(strips[0].middle)).toBeCloseTo(20.5, 6);
  });
});
