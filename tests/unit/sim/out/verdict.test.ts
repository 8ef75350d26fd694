import { describe, expect, test } from 'vitest';
import type { Float } from '../../../../sim/hydro/float.ts';
import { baitVerdict, linkVerdict } from '../../../../sim/out/verdict.ts';
import { amountsIn } from '../../../../sim/units/amounts.ts';
import { radianFromDegree } from '../../../../sim/units/convert.ts';
import { makeFloat } from '../../../support/make-checked-bait.ts';

const deg = radianFromDegree;
const AFLOAT = { proud: 6.24 } as const;
const DROWNED = { offset: null, draft: null, proud: null } as const;
const UNSETTLED = { converged: false, steps: 60, passes: 200, force: -0.31, moment: 12.3 };

describe('the verdict on a bait', () => {
  test.each<[why: string, float: Partial<Float>, says: string]>([
    ['riding well', AFLOAT, 'The bait floats 6.2 mm proud, level.'],
    ['with its back at the surface', { proud: 0.3 }, 'The bait floats awash, 0.3 mm proud, level.'],
    ['held up by a fin', { proud: -1.5 }, 'The bait floats awash, its wood 1.5 mm under, level.'],
    ['whose skin is under but for a fitting', { proud: null }, 'The bait floats awash, level.'],
    ['trimmed by the head', { ...AFLOAT, trim: deg(1.8) }, 'The bait floats 6.2 mm proud, 1.8° nose-down.'],
    ['trimmed by the tail', { ...AFLOAT, trim: deg(-2.4) }, 'The bait floats 6.2 mm proud, 2.4° tail low.'],
    ['trimmed less than can be carved', { ...AFLOAT, trim: deg(0.49) }, 'The bait floats 6.2 mm proud, level.'],
    ['heeled within the gate', { ...AFLOAT, heel: deg(1.9) }, 'The bait floats 6.2 mm proud, level.'],
    ['that leans', { ...AFLOAT, heel: deg(-12) }, 'The bait floats 6.2 mm proud, leans 12.0° to port.'],
    [
      'nose-down and leaning',
      { ...AFLOAT, trim: deg(3), heel: deg(4) },
      'The bait floats 6.2 mm proud, 3.0° nose-down, leans 4.0° to starboard.',
    ],
    [
      'that will not stand up: the block without enough ballast',
      { ...AFLOAT, heel: deg(31.7), laysOver: true, mirrored: true },
      'The bait floats 6.2 mm proud, lays over 31.7° to starboard; rests as well on its other side.',
    ],
    [
      'that lays over only a little',
      { ...AFLOAT, heel: deg(7), laysOver: true, mirrored: true },
      'The bait floats 6.2 mm proud, lays over 7.0° to starboard; rests as well on its other side.',
    ],
    [
      'on its flank',
      { ...AFLOAT, heel: deg(90), laysOver: true },
      'The bait floats 6.2 mm proud, lays over 90.0° to starboard.',
    ],
    [
      'that would stand but for weight off its middle',
      { ...AFLOAT, heel: deg(-34.1) },
      'The bait floats 6.2 mm proud, is pulled over 34.1° to port.',
    ],
    ['upside down', { ...AFLOAT, heel: deg(-180) }, 'The bait floats 6.2 mm proud, belly up, 180.0° over.'],
    [
      'that stands on its nose, where heel means nothing',
      { ...AFLOAT, trim: deg(86), heel: deg(140) },
      'The bait floats 6.2 mm proud, 86.0° nose-down: on its nose.',
    ],
    [
      'that hangs from its nose',
      { ...DROWNED, state: 'hangs', netWet: -0.04, trim: deg(-88) },
      'The bait hangs, 0.04 g lighter than its water, 88.0° tail low: on its tail.',
    ],
    [
      'that may tip either end down',
      { ...AFLOAT, trim: deg(5), mirrored: true },
      'The bait floats 6.2 mm proud, 5.0° nose-down; rests as well the other end down.',
    ],
    ['in balance', { ...DROWNED, state: 'hangs', netWet: 0.004 }, 'The bait hangs, as heavy as its water, level.'],
    [
      'a trace too heavy',
      { ...DROWNED, state: 'hangs', netWet: 0.08 },
      'The bait hangs, 0.08 g heavier than its water, level.',
    ],
    [
      'that sinks slowly',
      { ...DROWNED, state: 'sinks', netWet: 1.2, trim: deg(0.6) },
      'The bait sinks, 1.20 g heavier than its water, 0.6° nose-down.',
    ],
    ['that is tender', { ...AFLOAT, tender: true }, 'The bait floats 6.2 mm proud, level; tender: a breath tips it.'],
    [
      'that is round all over',
      { ...AFLOAT, tender: true, neutral: true },
      'The bait floats 6.2 mm proud, level; no preferred way up.',
    ],
    [
      'with a hook across its flank',
      { ...AFLOAT, heel: deg(95), laysOver: true, lyingHooks: true },
      'The bait floats 6.2 mm proud, lays over 95.0° to starboard; a hook lies on it here, so take the angles as rough.',
    ],
    [
      'that the sums could not settle',
      { ...AFLOAT, solver: UNSETTLED },
      'The bait floats 6.2 mm proud, level; not settled after 60 steps, the nearest found is 0.31 g and 12 g mm out.',
    ],
  ])('%s', (_, float, says) => {
    expect(baitVerdict(makeFloat(float))).toBe(says);
  });
});

test('a link is named as the maker named it, with the capital a sentence wants', () => {
  expect(linkVerdict('tail', makeFloat(AFLOAT))).toBe('Tail floats 6.2 mm proud, level.');
  expect(linkVerdict('éperon II', makeFloat(AFLOAT))).toBe('Éperon II floats 6.2 mm proud, level.');
  expect(linkVerdict('𐐨x', makeFloat(AFLOAT))).toBe('𐐀x floats 6.2 mm proud, level.');
  expect(linkVerdict('3', makeFloat(AFLOAT))).toBe('3 floats 6.2 mm proud, level.');
});

test('in inches and ounces it says the same', () => {
  const inches = amountsIn('in-oz');
  expect(baitVerdict(makeFloat(AFLOAT), undefined, inches)).toBe('The bait floats 0.246 in proud, level.');
  const heavy = makeFloat({ ...DROWNED, state: 'sinks', netWet: 2.834 });
  expect(linkVerdict('tail', heavy, undefined, inches)).toBe('Tail sinks, 0.100 oz heavier than its water, level.');
});

test('a verdict says no more decimals than are meant', () => {
  const rough = { proud: 0, trim: 0, heel: 0 };
  const leaning = makeFloat({ ...AFLOAT, trim: 0.0312, heel: 0.0751 });
  expect(baitVerdict(leaning)).toBe('The bait floats 6.2 mm proud, 1.8° nose-down, leans 4.3° to starboard.');
  expect(baitVerdict(leaning, rough)).toBe('The bait floats 6 mm proud, 2° nose-down, leans 4° to starboard.');
  expect(baitVerdict(makeFloat(AFLOAT), rough, amountsIn('in-oz'))).toBe('The bait floats 0.25 in proud, level.');
});
