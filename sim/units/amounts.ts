import type { Gram, Mm } from './brand.ts';
import { formatLength, formatMass, type NumberStyle } from './format.ts';
import { FINEST_RULER, formatRuler } from './format-ruler.ts';

/** The pairs of units a maker may read in; nothing stored ever changes with them. */
export type UnitSystem = 'mm-g' | 'in-oz';

/** Writes lengths and masses in one pair of units. */
export interface Amounts {
  length(length: Mm, style?: NumberStyle): string;
  /** A length that is marked out, drilled or sawn: as a ruler has it, in inches the nearest 1/64. */
  ruled(length: Mm): string;
  mass(mass: Gram, style?: NumberStyle): string;
}

const AMOUNTS: Readonly<Record<UnitSystem, Amounts>> = {
  'mm-g': {
    length: (length, style) => formatLength(length, 'mm', style),
    ruled: (length) => formatLength(length, 'mm'),
    mass: (mass, style) => formatMass(mass, 'g', style),
  },
  'in-oz': {
    // 0.01 in for whole millimetres, 0.001 in for anything finer
    length: (length, style) => {
      const given = { signed: style?.signed === true };
      return formatLength(length, 'in', style?.digits === 0 ? { ...given, digits: 2 } : given);
    },
    ruled: (length) => formatRuler(length, FINEST_RULER),
    // a hundredth of a gram is 0.0004 oz: what says how finely grams are given does not say it of ounces
    mass: (mass, style) => formatMass(mass, 'oz', { signed: style?.signed === true }),
  },
};

/** How lengths and masses are written in these units: to 0.1 mm and g, or to 0.001 in and oz, unless told otherwise. */
export function amountsIn(units: UnitSystem): Amounts {
  return AMOUNTS[units];
}

/** A name in quotes, which is the maker's and stays as it is, or a number of mm or g that is no part of another unit. */
const NAME_OR_AMOUNT = /"[^"]*"|(?<![\w.])([-+]?)(\d+(?:\.(\d+))?) (mm|g)(?![\w/²³]| mm\b)/g;

/**
 * A sentence of the engine, whose lengths and masses are in mm and g, in other units. Inches and ounces get a decimal
 * more than was given, never under two: the nearest that is no coarser and claims no more.
 */
export function restated(sentence: string, units: UnitSystem): string {
  if (units === 'mm-g') return sentence;
  return sentence.replace(NAME_OR_AMOUNT, (text, sign: string, digits: string, decimals: string, unit: string) => {
    if (digits === undefined) return text;
    const style = { digits: Math.max(2, (decimals ?? '').length + 1), signed: sign === '+' };
    const value = Number(sign + digits);
    return unit === 'mm' ? formatLength(value, 'in', style) : formatMass(value, 'oz', style);
  });
}
