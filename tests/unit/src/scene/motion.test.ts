import { describe, expect, test } from 'vitest';
import { createMotion, type Pose } from '../../../../src/scene/motion.ts';

const UPRIGHT: Pose = { up: [0, 0, 1], offset: 4 };
const NOSE_DOWN: Pose = { up: [Math.sin(0.2), 0, Math.cos(0.2)], offset: 10 };
const BELLY_UP: Pose = { up: [0, 0, -1], offset: 4 };

/** Height of the body's origin over still water, as drawn. */
const heightOfNose = (motion: ReturnType<typeof createMotion>) => motion.matrix.elements[14];

describe('the bait in the tub', () => {
  test('stands in its first attitude at once', () => {
    const motion = createMotion();
    motion.aim(UPRIGHT, 1000, false);
    expect(heightOfNose(motion)).toBe(-4);
    expect(motion.step(1000)).toBe(false);
  });

  test('eases to the next attitude within 200 ms and ends exactly there', () => {
    const motion = createMotion();
    motion.aim(UPRIGHT, 0, false);
    motion.aim(NOSE_DOWN, 1000, false);
    expect(heightOfNose(motion)).toBe(-4);
    expect(motion.step(1100)).toBe(true);
    expect(heightOfNose(motion)).toBeCloseTo(-7, 12);
    expect(motion.step(1200)).toBe(false);
    expect(heightOfNose(motion)).toBe(-10);
    // row of world z: the up-vector itself
    expect(motion.matrix.elements[2]).toBeCloseTo(Math.sin(0.2), 15);
  });

  test('is neither stretched nor mirrored on its way', () => {
    const motion = createMotion();
    motion.aim(UPRIGHT, 0, false);
    motion.aim({ up: [0.6, -0.8, 0], offset: 0 }, 0, false);
    for (let now = 0; now <= 200; now += 20) {
      motion.step(now);
      expect(motion.matrix.determinant()).toBeCloseTo(1, 12);
    }
  });

  test('sets out for a newer attitude from where it is', () => {
    const motion = createMotion();
    motion.aim(UPRIGHT, 0, false);
    motion.aim(NOSE_DOWN, 1000, false);
    motion.step(1100);
    const trimmed = motion.matrix.elements[2];
    motion.aim(UPRIGHT, 1100, false);
    motion.step(1100);
    expect(heightOfNose(motion)).toBeCloseTo(-7, 12);
    expect(motion.matrix.elements[2]).toBeCloseTo(trimmed, 12);
    motion.step(1300);
    expect(heightOfNose(motion)).toBe(-4);
  });

  test('jumps where motion is not wanted, and where there is no shorter way round', () => {
    const still = createMotion();
    still.aim(UPRIGHT, 0, true);
    still.aim(NOSE_DOWN, 0, true);
    expect(heightOfNose(still)).toBe(-10);

    const capsized = createMotion();
    capsized.aim(UPRIGHT, 0, false);
    capsized.aim(BELLY_UP, 0, false);
    expect(capsized.step(0)).toBe(false);
    expect(capsized.matrix.elements[10]).toBe(-1);
  });

  test('tells its listeners where it is, until they leave', () => {
    const motion = createMotion();
    motion.aim(UPRIGHT, 0, true);
    const heard: number[] = [];
    const leave = motion.listen((matrix) => heard.push(matrix.elements[14]));
    motion.aim(NOSE_DOWN, 0, true);
    leave();
    motion.aim(UPRIGHT, 0, true);
    expect(heard).toEqual([-4, -10]);
  });
});
