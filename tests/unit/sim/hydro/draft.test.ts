import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import { draftAt, reachAlong } from '../../../../sim/hydro/draft.ts';
import { planeAxes } from '../../../../sim/hydro/potential.ts';
import { unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh } from '../../../support/meshes.ts';

const UP: Vec3 = [0, 0, 1];

function solve(body: FloatingBody, n: Vec3, guess: number | null, tolerance = 1e-12) {
  return draftAt(body, n, ...planeAxes(n), guess, tolerance);
}

describe('the draft of a body held still', () => {
  test.each([0.001, 0.1, 0.5, 0.9, 0.999])('of relative density %d is that share of a box', (density) => {
    const { offset, potential } = solve(bodyOf(barMesh(60, 20, 30), density), UP, null);
    expect(offset + 15).toBeCloseTo(30 * density, 9);
    expect(Math.abs(potential.force)).toBeLessThanOrEqual(1e-12);
  });

  test('does not depend on where the search starts', () => {
    const body = bodyOf(ellipsoidMesh([40, 9, 17], 12, 17), 0.3);
    const n = unit([0.3, -0.5, 1]);
    const wanted = solve(body, n, null).offset;
    for (const guess of [-1000, -20, -3, 0, 15, 1000]) expect(solve(body, n, guess).offset).toBeCloseTo(wanted, 9);
  });

  test('is as loose as it is asked to be, and then cheaper', () => {
    const body = bodyOf(ellipsoidMesh([40, 9, 17], 12, 17), 0.3);
    const loose = solve(body, UP, null, 0.01 * body.mass);
    const close = solve(body, UP, null);
    expect(Math.abs(loose.potential.force)).toBeLessThanOrEqual(0.01 * body.mass);
    expect(loose.passes).toBeLessThan(close.passes);
    expect(close.passes).toBeLessThan(12);
  });

  const dry = bodyOf(barMesh(60, 20, 15), 1, [0, 0, 0], { mass: 2 });
  const float = { mass: 1, volume: 8000, eye: [0, 0, -20] as Vec3 };

  test('is found where only a hung float bears it: 3 g of 8 g, 15 mm of 40 mm', () => {
    const { offset, potential } = solve({ ...dry, hung: [{ ...float, hang: 40 }] }, UP, null);
    expect(offset).toBeCloseTo(-60 + 15, 9);
    expect(potential.displaced).toBe(0);
  });

  test('stays at the eye of a float of no length, which bears too little dry and too much wet', () => {
    const { offset, passes } = solve({ ...dry, hung: [{ ...float, hang: 0 }] }, UP, null);
    expect(offset).toBeCloseTo(-20, 9);
    // it gives up when the bracket has closed, not when its patience ends
    expect(passes).toBeLessThan(60);
  });
});

describe('the reach of a body', () => {
  test('takes in meshes, balls and things that hang', () => {
    const plain = bodyOf(barMesh(60, 20, 30), 0.5);
    expect(reachAlong(plain, UP)).toEqual([-15, 15]);
    expect(reachAlong(plain, [1, 0, 0])).toEqual([-30, 30]);
    const ball = { volume: (4 / 3) * Math.PI * 8, at: [0, 0, 16] as Vec3 };
    const item = { mass: 1, volume: 10, eye: [0, 0, -10] as Vec3, hang: 25 };
    const [low, high] = reachAlong({ ...plain, outside: [ball], hung: [item] }, UP);
    expect(low).toBe(-35);
    expect(high).toBeCloseTo(18, 12);
  });
});
