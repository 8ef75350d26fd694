import { describe, expect, it } from 'vitest';
import { WOOD_VARIATION, WOODS, woodNamed, woodNames } from '../../../../sim/tables/woods.ts';

describe('looking a wood up', () => {
  it('finds it by the name makers use', () => {
    expect(woodNamed('western redcedar')?.botanical).toBe('Thuja plicata');
  });

  it('does not mind capitals and stray spaces', () => {
    expect(woodNamed(' Yellow-Poplar ')?.name).toBe('yellow-poplar');
    expect(woodNamed('sitka spruce')?.name).toBe('Sitka spruce');
  });

  it('does not guess: part of a name, or a name it lacks, finds nothing', () => {
    expect(woodNamed('cedar')).toBeNull();
    expect(woodNamed('')).toBeNull();
  });

  it('every name offered is found, once', () => {
    const names = woodNames();
    expect(names).toHaveLength(WOODS.length);
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
    for (const name of names) expect(woodNamed(name)?.name).toBe(name);
  });

  it('offers the lightest first', () => {
    const densities = woodNames().map((name) => woodNamed(name)?.density.usual ?? Number.NaN);
    for (let i = 1; i < densities.length; i += 1) expect(densities[i]).toBeGreaterThanOrEqual(densities[i - 1]);
  });
});

describe('the spread of a wood', () => {
  it.each(WOODS.map((wood) => [wood.name, wood] as const))(
    '%s floats, and spreads a tenth to either side',
    (_n, wood) => {
      const { low, usual, high } = wood.density;
      // every wood of the table floats; balsa, lighter still, is not in it
      expect(usual).toBeGreaterThan(0.0003);
      expect(usual).toBeLessThan(0.00075);
      expect((usual - low) / usual).toBeCloseTo(WOOD_VARIATION.value, 12);
      expect((high - usual) / usual).toBeCloseTo(WOOD_VARIATION.value, 12);
    },
  );
});
