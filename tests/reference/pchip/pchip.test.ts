import { describe, expect, test } from 'vitest';
import { buildPchip, pchipAt } from '../../../sim/numerics/pchip.ts';
import { given, expect as wanted } from './case.json';

const curve = buildPchip(given.x, given.f);

describe('the monotone cubic through the steep points', () => {
  test.each([
    ['five digits', curve, wanted.slope_at_points],
    ['six digits', buildPchip(given.x, given.six_digits), wanted.slope_at_six_digits],
  ] as const)('has the slopes of weighted harmonic means at its points, of %s', (_, { slope: slopes }, points) => {
    const { value, relative_tolerance: near } = points;
    slopes.forEach((slope, i) => {
      expect(Math.abs(slope - value[i])).toBeLessThanOrEqual(near * Math.abs(value[i]));
    });
  });

  test.each(given.at.map((x, i) => [x, i] as const))('has the printed value and slope at %d', (x, i) => {
    const out = new Float64Array(2);
    pchipAt(curve, x, out);
    expect(Math.abs(out[0] - wanted.value.value[i])).toBeLessThan(wanted.value.tolerance);
    const { value, relative_tolerance: share, absolute_tolerance: least } = wanted.slope;
    expect(Math.abs(out[1] - value[i])).toBeLessThan(share * value[i] + least);
  });
});
