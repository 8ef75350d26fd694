import { describe, expect, test } from 'vitest';
import { buildOutline, type End, type Outline, outlineAt } from '../../../../sim/hull/outline.ts';

const ELLIPSE = Math.PI / 4;

function end(changes: Partial<End>): End {
  return { run: 60, level: 0, rise: 18, half: 0, round: 1, fullness: ELLIPSE, ...changes };
}

function at(outline: Outline, x: number): { readonly height: number; readonly slope: number } {
  const out = new Float64Array(2);
  outlineAt(outline, x, out, 0);
  return { height: out[0], slope: out[1] };
}

/** A quarter that is leaner towards a stem, and peaks nearer the nose: nothing about it is symmetric. */
const SHAD = buildOutline(
  50.4,
  140,
  end({ run: 50.4, rise: 22, fullness: 0.79 }),
  end({ run: 89.6, level: 2, rise: 20, half: 5, round: 3, fullness: 0.74 }),
);
const LEAN = buildOutline(
  50,
  140,
  end({ run: 50, rise: 22, fullness: 0.8 }),
  end({ run: 90, rise: 22, half: 5, round: 3, fullness: 0.55 }),
);

describe('two equal quarters that fill pi/4 of their boxes', () => {
  test.each([
    [60, 18],
    [20, 19.9],
    [150, 6],
  ])('are an ellipse of semi-axes %d and %d mm, to a millionth of a millimetre', (run, rise) => {
    const half = buildOutline(run, 2 * run, end({ run, rise }), end({ run, rise }));
    let most = 0;
    for (let i = 0; i <= 2000; i++) {
      const x = (2 * run * i) / 2000;
      most = Math.max(most, Math.abs(at(half, x).height - rise * Math.sqrt(Math.max(0, 1 - (x / run - 1) ** 2))));
    }
    expect(most).toBeLessThan(1e-6);
  });
});

describe('any outline', () => {
  test('reaches its peak at the peak, level, and its tips at the ends', () => {
    expect(at(SHAD, 50.4).height).toBeCloseTo(22, 12);
    expect(at(SHAD, 50.4).slope).toBeCloseTo(0, 12);
    expect(at(SHAD, 0)).toEqual({ height: 0, slope: 0 });
    expect(at(SHAD, 140)).toEqual({ height: 2, slope: 0 });
  });

  test('stays level off its ends', () => {
    expect(at(SHAD, -5)).toEqual({ height: 0, slope: 0 });
    expect(at(SHAD, 150)).toEqual({ height: 2, slope: 0 });
  });

  test.each([
    ['the shad', SHAD],
    ['the lean one', LEAN],
  ])('has the slope of its own height: %s', (_, outline) => {
    for (let x = 1; x < 139.5; x += 0.7) {
      const step = 1e-5;
      const slope = (at(outline, x + step).height - at(outline, x - step).height) / (2 * step);
      // central difference: 1e-10 of step², and rounding of the height over the step
      expect(Math.abs(at(outline, x).slope - slope)).toBeLessThan(2e-7);
    }
  });

  test.each([
    ['the shad', SHAD, [22, 50.4, 20 - 25 / 20, 89.6]],
    ['the lean one', LEAN, [22, 50, 22 - 25 / 22, 90]],
  ] as const)('bends alike on both sides of its peak: %s', (_, outline, [noseA, noseRun, tailA, tailRun]) => {
    // curvature sqrt(A1 A2)/(L1 L2) with A = (H² - e²)/H; neither cap of 3 A/L² is reached here
    const wanted = -Math.sqrt(noseA * tailA) / (noseRun * tailRun);
    for (const side of [-1, 1]) {
      // slope over distance is the second derivative to the first order, so one halving takes the error out
      const bend = (step: number) => at(outline, outline.peak + side * step).slope / (side * step);
      const found = 2 * bend(0.005) - bend(0.01);
      expect(Math.abs(found / wanted - 1)).toBeLessThan(1e-4);
    }
  });

  test('caps its bend where one side is so much shorter that it would dip', () => {
    const short = end({ run: 20, rise: 18 });
    const long = end({ run: 180, rise: 18 });
    const outline = buildOutline(20, 200, short, long);
    // A = 18 on both sides; sqrt(A A)/(20 · 180) = 0.005, but 3 A/180² = 1/600
    const bend = (step: number) => at(outline, 20 + step).slope / step;
    expect(2 * bend(0.005) - bend(0.01)).toBeCloseTo(-1 / 600, 7);
    expect(2 * bend(-0.005) - bend(-0.01)).toBeCloseTo(-1 / 600, 7);
  });
});

