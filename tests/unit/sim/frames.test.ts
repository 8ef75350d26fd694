import { describe, expect, test } from 'vitest';
import { heelOf, trimOf, upFrom, worldAxes } from '../../../sim/frames.ts';
import { cross, dot, length, subtract, type Vec3 } from '../../../sim/numerics/vec3.ts';

const DEGREE = Math.PI / 180;
const NOSE: Vec3 = [-1, 0, 0];
const STARBOARD: Vec3 = [0, 1, 0];

describe('an attitude', () => {
  test('of no trim and no heel is upright', () => {
    expect(upFrom(0, 0)).toEqual([0, -0, 1]);
    expect(trimOf([0, 0, 1])).toBe(0);
    expect(heelOf([0, 0, 1])).toBe(0);
    expect(heelOf(upFrom(0, 0))).toBe(0);
  });

  test('of positive trim has its nose down, of positive heel its starboard side', () => {
    expect(dot(upFrom(10 * DEGREE, 0), NOSE)).toBeCloseTo(-Math.sin(10 * DEGREE), 15);
    expect(dot(upFrom(0, 10 * DEGREE), STARBOARD)).toBeCloseTo(-Math.sin(10 * DEGREE), 15);
    expect(dot(upFrom(0, 90 * DEGREE), STARBOARD)).toBeCloseTo(-1, 15);
  });

  test('gives back its trim and heel, belly-up too', () => {
    for (const trim of [-89, -40, 0, 5, 60, 89]) {
      for (const heel of [-179, -90, -20, 0, 33, 120, 180]) {
        const up = upFrom(trim * DEGREE, heel * DEGREE);
        expect(length(up)).toBeCloseTo(1, 15);
        expect(trimOf(up) / DEGREE).toBeCloseTo(trim, 9);
        expect(heelOf(up) / DEGREE).toBeCloseTo(heel, 9);
      }
    }
  });

  test('straight on its nose has a trim of 90 degrees, though rounding puts it past 1', () => {
    expect(trimOf([1 + 1e-15, 0, 0])).toBe(Math.PI / 2);
    expect(trimOf([-1 - 1e-15, 0, 0])).toBe(-Math.PI / 2);
  });
});

describe('the axes of the world', () => {
  test.each([
    ['level', upFrom(0, 0)],
    ['askew', upFrom(0.4, -1.2)],
    ['belly-up', upFrom(0.1, Math.PI)],
    ['on the nose', [1, 0, 0] as const],
    ['on the tail', [-1, 0, 0] as const],
  ])('are square, right-handed and of length 1 with the body %s', (_, up) => {
    const { along, across, up: same } = worldAxes(up);
    expect(same).toBe(up);
    for (const axis of [along, across, up]) expect(length(axis)).toBeCloseTo(1, 14);
    expect(length(subtract(cross(along, across), up))).toBeLessThan(1e-14);
  });

  test('run along the level shadow of the body', () => {
    const trim = 25 * DEGREE;
    const { along, across } = worldAxes(upFrom(trim, 0));
    expect(length(subtract(along, [Math.cos(trim), 0, -Math.sin(trim)]))).toBeLessThan(1e-14);
    expect(length(subtract(across, STARBOARD))).toBeLessThan(1e-14);
  });

  test('keep the body square across when it stands on its nose', () => {
    expect(Math.abs(worldAxes([1, 0, 0]).across[1])).toBeCloseTo(1, 14);
  });
});
