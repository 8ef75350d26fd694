import { describe, expect, test } from 'vitest';
import { steadySpeed } from '../../../sim/sinking/motion.ts';
import { ballDrag } from '../../../sim/sinking/section-drag.ts';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { cases } from './case.json';

describe.each(cases)('a ball: $name', ({ source, given, expect: wanted }) => {
  test('names a source we list', () => {
    expect(Object.keys(SOURCES)).toContain(source);
  });

  test('comes to its speed', () => {
    const { diameter_mm: diameter, density_kg_m3: density, fluid_kg_m3: fluid, viscosity_mpa_s: viscosity } = given;
    const waterDensity = fluid * 1e-6;
    const nu = (viscosity * 1e-3) / waterDensity;
    const area = (Math.PI / 4) * diameter ** 2;
    const netWet = (Math.PI / 6) * diameter ** 3 * (density - fluid) * 1e-6;
    const dragArea = (speed: number) => area * ballDrag((speed * diameter) / nu);
    const { value, tolerance } = wanted.speed_mm_s;
    expect(Math.abs(steadySpeed({ netWet, waterDensity, dragArea }) / value - 1)).toBeLessThan(tolerance);
  });
});
