import { describe, expect, test } from 'vitest';
import { type Faller, fallAt, fallFrom, GRAVITY, steadySpeed, timeTo } from '../../../../sim/sinking/motion.ts';
import { ballDrag } from '../../../../sim/sinking/section-drag.ts';

/** 80 g with 30 g of water round it, 1.2 g heavier than its water, the same drag at every speed. */
const EVEN: Faller = { netWet: 1.2, inertia: 110, waterDensity: 0.001, dragArea: () => 1600 };
const STEADY = Math.sqrt((2 * 1.2 * GRAVITY) / (0.001 * 1600));
const LAG = (110 * STEADY) / (1.2 * GRAVITY);

describe('a fall with the same drag at every speed is the closed form', () => {
  const fall = fallFrom(EVEN);

  test('v∞ = √(2 w g/(ρ C_d A))', () => {
    expect(fall.steady).toBeCloseTo(STEADY, 9);
  });

  test.each([0.01, 0.3, 1, 2.4, 5, 11, 40])('v = v∞ tanh(t/τ), x = v∞ τ ln cosh(t/τ) after %d s', (time) => {
    const { depth, speed } = fallAt(fall, time);
    const [share, way] = [Math.tanh(time / LAG), Math.log(Math.cosh(time / LAG))];
    // between its steps the fall is a cubic: a quarter of τ to the fourth power
    expect(Math.abs(depth / (STEADY * LAG * way) - 1)).toBeLessThan(time < 0.1 ? 2e-2 : 2e-4);
    expect(Math.abs(speed / (STEADY * share) - 1)).toBeLessThan(time < 0.1 ? 2e-2 : 1e-3);
  });

  test.each([1, 30, 304.8, 1000, 5000])('t = τ arcosh(exp(x/(v∞ τ))) to %d mm', (depth) => {
    const wanted = LAG * Math.acosh(Math.exp(depth / (STEADY * LAG)));
    expect(Math.abs(timeTo(EVEN, fall, depth) / wanted - 1)).toBeLessThan(1e-9);
  });

  test('and begins as a body in a vacuum would with that net weight', () => {
    const [, first] = fall.steps;
    expect(first.speed / first.time).toBeLessThan((1.2 * GRAVITY) / 110);
    expect(timeTo(EVEN, fall, 1)).toBeCloseTo(Math.sqrt((2 * 110) / (1.2 * GRAVITY)), 3);
  });
});

describe('a fall whose drag changes with its speed', () => {
  // a ball of 20 mm, 1.1 times as heavy as its water, by a correlation over Re
  const [area, diameter] = [Math.PI * 100, 20];
  const ball: Faller = {
    netWet: (Math.PI / 6) * 8000 * 1e-4,
    inertia: (Math.PI / 6) * 8000 * (0.0011 + 0.0005),
    waterDensity: 0.001,
    dragArea: (speed) => area * ballDrag(speed * diameter),
  };
  const fall = fallFrom(ball);

  test('is that which small steps of time find', () => {
    let [time, depth, speed] = [0, 0, 1e-9];
    const step = 2e-5;
    const pull = (v: number) =>
      (ball.netWet * GRAVITY - 0.5 * ball.waterDensity * ball.dragArea(v) * v * v) / ball.inertia;
    while (depth < 304.8) {
      const half = speed + (step / 2) * pull(speed);
      depth += step * half;
      speed += step * pull(half);
      time += step;
    }
    expect(Math.abs(timeTo(ball, fall, 304.8) - time)).toBeLessThan(1e-4);
  });

  test('comes to the speed at which drag bears the net weight', () => {
    const speed = steadySpeed(ball);
    expect(0.5 * 0.001 * ball.dragArea(speed) * speed ** 2).toBeCloseTo(ball.netWet * GRAVITY, 9);
    expect(fallAt(fall, 1e4).speed).toBe(speed);
  });

  test('is found for a few millimetres of a light body that would fall very fast', () => {
    const slim: Faller = { ...ball, dragArea: (speed) => 5 + 8 / Math.sqrt(speed) };
    expect(timeTo(slim, fallFrom(slim), 5)).toBeGreaterThan(
      Math.sqrt((2 * 5 * slim.inertia) / (slim.netWet * GRAVITY)),
    );
  });

  test('takes longer to a depth than it would at that speed, and never gains on it', () => {
    for (const depth of [10, 304.8, 1000]) expect(timeTo(ball, fall, depth)).toBeGreaterThan(depth / fall.steady);
    fall.steps.slice(1).forEach((at, i) => {
      expect(at.time).toBeGreaterThan(fall.steps[i].time);
      expect(at.speed).toBeGreaterThanOrEqual(fall.steps[i].speed);
    });
  });
});
