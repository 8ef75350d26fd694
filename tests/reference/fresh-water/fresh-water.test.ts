import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { freshWaterDensity } from '../../../sim/tables/waters.ts';
import { kgPerM3FromGramPerMm3 } from '../../../sim/units/convert.ts';
import { cases } from './case.json';

describe.each(cases)('fresh water by $source, $where', ({ source, given, expect: wanted }) => {
  const { value, tolerance } = wanted.density_kg_m3;
  const rows = given.temperature_c.map((temperature, index) => ({ temperature, density: value[index] }));

  it('names a source we list', () => {
    expect(Object.keys(SOURCES)).toContain(source);
  });

  it.each(rows)('weighs $density kg/m³ at $temperature °C', ({ temperature, density }) => {
    const found = kgPerM3FromGramPerMm3(freshWaterDensity(temperature));
    expect(Math.abs(found - density)).toBeLessThan(tolerance);
  });
});
