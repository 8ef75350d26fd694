import { describe, expect, test } from 'vitest';
import { type Float, floatBody } from '../../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { bodyOf, floatHomogeneous, WATER } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, prismMesh, roundSection } from '../../../support/meshes.ts';

const DEGREE = Math.PI / 180;
/** 36 cm³: 36 g of water. */
const block = barMesh(60, 20, 30);
const LOW: Vec3 = [0, 0, -8];

function strangeNumbers(float: Float): readonly string[] {
  const flat = Object.entries({ ...float, ...float.solver }).flatMap(([name, value]) =>
    [value].flat().flatMap((part) => (typeof part === 'number' && !Number.isFinite(part) ? [name] : [])),
  );
  return flat;
}

describe('a block', () => {
  test('that floats says how deep, how proud and how stiff', () => {
    const float = floatBody(bodyOf(block, 0.6, LOW));
    expect(float.state).toBe('floats');
    expect(float.solver.converged).toBe(true);
    expect(float.draft).toBeCloseTo(18, 9);
    expect(float.proud).toBeCloseTo(12, 9);
    expect(float.offset).toBeCloseTo(3, 9);
    expect(float.displaced).toBeCloseTo(21_600, 6);
    expect(float.buoyancyCentre[2]).toBeCloseTo(-6, 9);
    // BM = 20²/(12 · 18) across, 60²/(12 · 18) along; B lies 2 over G
    expect(float.gm).toBeCloseTo(2 + 400 / 216, 9);
    expect(float.gmLong).toBeCloseTo(2 + 3600 / 216, 9);
    expect(float.gmMin).toBeCloseTo(float.gm, 12);
    expect(float.netWet).toBeCloseTo(21.6 - 36, 9);
    expect(float.reserveShare).toBeCloseTo(14.4 / 21.6, 9);
    expect([float.neutral, float.tender, float.mirrored, float.lyingHooks]).toEqual([false, false, false, false]);
  });

  test('with its weight to starboard heels that way, with it forward it goes nose-down', () => {
    expect(floatBody(bodyOf(block, 0.6, [0, 0.5, -8])).heel).toBeGreaterThan(DEGREE);
    expect(floatBody(bodyOf(block, 0.6, [-0.5, 0, -8])).trim).toBeGreaterThan(DEGREE);
  });
});

describe('the band in which a bait hangs', () => {
  test.each([
    // 0.1 g decides up to 100 g
    ['floats', 36 - 0.1001],
    ['hangs', 36 - 0.0999],
    ['hangs', 36],
    ['hangs', 36 + 0.0999],
    ['sinks', 36 + 0.1001],
  ] as const)('%s at %d g for 36 g of water', (state, mass) => {
    const float = floatBody(bodyOf(block, 1, LOW, { mass }));
    expect(float.state).toBe(state);
    expect(float.netWet).toBeCloseTo(mass - 36, 9);
    expect(float.offset === null).toBe(state !== 'floats');
    expect(strangeNumbers(float)).toEqual([]);
  });

  test.each([
    // a thousandth of its mass decides over 100 g: 1152 g of water
    ['floats', 1152 / 1.00101],
    ['hangs', 1152 / 1.00099],
    ['hangs', 1152 / 0.99901],
    ['sinks', 1152 / 0.99899],
  ] as const)('%s at %d g for 1152 g of water', (state, mass) => {
    expect(floatBody(bodyOf(barMesh(192, 60, 100), 1, LOW, { mass })).state).toBe(state);
  });

  test('counts balls and hung items to what can float', () => {
    const more = {
      mass: 36.5,
      outside: [{ volume: 700, at: [0, 0, 16] as Vec3 }],
      hung: [{ mass: 1, volume: 900, eye: [0, 0, -15] as Vec3, hang: 20 }],
    };
    const float = floatBody(bodyOf(block, 1, LOW, more));
    expect(float.netWet).toBeCloseTo(37.5 - 37.6, 9);
    expect(float.mass).toBe(37.5);
  });
});

describe('a bait wholly under water', () => {
  test('hangs with B straight over G, stiff by their distance', () => {
    const float = floatBody(bodyOf(block, 1.5, [-3, 4, -12]));
    expect(float.state).toBe('sinks');
    expect(float.up).toEqual([3 / 13, -4 / 13, 12 / 13]);
    for (const gm of [float.gm, float.gmLong, float.gmMin]) expect(gm).toBeCloseTo(13, 9);
    expect([float.draft, float.proud, float.offset]).toEqual([null, null, null]);
    expect(float.displaced).toBeCloseTo(36_000, 6);
    expect(float.solver.force).toBeCloseTo(36 - 54, 9);
  });

  test('whose B and G coincide has no preferred way up, and no number that is none', () => {
    const float = floatHomogeneous(block, 1.5);
    expect(float.neutral).toBe(true);
    expect(float.up).toEqual([0, 0, 1]);
    expect(strangeNumbers(float)).toEqual([]);
  });

  test('turns on its head if its weight is on top', () => {
    expect(floatBody(bodyOf(block, 1.5, [0, 0, 5])).up[2]).toBeCloseTo(-1, 12);
  });
});

describe('bodies without a preferred way up', () => {
  test('a sphere is neutral in every way, and all its numbers are numbers', () => {
    const float = floatHomogeneous(ellipsoidMesh([10, 10, 10], 64, 128), 0.4);
    expect(float.neutral).toBe(true);
    expect(float.tender).toBe(true);
    expect(Math.abs(float.gmMin)).toBeLessThan(0.005);
    expect(Math.abs(float.gm)).toBeLessThan(0.005);
    expect(Math.abs(float.gmLong)).toBeLessThan(0.005);
    expect(strangeNumbers(float)).toEqual([]);
  });

  test('a round bar is neutral in roll and stiff in trim', () => {
    const float = floatHomogeneous(prismMesh(roundSection(10, 240), -40, 40), 0.4);
    expect(float.neutral).toBe(true);
    expect(float.gmLong).toBeGreaterThan(10);
  });

  test('a round bar weighted a hair low is tender, not neutral', () => {
    const float = floatBody(bodyOf(prismMesh(roundSection(10, 240), -40, 40), 0.4, [0, 0, -0.05]));
    expect(float.neutral).toBe(false);
    expect(float.tender).toBe(true);
    // for a round bar GM is the weight's depth below the axis; the polygon leaves thousandths
    expect(float.gm).toBeCloseTo(0.05, 2);
  });
});

describe('hooks', () => {
  const hook = { mass: 2, volume: 255, eye: [0, 0, -15] as Vec3, hang: 25 };

  test('hang clear of a block that floats upright', () => {
    const float = floatBody(bodyOf(block, 0.6, LOW, { hung: [hook] }));
    expect(float.lyingHooks).toBe(false);
    expect(float.gravityCentre[2]).toBeCloseTo((21.6 * -8 - 2 * 15) / 23.6, 9);
    expect(WATER * (float.displaced + float.hungDisplaced)).toBeCloseTo(float.mass, 9);
    expect(float.hungDisplaced).toBeCloseTo(255, 9);
  });

  test('lie on a block that has turned over or stands on its nose', () => {
    expect(floatBody(bodyOf(block, 0.6, [0, 0, 9], { hung: [{ ...hook, mass: 0.3, volume: 38 }] })).lyingHooks).toBe(
      true,
    );
    expect(floatBody(bodyOf(block, 0.6, [-28, 0, 0], { hung: [hook] })).lyingHooks).toBe(true);
    expect(floatBody(bodyOf(block, 0.6, [0, 0, 9])).lyingHooks).toBe(false);
  });
});
