import type { Gram, GramPerMm2, GramPerMm3, Mm, Radian } from './brand.ts';

// Every factor here is exact by definition; each name reads `to, from`.

/** Exact: the international inch of 1959. */
export const MM_PER_INCH = 25.4;
/** Exact: twelve inches. */
export const MM_PER_FOOT = 304.8;
/** Exact: the international avoirdupois pound (1959). */
export const GRAM_PER_POUND = 453.59237;
/** Exact: one sixteenth of the international avoirdupois pound of 453.59237 g (1959). */
export const GRAM_PER_OUNCE = 28.349523125;
/** Exact: one seven-thousandth of the pound. */
export const GRAM_PER_GRAIN = 0.06479891;
/** Exact: a foot is 30.48 cm. */
export const GRAM_PER_CM3_IN_POUND_PER_FT3 = GRAM_PER_POUND / 30.48 ** 3;
/** Exact: an inch is 2.54 cm. */
export const GRAM_PER_CM3_IN_OUNCE_PER_IN3 = GRAM_PER_OUNCE / 2.54 ** 3;
/** Exact: 180 degrees from the freezing point of water to its boiling point are 100 of Celsius. */
export const CELSIUS_PER_FAHRENHEIT = 5 / 9;
/** Exact: what a thermometer in Fahrenheit reads at 0 degrees Celsius. */
export const FAHRENHEIT_AT_0_CELSIUS = 32;
/** Exact: the definition of the degree Celsius. */
export const KELVIN_AT_0_CELSIUS = 273.15;
/** Exact: half a turn is pi radians and 180 degrees. */
const RADIAN_PER_DEGREE = Math.PI / 180;
/** Exact: (10 mm)^3. */
const MM3_PER_CM3 = 1000;
/** Exact: (1000 mm)^2. */
const MM2_PER_M2 = 1e6;
/** Exact: 1 kg/m^3 is 10^3 g in 10^9 mm^3, so there are this many in 1 g/mm^3. */
const KG_PER_M3_IN_GRAM_PER_MM3 = 1e6;

/** Millimetres from inches. */
export function mmFromInch(inch: number): Mm {
  return inch * MM_PER_INCH;
}

/** Inches from millimetres. */
export function inchFromMm(length: Mm): number {
  return length / MM_PER_INCH;
}

/** Grams from avoirdupois ounces. */
export function gramFromOunce(ounce: number): Gram {
  return ounce * GRAM_PER_OUNCE;
}

/** Avoirdupois ounces from grams. */
export function ounceFromGram(mass: Gram): number {
  return mass / GRAM_PER_OUNCE;
}

/** Radians from degrees. */
export function radianFromDegree(degree: number): Radian {
  return degree * RADIAN_PER_DEGREE;
}

/** Degrees from radians. */
export function degreeFromRadian(angle: Radian): number {
  return angle / RADIAN_PER_DEGREE;
}

/** Grams per cubic millimetre from grams per cubic centimetre. */
export function gramPerMm3FromGramPerCm3(density: number): GramPerMm3 {
  return density / MM3_PER_CM3;
}

/** Grams per cubic centimetre from grams per cubic millimetre. */
export function gramPerCm3FromGramPerMm3(density: GramPerMm3): number {
  return density * MM3_PER_CM3;
}

/** Grams per cubic millimetre from kilograms per cubic metre. */
export function gramPerMm3FromKgPerM3(density: number): GramPerMm3 {
  return density / KG_PER_M3_IN_GRAM_PER_MM3;
}

/** Kilograms per cubic metre from grams per cubic millimetre. */
export function kgPerM3FromGramPerMm3(density: GramPerMm3): number {
  return density * KG_PER_M3_IN_GRAM_PER_MM3;
}

/** Grams per square millimetre from grams per square metre. */
export function gramPerMm2FromGramPerM2(perArea: number): GramPerMm2 {
  return perArea / MM2_PER_M2;
}

/** Cubic centimetres from cubic millimetres. */
export function cm3FromMm3(volume: number): number {
  return volume / MM3_PER_CM3;
}

/** A share of one from a percentage. */
export function shareFromPercent(percent: number): number {
  return percent / 100;
}

/** A percentage from a share of one. */
export function percentFromShare(share: number): number {
  return share * 100;
}
