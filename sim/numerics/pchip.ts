/** A piecewise cubic through points, with its slope at each: plain data. */
export interface Pchip {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/**
 * The cubic through points (x strictly rising, at least two) that never rises or falls where they do not: slopes by
 * Fritsch and Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat.
 * Comput. 5 (1984) 300–304, ends by the three-point formula kept monotone, as in the Fortran package PCHIP (PCHIM).
 */
export function pchip(x: readonly number[], y: readonly number[]): Pchip {
  const last = x.length - 1;
  const step = x.slice(1).map((to, i) => to - x[i]);
  const secant = step.map((h, i) => (y[i + 1] - y[i]) / h);
  const slope = x.map((_, i) => {
    if (last === 1) return secant[0];
    if (i === 0) return endSlope(step[0], step[1], secant[0], secant[1]);
    if (i === last) return endSlope(step[last - 1], step[last - 2], secant[last - 1], secant[last - 2]);
    return innerSlope(step[i - 1], step[i], secant[i - 1], secant[i]);
  });
  return { x, y, slope };
}

/** Weighted harmonic mean of the two secants; 0 at a peak, a trough or a level stretch. */
function innerSlope(before: number, after: number, secantBefore: number, secantAfter: number): number {
  if (secantBefore * secantAfter <= 0) return 0;
  const [a, b] = [2 * after + before, after + 2 * before];
  return (a + b) / (a / secantBefore + b / secantAfter);
}

function endSlope(near: number, next: number, secantNear: number, secantNext: number): number {
  const slope = ((2 * near + next) * secantNear - near * secantNext) / (near + next);
  if (slope * secantNear <= 0) return 0;
  return secantNear * secantNext < 0 && Math.abs(slope) > 3 * Math.abs(secantNear) ? 3 * secantNear : slope;
}

/** Value and slope at `at`, constant beyond the ends, into out[0] and out[1]. */
export function pchipAt({ x, y, slope }: Pchip, at: number, out: Float64Array): void {
  const last = x.length - 1;
  if (at <= x[0] || at >= x[last]) {
    out[0] = at <= x[0] ? y[0] : y[last];
    out[1] = 0;
    return;
  }
  let i = 0;
  while (at >= x[i + 1]) i++;
  const h = x[i + 1] - x[i];
  const t = (at - x[i]) / h;
  const rise = y[i + 1] - y[i];
  // Hermite: y + h t (slope + t ((3 secant - 2 s0 - s1) + t (s0 + s1 - 2 secant)))
  const secant = rise / h;
  const b = 3 * secant - 2 * slope[i] - slope[i + 1];
  const c = slope[i] + slope[i + 1] - 2 * secant;
  out[0] = y[i] + h * t * (slope[i] + t * (b + t * c));
  out[1] = slope[i] + t * (2 * b + 3 * t * c);
}
