import type { Hole } from '../design/design.ts';
import { dot } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { extremeMoment, FROM_NOSE, FROM_TAIL, lowestMean, rangeOf, sumOf } from './bounds.ts';
import {
  at,
  bringsAtMost,
  type Cut,
  cutAt,
  depthsOf,
  type Filling,
  lowestFrom,
  MOST_HOLES,
  type Seat,
  unitOf,
} from './drilling.ts';
import type { Need } from './need.ts';
import type { Lane, Offer, Station } from './room.ts';

/** A drill's depth is right to this, so lead whose mean height differs by less lies as low. Common practice. */
const AS_LOW_MM: Mm = 0.5;
/** Plans that leave no more than one of these are equal; if none leaves so little, the next is tried. */
export const TRIM_STEPS = [radianFromDegree(0.3), radianFromDegree(1), radianFromDegree(2)] as const;
const SAME_MM: Mm = 0.01;

/** Holes of one depth in one lane. */
export interface Pattern {
  readonly lane: Lane;
  readonly depth: Mm;
  /** From nose to tail; units of 0.1 g in each hole (on the flanks: in each of the two). */
  readonly holes: readonly { readonly station: Station; readonly units: number }[];
  /** Mean height of the lead along the aim's upright. */
  readonly height: Mm;
  /** What trim it leaves: nose-down positive, relative to the aim. */
  readonly trim: Radian;
  /** What weight it leaves to add. */
  readonly net: Gram;
}

/** What besides its need decides on a link's holes. */
export interface Wishes {
  /** Weight that a plan may leave at most, where a tenth of a gram is too coarse. */
  readonly spare?: Gram;
  /** Holes of another setup: where their places do as well, no other holes are drilled. */
  readonly likes?: readonly Hole[];
}

/**
 * The best pattern for a need: of those that come to the target within 0.1 g and 0.3°, the lowest lead; of those whose
 * lead lies as low to half a millimetre, one at the places that are liked, else the fewest holes; of those the lowest.
 * Exact over one lane and depth, one to three holes on whole millimetres, lead in tenths of a gram, as much of it as comes
 * nearest. If none comes to 0.3°, within 1°, then 2°; null if none. So much for all baits but the longest and heaviest: see
 * `MOST_WAYS`.
 */
export function searchHoles(
  offers: readonly Offer[],
  need: Need,
  filling: Filling,
  { spare = Number.POSITIVE_INFINITY, likes = [] }: Wishes = {},
): Pattern | null {
  const bestWithin = (among: readonly Offer[], trim: Radian, goal: Goal) =>
    bestOfEach(among, need, filling, { trim, spare, efforts: freshEfforts() }, goal);
  // whether there is any plan is soon told, and where there is none the finer search is spared
  if (bestWithin(offers, TRIM_STEPS[2], 'any').every((pattern) => pattern === null)) return null;
  const liked = offersLike(offers, likes);
  for (const trim of TRIM_STEPS) {
    const best = bestWithin(offers, trim, 'lowest');
    const lowest = Math.min(...best.map(heightOf));
    const asLow = (pattern: Pattern | null) => pattern !== null && pattern.height <= lowest + AS_LOW_MM;
    const found = best.find(asLow);
    if (!found) continue;
    return bestWithin(liked, trim, 'lowest').findLast(asLow) ?? found;
  }
  return null;
}

/** The offers with no more than the places of some holes, of their drill, from where they are drilled. */
function offersLike(offers: readonly Offer[], likes: readonly Hole[]): readonly Offer[] {
  if (likes.length === 0) return [];
  return offers.flatMap((offer): readonly Offer[] => {
    const lane = offer.row === null || likes.some(({ from }) => from === 'starboard') ? offer.lane() : null;
    if (!lane) return [];
    const same = likes.filter(
      (hole) =>
        Math.abs(hole.diameter - lane.drill.diameter) < SAME_MM &&
        hole.lead?.stock.name === lane.stock.name &&
        (lane.from === 'belly' ? hole.from === 'belly' : hole.from === 'starboard') &&
        Math.abs(hole.across - lane.row) < SAME_MM,
    );
    const stations = lane.stations.filter(({ x }) => same.some((hole) => Math.abs(hole.x - x) < SAME_MM));
    return stations.length === 0 ? [] : [{ ...offer, lane: () => ({ ...lane, stations }) }];
  });
}

/** How much trim, and how much weight, a pattern may leave, and how many ways to share lead may still be tried. */
interface Within {
  readonly trim: Radian;
  readonly spare: Gram;
  /** For one hole, for two and for three: many ways to place three must not keep two from being found. */
  readonly efforts: readonly { left: number }[];
}

