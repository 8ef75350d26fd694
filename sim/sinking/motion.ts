import { bracketedRoot } from '../numerics/root.ts';
import type { Gram, GramPerMm3, Mm, Mm2, MmPerS, Second } from '../units/brand.ts';

/** Standard gravity, mm/s². */
export const GRAVITY = 9806.65;

/** Something that is let go under water. */
export interface Faller {
  /** Weight less buoyancy; more than nothing. */
  readonly netWet: Gram;
  /** Its mass and that of the water which moves with it. */
  readonly inertia: Gram;
  readonly waterDensity: GramPerMm3;
  /** C_d · A at a speed. */
  readonly dragArea: (speed: MmPerS) => Mm2;
}

/** A fall from rest: how it goes, step by step, and the speed that it comes to. */
export interface Fall {
  readonly steady: MmPerS;
  readonly steps: readonly { readonly time: Second; readonly depth: Mm; readonly speed: MmPerS }[];
}

/** Where the speed is within 1e-7 of steady. */
const LAST = 9;
const STEP = 0.25;
/** Gauss's points and weights on 0 to 1, of five. */
const GAUSS: readonly (readonly [at: number, weight: number])[] = [
  [0.5, 0.28444444444444444],
  [0.23076534494715845, 0.23931433524968324],
  [0.7692346550528415, 0.23931433524968324],
  [0.04691007703066802, 0.11846344252809454],
  [0.9530899229693319, 0.11846344252809454],
];

/**
 * The speed at which drag bears the net weight: ½ ρ C_d A v² = w g. Guess after guess, v = √(2 w g/(ρ C_d A)), which
 * closes in because drag grows with speed.
 */
export function steadySpeed({ netWet, waterDensity, dragArea }: Omit<Faller, 'inertia'>): MmPerS {
  let speed = 100;
  for (let guess = 0; guess < 200; guess++) {
    const next = Math.sqrt((2 * netWet * GRAVITY) / (waterDensity * dragArea(speed)));
    if (Math.abs(next - speed) <= 1e-13 * next) return next;
    speed = next;
  }
  return speed;
}

/**
 * The fall of a body from rest,
 *
 *   (m + m_a) dv/dt = w g - ½ ρ C_d A v²
 *
 * With v = v∞ tanh σ that is dt = τ q dσ, dx = v dt, τ = (m + m_a) v∞/(w g), q = (1 - tanh² σ)/(1 - r tanh² σ), r being
 * C_d A at v over C_d A at v∞. Where C_d is constant q is 1: v = v∞ tanh(t/τ), x = v∞ τ ln cosh(t/τ). Summed by Gauss.
 * Left out: the water's memory of the start (Basset), which is small once the wake is there.
 */
export function fallFrom(faller: Faller): Fall {
  const steady = steadySpeed(faller);
  const rate = rateOf(faller, steady);
  const steps = [{ time: 0, depth: 0, speed: 0 }];
  for (let n = 0; n < LAST / STEP; n++) {
    const { time, depth } = gauss(rate, n * STEP, STEP);
    const before = steps[n];
    steps.push({
      time: before.time + time,
      depth: before.depth + depth,
      speed: steady * Math.tanh((n + 1) * STEP),
    });
  }
  return { steady, steps };
}

type Rate = (sigma: number) => { readonly time: number; readonly depth: number };

/** dt/dσ and dx/dσ. */
function rateOf({ netWet, inertia, dragArea }: Faller, steady: MmPerS): Rate {
  const lag = (inertia * steady) / (netWet * GRAVITY);
  const last = dragArea(steady);
  return (sigma) => {
    const share = Math.tanh(sigma);
    const speed = steady * share;
    // C_d grows without bounds towards rest, and the drag does not
    const borne = share > 0 ? (dragArea(speed) / last) * share * share : 0;
    const time = (lag * (1 - share * share)) / (1 - borne);
    return { time, depth: speed * time };
  };
}

function gauss(rate: Rate, from: number, width: number): { readonly time: Second; readonly depth: Mm } {
  let time = 0;
  let depth = 0;
  for (const [at, weight] of GAUSS) {
    const here = rate(from + at * width);
    time += weight * width * here.time;
    depth += weight * width * here.depth;
  }
  return { time, depth };
}

/** How long a body takes from rest to a depth. */
export function timeTo(faller: Faller, fall: Fall, depth: Mm): Second {
  const { steps, steady } = fall;
  const end = steps[steps.length - 1];
  if (depth >= end.depth) return end.time + (depth - end.depth) / steady;
  const n = Math.max(0, steps.findIndex((step) => step.depth > depth) - 1);
  const rate = rateOf(faller, steady);
  const before = steps[n];
  const short = (width: number) => before.depth + gauss(rate, n * STEP, width).depth - depth;
  const { x } = bracketedRoot(short, 0, STEP, 1e-12 * depth);
  return before.time + gauss(rate, n * STEP, x).time;
}

/** Depth and speed at a time after letting go; between two steps a cubic with the speeds at both. */
export function fallAt({ steps, steady }: Fall, time: Second): { readonly depth: Mm; readonly speed: MmPerS } {
  const end = steps[steps.length - 1];
  if (time >= end.time) return { depth: end.depth + (time - end.time) * steady, speed: steady };
  const n = Math.max(
    1,
    steps.findIndex((step) => step.time > time),
  );
  const [a, b] = [steps[n - 1], steps[n]];
  const width = b.time - a.time;
  const u = Math.max(0, (time - a.time) / width);
  const rise = b.depth - a.depth;
  // Hermite: depth and its slope
  const [p, q] = [width * a.speed, width * b.speed];
  const [square, cube] = [3 * rise - 2 * p - q, p + q - 2 * rise];
  return {
    depth: a.depth + u * (p + u * (square + u * cube)),
    speed: (p + u * (2 * square + 3 * u * cube)) / width,
  };
}
