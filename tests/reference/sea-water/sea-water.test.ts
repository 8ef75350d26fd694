import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { densityOfSalt, waterDensity } from '../../../sim/tables/waters.ts';
import { kgPerM3FromGramPerMm3 } from '../../../sim/units/convert.ts';
import { salt, whole } from './case.json';

describe('the salt in sea water by EOS-80', () => {
  // UNESCO Technical Papers in Marine Science 44 (1983), p. 19
  const { temperature_c, salt_kg_m3, fresh_kg_m3, practical_salinity } = salt.given;
  const rows = temperature_c.map((temperature, index) => ({
    temperature,
    added: salt_kg_m3[index] - fresh_kg_m3[index],
  }));

  it.each(rows)('adds $added kg/m³ at $temperature °C', ({ temperature, added }) => {
    const found = kgPerM3FromGramPerMm3(densityOfSalt(temperature, practical_salinity));
    expect(Math.abs(found - added)).toBeLessThan(salt.expect.difference_kg_m3.tolerance);
  });
});

it('both comparisons name a source we list', () => {
  expect(Object.keys(SOURCES)).toEqual(expect.arrayContaining([salt.source, whole.source]));
});

describe('lake, river mouth and sea by TEOS-10', () => {
  // TEOS-10, gsw_rho_t_exact at pressure 0
  const { value, tolerance } = whole.expect.density_kg_m3;
  const rows = whole.given.temperature_c.map((temperature, index) => ({
    temperature,
    salinity: whole.given.salinity_g_kg[index],
    density: value[index],
  }));

  it.each(rows)('weighs $density kg/m³ with $salinity g/kg at $temperature °C', (row) => {
    const { temperature, salinity } = row;
    const found = kgPerM3FromGramPerMm3(waterDensity({ kind: 'natural', temperature, salinity }));
    expect(Math.abs(found - row.density)).toBeLessThan(tolerance);
  });
});