/**
 * Ways to share lead that are tried for each number of holes, half a second of them. Of the demos the head of Millpond comes nearest,
 * with 60 g and 0.7 million; of a link that comes to it the best that was found stands.
 */
const MOST_WAYS = 4_000_000;

function freshEfforts(): Within['efforts'] {
  return Array.from({ length: MOST_HOLES }, () => ({ left: MOST_WAYS }));
}

/** The lowest pattern of each number of holes, or the first that is found at all. */
type Goal = 'lowest' | 'any';

/** The lowest pattern of one hole, of two, of three; `any`: the first that is found at all. */
function bestOfEach(
  offers: readonly Offer[],
  need: Need,
  filling: Filling,
  within: Within,
  goal: Goal,
): readonly (Pattern | null)[] {
  const best: (Pattern | null)[] = Array.from({ length: MOST_HOLES }, () => null);
  for (const { row, span, lane: layOut } of inOrder(offers, need)) {
    if (row !== null && best.every((pattern) => rowHeight(row, span, need) >= heightOf(pattern))) continue;
    const lane = layOut();
    if (!lane) continue;
    for (const depth of depthsOf(lane)) {
      // what no deeper hole of the lane can beat is out of the running from here on
      const bound = lowestFrom(lane, depth, need);
      const running = [1, 2, 3].filter((count) => bound < heightOf(best[count - 1]));
      if (running.length === 0) break;
      const short = need.net - unitOf(lane, filling);
      const counts = running.filter((count) => bringsAtMost(lane, depth, filling, count) >= short);
      if (counts.length === 0) continue;
      const cut = cutAt(lane, depth, need, filling);
      for (const count of counts) {
        best[count - 1] = lowestOf(cut, need, count, within, best[count - 1], goal);
        if (goal === 'any' && best[count - 1]) return best;
      }
    }
  }
  return best;
}

/** What can lie lowest comes first, so that the rest is soon out of the running. The belly is laid out in any case. */
function inOrder(offers: readonly Offer[], need: Need): readonly Offer[] {
  const heightFrom = ({ row, span, lane: layOut }: Offer): Mm => {
    if (row !== null) return rowHeight(row, span, need);
    const lane = layOut();
    return lane ? lowestFrom(lane, depthsOf(lane)[0], need) : Number.POSITIVE_INFINITY;
  };
  const isRow = ({ row }: Offer) => (row === null ? 0 : 1);
  return offers
    .map((offer) => ({ offer, height: heightFrom(offer) }))
    .toSorted((a, b) => isRow(a.offer) - isRow(b.offer) || a.height - b.height)
    .map(({ offer }) => offer);
}

/** Lead in a row along the flanks lies no lower than this along the aim's upright. */
function rowHeight(row: Mm, [from, to]: Offer['span'], { up }: Need): Mm {
  return row * up[2] + Math.min(from * up[0], to * up[0]);
}

function heightOf(pattern: Pattern | null): Mm {
  return pattern?.height ?? Number.POSITIVE_INFINITY;
}

