import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { armsOf } from '../../../../sim/roll/arms.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, prismMesh, roundSection } from '../../../support/meshes.ts';

const DEGREE = Math.PI / 180;

describe('afloat', () => {
  test('arms are those of the righting curve, and energies its areas times the weight', () => {
    // GM 1.08 mm: B half the draft up, G at (18·15 + 8·3)/26
    const body = bodyOf(barMesh(60, 20, 30), 26 / 36, [0, 0, (8 * -12) / 26]);
    const float = floatBody(body);
    const arms = armsOf(body, float);
    const near = arms?.points.find(({ heel }) => Math.abs(heel - 5 * DEGREE) < 1e-9);
    const [gm, bm] = [float.gm, 400 / (12 * 30 * (26 / 36))];
    const tan = Math.tan(5 * DEGREE);
    expect(near?.arm).toBeCloseTo((gm + (bm / 2) * tan ** 2) * Math.sin(5 * DEGREE), 6);
    const raised = gm * (1 - Math.cos(5 * DEGREE)) + (bm / 2) * (1 / Math.cos(5 * DEGREE) + Math.cos(5 * DEGREE) - 2);
    expect(near?.energy).toBeCloseTo(raised * body.mass, 5);
    expect(arms?.starboard.limit).toBeCloseTo(-(arms?.port.limit ?? 0), 6);
    expect(arms?.starboard.energy).toBeCloseTo(arms?.port.energy ?? 0, 6);
  });

  test('the longest arm is found between the heels that are looked at', () => {
    const body = bodyOf(ellipsoidMesh([50, 12, 18], 32, 48), 0.6, [0, 0, -4]);
    const { most } = armsOf(body, floatBody(body))?.starboard ?? { most: { heel: 0, arm: 0 } };
    const points = armsOf(body, floatBody(body))?.points ?? [];
    expect(most.arm).toBeGreaterThanOrEqual(Math.max(...points.map(({ arm }) => arm)));
    expect(Math.abs(most.heel / (5 * DEGREE) - Math.round(most.heel / (5 * DEGREE)))).toBeGreaterThan(1e-3);
  });

  test('there are none where heel means nothing: on end, and round', () => {
    const stick = bodyOf(barMesh(80, 10, 10), 0.7, [28, 0, 0]);
    const round = bodyOf(prismMesh(roundSection(10, 256), -40, 40), 0.4);
    for (const body of [stick, round]) expect(armsOf(body, floatBody(body))).toBeNull();
  });
});

describe('wholly under water', () => {
  test('the arm is the height of buoyancy over weight times the sine of the heel, and it comes back from anywhere', () => {
    const body = bodyOf(barMesh(60, 20, 30), 1.5, [0, 0, -3]);
    const arms = armsOf(body, floatBody(body));
    expect(arms?.points).toHaveLength(73);
    for (const { heel, arm, energy } of arms?.points ?? []) {
      expect(arm).toBeCloseTo(3 * Math.sin(heel), 12);
      // what the water lifts: 36 g
      expect(energy).toBeCloseTo(36 * 3 * (1 - Math.cos(heel)), 9);
    }
    expect(arms?.starboard).toMatchObject({ limit: null, onEnd: null, most: { heel: 90 * DEGREE } });
    expect(arms?.starboard.energy).toBeCloseTo(2 * 36 * 3, 9);
  });

  test('of a body that leans the arm is nought at its lean', () => {
    const body = bodyOf(barMesh(60, 20, 30), 1.5, [0, 1, -3] as Vec3);
    const float = floatBody(body);
    const arms = armsOf(body, float);
    expect(float.heel).toBeCloseTo(Math.atan(1 / 3), 12);
    const at = arms?.points.find(({ heel }) => Math.abs(heel - 20 * DEGREE) < 1e-9);
    expect(at?.arm).toBeCloseTo(Math.sqrt(10) * Math.sin(20 * DEGREE - float.heel), 12);
  });
});
