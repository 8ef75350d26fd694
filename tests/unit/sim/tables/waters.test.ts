import { describe, expect, it } from 'vitest';
import { SimError } from '../../../../sim/flow/outcome.ts';
import { freshWaterDensity, WATER_RANGE, waterAnswer, waterDensity } from '../../../../sim/tables/waters.ts';

const lake = { kind: 'natural', temperature: 20, salinity: 0 } as const;
const sea = { kind: 'natural', temperature: 20, salinity: 35 } as const;

describe('the water of a setup', () => {
  it('a lake is plain fresh water', () => {
    expect(waterDensity(lake)).toBe(freshWaterDensity(20));
  });

  it('water the maker measured is taken at its word', () => {
    expect(waterDensity({ kind: 'measured', density: 0.00101 })).toBe(0.00101);
  });

  it('a trace of salt makes a trace of difference', () => {
    const brackish = waterDensity({ ...lake, salinity: 1e-6 });
    expect(brackish).toBeGreaterThan(waterDensity(lake));
    // about 0.76e-6 g/mm³ for each g/kg at this temperature
    expect(brackish - waterDensity(lake)).toBeLessThan(1e-12);
  });

  it('gets heavier with every gram of salt, at any temperature', () => {
    for (let temperature = -2; temperature <= 40; temperature += 1) {
      const densities = Array.from({ length: 43 }, (_, salinity) =>
        waterDensity({ kind: 'natural', temperature, salinity }),
      );
      for (let salinity = 1; salinity <= 42; salinity += 1) {
        expect(densities[salinity]).toBeGreaterThan(densities[salinity - 1]);
      }
    }
  });

  it('fresh water is heaviest near 4 °C', () => {
    expect(freshWaterDensity(4)).toBeGreaterThan(freshWaterDensity(3));
    expect(freshWaterDensity(4)).toBeGreaterThan(freshWaterDensity(5));
  });
});

describe('what the report says of the water', () => {
  it('names the source of fresh water', () => {
    expect(waterAnswer(lake)).toEqual({
      density: waterDensity(lake),
      temperature: 20,
      salinity: 0,
      source: 'Tanaka, Girard, Davis, Peuto, Bignell (2001), table 1',
    });
  });

  it('names both sources of sea water', () => {
    expect(waterAnswer(sea).source).toBe(
      'Tanaka, Girard, Davis, Peuto, Bignell (2001), table 1; salt: Fofonoff, Millard (1983), equation 13, pp. 17–18',
    );
  });

  it('knows no temperature and no salinity of water that was measured', () => {
    expect(waterAnswer({ kind: 'measured', density: 0.001 })).toEqual({
      density: 0.001,
      temperature: null,
      salinity: null,
      source: 'measured by you',
    });
  });
});

describe('water the formulas do not know', () => {
  it('is taken up to the very ends of the range', () => {
    for (const temperature of WATER_RANGE.temperature) {
      for (const salinity of WATER_RANGE.salinity) {
        const density = waterDensity({ kind: 'natural', temperature, salinity });
        expect(density).toBeGreaterThan(0.00099);
        expect(density).toBeLessThan(0.00104);
      }
    }
  });

  it.each([
    { temperature: 45, salinity: 0, message: 'a water temperature of 45 °C is outside -2 to 40 °C' },
    { temperature: -2.1, salinity: 0, message: 'a water temperature of -2.1 °C is outside -2 to 40 °C' },
    { temperature: Number.NaN, salinity: 0, message: 'a water temperature of NaN °C is outside -2 to 40 °C' },
    { temperature: 20, salinity: 50, message: 'a water salinity of 50 g/kg is outside 0 to 42 g/kg' },
    { temperature: 20, salinity: -1, message: 'a water salinity of -1 g/kg is outside 0 to 42 g/kg' },
  ])('is refused: $temperature °C, $salinity g/kg', ({ temperature, salinity, message }) => {
    const ask = () => waterDensity({ kind: 'natural', temperature, salinity });
    expect(ask).toThrow(SimError);
    expect(ask).toThrow(message);
  });
});