/** The lowest pattern of so many holes in a cut; `known` if none of it is lower. */
function lowestOf(
  cut: Cut,
  need: Need,
  count: number,
  { trim, spare, efforts }: Within,
  known: Pattern | null,
  goal: Goal,
): Pattern | null {
  const { seats, unit, lane } = cut;
  const effort = efforts[count - 1];
  const base = dot(need.about, need.up);
  const [slackShare, far] = [Math.tan(trim), seats.length];
  let best = known;
  let bar = heightOf(known) - base;

  const chosen: Seat[] = [];
  const units = [0, 0, 0];
  const wanted = need.moment.along;

  const weigh = (empty: Gram) => {
    let moment = -wanted;
    let rise = 0;
    let raised = 0;
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const seat = chosen[i];
      const k = units[i];
      moment += at(seat.moment, k);
      rise += at(seat.rise, k);
      raised += at(seat.raised, k);
      sum += k;
    }
    const height = raised / sum;
    const stiffness = need.stiffness.trim - rise;
    // one that does not stand is no plan
    if (!(height < bar) || stiffness <= 0 || need.stiffness.heel - rise <= 0) return;
    // weight moved aft turns the tail down
    const left = -Math.atan2(moment, stiffness);
    if (Math.abs(left) > trim) return;
    bar = height;
    const holes = chosen.slice(0, count).map(({ station }, i) => ({ station, units: units[i] }));
    best = { lane, depth: cut.depth, holes, height: height + base, trim: left, net: need.net - empty - sum * unit };
    // one is enough to know that there is any
    if (goal === 'any') effort.left = 0;
  };

  // lead moved from one seat to the next only ever adds to the moment, unless the aim leans so far that depth tells
  const isOrdered = Math.abs(need.along[2]) * cut.depth < 0.5 * need.along[0] * lane.spacing;

  /** All ways to share units between the last two seats so that they bring this moment, give or take the slack. */
  const shareTwo = (i: number, total: number, moment: GramMm, slack: GramMm, empty: Gram) => {
    const a = chosen[i];
    const b = chosen[i + 1];
    const from = Math.max(a.least, total - b.most);
    const to = Math.min(a.most, total - b.least);
    if (from > to) return;
    let low = from;
    if (isOrdered) {
      for (let high = to; low < high; ) {
        const middle = (low + high) >> 1;
        if (at(a.moment, middle) + at(b.moment, total - middle) - moment > slack) low = middle + 1;
        else high = middle;
      }
    }
    for (let k = low; k <= to; k++) {
      effort.left -= 1;
      const over = at(a.moment, k) + at(b.moment, total - k) - moment;
      if (over < -slack && isOrdered) return;
      if (Math.abs(over) > slack) continue;
      units[i] = k;
      units[i + 1] = total - k;
      weigh(empty);
    }
  };

  /** Shares what the chosen seats hold together; empty and emptyRise: of their holes without lead. */
  const share = (total: number, empty: Gram, emptyRise: GramMm) => {
    const lowest = lowestMean(chosen, count, total);
    if (lowest >= bar) return;
    // no pattern of these is stiffer than one with all its lead at its lowest
    const rise = emptyRise + total * unit * lowest;
    const stiffest = need.stiffness.trim - rise;
    if (stiffest <= 0 || need.stiffness.heel - rise <= 0) return;
    const slack = slackShare * stiffest + 1e-9;
    const [a, b, c] = chosen;
    if (
      isOrdered &&
      (extremeMoment(chosen, FROM_NOSE[count - 1], total) > wanted + slack ||
        extremeMoment(chosen, FROM_TAIL[count - 1], total) < wanted - slack)
    ) {
      return;
    }
    if (count === 1) {
      if (Math.abs(at(a.moment, total) - wanted) > slack) return;
      units[0] = total;
      weigh(empty);
    } else if (count === 2) shareTwo(0, total, wanted, slack, empty);
    else {
      const from = Math.max(a.least, total - b.most - c.most);
      const to = Math.min(a.most, total - b.least - c.least);
      for (let k = from; k <= to && effort.left > 0; k++) {
        effort.left -= 1;
        units[0] = k;
        shareTwo(1, total - k, wanted - at(a.moment, k), slack, empty);
      }
    }
  };

  const range = rangeOf(cut, need, count, trim);
  const rounded = unit / 2 + 1e-9;
  /** full, lean: what the seats chosen so far bring at most and at least; empty, rise: their holes without lead. */
  const choose = (i: number, from: number, full: Gram, lean: Gram, empty: Gram, rise: GramMm) => {
    const more = count - 1 - i;
    // of the last seat the others and the moment leave few places
    const [first, last] = more === 0 && i > 0 && isOrdered ? range.lastSeat(chosen, i, empty) : [0, far];
    for (let k = Math.max(from, first); k < last && effort.left > 0; k++) {
      effort.left -= 1;
      const seat = seats[k];
      if (i > 0 && seat.station.x - chosen[i - 1].station.x < lane.spacing) continue;
      const atMost = full + seat.empty + seat.most * unit;
      const atLeast = lean + seat.empty + seat.least * unit;
      // those that together come short of the need, or over it, are not tried
      if (
        atMost + more * range.mostEach + rounded < need.net ||
        atLeast + more * range.leastEach - rounded > need.net
      ) {
        continue;
      }
      chosen[i] = seat;
      const emptied = empty + seat.empty;
      // what the drill's point adds to the height of lead is in `lowest` already
      const emptyRise = rise + seat.rise[0] - unit * seat.raised[0];
      if (more > 0) {
        choose(i + 1, k + 1, atMost, atLeast, emptied, emptyRise);
        continue;
      }
      const total = Math.round((need.net - emptied) / unit);
      const [least, most] = [sumOf(chosen, count, 'least'), sumOf(chosen, count, 'most')];
      if (total < least || total > most || Math.abs(need.net - emptied - total * unit) > spare) continue;
      share(total, emptied, emptyRise);
    }
  };
  choose(0, 0, 0, 0, 0, 0);
  return best;
}
