import type { Celsius } from '../units/brand.ts';

/** Grams of force in a newton per metre, on a millimetre: 1 N/m is 1/9.80665 gf for each mm (standard gravity). */
const GF_PER_MM_IN_N_PER_M = 1 / 9.80665;
const ZERO_C_IN_K = 273.15;
const CRITICAL_K = 647.096;

/**
 * How hard the skin of fresh water pulls, in grams of force for each millimetre of wet edge.
 *
 *   σ = 0.2358 τ^1.256 (1 - 0.625 τ) N/m,   τ = 1 - T/647.096 K
 *
 * IAPWS R1-76, from memory. Salt adds up to 2 %, soap and fish slime take away more than half: a bound is asked of it,
 * not a third figure.
 */
export function surfaceTension(temperature: Celsius): number {
  const tau = 1 - (temperature + ZERO_C_IN_K) / CRITICAL_K;
  return 0.2358 * tau ** 1.256 * (1 - 0.625 * tau) * GF_PER_MM_IN_N_PER_M;
}
