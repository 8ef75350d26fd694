import type {
  Hardware,
  PlacedEye,
  PlacedFin,
  PlacedFitting,
  PlacedHole,
  PlacedHung,
  PlacedPin,
} from '../../../sim/index.ts';

/** Everything that is screwed, pinned, drilled, let in or hung to one link. */
export interface Carried {
  readonly hung: readonly PlacedHung[];
  readonly holes: readonly PlacedHole[];
  readonly pins: readonly PlacedPin[];
  readonly eyes: readonly PlacedEye[];
  readonly fittings: readonly PlacedFitting[];
  readonly fins: readonly PlacedFin[];
}

export function carriedBy({ hung, holes, pins, eyes, fittings, fins }: Hardware, link: number): Carried {
  const own = (item: { readonly link: number }) => item.link === link;
  return {
    hung: hung.filter(own),
    holes: holes.filter(own),
    pins: pins.filter(own),
    eyes: eyes.filter(own),
    fittings: fittings.filter(own),
    fins: fins.filter(own),
  };
}
