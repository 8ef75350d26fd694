import { describe, expect, test } from 'vitest';
import type { Body, Reading } from '../../../../sim/design/design.ts';
import { SimError } from '../../../../sim/flow/outcome.ts';
import { buildHull, stationAt, stationOf } from '../../../../sim/hull/hull.ts';
import { SHAD } from '../../../support/bodies.ts';

function read(x: number, sizes: Partial<Omit<Reading, 'x'>>): Reading {
  return { x, height: null, back: null, belly: null, width: null, ...sizes };
}

function withReadings(...readings: readonly Reading[]): Body {
  return { ...SHAD, readings };
}

const DRAWN = buildHull(SHAD);
/** A tail off the datum, so that back and belly are not taken off z = 0 there. */
const READ = buildHull(
  withReadings(
    read(120, { height: 24, width: 12.6 }),
    read(20, { back: 15.5, width: 17 }),
    read(95, { height: 38, back: 18 }),
    read(35, { belly: 25 }),
    read(110, { height: 30, belly: 16 }),
  ),
);

function stations(): readonly number[] {
  return Array.from({ length: 1399 }, (_, i) => (i + 1) / 10);
}

describe('a body read by calipers', () => {
  test('has the sizes that were read, to a billionth of a millimetre', () => {
    const at = (x: number) => stationOf(READ, x);
    expect(Math.abs(at(120).back - at(120).belly - 24)).toBeLessThan(1e-9);
    expect(Math.abs(2 * at(120).halfWidth - 12.6)).toBeLessThan(1e-9);
    expect(Math.abs(at(20).back - 15.5)).toBeLessThan(1e-9);
    expect(Math.abs(2 * at(20).halfWidth - 17)).toBeLessThan(1e-9);
    expect(Math.abs(at(95).back - 18)).toBeLessThan(1e-9);
    expect(Math.abs(at(95).belly + 20)).toBeLessThan(1e-9);
    expect(Math.abs(at(35).belly + 25)).toBeLessThan(1e-9);
    expect(Math.abs(at(110).back - 14)).toBeLessThan(1e-9);
    expect(Math.abs(at(110).belly + 16)).toBeLessThan(1e-9);
  });

  test('keeps its peak and closes at its tips', () => {
    expect(stationOf(READ, 50.4).back).toBeCloseTo(22, 12);
    expect(stationOf(READ, 50.4).belly).toBeCloseTo(-26, 12);
    expect(stationOf(READ, 47.6).halfWidth).toBeCloseTo(10, 12);
    expect(stationOf(READ, 0)).toEqual({ back: 0, belly: 0, halfWidth: 0, broadest: 0 });
    expect(stationOf(READ, 140)).toEqual({ back: 2, belly: 2, halfWidth: 0, broadest: 2 });
  });

  test('is somewhere between belly and back everywhere, with the slopes of its own outlines', () => {
    const [here, before, after] = [0, 1, 2].map(() => new Float64Array(6));
    for (const x of stations()) {
      stationAt(READ, x, here);
      expect(here[0]).toBeGreaterThan(here[2]);
      expect(here[4]).toBeGreaterThan(0);
      if (x < 1 || x > 139 || Math.abs(x - 50.4) < 0.01) continue;
      stationAt(READ, x - 1e-5, before);
      stationAt(READ, x + 1e-5, after);
      for (const i of [0, 2, 4]) expect(Math.abs(here[i + 1] - (after[i] - before[i]) / 2e-5)).toBeLessThan(1e-4);
    }
  });

  test('grows by one share beyond the outermost reading', () => {
    const ratio = 12.6 / (2 * stationOf(DRAWN, 120).halfWidth);
    for (const x of [120, 128, 139.9]) {
      expect(stationOf(READ, x).halfWidth).toBeCloseTo(ratio * stationOf(DRAWN, x).halfWidth, 12);
    }
  });

  test('is as drawn, to the last bit, in an outline that nobody read', () => {
    const wide = buildHull(withReadings(read(90, { width: 15 })));
    for (const x of stations()) {
      expect(stationOf(wide, x).back).toBe(stationOf(DRAWN, x).back);
      expect(stationOf(wide, x).belly).toBe(stationOf(DRAWN, x).belly);
    }
  });

  test('that agree with the drawing are the drawing', () => {
    const same = [20, 90, 120].map((x) => {
      const { back, belly, halfWidth } = stationOf(DRAWN, x);
      return read(x, { back, belly: -belly, width: 2 * halfWidth });
    });
    const hull = buildHull(withReadings(...same));
    for (const x of stations()) {
      expect(stationOf(hull, x).back).toBeCloseTo(stationOf(DRAWN, x).back, 10);
      expect(stationOf(hull, x).belly).toBeCloseTo(stationOf(DRAWN, x).belly, 10);
      expect(stationOf(hull, x).halfWidth).toBeCloseTo(stationOf(DRAWN, x).halfWidth, 10);
    }
  });

  test('takes what is read at the peak for the peak', () => {
    const hull = buildHull(withReadings(read(50.4, { height: 44 })));
    expect(stationOf(hull, 50.4).back - stationOf(hull, 50.4).belly).toBeCloseTo(44, 9);
    const { back, belly } = stationOf(DRAWN, 100);
    expect(stationOf(hull, 100).back - stationOf(hull, 100).belly).toBeCloseTo((44 / 48) * (back - belly), 9);
  });

  test('turned upside down is read upside down', () => {
    const turned: Body = {
      ...SHAD,
      back: 26,
      fullness: { ...SHAD.fullness, back: SHAD.fullness.belly, belly: SHAD.fullness.back },
      tail: { ...SHAD.tail, z: -2 },
      readings: READ_TURNED,
    };
    const hull = buildHull(turned);
    for (const x of stations()) {
      expect(stationOf(hull, x).back).toBeCloseTo(-stationOf(READ, x).belly, 10);
      expect(stationOf(hull, x).belly).toBeCloseTo(-stationOf(READ, x).back, 10);
    }
  });

  test('in any order is the same body', () => {
    const [a, b] = [read(20, { width: 17 }), read(95, { height: 38 })];
    expect(buildHull(withReadings(a, b))).toEqual(buildHull(withReadings(b, a)));
  });

  test.each([
    ['height', read(90, { height: 9 })],
    ['back', read(90, { back: 90 })],
    ['belly', read(90, { height: 30, back: 40 })],
    ['width', read(90, { width: 80 })],
  ])('is refused for a %s far from what is drawn, with what is allowed', (_, reading) => {
    const build = () => buildHull(withReadings(reading));
    expect(build).toThrow(SimError);
    try {
      build();
    } catch (error) {
      const { issues } = error as SimError;
      expect(issues).toHaveLength(1);
      expect(issues[0].path).toMatch(/^body\.readings\.0\.[a-z]+_mm$/);
      expect(issues[0].message).toMatch(/mm is too far from the .* mm drawn there; .* mm to .* mm can be bent to$/);
    }
  });
});

const READ_TURNED: readonly Reading[] = [
  read(120, { height: 24, width: 12.6 }),
  read(20, { belly: 15.5, width: 17 }),
  read(95, { height: 38, belly: 18 }),
  read(35, { back: 25 }),
  read(110, { height: 30, back: 16 }),
];
