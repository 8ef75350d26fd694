import type { Celsius, GramPerKg, Mm2PerS } from '../units/brand.ts';
import type { WaterAnswer } from './waters.ts';

const KELVIN_AT_0_CELSIUS = 273.15;
/** Factors and exponents of the formula for fresh water, in micropascal seconds. IAPWS SR6-08(2011), equation 7. */
const FACTORS = [280.68, 511.45, 61.131, 0.45903] as const;
const EXPONENTS = [-1.9, -7.7, -19.6, -40] as const;
/** Taken for a water whose density was measured: at 4 °C it is half as thick again, which slows a fall by a fiftieth. */
const USUAL_C: Celsius = 20;

/**
 * Dynamic viscosity of fresh water in Pa·s, which is also g/(mm·s).
 *
 *   μ = 10⁻⁶ Σ aᵢ (T/300 K)^bᵢ
 *
 * IAPWS SR6-08(2011), equation 7, for -20 to 110 °C at 0.1 MPa. Checked: its table at 25 °C.
 */
export function freshViscosity(t: Celsius): number {
  const reduced = (t + KELVIN_AT_0_CELSIUS) / 300;
  return 1e-6 * FACTORS.reduce((sum, factor, i) => sum + factor * reduced ** EXPONENTS[i], 0);
}

/**
 * How many times as thick salt makes it: 1 + A S + B S², S in kg/kg. Sharqawy, Lienhard, Zubair (2010), from memory;
 * 1.07 in the sea, and worth half a percent of a sinking speed.
 */
export function saltThickens(t: Celsius, salinity: GramPerKg): number {
  const s = salinity / 1000;
  const a = 1.541 + t * (1.998e-2 - 9.52e-5 * t);
  const b = 7.974 + t * (-7.561e-2 + 4.724e-4 * t);
  return 1 + s * (a + b * s);
}

/** Kinematic viscosity of a setup's water: dynamic viscosity over density. A measured water is taken as fresh, at 20 °C. */
export function kinematicViscosity({ density, temperature, salinity }: WaterAnswer): Mm2PerS {
  const t = temperature ?? USUAL_C;
  return (freshViscosity(t) * saltThickens(t, salinity ?? 0)) / density;
}
