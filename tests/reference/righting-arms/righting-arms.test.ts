import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../sim/hydro/float.ts';
import { rightingCurve } from '../../../sim/hydro/righting-arm.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { given, expect: wanted } = book;
const UP: Vec3 = [0, 0, 1];
const DEGREE = Math.PI / 180;

function boxWith(KG: number) {
  const mesh = barMesh(given.length, given.width, given.height);
  return bodyOf(mesh, given.draught / given.height, [0, 0, KG - given.height / 2]);
}

describe.each(given.KG.map((KG, i) => ({ KG, arms: wanted.arm.value[i], limit: wanted.limit_deg.value[i], i })))(
  'a box whose weight is $KG over the keel',
  ({ KG, arms, limit, i }) => {
    const curve = rightingCurve(boxWith(KG), UP, DEGREE);
    const armAt = (degrees: number) => curve.points[180 + degrees];

    test('rights itself to starboard and to port as its section says, right round', () => {
      given.heel_deg.forEach((heel, k) => {
        expect(armAt(heel).heel).toBeCloseTo(heel * DEGREE, 12);
        expect(Math.abs(armAt(heel).arm - arms[k])).toBeLessThan(wanted.arm.tolerance);
        expect(Math.abs(armAt(-heel).arm + arms[k])).toBeLessThan(wanted.arm.tolerance);
        expect(Math.abs(armAt(heel).trim)).toBeLessThan(1e-6);
      });
      expect(curve.points).toHaveLength(361);
      expect([curve.starboard.onEnd, curve.port.onEnd]).toEqual([null, null]);
    });

    test('has arms that sum up to its energy', () => {
      // a cubic through arms a degree apart; kinks where an edge meets the water leave their second order
      expect(curve.mismatch).toBeLessThan(5e-5);
    });

    test('comes back from as far as the section says', () => {
      const rest = floatBody(boxWith(KG)).up;
      const { starboard, port } = rightingCurve(boxWith(KG), rest, DEGREE);
      expect(Math.abs((starboard.limit ?? 0) / DEGREE - limit)).toBeLessThan(wanted.limit_deg.tolerance);
      if (KG < 5.3) expect(Math.abs((port.limit ?? 0) / DEGREE + limit)).toBeLessThan(wanted.limit_deg.tolerance);
      const area = wanted.area.value[i];
      if (area !== null) expect(Math.abs(starboard.area - area)).toBeLessThan(wanted.area.tolerance);
    });
  },
);

test('its longest arm is that of the section', () => {
  const { most } = rightingCurve(boxWith(5), UP, DEGREE).starboard;
  expect(Math.abs(most.arm - wanted.most.value)).toBeLessThan(wanted.most.tolerance);
  expect(Math.abs(most.heel / DEGREE - wanted.most.heel_deg)).toBeLessThan(0.5);
});

test('with its weight too high it lolls to where the wall-sided formula says, and comes back over upright to there only', () => {
  const body = boxWith(5.5);
  const { heel, up } = floatBody(body);
  expect(Math.abs(heel / DEGREE - wanted.loll_deg.value)).toBeLessThan(wanted.loll_deg.tolerance);
  const { port } = rightingCurve(body, up, DEGREE);
  expect(Math.abs(port.limit ?? 1)).toBeLessThan(1e-6);
});
