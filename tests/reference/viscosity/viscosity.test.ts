import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { freshViscosity } from '../../../sim/tables/viscosity.ts';
import { cases } from './case.json';

describe.each(cases)('fresh water by $source, $where', ({ source, given, expect: wanted }) => {
  const { value, tolerance } = wanted.viscosity_mpa_s;
  const rows = given.temperature_c.map((temperature, index) => ({ temperature, viscosity: value[index] }));

  it('names a source we list', () => {
    expect(Object.keys(SOURCES)).toContain(source);
  });

  it.each(rows)('is $viscosity mPa·s thick at $temperature °C', ({ temperature, viscosity }) => {
    expect(Math.abs(1000 * freshViscosity(temperature) - viscosity)).toBeLessThan(tolerance);
  });
});
