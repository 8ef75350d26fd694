import type { Hole } from '../design/design.ts';
import type { Float } from '../hydro/float.ts';
import { fillHole, holeMouth } from '../mass/hole.ts';
import type { PlacedHole } from '../mass/placed.ts';
import { type Wall, wallOf } from '../mass/wall.ts';
import { type Sinking, sinkBody } from '../sinking/sink.ts';
import type { Mm } from '../units/brand.ts';
import type { LinkParts } from './plan.ts';
import { type BaitWithLinks, floatWith, type Refloated, type RefloatParts, refloat } from './refloat.ts';

/** How the bait floats with a plan in it, rounded as it will be drilled. */
export interface SettledPlan extends Omit<Refloated, 'fall'> {
  /** How it falls with that: each link alone, and the whole; null where it does not sink. */
  readonly sinkings: readonly (Sinking | null)[];
  readonly assembledSinking: Sinking | null;
  /** Every hole as it will stand, with the wood that it leaves, in the order of the plan. */
  readonly holes: readonly { readonly hole: PlacedHole; readonly wall: Wall }[];
}

export interface SettleParts extends RefloatParts {
  readonly holes: readonly Hole[];
}

/** The bait with these holes for its own, all its links held straight. */
export function floatWithHoles(parts: BaitWithLinks, holes: readonly Hole[]): Float {
  return floatWith(parts, { holes: placed(parts, holes) }).assembled;
}

/** Floats the bait once more with a plan's holes in place of its own. */
export function settlePlan({ holes: planned, ...parts }: SettleParts): SettledPlan {
  const holes = placed(parts, planned);
  const { fall, floats, assembled, target } = refloat(parts, { holes });
  return {
    floats,
    assembled,
    target,
    sinkings: floats.map((float, i) => sinkBody(fall.links[i], float)),
    assembledSinking: sinkBody(fall.whole, assembled),
    holes: holes.map((hole) => ({ hole, wall: wallOf(parts.hull, hole) })),
  };
}

/** Those that the bait has already are where they are. */
function placed({ links, hull }: BaitWithLinks, holes: readonly Hole[]): readonly PlacedHole[] {
  const known = links.flatMap(({ hardware }) => hardware.holes);
  return holes.map(
    (hole) => known.find((each) => each.hole === hole) ?? fillHole(holeMouth(hull, hole), hole, ownerOf(links, hole.x)),
  );
}

/** The last link that begins before x. */
function ownerOf(links: readonly LinkParts[], x: Mm): number {
  return Math.max(
    0,
    links.findLastIndex(({ spec }) => spec.span[0] <= x),
  );
}
