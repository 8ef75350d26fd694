import { type Amounts, amountsIn } from '../../sim/index.ts';
import { useView } from './view.ts';

/** Writes lengths and masses in the units that the page shows. */
export function useAmounts(): Amounts {
  return amountsIn(useView((view) => view.units));
}
