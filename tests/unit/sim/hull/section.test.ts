import { gamma } from 'mathjs';
import { describe, expect, test } from 'vitest';
import type { OvalSection } from '../../../../sim/design/design.ts';
import { buildUnitRing, sectionAreaFactor } from '../../../../sim/hull/section.ts';

const SECTIONS: readonly OvalSection[] = [
  { kind: 'oval', above: 2, below: 2, breadth: 0.5 },
  { kind: 'oval', above: 1.3, below: 8, breadth: 0.2 },
  { kind: 'oval', above: 4, below: 2.3, breadth: 0.65 },
];

describe('the share of its box that a section fills', () => {
  test('is a quarter of pi for an ellipse and a half for a lozenge', () => {
    expect(sectionAreaFactor(2)).toBeCloseTo(Math.PI / 4, 13);
    expect(sectionAreaFactor(1)).toBeCloseTo(0.5, 13);
  });

  test('agrees with the gamma function of a library of its own, over all exponents that are allowed', () => {
    for (let n = 1.3; n <= 8; n += 0.1) {
      const wanted = gamma(1 + 1 / n) ** 2 / gamma(1 + 2 / n);
      expect(Math.abs(sectionAreaFactor(n) / wanted - 1)).toBeLessThan(1e-13);
    }
  });

  test('grows with the exponent', () => {
    let last = 0;
    for (let n = 1.3; n <= 8; n += 0.05) {
      const share = sectionAreaFactor(n);
      expect(share).toBeGreaterThan(last);
      last = share;
    }
    expect(last).toBeLessThan(1);
  });
});

describe.each(SECTIONS)('a ring of exponents $above over $below, broadest at $breadth', (section) => {
  const ring = buildUnitRing(section, 32);

  test('runs from keel to back over the starboard flank, its points on the smooth section', () => {
    expect([ring.smoothAcross[0], ring.smoothUpright[0]]).toEqual([0, -1]);
    expect([ring.smoothAcross[32], ring.smoothUpright[32]]).toEqual([0, 1]);
    expect(ring.smoothAcross[16]).toBe(1);
    expect(ring.smoothUpright[16]).toBeCloseTo(0, 12);
    ring.smoothAcross.forEach((u, i) => {
      const v = ring.smoothUpright[i];
      const n = i < 16 ? section.below : section.above;
      expect(u ** n + Math.abs(v) ** n).toBeCloseTo(1, 12);
      if (i > 0) expect(v).toBeGreaterThan(ring.smoothUpright[i - 1]);
    });
  });

  test('encloses the area of the smooth section to the last digits', () => {
    const rise = (v: number) => v * (v >= 0 ? 1 - section.breadth : section.breadth);
    let polygon = 0;
    for (let i = 0; i < 32; i++) {
      polygon += ((ring.across[i] + ring.across[i + 1]) / 2) * (rise(ring.upright[i + 1]) - rise(ring.upright[i]));
    }
    const smooth =
      (1 - section.breadth) * sectionAreaFactor(section.above) + section.breadth * sectionAreaFactor(section.below);
    expect(Math.abs(polygon / smooth - 1)).toBeLessThan(1e-13);
  });

  test('is the smooth one blown up by one factor, a little over 1, but for keel and back', () => {
    const factor = ring.across[16] / ring.smoothAcross[16];
    expect(factor).toBeGreaterThan(1);
    expect(factor).toBeLessThan(1.01);
    expect([ring.upright[0], ring.upright[32]]).toEqual([-1, 1]);
    ring.across.forEach((u, i) => {
      if (i === 0 || i === 32) return;
      expect(u).toBeCloseTo(factor * ring.smoothAcross[i], 12);
      expect(ring.upright[i]).toBeCloseTo(factor * ring.smoothUpright[i], 12);
    });
  });

  test('has the outward gradient of the smooth section at each point', () => {
    const measure = (u: number, v: number, n: number) => Math.abs(u) ** n + Math.abs(v) ** n;
    for (const i of [3, 9, 14, 18, 23, 29]) {
      const n = i < 16 ? section.below : section.above;
      const [u, v, step] = [ring.smoothAcross[i], ring.smoothUpright[i], 1e-6];
      const across = (measure(u + step, v, n) - measure(u - step, v, n)) / (2 * step * n);
      const upright = (measure(u, v + step, n) - measure(u, v - step, n)) / (2 * step * n);
      expect(ring.gradAcross[i]).toBeCloseTo(across, 7);
      expect(ring.gradUpright[i]).toBeCloseTo(upright, 7);
    }
  });
});

test('finer rings need less blowing up, by the square of the step', () => {
  const growths = [16, 32, 64].map((steps) => buildUnitRing(SECTIONS[0], steps).across[steps / 2] - 1);
  for (const i of [1, 2]) expect(Math.abs(Math.log2(growths[i - 1] / growths[i]) - 2)).toBeLessThan(0.06);
});
