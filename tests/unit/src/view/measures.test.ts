import { describe, expect, test } from 'vitest';
import { type Measure, type MeasureKind, measureOf } from '../../../../src/view/measures.ts';

const KINDS: readonly MeasureKind[] = [
  'length',
  'mass',
  'density',
  'angle',
  'temperature',
  'salinity',
  'speed',
  'time',
];

/** What was typed, as the file's number. */
function valueRead(measure: Measure, text: string): number {
  const read = measure.read(text);
  if (!read.ok) throw new Error(read.message);
  return read.value;
}

describe('A number typed where inches and ounces are shown', () => {
  test('is in them: three eighths are stored as 9.525 mm, without the noise of the factor', () => {
    // 1 in is 25.4 mm: International Yard and Pound Agreement (1959)
    expect(valueRead(measureOf('length', 'in-oz'), '0.375')).toBe(9.525);
    expect(valueRead(measureOf('length', 'in-oz'), '3/8')).toBe(9.525);
  });

  test('is in them: a quarter is stored as 7.08738078125 g', () => {
    // 1 oz is 28.349523125 g: International Yard and Pound Agreement (1959)
    expect(valueRead(measureOf('mass', 'in-oz'), '0.25')).toBe(7.08738078125);
  });

  test('is whatever its own unit says', () => {
    expect(valueRead(measureOf('length', 'in-oz'), '35 mm')).toBe(35);
    expect(valueRead(measureOf('mass', 'in-oz'), '2.1 g')).toBe(2.1);
  });
});

describe('A length in inches', () => {
  const inches = measureOf('length', 'in-oz');

  test.each([
    [139.7, '5 1/2'],
    [9.525, '3/8'],
    [50.8, '2'],
    [0, '0'],
    // 140 mm / 25.4, between two marks
    [140, '5.5118'],
  ])('of %d mm stands in its box as %j', (value, text) => {
    expect(inches.write(value)).toBe(text);
  });

  test('goes from mark to mark of the ruler', () => {
    expect(inches.write(inches.stepped(140, 1))).toBe('5 33/64');
    expect(inches.write(inches.stepped(139.7, -1))).toBe('5 31/64');
  });
});

test.each([
  ['length', 58.8, '58.8'],
  ['length', 140, '140.0'],
  ['length', 9.525, '9.525'],
  // 0.27 of 140 comes to 37.800000000000004 in binary
  ['length', 140 * 0.27, '37.8'],
  ['length', -0.0001, '0.0'],
  ['density', 0.36, '0.36'],
  ['angle', 2.5, '2.5'],
  ['temperature', 20, '20'],
] as const)('A %s of %d stands in its box as %j', (kind, value, text) => {
  expect(measureOf(kind, 'mm-g').write(value)).toBe(text);
});

test('What stands in a box, typed again, is what was stored, wherever the box has room for it', () => {
  for (const kind of KINDS) {
    const metric = measureOf(kind, 'mm-g');
    for (const value of [0, 2, 20, 35]) expect(valueRead(metric, metric.write(value))).toBe(value);
  }
  for (const value of [0.36, 0.99823]) {
    const density = measureOf('density', 'mm-g');
    expect(valueRead(density, density.write(value))).toBe(value);
  }
});

test('A step up and a step down is where it started, from a whole step', () => {
  for (const kind of KINDS) {
    for (const units of ['mm-g', 'in-oz'] as const) {
      const measure = measureOf(kind, units);
      const start = measure.stepped(20, 1);
      expect(measure.stepped(measure.stepped(start, 1), -1)).toBe(start);
    }
  }
});

test('Densities and water are metric in both systems', () => {
  expect(measureOf('density', 'in-oz').unit).toBe('g/cm³');
  expect(measureOf('salinity', 'in-oz').unit).toBe('g/kg');
  expect(measureOf('temperature', 'in-oz').unit).toBe('°C');
});
