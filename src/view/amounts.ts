import { type Amounts, amountsIn, type OffMark } from '../../sim/index.ts';
import { useView } from './view.ts';

/** Writes lengths and masses in the units that the page shows. */
export function useAmounts(): Amounts {
  return amountsIn(useView((view) => view.units));
}

/** How far the water is off its mark at one place, signed, without the unit: `+0.3`. */
export function offMarkNumber({ off }: OffMark, amounts: Amounts): string {
  return amounts.length(off, { signed: true }).replace(/ \S+$/, '');
}
