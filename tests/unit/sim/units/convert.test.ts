import { describe, expect, it } from 'vitest';
import {
  cm3FromMm3,
  degreeFromRadian,
  gramFromOunce,
  gramPerCm3FromGramPerMm3,
  gramPerMm2FromGramPerM2,
  gramPerMm3FromGramPerCm3,
  gramPerMm3FromKgPerM3,
  inchFromMm,
  kgPerM3FromGramPerMm3,
  mmFromInch,
  ounceFromGram,
  percentFromShare,
  radianFromDegree,
  shareFromPercent,
} from '../../../../sim/units/convert.ts';

describe('lengths, masses and angles', () => {
  it('a three-eighths drill is 9.525 mm', () => {
    expect(mmFromInch(3 / 8)).toBeCloseTo(9.525, 12);
  });

  it('a yard of 36 inches is 914.4 mm', () => {
    expect(mmFromInch(36)).toBeCloseTo(914.4, 10);
  });

  it('sixteen ounces are the pound of 453.59237 g', () => {
    // exact by definition: the international avoirdupois pound of 1959
    expect(gramFromOunce(16)).toBe(453.59237);
  });

  it('a 118 degree drill point is 118/180 of half a turn', () => {
    expect(radianFromDegree(118)).toBeCloseTo((118 / 180) * Math.PI, 15);
  });

  it('half a turn is 180 degrees', () => {
    expect(degreeFromRadian(Math.PI)).toBe(180);
  });
});

describe('densities and shares', () => {
  it('a gram to the cubic centimetre is a thousandth to the cubic millimetre', () => {
    expect(gramPerMm3FromGramPerCm3(7.85)).toBe(0.00785);
  });

  it('a thousand kilograms to the cubic metre is a gram to the cubic centimetre', () => {
    expect(gramPerMm3FromKgPerM3(1000)).toBe(gramPerMm3FromGramPerCm3(1));
  });

  it('brushed sealer at 20 g/m² puts 2 g on a square of 316.2 mm, a tenth of a square metre', () => {
    const area = 0.1 * 1000 * 1000;
    expect(gramPerMm2FromGramPerM2(20) * area).toBeCloseTo(2, 12);
  });

  it('a block of 60 by 20 by 30 mm holds 36 cubic centimetres', () => {
    expect(cm3FromMm3(60 * 20 * 30)).toBe(36);
  });

  it('five percent is a twentieth', () => {
    expect(shareFromPercent(5)).toBe(1 / 20);
  });
});

describe('there and back', () => {
  const pairs = [
    ['inches', mmFromInch, inchFromMm],
    ['ounces', gramFromOunce, ounceFromGram],
    ['degrees', radianFromDegree, degreeFromRadian],
    ['g/cm³', gramPerMm3FromGramPerCm3, gramPerCm3FromGramPerMm3],
    ['kg/m³', gramPerMm3FromKgPerM3, kgPerM3FromGramPerMm3],
    ['percent', shareFromPercent, percentFromShare],
  ] as const;

  it.each(pairs)('%s come back as they went', (_unit, into, back) => {
    for (const value of [-3.7, 0, 0.0625, 1, 11.34, 998.2]) {
      expect(back(into(value))).toBeCloseTo(value, 12);
    }
  });
});
