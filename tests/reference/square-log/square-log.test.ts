import { describe, expect, test } from 'vitest';
import { floatHomogeneous } from '../../support/float-mesh.ts';
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

  test('at 0.4 floats at 45 degrees and not at the 43.17 of the angle of loll', () => {
    expect(heelOf(0.4)).toBeCloseTo(45, 6);
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
