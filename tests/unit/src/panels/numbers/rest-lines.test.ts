import { expect, test } from 'vitest';
import type { Attitudes, Float, OtherRest } from '../../../../../sim/index.ts';
import { restLines } from '../../../../../src/panels/numbers/rest-lines.ts';

const FIRST = { mass: 40, neutral: false, mirrored: false, trim: 0, heel: 0, lyingHooks: false } as Float;

function turnedTo(degrees: number, changes: Partial<OtherRest> = {}): OtherRest {
  const float = { ...FIRST, heel: (degrees * Math.PI) / 180 };
  return { float, hump: 12, back: 3, over: null, share: 0.2, mirrorOf: null, ...changes };
}

function attitudes(others: readonly OtherRest[], firstIsNeutral = false): Attitudes {
  return { others, firstIsNeutral, firstShare: 0.5, starts: 162, drops: [] };
}

test('A bait that comes back from anywhere has nothing to say', () => {
  expect(restLines(attitudes([]), FIRST, 'mm-g')).toEqual({ lines: [], neutral: null, more: 0, otherSide: null });
});

test('Another rest says where, and what it takes to get there and back', () => {
  const [line] = restLines(attitudes([turnedTo(180)]), FIRST, 'mm-g').lines;
  expect(line?.where).toMatch(/^Can also rest belly up/);
  expect(line?.push).toContain('12 g mm');
});

test('In inches and ounces the push is in ounce inches', () => {
  const [line] = restLines(attitudes([turnedTo(180, { hump: 720, back: 72 })]), FIRST, 'in-oz').lines;
  // 1 oz in is 28.349523125 g x 25.4 mm = 720.08 g mm; 72 / 720.08 is 0.09999
  expect(line?.push).toContain('1.000 oz in');
  expect(line?.push).toContain('0.1000 oz in');
  expect(line?.push).not.toMatch(/\d (mm|g)\b/);
});

test('The other side of a bait that lays over is left to its verdict', () => {
  const leaning = { ...FIRST, mirrored: true };
  expect(restLines(attitudes([turnedTo(-40, { mirrorOf: 0 })]), leaning, 'mm-g').lines).toEqual([]);
});

test('A bait without a preferred way up says so, unless its verdict does', () => {
  expect(restLines(attitudes([], true), FIRST, 'mm-g').neutral).toBe('No preferred way up');
  expect(restLines(attitudes([], true), { ...FIRST, neutral: true }, 'mm-g').neutral).toBeNull();
});

test('Without a preference here but with another way to rest, only what is near is said to be all one', () => {
  const { neutral, lines } = restLines(attitudes([turnedTo(180)], true), FIRST, 'mm-g');
  expect(neutral).toMatch(/near this one$/);
  expect(lines).toHaveLength(1);
});

test('Of many ways two are told and the rest are counted', () => {
  const { lines, more } = restLines(attitudes([180, 90, -90, 45].map((heel) => turnedTo(heel))), FIRST, 'mm-g');
  expect(lines).toHaveLength(2);
  expect(more).toBe(2);
});
