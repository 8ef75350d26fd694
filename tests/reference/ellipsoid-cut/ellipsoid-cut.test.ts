import { describe, expect, test } from 'vitest';
import { planeAxes, potentialAt } from '../../../sim/hydro/potential.ts';
import { measureVolume } from '../../../sim/mesh/measure.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { ellipsoidMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const [a, b, c] = book.given.axes;
const { volume_over_abc, centre_over_a, tolerance, sum_tolerance, order } = book.expect;
const rows = book.given.u.map((u, i) => ({ u, volume: volume_over_abc[i], centre: centre_over_a[i] }));
const meshes = [32, 64, 128].map((bands) => ellipsoidMesh([a, b, c], bands, 2 * bands));
const bodies = meshes.map((mesh) => bodyOf(mesh, 0.5));

/** The part aft of x, or forward of it: water stands where it is. */
function partOf(body: (typeof bodies)[number], x: number, side: 'aft' | 'fore') {
  const sign = side === 'aft' ? -1 : 1;
  const up: Vec3 = [sign, 0, 0];
  return potentialAt(body, up, ...planeAxes(up), sign * x);
}

describe.each(rows)('an ellipsoid cut at $u of its half length', ({ u, volume, centre }) => {
  const parts = bodies.map((body) => partOf(body, u * a, 'aft'));

  test.each([
    ['volume', parts.map((part) => part.displaced / (a * b * c)), volume],
    ['centre', parts.map((part) => part.buoyancyCentre[0] / a), centre],
  ] as const)('has the %s of its integral, closer by four at each refinement', (_, [coarse, middle, fine], wanted) => {
    expect(Math.abs((fine + (fine - middle) / 3) / wanted - 1)).toBeLessThan(tolerance.value);
    const falls = Math.log2(Math.abs((coarse - wanted) / (middle - wanted)));
    expect(falls).toBeGreaterThan(order.low);
    expect(falls).toBeLessThan(order.high);
  });

  test('adds up to the whole with its other part', () => {
    bodies.forEach((body, i) => {
      const [aft, fore] = [partOf(body, u * a, 'aft'), partOf(body, u * a, 'fore')];
      const whole = measureVolume(meshes[i]);
      expect(Math.abs((aft.displaced + fore.displaced) / whole.volume - 1)).toBeLessThan(sum_tolerance.value);
      const moment = aft.displaced * aft.buoyancyCentre[0] + fore.displaced * fore.buoyancyCentre[0];
      expect(Math.abs(moment / whole.volume - whole.centre[0]) / a).toBeLessThan(sum_tolerance.value);
    });
  });
});
