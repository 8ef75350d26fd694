import { describe, expect, test } from 'vitest';
import { drawnJoint, extentOf } from '../../../../../src/panels/joints/swing-drawing.ts';
import { makeJointReach } from '../../../../support/make-checked-bait.ts';

const box = (from: number, to: number, half: number) => ({
  x: [from, to, to, from],
  y: [-half, -half, half, half],
  surface: ['skin', 'skin', 'skin', 'skin'] as const,
});
const swing = (degrees: number, y: number) =>
  ({ angle: (degrees * Math.PI) / 180, touch: ['face', 'face'], at: [59, y, -2] }) as const;
const JOINT = makeJointReach({
  pivot: 60,
  port: swing(90, -5),
  starboard: swing(30, 5),
  level: { z: -2, fore: [box(0, 59, 5)], aft: [box(61, 100, 5)] },
});

describe('what is drawn of a joint', () => {
  const { fore, aft, limits } = drawnJoint(JOINT);
  const [port, starboard] = limits;

  test('are both links as they rest', () => {
    expect(fore).toEqual([
      [
        [0, -5],
        [59, -5],
        [59, 5],
        [0, 5],
      ],
    ]);
    expect(aft[0]).toHaveLength(4);
  });

  test('is the aft link turned about the pin: to port its far end goes to negative y, to starboard to positive', () => {
    // 40 behind the pin
    expect(port?.end[0]).toBeCloseTo(60, 9);
    expect(port?.end[1]).toBeCloseTo(-40, 9);
    expect(starboard?.end[0]).toBeCloseTo(60 + 40 * Math.cos(Math.PI / 6), 9);
    expect(starboard?.end[1]).toBeCloseTo(20, 9);
    // its port corner at the joint, 1 behind the pin and 5 to port, goes a quarter turn
    expect(port?.outlines[0]?.[0]?.[0]).toBeCloseTo(55, 9);
    expect(port?.outlines[0]?.[0]?.[1]).toBeCloseTo(-1, 9);
  });

  test('are the places that touch, on the link that rests', () => {
    expect(limits.map(({ contact }) => contact)).toEqual([
      [59, -5],
      [59, 5],
    ]);
    const free = { angle: Math.PI, touch: null, at: null };
    expect(drawnJoint({ ...JOINT, port: free }).limits[0]?.contact).toBeNull();
  });
});

test('the drawing has room for whatever swings furthest', () => {
  // the port limit reaches 40 to port
  expect(extentOf([drawnJoint(JOINT)]).side).toBeCloseTo(40, 9);
  expect(extentOf([]).side).toBe(0);
});
