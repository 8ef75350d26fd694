import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { ellipsoidMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { draught_over_D: wanted, order } = book.expect;
const rows = book.given.density.map((density, i) => ({ density, draught: wanted.value[i] }));

const LOW = 0.4;

/** An ellipsoid weighted low, so that it floats on its z axis. The weight is of the true one. */
function floated([a, b, c]: Vec3, density: number, bands: number) {
  const mass = (density * 0.001 * 4 * Math.PI * a * b * c) / 3;
  const mesh = ellipsoidMesh([a, b, c], bands, 2 * bands);
  const float = floatBody(bodyOf(mesh, density, [0, 0, -LOW * c], { mass }));
  expect(float.solver.converged).toBe(true);
  // the plane's height over the middle: the mesh's own lowest point lies a hair over the true one's
  return { draught: ((float.offset ?? Number.NaN) / c + 1) / 2, gm: float.gm };
}

/** GM of the true ellipsoid with its surface at z c over the middle, by README.md. */
function trueGm([a, b, c]: Vec3, z: number): number {
  const cap = z - z ** 3 / 3 + 2 / 3;
  const volume = Math.PI * a * b * c * cap;
  const inertia = (Math.PI * a * b ** 3 * (1 - z * z) ** 2) / 4;
  return (-c * (1 - z * z) ** 2) / (4 * cap) + inertia / volume + LOW * c;
}

/** How often the error halves when the step does. */
function orderOf(coarse: number, middle: number, wanted: number): number {
  return Math.log2(Math.abs((coarse - wanted) / (middle - wanted)));
}

describe.each([
  ['sphere', [10, 10, 10]],
  ['ellipsoid', [50, 20, 9]],
] as const)('a floating %s', (_, axes) => {
  test.each(rows)('of relative density $density lies $draught of its height deep', ({ density, draught }) => {
    const [coarse, middle, fine] = [32, 64, 128].map((bands) => floated(axes, density, bands));
    const settled = fine.draught + (fine.draught - middle.draught) / 3;
    expect(Math.abs(settled - draught)).toBeLessThan(wanted.tolerance);
    const falls = orderOf(coarse.draught, middle.draught, draught);
    expect(falls).toBeGreaterThan(order.low);
    expect(falls).toBeLessThan(order.high);
  });

  test.each(rows)('of relative density $density is as stiff as its formula says', ({ density, draught }) => {
    const gm = trueGm(axes, 2 * draught - 1);
    // where the surface falls between two rings shakes the error, but it stays within a square of the step
    for (const bands of [16, 32, 64, 128]) {
      const off = Math.abs(floated(axes, density, bands).gm - gm) / axes[2];
      expect(off).toBeLessThan(book.expect.GM_over_c.tolerance / bands ** 2);
    }
  });
});