describe('an outline with a straight run', () => {
  const STRAIGHT = buildOutline(
    45,
    140,
    end({ run: 45, rise: 22, half: 4, round: 5, fullness: 0.6 }),
    end({ run: 60, level: 2, rise: 20, half: 5, round: 3, fullness: 0.74 }),
  );

  test('is as high and level all along it', () => {
    for (const x of [45, 50, 66.6, 80]) {
      expect(at(STRAIGHT, x).height).toBeCloseTo(22, 12);
      expect(at(STRAIGHT, x).slope).toBeCloseTo(0, 12);
    }
    expect(at(STRAIGHT, 44).height).toBeLessThan(22);
    expect(at(STRAIGHT, 81).height).toBeLessThan(22);
  });

  test('leaves it without a bend', () => {
    for (const [from, side] of [
      [45, -1],
      [80, 1],
    ]) {
      const bend = (step: number) => at(STRAIGHT, from + side * step).slope / (side * step);
      // third order: the second derivative falls to nothing with the step
      expect(Math.abs(2 * bend(0.005) - bend(0.01))).toBeLessThan(1e-6);
    }
  });

  test('has the slope of its own height', () => {
    for (let x = 1; x < 139.5; x += 0.7) {
      const slope = (at(STRAIGHT, x + 1e-5).height - at(STRAIGHT, x - 1e-5).height) / 2e-5;
      expect(Math.abs(at(STRAIGHT, x).slope - slope)).toBeLessThan(2e-7);
    }
  });

  test('is blunt at its nose: as large as the end beyond the rounding, and round before it', () => {
    expect(at(STRAIGHT, 0)).toEqual({ height: 0, slope: 0 });
    expect(at(STRAIGHT, 5).height).toBeGreaterThan(4);
    // g^m has no more to say at the tip: the roundness is that of the end, 3 e²/c/2
    const radius = (d: number) => at(STRAIGHT, d).height ** 2 / (2 * d);
    expect(2 * radius(1e-4) - radius(2e-4)).toBeCloseTo((3 * 4 ** 2) / 5 / 2, 1);
  });
});

describe('an end', () => {
  /** Radius of the circle that fits a round end: height² over twice the distance, as the distance goes to nothing. */
  function tipRadius(outline: Outline, side: 'nose' | 'tail'): number {
    const level = outline[side].level;
    const radius = (d: number) => (at(outline, side === 'nose' ? d : outline.length - d).height - level) ** 2 / (2 * d);
    return 2 * radius(1e-4) - radius(2e-4);
  }

  test('that is plain is round by a (H² - e²)/L/2', () => {
    expect(tipRadius(SHAD, 'nose') / (0.5 * ((SHAD.nose.a * 22 ** 2) / 50.4)) - 1).toBeCloseTo(0, 6);
    // an ellipse: b²/a; five digits, since its fullness is met to 3e-7
    const ellipse = buildOutline(60, 120, end({}), end({}));
    expect(tipRadius(ellipse, 'nose')).toBeCloseTo(18 ** 2 / 60, 5);
    expect(tipRadius(ellipse, 'tail')).toBeCloseTo(18 ** 2 / 60, 5);
  });

  test('with a stem is rounder by 3 e²/c/2', () => {
    const wanted = 0.5 * ((SHAD.tail.a * (20 ** 2 - 5 ** 2)) / 89.6 + (3 * 5 ** 2) / 3);
    expect(tipRadius(SHAD, 'tail') / wanted - 1).toBeCloseTo(0, 6);
  });

  test('so lean that its shape is a power keeps only the roundness of its stem', () => {
    expect(LEAN.tail.m).toBeGreaterThan(1);
    expect(tipRadius(LEAN, 'tail') / (0.5 * ((3 * 5 ** 2) / 3)) - 1).toBeCloseTo(0, 2);
  });

  test('is as wide as its stem beyond the rounding, but for what the body adds', () => {
    const { height } = at(SHAD, 140 - 3);
    const body = SHAD.tail.swell * shapeBySeries(1 - 3 / 89.6, SHAD);
    expect(height).toBeCloseTo(2 + Math.sqrt(25 + body), 12);
  });

  /** g(s) as the polynomial is printed, not as the engine factors it. */
  function shapeBySeries(s: number, { tail: { q, a } }: Outline): number {
    return 1 - q * s ** 2 + (2 * q + a - 4) * s ** 3 + (3 - q - a) * s ** 4;
  }
});
