import { expect, test } from 'vitest';
import { amountsIn, type Float, MOST_DIGITS } from '../../../../../sim/index.ts';
import { besideWords } from '../../../../../src/panels/tub/beside-words.ts';

const FIRST = { state: 'floats', mass: 40, draft: 30, trim: 0, heel: 0 } as Float;
const degrees = (angle: number) => (angle * Math.PI) / 180;

function words(changes: Partial<Float>, first: Partial<Float> = {}, units: 'mm-g' | 'in-oz' = 'mm-g'): string {
  return besideWords({ ...FIRST, ...first }, { ...FIRST, ...changes }, MOST_DIGITS, amountsIn(units));
}

test('A bait that draws more rides lower, by as much', () => {
  expect(words({ mass: 46.2, draft: 33.4 })).toBe('floats; 6.2 g heavier, 3.4 mm lower');
  expect(words({}, { mass: 46.2, draft: 33.4 })).toBe('floats; 6.2 g lighter, 3.4 mm higher');
});

test('A bait that sinks has no draft to compare', () => {
  expect(words({ state: 'sinks', mass: 50, draft: null })).toBe('sinks; 10.0 g heavier');
});

test('Turns are told by the way they go, from where the first stands', () => {
  expect(words({ trim: degrees(1.2) })).toBe('floats; 1.2° more nose-down');
  expect(words({ trim: degrees(-1.5) }, { trim: degrees(0.5) })).toBe('floats; 2.0° more tail low');
  expect(words({ heel: degrees(3) })).toBe('floats; 3.0° more to starboard');
  expect(words({ heel: degrees(-3) })).toBe('floats; 3.0° more to port');
});

test('Less than the last decimal is no difference', () => {
  expect(words({ mass: 40.04, draft: 30.04, trim: degrees(0.04), heel: degrees(-0.04) })).toBe('floats; no different');
});

test('In inches and ounces the same is told in them', () => {
  expect(words({ mass: 46.2, draft: 33.4 }, {}, 'in-oz')).toBe('floats; 0.219 oz heavier, 0.134 in lower');
});
