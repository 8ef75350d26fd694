import { describe, expect, test } from 'vitest';
import { draftAt } from '../../../sim/hydro/draft.ts';
import { bodyOf, floatHomogeneous, WATER } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import log from './case.json' with { type: 'json' };

const bar = barMesh(400, 10, 10);
const { value, tolerance } = log.expect.heel_deg;
const rows = log.given.density.map((density, i) => ({ density, heel: value[i] }));

/** A square looks the same after a quarter turn: its heel from the nearest flat, 0 to 45. */
function heelOf(density: number): number {
  const degrees = Math.abs((floatHomogeneous(bar, density).heel * 180) / Math.PI) % 90;
  return Math.min(degrees, 90 - degrees);
}

describe('a square log', () => {
  test.each(rows)('of relative density $density floats at $heel degrees', ({ density, heel }) => {
    // half a unit of the last printed decimal on top
    expect(Math.abs(heelOf(density) - heel)).toBeLessThan(tolerance);
  });

  test.each(rows)('of relative density 1 - $density floats at $heel degrees too', ({ density, heel }) => {
    expect(Math.abs(heelOf(1 - density) - heel)).toBeLessThan(tolerance);
  });

  test('at 0.4 floats at 45 degrees and not at the 43.17 of the angle of loll, whose bilge would be dry', () => {
    const { side, density, KB, BM, KG, GM, tolerance: exact, tangent, void_deg } = log.expect.loll;
    const { potential } = draftAt(
      bodyOf(barMesh(400, side, side), density),
      [0, 0, 1],
      [1, 0, 0],
      [0, 1, 0],
      null,
      1e-12,
    );
    const mass = density * WATER * 400 * side ** 2;
    // KB over the keel; what the energy bends by over the weight is GM, and the rest of it BM
    const found = { KB: potential.buoyancyCentre[2] + side / 2, GM: potential.curveVV / mass };
    expect(Math.abs(found.KB - KB)).toBeLessThan(exact);
    expect(Math.abs(found.GM - GM)).toBeLessThan(exact);
    expect(Math.abs(found.GM - found.KB + KG - BM)).toBeLessThan(exact);
    const tan = Math.sqrt((-2 * found.GM) / BM);
    expect(Math.abs(tan - tangent.value)).toBeLessThan(tangent.tolerance);
    expect(Math.abs((Math.atan(tan) * 180) / Math.PI - void_deg.value)).toBeLessThan(void_deg.tolerance);
    expect((side / 2) * tan).toBeGreaterThan(density * side);
    expect(heelOf(density)).toBeCloseTo(45, 6);
  });

  test('at its transitions is right to a tenth of a degree', () => {
    expect(heelOf((3 - Math.sqrt(3)) / 6)).toBeLessThan(0.1);
    expect(45 - heelOf(9 / 32)).toBeLessThan(0.1);
  });

  test('goes over to starboard from a dead balance, and says that port would do as well', () => {
    const float = floatHomogeneous(bar, 0.4);
    expect(float.heel).toBeGreaterThan(0);
    expect(float.mirrored).toBe(true);
  });
});
