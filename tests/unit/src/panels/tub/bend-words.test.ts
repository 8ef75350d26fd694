import { expect, test } from 'vitest';
import { bendWords } from '../../../../../src/panels/tub/bend-words.ts';
import { makeAssembly, makeFolded, makeJointed, makeJointRest } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;

test('a bait that is folded says how far, to which side, and how it heels', () => {
  const folded = makeFolded(0.1);
  const said = (bend: number) => bendWords(bend, makeJointed(), folded);
  expect(said(0)).toBe('straight');
  expect(said(1)).toBe('45° to starboard, heels 5.7° to port');
  expect(said(-0.5)).toBe('23° to port, heels 2.9° to starboard');
  // between two folds that were worked out
  expect(said(0.25)).toBe('11° to starboard, heels 1.4° to port');
  expect(bendWords(1, makeJointed(), makeFolded())).toBe('45° to starboard, upright');
});

test('a bait that is let go says how it curls, or that it does not', () => {
  expect(bendWords('loose', makeJointed(), makeFolded())).toBe('stays straight');
  const loose = makeAssembly({
    links: [0, 1].map(() => ({ up: [0, 0, 1], offset: 12, trim: 0, heel: 18.8 * DEGREE })),
    joints: [makeJointRest({ yaw: -40 * DEGREE })],
  });
  expect(bendWords('loose', makeJointed({ loose }), makeFolded())).toBe('curls 40° to port, heels 18.8° to starboard');
});
