import { expect, test } from 'vitest';
import type { Float } from '../../../../sim/hydro/float.ts';
import { humpWords, restWords } from '../../../../sim/out/other-rest.ts';
import { makeFloat } from '../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;

function rest(float: Partial<Float>, mirrorOf: number | null = null) {
  return { float: makeFloat(float), hump: 10, back: 5, over: null, share: 0.5, mirrorOf };
}

test.each<[string, Partial<Float>]>([
  ['belly up, 178.0° over', { heel: -178 * DEGREE }],
  ['on its nose', { trim: 85 * DEGREE }],
  ['hanging by its tail', { trim: -88 * DEGREE }],
  ['over to starboard by 45.0°, 10.0° tail low', { heel: 45 * DEGREE, trim: -10 * DEGREE }],
  ['upright, 30.0° nose-down', { trim: 30 * DEGREE }],
  ['over to port by 90.0°, any way round', { heel: -90 * DEGREE, neutral: true }],
  ['over to port by 90.0° (roughly: hooks lie on it)', { heel: -90 * DEGREE, lyingHooks: true }],
])('%s', (words, float) => {
  expect(restWords(rest(float))).toBe(words);
});

test('a mirror image is called one', () => {
  expect(restWords(rest({ heel: -40 * DEGREE }, 0))).toBe('over to port by 40.0°, the mirror image of the other');
});

test('the hump is said against the work of lifting the bait', () => {
  expect(humpWords({ ...rest({}), hump: 5 }, 10)).toContain('5.0 g mm to get there (less than lifting it a millimetre');
  expect(humpWords({ ...rest({}), hump: 40 }, 10)).toContain(
    '40 g mm to get there (as lifting it 4.0 mm: a wave or a tug',
  );
  expect(humpWords({ ...rest({}), hump: 400 }, 10)).toContain('as lifting it 40.0 mm: it has to be turned by hand');
  expect(humpWords({ ...rest({}), hump: null }, 10)).toBe('what it takes to get there was not found');
});
