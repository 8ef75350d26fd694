import { SimError } from '../flow/outcome.ts';
import { type Place, placeText } from '../sources/cite.ts';
import type { Celsius, GramPerKg, GramPerMm3 } from '../units/brand.ts';
import { gramPerMm3FromKgPerM3 } from '../units/convert.ts';

/** What a setup says about its water. */
type GivenWater =
  | { readonly kind: 'natural'; readonly temperature: Celsius; readonly salinity: GramPerKg }
  | { readonly kind: 'measured'; readonly density: GramPerMm3 };

/** The water worked with. temperature and salinity: null when the density itself was measured. */
export interface WaterAnswer {
  readonly density: GramPerMm3;
  readonly temperature: Celsius | null;
  readonly salinity: GramPerKg | null;
  /** Where the density comes from, in words. */
  readonly source: string;
}

/** Where the formulas hold: least and most, in °C and in g/kg. */
export const WATER_RANGE = { temperature: [-2, 40], salinity: [0, 42] } as const;

const FRESH: Place = { source: 'tanaka-2001', where: 'table 1' };
const SALT: Place = { source: 'unesco-44', where: 'equation 13, pp. 17–18' };

/** The fitted numbers of the formula for fresh water; a5 in kg/m^3. Tanaka et al. (2001), table 1. */
export const TANAKA = { a1: -3.983035, a2: 301.797, a3: 522528.9, a4: 69.34881, a5: 999.97495 } as const;

/** Grams of salt per kg of water at a practical salinity of 35: McDougall, Barker (2011), gsw_SR_from_SP. */
const SALT_AT_35 = 35.16504;

/**
 * Density of a setup's water at the surface: as measured, or from temperature and salinity.
 *
 *   rho = fresh(t) + salt(t, S),  S = salinity · 35 / 35.16504
 *
 * One sum for lake, river mouth and sea, so nothing jumps as the salinity leaves zero: the pure water of EOS-80 is
 * exchanged for that of Tanaka, which is up to 0.005 kg/m^3 apart (at 40 °C), and only EOS-80's terms in S are kept.
 * They want practical salinity; the file gives grams per kilogram, hence the factor (leaving it out would cost
 * 0.13 kg/m^3 in the sea). Their temperature is IPTS-68, 1.00024 times ours; that is worth 0.0003 kg/m^3 and is let be.
 *
 * Throws SimError outside WATER_RANGE. Checked: TEOS-10 at nine points, the farthest off by 0.003 kg/m^3.
 */
export function waterDensity(water: GivenWater): GramPerMm3 {
  if (water.kind === 'measured') return water.density;
  mustLie('temperature', water.temperature, '°C');
  mustLie('salinity', water.salinity, 'g/kg');
  const practicalSalinity = (water.salinity * 35) / SALT_AT_35;
  return freshWaterDensity(water.temperature) + densityOfSalt(water.temperature, practicalSalinity);
}

/** The water of a setup with its density and the words for where that comes from. Throws as waterDensity does. */
export function waterAnswer(water: GivenWater): WaterAnswer {
  const density = waterDensity(water);
  if (water.kind === 'measured') return { density, temperature: null, salinity: null, source: 'measured by you' };
  const source = water.salinity === 0 ? placeText(FRESH) : `${placeText(FRESH)}; salt: ${placeText(SALT)}`;
  return { density, temperature: water.temperature, salinity: water.salinity, source };
}

/**
 * Density of air-free fresh water at one atmosphere, from its temperature.
 *
 *   rho = a5 · (1 − (t + a1)^2 (t + a2) / (a3 (t + a4)))
 *
 * Tanaka et al. (2001), table 1, for 0 to 40 °C. Used down to −2 °C, where sea water is still liquid: there it parts
 * from EOS-80, which covers it, by 0.0005 kg/m^3. Checked: the tabulated values, IAPWS within 0.005 kg/m^3.
 */
export function freshWaterDensity(t: Celsius): GramPerMm3 {
  const { a1, a2, a3, a4, a5 } = TANAKA;
  return gramPerMm3FromKgPerM3(a5 * (1 - ((t + a1) ** 2 * (t + a2)) / (a3 * (t + a4))));
}

/**
 * Density that salt adds to water at one atmosphere: the terms in S of EOS-80.
 *
 *   rho(S, t) − rho(0, t) = A S + B S^1.5 + C S^2     S: practical salinity, 0 to 42; t: −2 to 40 °C
 *
 * Fofonoff, Millard (1983), equation 13, pp. 17–18. Checked: the table on p. 19.
 */
export function densityOfSalt(t: Celsius, practicalSalinity: number): GramPerMm3 {
  const s = practicalSalinity;
  const a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  const c = 4.8314e-4;
  return gramPerMm3FromKgPerM3(s * (a + b * Math.sqrt(s) + c * s));
}

/** Written so that NaN does not pass. */
function mustLie(field: keyof typeof WATER_RANGE, given: number, unit: string): void {
  const [least, most] = WATER_RANGE[field];
  if (given >= least && given <= most) return;
  throw new SimError([
    {
      code: `water/${field}-out-of-range`,
      path: `water.${field}`,
      message: `a water ${field} of ${given} ${unit} is outside ${least} to ${most} ${unit}`,
      hint: `give a ${field} from ${least} to ${most} ${unit}, or measure the density of the water`,
    },
  ]);
}
