import type { Hole } from '../../design/design.ts';
import type { Float } from '../../hydro/float.ts';
import type { PlacedHole } from '../../mass/placed.ts';
import type { Sinking } from '../../sinking/sink.ts';
import type { Gram, Mm } from '../../units/brand.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';

/** What makes the second of two setups from the first, and how each sits. */
export interface Comparison {
  readonly design: string;
  readonly setups: readonly [string, string];
  /** What differs at the bench, link by link from nose to tail. */
  readonly links: readonly LinkComparison[];
  /** Lead of each setup, and what hangs from it. */
  readonly lead: readonly [Gram, Gram];
  readonly hung: readonly [Gram, Gram];
  readonly floats: readonly [Float, Float];
  /** How each falls; null: it floats or hangs. */
  readonly sinkings: readonly [Sinking | null, Sinking | null];
}

export interface LinkComparison {
  readonly name: string;
  readonly lead: readonly [Gram, Gram];
  readonly holes: readonly HoleChange[];
  readonly floats: readonly [Float, Float];
  readonly sinkings: readonly [Sinking | null, Sinking | null];
}

/** One hole of the first, of the second, or of both. */
export type HoleChange =
  | { readonly kind: 'same'; readonly hole: Hole }
  | { readonly kind: 'only'; readonly in: 0 | 1; readonly hole: Hole }
  | {
      readonly kind: 'changed';
      readonly from: Hole;
      readonly to: Hole;
      /** Positive: further aft, deeper, more lead, in the second. */
      readonly moved: Mm;
      readonly deeper: Mm;
      readonly lead: Gram;
      /** Of the two holes one can be made into the other: the same place, drill and filling. */
      readonly inPlace: boolean;
    };

/** Holes further apart than this are two holes. */
const SAME_HOLE_MM = 8;
const NOTHING = 1e-6;

/** What of a bait is compared. */
export type ComparedBait = Pick<CheckedBait, 'design' | 'setup' | 'hardware' | 'assembled' | 'assembledSinking'> & {
  readonly links: readonly Pick<CheckedLink, 'spec' | 'float' | 'sinking'>[];
};

/** Compares two setups of one design. */
export function compareSetups(a: ComparedBait, b: ComparedBait): Comparison {
  return {
    design: a.design.name,
    setups: [a.setup.name, b.setup.name],
    links: a.links.map(({ spec, float, sinking }, i): LinkComparison => {
      const [of, other] = [holesOf(a, i), holesOf(b, i)];
      return {
        name: spec.name,
        lead: [leadIn(of), leadIn(other)],
        holes: changesOf(of, other),
        floats: [float, b.links[i].float],
        sinkings: [sinking, b.links[i].sinking],
      };
    }),
    lead: [leadIn(a.hardware.holes), leadIn(b.hardware.holes)],
    hung: [massOf(a.hardware.hung), massOf(b.hardware.hung)],
    floats: [a.assembled, b.assembled],
    sinkings: [a.assembledSinking, b.assembledSinking],
  };
}

function holesOf({ hardware }: ComparedBait, link: number): readonly PlacedHole[] {
  return hardware.holes.filter((hole) => hole.link === link);
}

function leadIn(holes: readonly PlacedHole[]): Gram {
  return holes.reduce((sum, { lead }) => sum + (lead?.mass ?? 0), 0);
}

function massOf(items: readonly { readonly mass: Gram }[]): Gram {
  return items.reduce((sum, { mass }) => sum + mass, 0);
}

/** Pairs up the holes of a link, nearest first, along the same row from the same side; the rest stand in one setup only. */
function changesOf(first: readonly PlacedHole[], second: readonly PlacedHole[]): readonly HoleChange[] {
  const pairs = first
    .flatMap(({ hole: a }) =>
      second.map(({ hole: b }) => ({ a, b, apart: Math.hypot(a.x - b.x, a.across - b.across) })),
    )
    .filter(({ a, b, apart }) => a.from === b.from && apart <= SAME_HOLE_MM)
    .toSorted((p, q) => p.apart - q.apart);
  const taken = new Set<Hole>();
  const found: HoleChange[] = [];
  for (const { a, b } of pairs) {
    if (taken.has(a) || taken.has(b)) continue;
    taken.add(a).add(b);
    found.push(changeOf(a, b));
  }
  const only = ([0, 1] as const).flatMap((side) =>
    [first, second][side]
      .filter(({ hole }) => !taken.has(hole))
      .map(({ hole }): HoleChange => ({ kind: 'only', in: side, hole })),
  );
  return [...found, ...only].toSorted((p, q) => placeOf(p) - placeOf(q));
}

function changeOf(from: Hole, to: Hole): HoleChange {
  const moved = to.x - from.x;
  const deeper = to.depth - from.depth;
  const lead = (to.lead?.mass ?? 0) - (from.lead?.mass ?? 0);
  const isAsWide = Math.abs(to.diameter - from.diameter) < NOTHING && Math.abs(to.point - from.point) < NOTHING;
  const isFilledAlike = from.lead?.stock.name === to.lead?.stock.name && from.air?.plug === to.air?.plug;
  const isAlike = isAsWide && isFilledAlike && Math.abs(to.across - from.across) < NOTHING;
  if (isAlike && [moved, deeper, lead].every((by) => Math.abs(by) < NOTHING)) return { kind: 'same', hole: from };
  return { kind: 'changed', from, to, moved, deeper, lead, inPlace: isAlike && Math.abs(moved) < NOTHING };
}

function placeOf(change: HoleChange): Mm {
  return change.kind === 'changed' ? change.from.x : change.hole.x;
}
