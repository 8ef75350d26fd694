import { MOST_DIGITS } from '../hydro/accuracy.ts';
import type { Warning } from '../warnings.ts';
import { airWarnings, tailWarnings } from './warn/air.ts';
import { embedmentWarnings } from './warn/eyes.ts';
import { hookWarnings } from './warn/hooks.ts';
import { levelWarnings, linkedWarnings } from './warn/links.ts';
import { type MeantDigits, type WarnParts, WHOLE_BAIT } from './warn/parts.ts';
import { reserveWarnings } from './warn/reserve.ts';
import { restWarnings } from './warn/rest.ts';
import { targetWarnings } from './warn/target.ts';
import { wallWarnings } from './warn/walls.ts';

/**
 * What the maker should know of, worst first: what the float cannot be trusted in, what it misses, what is made in wood
 * for good, what a hanger moved along mends, and what shakes out. meant: undefined until it is known how good the sums
 * are; until then no cure is looked for either, since that takes longer than a picture may wait.
 */
export function warn(parts: WarnParts, meant?: MeantDigits): readonly Warning[] {
  const { links, floats, assembled, hardware } = parts;
  const isPinned = (link: number) => hardware.pins.some(({ joint }) => joint === link - 1 || joint === link);
  const digitsOf = (link: number) => meant?.links[link] ?? MOST_DIGITS;
  const alone = links.length > 1 ? links : [];
  const whole = meant?.whole ?? MOST_DIGITS;
  const withCures = meant !== undefined;
  return [
    ...restWarnings(WHOLE_BAIT, null, assembled, whole),
    ...targetWarnings(parts.target, whole),
    ...reserveWarnings(parts),
    ...linkedWarnings(parts),
    ...alone.flatMap(({ name }, i) => restWarnings(name, floats[i].gravityCentre, floats[i], digitsOf(i))),
    ...alone.flatMap(({ name }, i) => levelWarnings(name, floats[i], isPinned(i), digitsOf(i))),
    ...wallWarnings(parts, withCures),
    ...embedmentWarnings(parts, withCures),
    ...hookWarnings(parts, withCures),
    ...airWarnings(parts),
    ...tailWarnings(parts),
  ];
}
