import { expect, test } from 'vitest';
import { type MeasureKind, measureOf } from '../../../../src/view/measures.ts';

test('Three eighths of an inch is stored as 9.525 mm, without the noise of the factor', () => {
  // 1 in is 25.4 mm: International Yard and Pound Agreement (1959)
  expect(measureOf('length', 'in-oz').stored(0.375)).toBe(9.525);
});

test('A quarter of an ounce is stored as 7.08738078125 g', () => {
  // 1 oz is 28.349523125 g: International Yard and Pound Agreement (1959)
  expect(measureOf('mass', 'in-oz').stored(0.25)).toBe(7.08738078125);
});

test('What is shown in any units is stored as the very number it came from', () => {
  const kinds: readonly MeasureKind[] = ['length', 'mass', 'density', 'temperature', 'salinity'];
  for (const kind of kinds) {
    for (const units of ['mm-g', 'in-oz'] as const) {
      const measure = measureOf(kind, units);
      for (const stored of [0.1, 2.54, 9.525, 37.8, 140]) expect(measure.stored(measure.shown(stored))).toBe(stored);
    }
  }
});

test('Densities and water are metric in both systems', () => {
  expect(measureOf('density', 'in-oz').unit).toBe('g/cm³');
  expect(measureOf('salinity', 'in-oz').unit).toBe('g/kg');
  expect(measureOf('temperature', 'in-oz').unit).toBe('°C');
});
