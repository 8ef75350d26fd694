import { BALANCE_EQUATIONS } from './balance.ts';
import { BALLAST_EQUATIONS } from './ballast.ts';
import type { Equation } from './equation.ts';
import { FLOATING_EQUATIONS } from './floating.ts';
import { PART_EQUATIONS } from './parts.ts';
import { freshWater, saltWater } from './water.ts';

/** Every formula that the worked page can print. */
export const EQUATIONS: readonly Equation[] = [
  freshWater,
  saltWater,
  ...PART_EQUATIONS,
  ...BALANCE_EQUATIONS,
  ...FLOATING_EQUATIONS,
  ...BALLAST_EQUATIONS,
];
