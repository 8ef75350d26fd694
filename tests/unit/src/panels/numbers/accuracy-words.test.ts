import { expect, test } from 'vitest';
import type { Accuracy, Float } from '../../../../../sim/index.ts';
import { accuracyWords, filmWords } from '../../../../../src/panels/numbers/accuracy-words.ts';

const DEGREE = Math.PI / 180;
const STEADY = { neutral: false } as Float;

const GOOD: Accuracy = {
  mesh: { draft: 0.004, proud: 0.0061, trim: 0.002 * DEGREE, heel: 0.011 * DEGREE, gm: 0.01 },
  solver: { draft: 1e-9, angle: 1e-9 },
  film: { edge: 250, force: 1.81, draft: 0.62, heel: 4.05 * DEGREE, trim: 0.031 * DEGREE, tooClose: false },
  digits: { draft: 1, proud: 1, trim: 1, heel: 1, gm: 1 },
};

test('How good the sums are is one line, each number the worst of its kind and rounded up', () => {
  expect(accuracyWords(GOOD, STEADY, 'mm-g')).toBe('Sums good to ±0.01 mm, ±0.02°; film up to ±1.9 g');
});

test('In inches and ounces it is the same, and never better than a thousandth', () => {
  // 1.81 g / 28.349523125 is 0.0638 oz
  expect(accuracyWords(GOOD, STEADY, 'in-oz')).toBe('Sums good to ±0.001 in, ±0.02°; film up to ±0.07 oz');
});

test('Under water there is no draft to be off', () => {
  const under: Accuracy = {
    ...GOOD,
    mesh: { draft: null, proud: null, trim: 0, heel: 0, gm: 0 },
    solver: { draft: null, angle: 0 },
  };
  expect(accuracyWords(under, STEADY, 'mm-g')).toBe('Sums good to ±0.01°; film up to ±1.9 g');
});

test('Where nothing turns the bait back its angles are not called good', () => {
  const loose: Accuracy = { ...GOOD, solver: { draft: 0, angle: null } };
  expect(accuracyWords(loose, STEADY, 'mm-g')).toBe('Sums good to ±0.01 mm; film up to ±1.9 g');
  expect(accuracyWords(GOOD, { neutral: true } as Float, 'mm-g')).toBe('Sums good to ±0.01 mm; film up to ±1.9 g');
});

test('A bait that the coarser mesh floats another way is said to be on that edge', () => {
  expect(accuracyWords({ ...GOOD, mesh: null }, STEADY, 'mm-g')).toMatch(/^How good .* cannot be told: .* ±1\.9 g$/);
});

test('Where the film may move the bait to is said in words, or not at all', () => {
  expect(filmWords(GOOD, 'mm-g')).toBe(
    'The skin of the water may move draft by ±0.7 mm, heel by ±4.1°, trim by ±0.04°, at most.',
  );
  const film = { ...GOOD.film, draft: null, heel: null, trim: null };
  expect(filmWords({ ...GOOD, film }, 'mm-g')).toBeNull();
});
