import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../sim/hydro/float.ts';
import type { Mesh } from '../../../sim/mesh/mesh.ts';
import { dot, type Vec3 } from '../../../sim/numerics/vec3.ts';
import { bodyOf, floatHomogeneous, WATER } from '../../support/float-mesh.ts';
import { prismMesh, roundSection, tubeMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const SIDES = 240;
const R = 10;
const rows = book.given.density.map((density, i) => ({
  density,
  draught: book.expect.draught_over_D.value[i],
  width: book.expect.width_over_D.value[i],
  depth: book.expect.buoyancy_below_axis_over_R.value[i],
}));
const tolerance = book.expect.tolerance.value;

/** A cylinder whose axis is z. */
function standing(length: number): Mesh {
  const section = roundSection(R, SIDES);
  return tubeMesh([0, length].map((z) => section.map(([a, b]): Vec3 => [a, b, z])));
}

describe.each(rows)('a cylinder of relative density $density', ({ density, draught, width, depth }) => {
  test('lies as deep as the segment says, and rolls freely', () => {
    const float = floatHomogeneous(prismMesh(roundSection(R, SIDES), 0, 5 * R), density);
    expect(Math.abs((float.draft ?? Number.NaN) / (2 * R) - draught)).toBeLessThan(tolerance);
    expect(Math.abs(dot(float.buoyancyCentre, float.up) / -R - depth)).toBeLessThan(2 * tolerance);
    expect(float.neutral).toBe(true);
    expect(Math.abs(float.gm)).toBeLessThan(0.005);
  });

  test('lies level if it is longer than its waterline is wide, and tips if it is not', () => {
    const along = (length: number) => {
      const mesh = prismMesh(roundSection(R, SIDES), -length / 2, length / 2);
      return floatHomogeneous(mesh, density).gmLong;
    };
    const least = width * 2 * R;
    const longer = floatHomogeneous(prismMesh(roundSection(R, SIDES), 0, 1.02 * least), density);
    expect(longer.gmLong).toBeGreaterThan(0);
    expect(Math.abs(longer.trim)).toBeLessThan(1e-6);
    const shorter = floatHomogeneous(prismMesh(roundSection(R, SIDES), 0, 0.98 * least), density);
    expect(Math.abs(shorter.trim)).toBeGreaterThan(0.05);
    expect(along(2 * least)).toBeGreaterThan(along(1.5 * least));
  });

  test('stands if it is broad enough for its length, and falls over if it is not', () => {
    const length = (2 * R) / Math.sqrt(8 * density * (1 - density));
    const stands = floatHomogeneous(standing(0.99 * length), density);
    expect(stands.gmMin).toBeGreaterThan(0);
    expect(stands.mirrored).toBe(false);
    const falls = floatHomogeneous(standing(1.01 * length), density);
    expect(falls.mirrored).toBe(true);
    expect(Math.acos(falls.up[2])).toBeGreaterThan(0.02);
  });

  test('has a metacentric height of KB + BM - KG while it stands', () => {
    const length = 0.8 * ((2 * R) / Math.sqrt(8 * density * (1 - density)));
    const float = floatBody(bodyOf(standing(length), density));
    const gm = (density * length) / 2 + R ** 2 / (4 * density * length) - length / 2;
    expect(Math.abs(float.gm - gm) / R).toBeLessThan(tolerance);
  });
});

const { least_D_over_L: broad } = book.expect;
test.each(broad.density.map((density, i) => ({ density, least: broad.value[i] })))(
  'a cylinder of relative density $density stands from a diameter of $least lengths on',
  ({ density, least }) => {
    const floated = (share: number) => floatHomogeneous(standing((2 * R) / (share * least)), density);
    expect(floated(1 + broad.tolerance).up[2]).toBeCloseTo(1, 12);
    expect(Math.acos(floated(1 - broad.tolerance).up[2])).toBeGreaterThan(0.01);
  },
);

test('a standing cylinder of facets nears the true one by the square of their size', () => {
  const [length, density] = [14, 0.4];
  const mass = density * WATER * Math.PI * R ** 2 * length;
  // corners on the circle: too small by 2/3 (π/n)² of its area
  const floats = [16, 32, 64].map((sides) => {
    const section = Array.from({ length: sides }, (_, k) => (2 * Math.PI * k) / sides);
    const mesh = tubeMesh([0, length].map((z) => section.map((a): Vec3 => [R * Math.cos(a), R * Math.sin(a), z])));
    return floatBody(bodyOf(mesh, density, [0, 0, length / 2], { mass }));
  });
  const order = (wanted: number, [coarse, , fine]: readonly number[]) =>
    Math.log2(Math.abs((coarse - wanted) / (fine - wanted))) / 2;
  const draught = density * length;
  const draughts = order(
    draught,
    floats.map((float) => float.draft ?? Number.NaN),
  );
  const stiffness = order(
    draught / 2 + R ** 2 / (4 * draught) - length / 2,
    floats.map((float) => float.gm),
  );
  for (const found of [draughts, stiffness]) {
    expect(found).toBeGreaterThan(1.8);
    expect(found).toBeLessThan(2.2);
  }
});
