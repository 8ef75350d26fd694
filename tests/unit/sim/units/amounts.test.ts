import { describe, expect, test } from 'vitest';
import { amountsIn, restated } from '../../../../sim/units/amounts.ts';

test('Amounts are to 0.1 mm and g, or to 0.001 in and oz whatever is asked of grams', () => {
  const [metric, inch] = [amountsIn('mm-g'), amountsIn('in-oz')];
  expect([metric.length(25.4), metric.mass(-2.346, { digits: 2 })]).toEqual(['25.4 mm', '-2.35 g']);
  expect([inch.length(25.4), inch.mass(28.349523125, { digits: 2, signed: true })]).toEqual(['1.000 in', '+1.000 oz']);
});

test('What is marked out or drilled is as the ruler has it: to 0.1 mm, or the nearest 1/64 in, which says if it is not all', () => {
  expect([9.525, 16.5, 0].map(amountsIn('mm-g').ruled)).toEqual(['9.5 mm', '16.5 mm', '0.0 mm']);
  expect([9.525, 16.5, 0].map(amountsIn('in-oz').ruled)).toEqual(['3/8 in', '≈ 21/32 in', '0 in']);
});

describe('A sentence in inches and ounces', () => {
  test.each([
    ['joint 1 at 203.2 mm, gap 0.8 mm', 'joint 1 at 8.00 in, gap 0.03 in'],
    ['a wall of 2.54 mm; 3 mm is wanted', 'a wall of 0.100 in; 0.12 in is wanted'],
    ['+2.83 g net, -25.4 mm', '+0.100 oz net, -1.00 in'],
    ['from -12.7 mm to 12.7 mm.', 'from -0.50 in to 0.50 in.'],
  ])('%j reads as %j', (sentence, words) => {
    expect(restated(sentence, 'in-oz')).toBe(words);
  });

  test.each(['12 g mm over', '0.55 g/cm³', '35 g/kg', '40 g/m²', '120 mm³', '3 mm/s', 'hole "2 mm, 5 g" is deep'])(
    'leaves %j alone',
    (sentence) => {
      expect(restated(sentence, 'in-oz')).toBe(sentence);
    },
  );

  test('in mm and g is what it was', () => {
    expect(restated('1 mm, 2 g', 'mm-g')).toBe('1 mm, 2 g');
  });
});
