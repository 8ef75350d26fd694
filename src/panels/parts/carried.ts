import type { Hardware, PlacedEye, PlacedHole, PlacedHung, PlacedPin } from '../../../sim/index.ts';

/** Everything that is screwed, pinned, drilled or hung to one link. */
export interface Carried {
  readonly hung: readonly PlacedHung[];
  readonly holes: readonly PlacedHole[];
  readonly pins: readonly PlacedPin[];
  readonly eyes: readonly PlacedEye[];
}

export function carriedBy({ hung, holes, pins, eyes }: Hardware, link: number): Carried {
  const own = (item: { readonly link: number }) => item.link === link;
  return { hung: hung.filter(own), holes: holes.filter(own), pins: pins.filter(own), eyes: eyes.filter(own) };
}
