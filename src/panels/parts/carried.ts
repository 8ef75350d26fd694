import type { Hardware, PlacedEye, PlacedFitting, PlacedHole, PlacedHung, PlacedPin } from '../../../sim/index.ts';

/** Everything that is screwed, pinned, drilled or hung to one link. */
export interface Carried {
  readonly hung: readonly PlacedHung[];
  readonly holes: readonly PlacedHole[];
  readonly pins: readonly PlacedPin[];
  readonly eyes: readonly PlacedEye[];
  readonly fittings: readonly PlacedFitting[];
}

export function carriedBy({ hung, holes, pins, eyes, fittings }: Hardware, link: number): Carried {
  const own = (item: { readonly link: number }) => item.link === link;
  return {
    hung: hung.filter(own),
    holes: holes.filter(own),
    pins: pins.filter(own),
    eyes: eyes.filter(own),
    fittings: fittings.filter(own),
  };
}
