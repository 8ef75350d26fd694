/** A monotone piecewise cubic: knots in rising order of x, and the slope at each. Plain data. */
export interface Pchip {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/**
 * The piecewise cubic Hermite curve through two knots or more (x strictly rising) that never overshoots: between two
 * knots it stays between their values. Slopes are weighted harmonic means of the neighbouring secants, 0 where those
 * turn (F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304); at the ends the three-point slope,
 * cut back where it would overshoot.
 */
export function buildPchip(x: readonly number[], y: readonly number[]): Pchip {
  const steps = x.slice(1).map((to, i) => to - x[i]);
  const secants = steps.map((step, i) => (y[i + 1] - y[i]) / step);
  const last = secants.length - 1;
  const slope = x.map((_, i) => {
    if (last === 0) return secants[0];
    if (i === 0) return endSlope(steps[0], steps[1], secants[0], secants[1]);
    if (i > last) return endSlope(steps[last], steps[last - 1], secants[last], secants[last - 1]);
    const [before, after] = [secants[i - 1], secants[i]];
    if (!(before * after > 0)) return 0;
    const [w1, w2] = [2 * steps[i] + steps[i - 1], steps[i] + 2 * steps[i - 1]];
    return (w1 + w2) / (w1 / before + w2 / after);
  });
  return { x, y, slope };
}

/** Slope at an end from the two secants next to it. */
function endSlope(step: number, further: number, secant: number, beyond: number): number {
  const slope = ((2 * step + further) * secant - step * beyond) / (step + further);
  if (!(slope * secant > 0)) return 0;
  return secant * beyond < 0 && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
}

/** Value and slope at a place, into out[0] and out[1]. Beyond the ends the curve keeps its end value. */
export function pchipAt({ x, y, slope }: Pchip, at: number, out: Float64Array): void {
  const last = x.length - 1;
  if (at < x[0] || at > x[last]) {
    out[0] = at < x[0] ? y[0] : y[last];
    out[1] = 0;
    return;
  }
  let i = 0;
  while (i < last - 1 && at >= x[i + 1]) i++;
  const step = x[i + 1] - x[i];
  const s = (at - x[i]) / step;
  const secant = (y[i + 1] - y[i]) / step;
  // Newton's form of the Hermite cubic: exact at both knots of a constant stretch
  const b = (3 * secant - 2 * slope[i] - slope[i + 1]) * step;
  const c = (slope[i] + slope[i + 1] - 2 * secant) * step;
  out[0] = s === 1 ? y[i + 1] : y[i] + s * (slope[i] * step + s * (b + s * c));
  out[1] = slope[i] + (s * (2 * b + 3 * s * c)) / step;
}
