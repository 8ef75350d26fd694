import { describe, expect, test } from 'vitest';
import { mmFromInch } from '../../../../sim/units/convert.ts';
import { formatRuler, rulerFraction } from '../../../../sim/units/format-ruler.ts';

describe('A length on a mark of the ruler', () => {
  test.each([
    // 1 in is 25.4 mm: International Yard and Pound Agreement (1959)
    [34.925, '1 3/8 in'],
    [9.525, '3/8 in'],
    [25.4, '1 in'],
    [0, '0 in'],
    [0.396875, '1/64 in'],
    [-34.925, '-1 3/8 in'],
    [609.203125, '23 63/64 in'],
  ])('%d mm is %j', (length, text) => {
    expect(formatRuler(length, 64)).toBe(text);
    expect(`${rulerFraction(length, 64)} in`).toBe(text);
  });

  test('stays on it with the noise of a sum in its last digits', () => {
    expect(formatRuler(0.1 * 3 * mmFromInch(5 / 3), 64)).toBe('1/2 in');
  });
});

describe('A length between two marks', () => {
  test('is given by the nearest, which says that it is not the whole truth', () => {
    expect(formatRuler(35, 64)).toBe('≈ 1 3/8 in');
    expect(formatRuler(34.926, 64)).toBe('≈ 1 3/8 in');
    expect(formatRuler(140, 64)).toBe('≈ 5 33/64 in');
    expect(rulerFraction(35, 64)).toBeNull();
  });

  test('falls on the marks that the ruler has', () => {
    const length = mmFromInch(1 + 3 / 64);
    expect([formatRuler(length, 64), formatRuler(length, 32), formatRuler(length, 16)]).toEqual([
      '1 3/64 in',
      '≈ 1 1/16 in',
      '≈ 1 1/16 in',
    ]);
  });

  test('rounds up to the whole inch', () => {
    expect(formatRuler(25.39, 16)).toBe('≈ 1 in');
    expect(formatRuler(-0.01, 16)).toBe('≈ 0 in');
  });
});
