import type { Cited } from '../sources/cite.ts';
import { shareFromPercent } from '../units/convert.ts';

/**
 * Pulling a screw out of side grain takes at most, and scattered,
 *
 *   p = 15 700 · G² · D   lbf for each inch in the wood, D in inches, G the specific gravity
 *
 * Wood handbook (2010), chapter 8, withdrawal of wood screws. So wood, wire and depth all count; what an eye must hold
 * is not known here, and no pull is worked out or promised.
 */
export const END_GRAIN_HOLDS: Cited<number> = {
  value: shareFromPercent(75),
  source: 'wood-handbook',
  where: 'chapter 8, wood screws, withdrawal from end grain, as a share of side grain',
  asPrinted: '75 %',
};

/**
 * How many times its wire a screw eye should stand in the wood. From memory; makers embed as long as fits. In end grain
 * six over the handbook's three quarters: as much hold as six across the grain.
 */
export const EYE_DEPTH_IN_WIRES = {
  side: fromPractice(6, 'shank of a screw eye across the grain, as a multiple of its wire'),
  end: fromPractice(8, 'shank of a screw eye along the grain, as a multiple of its wire'),
} as const satisfies Record<string, Cited<number>>;

function fromPractice(value: number, where: string): Cited<number> {
  return { value, source: 'common-practice', where, asPrinted: `${value}` };
}
