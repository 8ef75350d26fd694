import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import { principalAxes, restFrom } from '../../../../sim/hydro/equilibrium.ts';
import type { Potential } from '../../../../sim/hydro/potential.ts';
import { length, subtract, unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, hullMesh, prismMesh, roundSection } from '../../../support/meshes.ts';

const DEGREE = Math.PI / 180;
const UP: Vec3 = [0, 0, 1];

function heelOf([, y, z]: Vec3): number {
  return Math.atan2(-y, z) / DEGREE;
}

/** Long square bar whose weight lies off its middle. */
function bar(density: number, y = 0, z = 0): FloatingBody {
  return bodyOf(barMesh(400, 10, 10), density, [0, y, z]);
}

describe('a rest', () => {
  test('from upright stays there when that is stable', () => {
    const rest = restFrom(bar(0.5, 0, -4), UP);
    expect(rest.converged).toBe(true);
    expect(rest.mirrored).toBe(false);
    expect(rest.up).toEqual(UP);
    expect(rest.offset).toBeCloseTo(0, 9);
  });

  test('says what force and moment are left, and how many steps it took', () => {
    const rest = restFrom(bar(0.4, 0.3), UP);
    const weight = 0.4 * 40;
    expect(rest.converged).toBe(true);
    expect(Math.abs(rest.force)).toBeLessThanOrEqual(1e-8 * weight);
    expect(rest.moment).toBeLessThanOrEqual(1e-8 * weight * 10);
    expect(rest.force).toBe(rest.potential.force);
    expect(rest.steps).toBeGreaterThan(2);
    expect(rest.steps).toBeLessThan(30);
    expect(rest.passes).toBeGreaterThanOrEqual(rest.steps);
  });

  test('is reached from a start that is not of length 1', () => {
    const [short, long] = [restFrom(bar(0.5, 0, -4), [0, 0.1, 0.2]), restFrom(bar(0.5, 0, -4), [0, 10, 20])];
    expect(length(subtract(short.up, UP))).toBeLessThan(1e-9);
    expect(length(subtract(long.up, short.up))).toBeLessThan(1e-9);
  });

  test('of a bar weighted low is upright from every side, though it lay belly-up', () => {
    for (const start of [
      [0, 1, 0],
      [0, -1, 0],
      [0, 0.01, -1],
      [0.9, 0, 0.1],
      [-0.9, 0.1, -0.4],
    ] as const) {
      const rest = restFrom(bar(0.5, 0, -4), start);
      expect(rest.converged).toBe(true);
      expect(length(subtract(rest.up, UP))).toBeLessThan(1e-7);
    }
  });
});

describe('a body on a knife edge', () => {
  test('that is symmetric falls to starboard and says it was mirrored', () => {
    const rest = restFrom(bar(0.5), UP);
    expect(rest.mirrored).toBe(true);
    expect(heelOf(rest.up)).toBeCloseTo(45, 6);
  });

  test('belly-up from exact balance falls off as well', () => {
    const rest = restFrom(bar(0.5, 0, -4), [0, 0, -1]);
    expect(rest.mirrored).toBe(true);
    expect(rest.up[2]).toBeCloseTo(1, 9);
  });

  test('slightly heavier to port falls to port and is not mirrored', () => {
    const rest = restFrom(bar(0.5, -1e-4), UP);
    expect(rest.mirrored).toBe(false);
    expect(heelOf(rest.up)).toBeLessThan(-44);
    expect(heelOf(restFrom(bar(0.5, 1e-4), UP).up)).toBeGreaterThan(44);
  });

  test('that can only fall over its ends goes nose-down', () => {
    // a bar with its long side up, wide enough athwartships to be steady that way
    const rest = restFrom(bodyOf(barMesh(10, 60, 40), 0.5), UP);
    expect(rest.mirrored).toBe(true);
    expect(rest.up[0]).toBeGreaterThan(0.1);
    expect(Math.abs(rest.up[1])).toBeLessThan(1e-9);
  });

  test('falls the same way every time', () => {
    expect(restFrom(bar(0.3), UP).up).toEqual(restFrom(bar(0.3), UP).up);
  });
});

describe('a body that is all but sunk or all but out', () => {
  const shapes = [
    ['a bar', barMesh(60, 20, 9)],
    ['an ellipsoid', ellipsoidMesh([40, 20, 9], 12, 17)],
    [
      'a tetrahedron',
      hullMesh([
        [0, 0, 0],
        [50, 3, -4],
        [8, 30, 2],
        [12, 9, 17],
      ]),
    ],
  ] as const;
  const shares = [1e-4, 1e-3, 1 - 1e-3, 1 - 1e-4, 1 - 1e-6];

  test.each(shapes.flatMap(([name, mesh]) => shares.map((share) => ({ name, mesh, share }))))(
    '$name at a share of $share comes to rest',
    ({ mesh, share }) => {
      const body = bodyOf(mesh, share);
      const rest = restFrom(body, UP);
      expect(rest.converged).toBe(true);
      expect(Math.abs(rest.force)).toBeLessThan(1e-8 * body.mass);
      expect(Number.isFinite(rest.offset)).toBe(true);
      expect(rest.potential.displaced * 0.001).toBeCloseTo(body.mass, 8);
    },
  );
});

test('a round bar does not roll by what its facets tell it', () => {
  const mesh = prismMesh(roundSection(10, 240), 0, 60);
  const rest = restFrom(bodyOf(mesh, 0.35), UP);
  expect(rest.converged).toBe(true);
  expect(Math.abs(principalAxes(rest.potential).low / (0.35 * 0.001 * Math.PI * 100 * 60))).toBeLessThan(0.005);
});

describe('principal axes', () => {
  const withCurves = (curveUU: number, curveUV: number, curveVV: number): Potential => ({
    ...restFrom(bar(0.5, 0, -4), UP).potential,
    curveUU,
    curveUV,
    curveVV,
  });

  test('are those of the matrix 5 2 / 2 2: 1 along (1, -2) and 6 along (2, 1)', () => {
    const { low, high, lowAxis, highAxis } = principalAxes(withCurves(5, 2, 2));
    expect(low).toBeCloseTo(1, 12);
    expect(high).toBeCloseTo(6, 12);
    const along = (axis: readonly [number, number], other: Vec3) => Math.abs(axis[0] * other[0] + axis[1] * other[1]);
    expect(along(highAxis, unit([2, 1, 0]))).toBeCloseTo(1, 12);
    expect(along(lowAxis, unit([1, -2, 0]))).toBeCloseTo(1, 12);
  });

  test('of a round well are square to each other all the same', () => {
    const { low, high, lowAxis, highAxis } = principalAxes(withCurves(3, 0, 3));
    expect([low, high]).toEqual([3, 3]);
    expect(lowAxis[0] * highAxis[0] + lowAxis[1] * highAxis[1]).toBe(0);
    expect(Math.hypot(...lowAxis)).toBeCloseTo(1, 15);
  });
});
