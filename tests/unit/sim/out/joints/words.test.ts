import { describe, expect, test } from 'vitest';
import {
  foldedWords,
  jointWords,
  looseWords,
  pinLoadWords,
  postureWords,
} from '../../../../../sim/out/joints/words.ts';
import { amountsIn } from '../../../../../sim/units/amounts.ts';
import { makeAssembly, makeFolded, makeJointed, makeJointRest } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;

describe('what a pin carries', () => {
  test('is next to nothing where it is less than a scale shows', () => {
    expect(pinLoadWords({ shear: 0.04, moment: -0.9, twist: 0.5 })).toBe('next to nothing');
  });

  test('is told by what it does to the links, in either pair of units', () => {
    const load = { shear: 0.53, moment: 27.4, twist: -3.2 };
    expect(pinLoadWords(load)).toBe('0.53 g holding the fore link down, 27 g mm of sag and 3.2 g mm of twist');
    expect(pinLoadWords(load, amountsIn('in-oz'))).toMatch(/^0\.019 oz holding the fore link down/);
    expect(pinLoadWords({ shear: -0.2, moment: -13, twist: 0 })).toBe(
      '0.20 g holding the fore link up and 13 g mm of arch',
    );
  });
});

test('a joint that gives within its play sags or arches, and leans to a side', () => {
  expect(postureWords({ sag: 0, lean: 0 })).toBe('straight');
  expect(postureWords({ sag: 2.1 * DEGREE, lean: 0 })).toBe('sags 2.1°');
  expect(postureWords({ sag: -7.2 * DEGREE, lean: -0.5 * DEGREE })).toBe('arches 7.2°, leans 0.5° to port');
});

test('a joint tells what it leans on only where it carries something', () => {
  const joint = makeJointRest({ sag: 0.02, stops: ['loops', 'slot floor'] });
  expect(jointWords(joint)).toBe('sags 1.1°; it carries next to nothing');
  const loaded = { ...joint, load: { shear: -0.2, moment: 0, twist: 0 } };
  expect(jointWords(loaded)).toBe(
    'sags 1.1°; it carries 0.20 g holding the fore link up, against the pin in its loops and the floor of its slot',
  );
});

describe('a bait that is let go', () => {
  const curled = (yaw: number, heel: number) =>
    makeJointed({
      loose: makeAssembly({
        links: [0, 1].map(() => ({ up: [0, 0, 1], offset: 12, trim: 0, heel: heel * DEGREE })),
        joints: [makeJointRest({ yaw: yaw * DEGREE, stops: ['starboard'] })],
      }),
    });

  test('stays straight, or is said to where it turns by less than a degree', () => {
    expect(looseWords(makeJointed())).toBe('Let go it stays straight.');
    expect(looseWords(curled(0.6, 0))).toBe('Let go it stays straight.');
  });

  test('curls to a side by so much, heels, and is held by friction or is not', () => {
    expect(looseWords(curled(40, 18.8))).toBe(
      'Let go it curls by itself: joint 1 by 40° to starboard, as far as it goes; it then heels 18.8° to starboard. Friction in its eyes holds it only where it would heel less than about 3.0°.',
    );
    expect(looseWords(curled(40, 1.2))).toContain('Rust and friction may well keep it straight');
  });
});

describe('a bait that is folded', () => {
  test('stays upright, heels, or rolls', () => {
    expect(foldedWords(makeFolded())).toBe('Folded as far as it goes, 45° in all, it stays upright.');
    expect(foldedWords(makeFolded(0.1))).toBe('Folded to starboard it heels 5.7° at most, at 45° of fold.');
    expect(foldedWords(makeFolded(0.7))).toBe(
      'Folded to starboard it rolls: past 45° of fold it lies over by more than 30°, by 40.1° at most.',
    );
  });
});
