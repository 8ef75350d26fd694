import type { Warning } from '../warnings.ts';
import { airWarnings, tailWarnings } from './warn/air.ts';
import { embedmentWarnings } from './warn/eyes.ts';
import { floatWarnings } from './warn/float.ts';
import { hookWarnings } from './warn/hooks.ts';
import { lowerLead } from './warn/lower.ts';
import type { Late, WarnParts } from './warn/parts.ts';
import { wallWarnings } from './warn/walls.ts';

/**
 * What the maker should know of, worst first: what the float cannot be trusted in, what it misses, what is made in wood
 * for good, what a hanger moved along mends, and what shakes out. late: undefined until it is known how good the sums
 * are.
 */
export function warn(parts: WarnParts, late?: Late): readonly Warning[] {
  const steadied = late && ((link: number | null) => lowerLead(parts, late.refloat, link));
  return [
    ...floatWarnings(parts, late?.meant, steadied),
    ...wallWarnings(parts, late?.refloat),
    ...embedmentWarnings(parts, late?.refloat),
    ...hookWarnings(parts, late?.refloat),
    ...airWarnings(parts),
    ...tailWarnings(parts),
  ];
}
