import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { treeOf, WATER } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import box from './case.json' with { type: 'json' };

const { length, width, height, mass, centre_over_keel } = box.given;
const tolerance = box.expect.tolerance.value;
const trees = [treeOf(barMesh(length, width, height))];
const area = length * width;
const bare = { trees, waterDensity: WATER, outside: [] };
const centre: Vec3 = [0, 0, centre_over_keel - height / 2];

/** The box with things hung from it. */
function withHung(...hung: FloatingBody['hung']): FloatingBody {
  return { ...bare, mass, centre, hung };
}

/** The box with a weight built in. */
function withFixed(weight: number, at: Vec3): FloatingBody {
  const total = mass + weight;
  const sum = (axis: 0 | 1 | 2) => (mass * centre[axis] + weight * at[axis]) / total;
  return { ...bare, mass: total, centre: [sum(0), sum(1), sum(2)], hung: [] };
}

describe('a weight hung from a box', () => {
  const eye: Vec3 = [-6, 3, 5];
  const hung = floatBody(withHung({ mass: 4, volume: 0, eye, hang: 20 }));

  test('acts as if it were fixed at its eye', () => {
    const fixed = floatBody(withFixed(4, eye));
    expect(hung.heel).toBeGreaterThan(0.01);
    expect(hung.trim).toBeGreaterThan(0.001);
    for (const name of ['heel', 'trim', 'gm', 'gmLong', 'gmMin', 'offset', 'mass'] as const) {
      expect(Math.abs((hung[name] ?? Number.NaN) - (fixed[name] ?? 0))).toBeLessThan(10 * tolerance);
    }
  });

  test('makes the box more tender than the same weight fixed where it hangs', () => {
    const [over, low] = [5, -15];
    const hanging = floatBody(withHung({ mass: 4, volume: 0, eye: [0, 0, over], hang: over - low }));
    const fixed = floatBody(withFixed(4, [0, 0, low]));
    expect(hanging.gm).toBeCloseTo(fixed.gm - (4 * (over - low)) / (mass + 4), 9);
  });
});

describe('a float hung half under water', () => {
  const [volume, hang, over] = [600, 24, 20];
  const item = { mass: 2, volume, eye: [0, 0, over - height / 2] as Vec3, hang };
  const draught = ((mass + item.mass) / WATER + (volume * (over - hang)) / hang) / (area + volume / hang);

  test('bears by the wet share of its length', () => {
    const float = floatBody(withHung(item));
    expect(over).toBeGreaterThan(draught);
    expect(float.draft).toBeCloseTo(draught, 9);
    expect(float.hungDisplaced).toBeCloseTo((volume * (draught - over + hang)) / hang, 6);
  });

  test('displaces the weight of everything together with the box', () => {
    const float = floatBody(withHung(item));
    expect(WATER * (float.displaced + float.hungDisplaced)).toBeCloseTo(float.mass, 9);
  });
});

describe('a weight hung out of the middle', () => {
  test.each([2, 5, 8])('%d mm to starboard heels the box as its wall-sided arm says', (y) => {
    const weight = 3;
    const float = floatBody(withHung({ mass: weight, volume: 0, eye: [0, y, 0], hang: 15 }));
    const total = mass + weight;
    const draught = total / (WATER * area);
    const BM = width ** 2 / (12 * draught);
    const KG = (mass * centre_over_keel + (weight * height) / 2) / total;
    const tan = Math.tan(float.heel);
    // the formula's ground: bilge wet, deck dry
    expect((width / 2) * tan).toBeLessThan(Math.min(draught, height - draught));
    expect((draught / 2 + BM - KG + (BM / 2) * tan ** 2) * tan).toBeCloseTo((weight * y) / total, 9);
  });
});
