import { MOST_DIGITS } from '../../hydro/accuracy.ts';
import type { Warning } from '../../warnings.ts';
import { levelWarnings, linkedWarnings } from './links.ts';
import { type MeantDigits, type WarnParts, WHOLE_BAIT } from './parts.ts';
import { reserveWarnings } from './reserve.ts';
import { restWarnings } from './rest.ts';
import { targetWarnings } from './target.ts';

/** Looks for the one edit that steadies a link, or the whole bait for null. */
export type SteadyCure = (link: number | null) => Warning['fix'];

/**
 * What follows from how the bait and its links float, worst first: what cannot be trusted, and what is missed. cure: left
 * out until there is time to look for one.
 */
export function floatWarnings(parts: WarnParts, meant?: MeantDigits, cure?: SteadyCure): readonly Warning[] {
  const { links, floats, assembled, hardware } = parts;
  const isPinned = (link: number) => hardware.pins.some(({ joint }) => joint === link - 1 || joint === link);
  const digitsOf = (link: number) => meant?.links[link] ?? MOST_DIGITS;
  const alone = links.length > 1 ? links : [];
  const whole = meant?.whole ?? MOST_DIGITS;
  return [
    ...restWarnings(WHOLE_BAIT, null, assembled, whole, () => cure?.(null) ?? null),
    ...targetWarnings(parts.target, whole),
    ...reserveWarnings(parts),
    ...linkedWarnings(parts),
    ...alone.flatMap(({ name }, i) =>
      restWarnings(name, floats[i].gravityCentre, floats[i], digitsOf(i), () => cure?.(i) ?? null),
    ),
    ...alone.flatMap(({ name }, i) => levelWarnings(name, floats[i], isPinned(i), digitsOf(i))),
  ];
}
