import { bracketedRoot } from '../numerics/root.ts';
import type { Mm } from '../units/brand.ts';

/**
 * One outline of the body over x: the back, the belly (each a height off the datum, measured the way it swells) or the
 * half width. Two quarters that meet at the peak with one curvature, or at the ends of a straight run with none:
 *
 *   outline(s) = z_e + sqrt( (H² - e²)·g(s)^m + e²·cap(d/c) )
 *   g(s)   = 1 - q s² + (2q + a - 4) s³ + (3 - q - a) s⁴      g(0)=1  g'(0)=0  g''(0)=-2q  g(1)=0  g'(1)=-a
 *   cap(v) = 1 - (1 - v)³ for v < 1, else 1
 *
 * s runs from 0 at the peak to 1 at the tip, d is the distance from the tip along x. Near a plain tip the square of the
 * outline is linear in x, so the end is truly round. Derived for this project; a = 2, q = 1 gives g = 1 - s², an
 * exact ellipse.
 */
export interface Outline {
  /** Where the nose's quarter ends; the tail's begins here too, or its own run before the end where it runs straight. */
  readonly peak: Mm;
  readonly length: Mm;
  readonly nose: Quarter;
  readonly tail: Quarter;
}

interface Quarter {
  /** Peak to tip along x. */
  readonly run: Mm;
  /** Level of the tip. */
  readonly level: Mm;
  /** H² - e². */
  readonly swell: number;
  /** e². */
  readonly end: number;
  /** Distance over which the end is rounded. */
  readonly round: Mm;
  readonly q: number;
  readonly a: number;
  readonly m: number;
}

/** One end of an outline, as asked for. */
export interface End {
  readonly run: Mm;
  readonly level: Mm;
  /** Tip's level to the peak. */
  readonly rise: Mm;
  /** Half the size of a blunt end or stem; 0 for a plain tip. */
  readonly half: Mm;
  readonly round: Mm;
  /** Share of its box that the quarter fills before the end size is added. */
  readonly fullness: number;
}

/** Below this a quarter's own shape (m = 1) would no longer be monotone, so the leanness goes into the power m. */
const LEANEST_ROUND = 0.73;

/** A run that is shorter is one station, written down twice through an expression that rounds. */
const LEAST_STRAIGHT_MM = 1e-6;

/** Builds an outline from its two ends. What their `run`s leave of the length runs straight. */
export function buildOutline(peak: Mm, length: Mm, nose: End, tail: End): Outline {
  const steepness = (end: End) => (end.rise ** 2 - end.half ** 2) / end.rise;
  const [noseA, tailA] = [steepness(nose), steepness(tail)];
  const straight = length - nose.run - tail.run > LEAST_STRAIGHT_MM;
  // one curvature at the peak for both sides, never so sharp that a side would dip (q <= 3); a straight run has none
  const curvature = straight
    ? 0
    : Math.min(
        Math.sqrt(noseA * tailA) / (nose.run * tail.run),
        (3 * noseA) / nose.run ** 2,
        (3 * tailA) / tail.run ** 2,
      );
  return {
    peak,
    length,
    nose: buildQuarter(nose, (curvature * nose.run ** 2) / noseA),
    tail: buildQuarter(tail, (curvature * tail.run ** 2) / tailA),
  };
}

function buildQuarter(end: End, q: number): Quarter {
  const lean = end.fullness < LEANEST_ROUND;
  const a = quarterRoot((x) => fullness(x, q, 1) - (lean ? LEANEST_ROUND : end.fullness), 0, 6);
  // q/m inside g keeps the curvature at the peak while the power m thins the end
  const m = lean ? quarterRoot((x) => end.fullness - fullness(a, q / x, x), 1, 12) : 1;
  return {
    run: end.run,
    level: end.level,
    swell: end.rise ** 2 - end.half ** 2,
    end: end.half ** 2,
    round: end.round,
    q: q / m,
    a,
    m,
  };
}

function quarterRoot(f: (x: number) => number, lo: number, hi: number): number {
  return bracketedRoot(f, lo, hi, 1e-10).x;
}

/** Even, so that Simpson's rule applies; right to 3e-7 in the fullness. */
const FULLNESS_STEPS = 64;

/** F = integral of g^(m/2) over s, by Simpson on s = 1 - v², which removes the root at the tip. */
function fullness(a: number, q: number, m: number): number {
  let sum = 0;
  for (let i = 0; i <= FULLNESS_STEPS; i++) {
    const v = i / FULLNESS_STEPS;
    const s = 1 - v * v;
    const weight = i === 0 || i === FULLNESS_STEPS ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * 2 * v * shape(s, q, a) ** (m / 2);
  }
  return sum / (3 * FULLNESS_STEPS);
}

/** g(s), written with the root at the tip taken out, so that it never falls below 0 by rounding. */
function shape(s: number, q: number, a: number): number {
  const b = 2 * q + a - 4;
  // g(s) = (1 - s)(1 + s + (1 - q) s² + (1 - q + b) s³), since 1 - q + b + c = 0
  return Math.max(0, (1 - s) * (1 + s + (1 - q) * s * s + (1 - q + b) * s * s * s));
}

function shapeSlope(s: number, q: number, a: number): number {
  return s * (-2 * q + s * (3 * (2 * q + a - 4) + s * 4 * (3 - q - a)));
}

/**
 * Height of an outline over its tip line and the slope along x, into out[at], out[at + 1]. Off the ends it gives the
 * tip's level with a slope of 0. At a tip itself the slope is infinite and is given as 0: callers treat poles apart.
 */
export function outlineAt(outline: Outline, x: Mm, out: Float64Array, at: number): void {
  const towardsNose = x < outline.peak;
  const quarter = towardsNose ? outline.nose : outline.tail;
  const fromTip = towardsNose ? x : outline.length - x;
  if (fromTip <= 0) {
    out[at] = quarter.level;
    out[at + 1] = 0;
    return;
  }
  // a straight run stays as high as its quarter's peak
  const s = fromTip > quarter.run ? 0 : 1 - fromTip / quarter.run;
  const g = shape(s, quarter.q, quarter.a);
  const gSlope = shapeSlope(s, quarter.q, quarter.a);
  let square = quarter.swell * (quarter.m === 1 ? g : g ** quarter.m);
  let slope = (quarter.swell * (quarter.m === 1 ? 1 : quarter.m * g ** (quarter.m - 1)) * -gSlope) / quarter.run;
  if (quarter.end > 0) {
    const v = fromTip / quarter.round;
    if (v < 1) {
      square += quarter.end * (1 - (1 - v) ** 3);
      slope += (quarter.end * 3 * (1 - v) ** 2) / quarter.round;
    } else {
      square += quarter.end;
    }
  }
  const root = Math.sqrt(square);
  out[at] = quarter.level + root;
  out[at + 1] = root > 0 ? ((towardsNose ? slope : -slope) * 0.5) / root : 0;
}
