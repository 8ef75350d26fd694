import type { Gram, GramPerMm3, Mm, Mm3, Radian } from './brand.ts';
import {
  cm3FromMm3,
  degreeFromRadian,
  gramPerCm3FromGramPerMm3,
  inchFromMm,
  ounceFromGram,
  percentFromShare,
} from './convert.ts';

export type LengthUnit = 'mm' | 'in';
export type MassUnit = 'g' | 'oz';

/** How a number is written. digits: decimals kept, zeros included. signed: a plus in front of what is above zero. */
export interface NumberStyle {
  readonly digits?: number;
  readonly signed?: boolean;
}

/** Decimal digits a double always carries; the rest is noise of the binary form. */
const TRUSTED_DIGITS = 15;

/**
 * A finite number with a fixed count of decimals, 1 unless told otherwise. Halves are rounded away from zero as the number reads in
 * decimal, so 1.005 at two digits is 1.01. What rounds to nothing is written 0 with no sign, never -0. The minus is
 * the plain hyphen: it survives a terminal, a spreadsheet and every font of a PDF.
 */
export function formatNumber(value: number, style: NumberStyle = {}): string {
  const text = roundedText(Math.abs(value), style.digits ?? 1);
  if (Number(text) === 0) return text;
  if (value < 0) return `-${text}`;
  return style.signed === true ? `+${text}` : text;
}

/** A length in mm to 0.1 or in inches to 0.001, unless told otherwise. */
export function formatLength(length: Mm, unit: LengthUnit = 'mm', style: NumberStyle = {}): string {
  if (unit === 'in') return `${formatNumber(inchFromMm(length), { digits: 3, ...style })} in`;
  return `${formatNumber(length, style)} mm`;
}

/** A mass in g to 0.1 or in ounces to 0.001, unless told otherwise. */
export function formatMass(mass: Gram, unit: MassUnit = 'g', style: NumberStyle = {}): string {
  if (unit === 'oz') return `${formatNumber(ounceFromGram(mass), { digits: 3, ...style })} oz`;
  return `${formatNumber(mass, style)} g`;
}

/** An angle in degrees, to 0.1 unless told otherwise. */
export function formatAngle(angle: Radian, style: NumberStyle = {}): string {
  return `${formatNumber(degreeFromRadian(angle), style)}°`;
}

/** A share of one as a percentage, to 0.1 unless told otherwise. */
export function formatPercent(share: number, style: NumberStyle = {}): string {
  return `${formatNumber(percentFromShare(share), style)} %`;
}

/** A volume in cm³, to 0.1 unless told otherwise: in fresh water that lifts about 0.1 g. */
export function formatVolume(volume: Mm3, style: NumberStyle = {}): string {
  return `${formatNumber(cm3FromMm3(volume), style)} cm³`;
}

/** A density in g/cm³, to 0.001 unless told otherwise. */
export function formatDensity(density: GramPerMm3, style: NumberStyle = {}): string {
  return `${formatNumber(gramPerCm3FromGramPerMm3(density), { digits: 3, ...style })} g/cm³`;
}

/**
 * Shifts the point, drops the noise of the binary form, rounds, shifts back. Numbers too large for that have no
 * decimals left to round.
 */
function roundedText(size: number, digits: number): string {
  const scale = 10 ** digits;
  const shifted = Number((size * scale).toPrecision(TRUSTED_DIGITS));
  if (!Number.isSafeInteger(Math.round(shifted))) return size.toFixed(digits);
  return (Math.round(shifted) / scale).toFixed(digits);
}

/** `1 hole`, `2 holes`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
