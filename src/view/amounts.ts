import { formatLength, formatMass, type NumberStyle } from '../../sim/index.ts';
import { type UnitSystem, useView } from './view.ts';

/** Lengths and masses as text in the units that the page shows. */
export interface Amounts {
  length(mm: number, style?: NumberStyle): string;
  mass(gram: number, style?: NumberStyle): string;
}

const AMOUNTS: Readonly<Record<UnitSystem, Amounts>> = {
  'mm-g': {
    length: (mm, style) => formatLength(mm, 'mm', style),
    mass: (gram, style) => formatMass(gram, 'g', style),
  },
  // a hundredth of a gram is 0.0004 oz: what says how finely grams are given does not say it of ounces
  'in-oz': {
    length: (mm, style) => formatLength(mm, 'in', { signed: style?.signed === true }),
    mass: (gram, style) => formatMass(gram, 'oz', { signed: style?.signed === true }),
  },
};

export function amountsIn(units: UnitSystem): Amounts {
  return AMOUNTS[units];
}

export function useAmounts(): Amounts {
  return amountsIn(useView((view) => view.units));
}
