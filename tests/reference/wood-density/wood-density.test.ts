import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { woodNamed } from '../../../sim/tables/woods.ts';
import { kgPerM3FromGramPerMm3 } from '../../../sim/units/convert.ts';
import cases from './case.json';

describe.each(Object.values(cases))('wood at 12 % moisture by $source, $where', ({ source, given, expect: wanted }) => {
  const { value, tolerance } = wanted.density_kg_m3;
  const rows = given.wood.map((name, index) => ({ name, density: value[index] }));

  it('names a source we list', () => {
    expect(Object.keys(SOURCES)).toContain(source);
  });

  it.each(rows)('$name weighs $density kg/m³', ({ name, density }) => {
    const wood = woodNamed(name);
    expect(wood).not.toBeNull();
    const found = kgPerM3FromGramPerMm3(wood?.density.usual ?? 0);
    expect(Math.abs(found - density)).toBeLessThan(tolerance);
  });
});
