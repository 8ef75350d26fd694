import { describe, expect, test } from 'vitest';
import { fallingPose } from '../../../../src/scene/fall.ts';
import type { Pose } from '../../../../src/scene/motion.ts';
import { makeSinking } from '../../../support/make-checked-bait.ts';

const REST: Pose = { up: [0, 0, 1], offset: 30 };
/** Rising to 100 mm/s by an even pull over a second, and steady after it. */
const SINKING = makeSinking({
  speed: [90, 100, 110],
  up: [0.1, 0, Math.sqrt(0.99)],
  curve: [0, 0.5, 1, 3].map((time) => {
    const depth = time <= 1 ? 50 * time * time : 50 + 100 * (time - 1);
    const speed = Math.min(100, 100 * time);
    return { time, depth: [depth, depth, depth] as const, speed: [speed, speed, speed] as const };
  }),
});

describe('a bait that has been let go', () => {
  const at = (time: number, still = false) => fallingPose(REST, SINKING, time, 500, still);

  test('begins where and as it rests', () => {
    expect(at(0)).toEqual(REST);
  });

  test('is as deep as its equation of motion has it, between the points and after the last', () => {
    expect(at(0.7)?.offset).toBeCloseTo(30 + 50 * 0.49, 9);
    expect(at(2)?.offset).toBeCloseTo(30 + 150, 9);
    expect(at(4)?.offset).toBeCloseTo(30 + 350, 9);
  });

  test('turns to its way up in the fall by the square of its speed', () => {
    const half = at(0.5);
    expect(half?.up[0]).toBeCloseTo(0.025 / Math.hypot(0.025, 1 - 0.25 * (1 - Math.sqrt(0.99))), 9);
    expect(at(2)?.up[0]).toBeCloseTo(0.1, 9);
  });

  test('is gone once it is deeper than the tub', () => {
    expect(at(6)).toBeNull();
  });

  test('is seen at every half second by a reader who wants no motion', () => {
    expect(at(0.49, true)).toEqual(REST);
    expect(at(0.9, true)).toEqual(at(0.5));
  });
});
