import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { rightingCurve } from '../../../../sim/hydro/righting-arm.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { bodyOf, rightingArm } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh } from '../../../support/meshes.ts';

const DEGREE = Math.PI / 180;

describe('righting arms', () => {
  test('of an ellipsoid start out as GM times heel, and sum up to the energy', () => {
    const body = bodyOf(ellipsoidMesh([50, 12, 18], 32, 48), 0.6, [0, 0, -4]);
    const float = floatBody(body);
    const fine = rightingCurve(body, float.up, DEGREE / 4);
    const near = fine.points.find(({ heel }) => Math.abs(heel - DEGREE / 4) < 1e-9);
    expect((near?.arm ?? 0) / Math.sin(DEGREE / 4)).toBeCloseTo(float.gm, 2);
    // smooth skin: the cubic through arms five degrees apart is off by little
    expect(rightingCurve(body, float.up).mismatch).toBeLessThan(0.002);
  });

  test('free to trim are no longer than with the trim held, and trim as they heel', () => {
    const body = bodyOf(barMesh(60, 20, 30), 26 / 36, [-4, 0, -5]);
    const { points } = rightingCurve(body, floatBody(body).up);
    const at40 = points.find(({ heel }) => Math.abs(heel - 40 * DEGREE) < 1e-9);
    expect(Math.abs(at40?.trim ?? 0)).toBeGreaterThan(DEGREE);
    expect(at40?.arm).not.toBeCloseTo(rightingArm(body, 40 * DEGREE), 2);
  });

  test('end where the body would go on to stand on end, and say so', () => {
    // a stick whose weight lies low and aft: past its side it stands up
    const body = bodyOf(barMesh(60, 10, 14), 0.8, [9, 0, -3] as Vec3);
    const { starboard, port, points } = rightingCurve(body, floatBody(body).up);
    for (const way of [starboard, port]) {
      expect(Math.abs(way.onEnd ?? 0)).toBeGreaterThan(45 * DEGREE);
      expect(Math.abs(way.onEnd ?? 9)).toBeLessThan(175.1 * DEGREE);
      expect(way.limit).toBeNull();
    }
    expect(points.length).toBeLessThan(73);
    expect(points.every(({ trim }) => Math.abs(trim) <= 80 * DEGREE)).toBe(true);
  });

  test('of a body that hangs by its tail are but its rest', () => {
    const body = bodyOf(barMesh(80, 10, 10), 0.7, [28, 0, 0]);
    expect(rightingCurve(body, floatBody(body).up).points.length).toBeLessThan(3);
  });
});
