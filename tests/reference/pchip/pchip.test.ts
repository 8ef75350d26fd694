import { describe, expect, test } from 'vitest';
import { pchip, pchipAt } from '../../../sim/numerics/pchip.ts';
import { given, expect as wanted } from './case.json';

const curve = pchip(given.x, given.f);

function at(x: number): readonly [number, number] {
  const out = new Float64Array(2);
  pchipAt(curve, x, out);
  return [out[0], out[1]];
}

describe('the curve through the nine points of a titration', () => {
  test.each(wanted.at.map((x, i) => [x, wanted.value.value[i], wanted.slope.value[i]]))(
    'at %d stands at %d and rises by %d',
    (x, value, slope) => {
      const [found, rise] = at(x);
      expect(Math.abs(found - value)).toBeLessThan(wanted.value.tolerance);
      // the first point is where the constant before it ends
      if (x > given.x[0]) expect(Math.abs(rise / slope - 1)).toBeLessThan(wanted.slope.tolerance);
    },
  );

  test('passes through its points and never falls between them', () => {
    given.x.forEach((x, i) => {
      expect(at(x)[0]).toBeCloseTo(given.f[i], 12);
    });
    for (let i = 0; i < 2000; i++) expect(at(7.99 + (12.01 * i) / 2000)[1]).toBeGreaterThanOrEqual(0);
  });
});
