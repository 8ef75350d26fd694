import { describe, expect, it } from 'vitest';
import {
  formatAngle,
  formatDensity,
  formatLength,
  formatMass,
  formatNumber,
  formatPercent,
  formatVolume,
} from '../../../../sim/units/format.ts';

describe('rounding', () => {
  it('keeps one decimal unless told otherwise, zeros included', () => {
    expect(formatNumber(3)).toBe('3.0');
  });

  it('keeps as many decimals as asked for', () => {
    expect(formatNumber(32.4567, { digits: 0 })).toBe('32');
    expect(formatNumber(32.4567, { digits: 2 })).toBe('32.46');
  });

  it('rounds a half as it reads, not as a double holds it', () => {
    // a double holds 1.005 as 1.00499999999999989…, and toFixed(2) gives 1.00
    expect(formatNumber(1.005, { digits: 2 })).toBe('1.01');
    expect(formatNumber(1.45)).toBe('1.5');
    expect(formatNumber(0.15)).toBe('0.2');
  });

  it('rounds halves away from zero on both sides', () => {
    expect(formatNumber(2.25)).toBe('2.3');
    expect(formatNumber(-2.25)).toBe('-2.3');
  });

  it('leaves what is just short of a half alone', () => {
    expect(formatNumber(0.1499999)).toBe('0.1');
  });

  it('writes large numbers out in full', () => {
    expect(formatNumber(98765432109.87)).toBe('98765432109.9');
    expect(formatNumber(2 ** 60, { digits: 2 })).toBe('1152921504606846976.00');
  });

  it('writes very small numbers as nothing', () => {
    expect(formatNumber(1e-12, { digits: 2 })).toBe('0.00');
  });
});

describe('signs', () => {
  it('a trim that rounds to level has no minus', () => {
    expect(formatNumber(-0.04)).toBe('0.0');
    expect(formatNumber(-0)).toBe('0.0');
  });

  it('a signed number wears its plus', () => {
    expect(formatNumber(1.2, { signed: true })).toBe('+1.2');
    expect(formatNumber(-1.2, { signed: true })).toBe('-1.2');
  });

  it('a signed number that rounds to nothing has no sign', () => {
    expect(formatNumber(0.04, { signed: true })).toBe('0.0');
    expect(formatNumber(-0.04, { signed: true })).toBe('0.0');
  });
});

describe('quantities', () => {
  it('a length reads in millimetres to a tenth', () => {
    expect(formatLength(21.713)).toBe('21.7 mm');
  });

  it('a length reads in inches to a thousandth', () => {
    expect(formatLength(9.525, 'in')).toBe('0.375 in');
  });

  it('a length takes other decimals in either unit', () => {
    expect(formatLength(9.525, 'mm', { digits: 2 })).toBe('9.53 mm');
    expect(formatLength(9.525, 'in', { digits: 1 })).toBe('0.4 in');
  });

  it('a mass reads in grams to a tenth', () => {
    expect(formatMass(34.64)).toBe('34.6 g');
  });

  it('a quarter-ounce slug reads as such', () => {
    expect(formatMass(28.349523125 / 4, 'oz')).toBe('0.250 oz');
  });

  it('a net weight shows which way it pulls', () => {
    expect(formatMass(-2.6, 'g', { signed: true })).toBe('-2.6 g');
    expect(formatMass(1.2, 'g', { signed: true, digits: 2 })).toBe('+1.20 g');
  });

  it('an angle reads in degrees', () => {
    expect(formatAngle(Math.PI / 6)).toBe('30.0°');
    expect(formatAngle(-Math.PI / 180, { signed: true })).toBe('-1.0°');
  });

  it('a share reads in percent', () => {
    expect(formatPercent(0.1234)).toBe('12.3 %');
  });

  it('a volume reads in cubic centimetres', () => {
    expect(formatVolume(36040)).toBe('36.0 cm³');
  });

  it('a density reads in grams to the cubic centimetre', () => {
    expect(formatDensity(0.000998207)).toBe('0.998 g/cm³');
    expect(formatDensity(0.0113, { digits: 1 })).toBe('11.3 g/cm³');
  });
});
