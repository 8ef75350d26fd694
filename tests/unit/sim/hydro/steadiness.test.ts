import { expect, test } from 'vitest';
import { steadinessOf, steadyFrom, stiffFrom } from '../../../../sim/hydro/steadiness.ts';

test('a narrow bait is steady from a tenth of a millimetre on, a wide one from a hundredth of its width', () => {
  expect([4, 10, 20, 40].map(steadyFrom)).toEqual([0.1, 0.1, 0.2, 0.4]);
});

test('a bait is stiff from a quarter of its width on', () => {
  expect([10, 20, 40].map(stiffFrom)).toEqual([2.5, 5, 10]);
});

test('one without any width is never stiff before it is steady', () => {
  expect(stiffFrom(0)).toBe(steadyFrom(0));
});

test.each([
  // width 20 mm
  [-0.01, 2, true, 'lays over'],
  [0, 0, false, 'tender'],
  [0.199, 0.199, false, 'tender'],
  [0.2, 0.2, false, 'steady'],
  [4.99, 4.99, false, 'steady'],
  [5, 5, false, 'stiff'],
  // it would tip over its ends before it rolls
  [5, 0.1, false, 'tender'],
] as const)('GM %d mm upright and %d mm at the least', (gmUpright, gmMin, laysOver, word) => {
  expect(steadinessOf({ gmUpright, gmMin, laysOver, width: 20 })).toBe(word);
});
