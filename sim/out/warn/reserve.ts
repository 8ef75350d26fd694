import type { Gram } from '../../units/brand.ts';
import { formatMass } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';
import { type WarnParts, WHOLE_BAIT } from './parts.ts';

/** A #4 split ring, the least that a maker adds or changes. Common practice. */
const RING_G: Gram = 0.25;

/** A bait that is meant to float and has next to nothing to spare: the next change of hook sinks it. */
export function reserveWarnings({ assembled, drawn }: WarnParts): readonly Warning[] {
  const { target, hung } = drawn.setups[drawn.setup];
  if (assembled.state !== 'floats' || (target.kind === 'net' && target.net >= 0)) return [];
  const reserve = -assembled.netWet;
  const [lightest] = hung.toSorted((a, b) => a.mass - b.mass);
  const limit = lightest?.mass ?? RING_G;
  if (reserve >= limit) return [];
  const than = lightest
    ? `"${lightest.name}", the lightest that hangs from it, weighs (${mass(limit)})`
    : `a #4 split ring weighs (${mass(limit)})`;
  const text = `Only ${mass(reserve)} in reserve, less than ${than}: one more on it, or a bigger hook, may sink it.`;
  return [{ ...WORDS_ALONE, code: 'reserve-small', where: WHOLE_BAIT, text, ...{ number: reserve, limit, unit: 'g' } }];
}

function mass(weight: Gram): string {
  return formatMass(weight, 'g', { digits: 2 });
}
