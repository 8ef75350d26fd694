import { describe, expect, test } from 'vitest';
import { digitsFor, judgeAccuracy } from '../../../../sim/hydro/accuracy.ts';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { bodyOf, WATER } from '../../../support/float-mesh.ts';
import { makeFloat } from '../../../support/make-checked-bait.ts';
import { barMesh, ellipsoidMesh } from '../../../support/meshes.ts';

const SURE = { draft: 1e-9, angle: 1e-10 };
const MESH = { draft: 0.004, proud: 0.03, trim: 1e-5, heel: 2e-3, gm: 0.02 };

describe('the error of a mesh', () => {
  // points on the true surface: too small by the square of the facets
  const at = (fine: number, lead = 1) => {
    const mesh = ellipsoidMesh([40, 10, 18], 16 * fine, 16 * fine);
    return bodyOf(mesh, 0.4, [lead, 0, -8], { mass: 0.4 * WATER * (4 / 3) * Math.PI * 40 * 10 * 18 });
  };

  test('is told from one coarser by half, and is about what a mesh of many facets shows it to be', () => {
    const [coarse, full, right] = [2, 4, 12].map((fine) => at(fine, 6));
    const [float, truth] = [floatBody(full), floatBody(right)];
    const { mesh } = judgeAccuracy(full, coarse, float, 0.0074);
    const near = (told: number | null | undefined, is: number) => {
      expect((told ?? 0) / Math.abs(is)).toBeGreaterThan(0.5);
      expect((told ?? 0) / Math.abs(is)).toBeLessThan(1.7);
    };
    near(mesh?.trim, float.trim - truth.trim);
    near(mesh?.gm, float.gm - truth.gm);
  });

  test('in draft likewise, level, where the lowest point is one of the mesh', () => {
    const [coarse, full, right] = [2, 4, 12].map((fine) => at(fine, 0));
    const [float, truth] = [floatBody(full), floatBody(right)];
    const told = judgeAccuracy(full, coarse, float, 0.0074).mesh?.draft ?? 0;
    expect(told / Math.abs((float.draft ?? 0) - (truth.draft ?? 0))).toBeGreaterThan(0.5);
    expect(told / Math.abs((float.draft ?? 0) - (truth.draft ?? 0))).toBeLessThan(1.7);
  });

  test('is never told as less than a mesh can be trusted with', () => {
    const body = at(2);
    expect(judgeAccuracy(body, body, floatBody(body), 0.0074).mesh).toMatchObject({
      draft: 0.002,
      gm: 0.002,
      trim: 3e-5,
    });
  });

  test('is not known when the coarse mesh cannot float', () => {
    const body = at(2);
    const sinking = { ...body, mass: 40 };
    expect(judgeAccuracy(body, sinking, floatBody(body), 0.0074).mesh).toBeNull();
  });
});

test('what the solver left over is told as draft and angle', () => {
  const body = bodyOf(barMesh(60, 20, 30), 0.6, [0, 0, -8]);
  const float = floatBody(body);
  const solver = { ...float.solver, force: 0.012, moment: 0.0216 };
  const told = judgeAccuracy(body, body, { ...float, solver }, 0.0074).solver;
  // 0.012 g on 1200 mm² of water
  expect(told.draft).toBeCloseTo(0.01, 9);
  expect(told.angle).toBeCloseTo(0.001 / (2 + 400 / 216), 9);
});

describe('decimals', () => {
  test('are as many as leave the error within half a unit, and no more than are of use', () => {
    // 0.002 rad is 0.11 degrees
    expect(digitsFor(makeFloat(), MESH, SURE)).toEqual({ draft: 1, proud: 1, trim: 1, heel: 0, gm: 1 });
    expect(digitsFor(makeFloat(), { ...MESH, draft: 0.06, proud: 0.6 }, SURE)).toMatchObject({ draft: 0, proud: 0 });
  });

  test('are none where nothing is known, nor of angles that nothing holds', () => {
    expect(digitsFor(makeFloat(), null, SURE)).toEqual({ draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 });
    expect(digitsFor(makeFloat({ neutral: true }), { ...MESH, heel: 0 }, SURE)).toMatchObject({
      trim: 0,
      heel: 0,
      gm: 1,
    });
  });
});
