import { describe, expect, test } from 'vitest';
import type { Float } from '../../../sim/hydro/float.ts';
import type { Mesh } from '../../../sim/mesh/mesh.ts';
import { dot } from '../../../sim/numerics/vec3.ts';
import { floatHomogeneous } from '../../support/float-mesh.ts';
import { mapMesh, pointsOf, turnedMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { p } = book.given;
const { tilt_deg, order, void: off } = book.expect;
const rows = book.given.density.map((density, i) => ({
  density,
  height: book.given.h_over_p[i] * p,
  tilt: tilt_deg.value[i],
}));

function paraboloid(height: number, bands: number): Mesh {
  const profile = Array.from({ length: bands + 1 }, (_, i) => {
    // a ring a millionth of a step across in place of the apex
    const share = Math.max(i, 1e-6) / bands;
    return [Math.sqrt(p * height) * share, height * share * share] as const;
  });
  return turnedMesh(profile, 2 * bands);
}

function tiltOf(float: Float): number {
  return (Math.acos(float.up[2]) * 180) / Math.PI;
}

/** Height of the base's lowest point over the water; negative when it is wet. */
function baseOverWater(mesh: Mesh, height: number, float: Float): number {
  const rim = pointsOf(mesh).filter(([, , z]) => z > height * (1 - 1e-9));
  return Math.min(...rim.map((point) => dot(float.up, point))) - (float.offset ?? Number.NaN);
}

/** The tilt of README.md; null where the base would be wet and the formula is void. */
function closedForm(height: number, density: number): number | null {
  const tan = Math.sqrt((8 * height * (1 - Math.sqrt(density))) / (3 * p) - 2);
  const dry = Math.sqrt(density) * height - (p * tan * tan) / 4 + tan * Math.sqrt(p * height) <= height;
  return dry ? (Math.atan(tan) * 180) / Math.PI : null;
}

describe.each(rows)('a paraboloid $height high of relative density $density', ({ height, density, tilt }) => {
  test('leans by $tilt degrees, its base dry', () => {
    const meshes = [32, 64, 128].map((bands) => paraboloid(height, bands));
    const floats = meshes.map((mesh) => floatHomogeneous(mesh, density));
    const [coarse, middle, fine] = floats.map(tiltOf);
    expect(baseOverWater(meshes[2], height, floats[2])).toBeGreaterThan(0);
    expect(Math.abs(fine + (fine - middle) / 3 - tilt)).toBeLessThan(tilt_deg.tolerance);
    const falls = Math.log2((coarse - tilt) / (middle - tilt));
    expect(falls).toBeGreaterThan(order.low);
    expect(falls).toBeLessThan(order.high);
    expect(closedForm(height, density)).toBeCloseTo(tilt, 6);
  });

  test('leans as much base down if it is so much denser than half as it was lighter', () => {
    const mesh = paraboloid(height, 64);
    const turned = mapMesh(mesh, ([x, y, z]) => [x, y, -z], true);
    expect(tiltOf(floatHomogeneous(turned, 1 - density))).toBeCloseTo(tiltOf(floatHomogeneous(mesh, density)), 4);
  });
});

test.each([1, 1.5, 2])('a paraboloid of height %d p stands from the density of Archimedes on', (over) => {
  const least = (1 - 3 / (4 * over)) ** 2;
  const mesh = paraboloid(over * p, 64);
  // facets shift the limit by a few parts in ten thousand
  expect(tiltOf(floatHomogeneous(mesh, 1.005 * least))).toBeLessThan(1e-6);
  expect(tiltOf(floatHomogeneous(mesh, 0.995 * least))).toBeGreaterThan(1);
});

test('a paraboloid whose base gets wet does not lean as the formula says, which says so itself', () => {
  const height = off.h_over_p * p;
  expect(closedForm(height, off.density)).toBeNull();
  const mesh = paraboloid(height, 128);
  const float = floatHomogeneous(mesh, off.density);
  expect(baseOverWater(mesh, height, float)).toBeLessThan(0);
  expect(Math.abs(tiltOf(float) - off.formula_deg)).toBeGreaterThan(off.apart_by);
});
