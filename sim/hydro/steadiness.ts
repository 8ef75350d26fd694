import type { Mm } from '../units/brand.ts';

/**
 * How a body that is to float or hang upright takes being pushed over, from worst to best. lays over: upright does not
 * hold it, GM there is below nothing, by more than a mesh's noise; tender: a breath tips it; stiff: it snaps back, and rolls hardly at all as it swims.
 */
export type Steadiness = 'lays over' | 'tender' | 'steady' | 'stiff';

/** What hand shaping and a coat laid on unevenly move a centre by: a GM under it may be none. Common practice. */
const TENDER_MM: Mm = 0.1;
/** On a wide body as little as this of its width is as easily lost. Common practice. */
const TENDER_SHARE = 0.01;
/**
 * From a quarter of its width on it is stiff. A roll takes T = 2π k/√(g GM); with k = 0.4 of the width, as of a body whose
 * weight is spread through it, that is a quarter of a second on a bait 25 mm wide, quicker than the two to four beats a
 * second with which a bait swims: it goes straight back instead of rolling along. Our own measure; no standard is known.
 */
const STIFF_SHARE = 0.25;

/** Least GM at which a body this wide is no longer tender. */
export function steadyFrom(width: Mm): Mm {
  return Math.max(TENDER_MM, TENDER_SHARE * width);
}

/** Least GM at which it is stiff. */
export function stiffFrom(width: Mm): Mm {
  return Math.max(steadyFrom(width), STIFF_SHARE * width);
}

/** What of a float says how it stands. */
interface Stand {
  readonly gmUpright: Mm;
  readonly gmMin: Mm;
  readonly laysOver: boolean;
  readonly width: Mm;
}

/** How a body stands: by GM held upright, and by the least of its GMs at rest, which may be that of trim. */
export function steadinessOf({ gmUpright, gmMin, laysOver, width }: Stand): Steadiness {
  if (laysOver) return 'lays over';
  if (Math.min(gmUpright, gmMin) < steadyFrom(width)) return 'tender';
  return gmUpright < stiffFrom(width) ? 'steady' : 'stiff';
}
