import type { Hole } from '../design/design.ts';
import { type Part, pointHeight, takenOut } from '../mass/hole.ts';
import { dot, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, GramPerMm3, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import type { Need } from './need.ts';
import type { Lane, Offer, Station } from './room.ts';

/** Lead is weighed to this, and drilled to that: a kitchen scale, and a stop on the drill. Common practice. */
export const LEAD_G: Gram = 0.1;
export const DEPTH_MM: Mm = 0.5;
/** Less lead than this is not worth a hole, and a shorter piece cannot be cut. Common practice. */
const LEAST_LEAD_G: Gram = 0.2;
const LEAST_LEAD_MM: Mm = 1.5;
/** A drill's depth is right to this, so lead whose mean height differs by less lies as low. Common practice. */
const AS_LOW_MM: Mm = 0.5;
/** Plans that leave no more than one of these are equal; if none leaves so little, the next is tried. */
export const TRIM_STEPS = [radianFromDegree(0.3), radianFromDegree(1), radianFromDegree(2)] as const;
const MOST_HOLES = 3;
const SAME_MM: Mm = 0.01;

/** What a hole does to the wood round it, beside its lead. */
export interface Filling {
  readonly wood: GramPerMm3;
  readonly plug: GramPerMm3;
  /** Sealer that is given as a share of the wood goes with it: so much of it, and it lies there. */
  readonly soakShare: number;
  readonly soakCentre: Vec3;
}

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
    bestOfEach(among, need, filling, { trim, spare, effort: { left: MOST_WAYS } }, goal);
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
  readonly effort: { left: number };
}

/**
 * Ways to share lead that are tried for one answer, half a second of them. Of the demos the head of Millpond comes nearest,
 * with 60 g and 0.7 million; of a link that comes to it the best that was found stands.
 */
const MOST_WAYS = 4_000_000;

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
    return lane ? lowestFrom(lane, firstDepth(lane), need) : Number.POSITIVE_INFINITY;
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

/** No lead in holes of a lane so deep or deeper can lie lower, along the aim's upright: it reaches down to its wall. */
function lowestFrom({ stations, from }: Lane, depth: Mm, { up }: Need): Mm {
  let least = Number.POSITIVE_INFINITY;
  for (const { at, leadFrom, depthTo } of stations) {
    if (depth > depthTo + 1e-9) continue;
    const sunk = from === 'flanks' ? 0 : Math.min(up[2], 1) * ((Math.max(depth, leadFrom) + leadFrom) / 2);
    least = Math.min(least, dot(at, up) + sunk);
  }
  return least;
}

/** From the shallowest that holds any lead to the deepest. */
function depthsOf(lane: Lane): readonly Mm[] {
  const first = firstDepth(lane);
  const last = Math.floor(Math.max(...lane.stations.map(({ depthTo }) => depthTo)) / DEPTH_MM + 1e-9) * DEPTH_MM;
  return Array.from({ length: Math.max(0, Math.round((last - first) / DEPTH_MM) + 1) }, (_, i) => first + i * DEPTH_MM);
}

function firstDepth({ stations }: Lane): Mm {
  const least = Math.min(...stations.map(({ leadFrom }) => leadFrom)) + LEAST_LEAD_MM;
  return Math.ceil(least / DEPTH_MM - 1e-9) * DEPTH_MM;
}

/** One lane drilled to one depth: what each station would take and bring, in units of lead. */
interface Cut {
  readonly lane: Lane;
  readonly depth: Mm;
  /** From nose to tail. */
  readonly seats: readonly Seat[];
  /** Net weight of a unit of lead that takes a plug's place. */
  readonly unit: Gram;
}

/** c0 + c1 k + c2 k² for k units of lead, which reach up from the hole's floor. */
type Quadratic = readonly [number, number, number];

interface Seat {
  readonly station: Station;
  readonly least: number;
  readonly most: number;
  /** Net weight of the hole without lead: wood out, plug in. */
  readonly empty: Gram;
  /** Moment along the aim about the need's point, and moment of height, of all that is put in. */
  readonly moment: Quadratic;
  readonly rise: Quadratic;
  /** Units times the height of their centre over the need's point. */
  readonly raised: Quadratic;
  /** The lowest that its lead can lie: all of it. */
  readonly lowest: Mm;
}

function at([c0, c1, c2]: Quadratic, k: number): number {
  return c0 + k * (c1 + k * c2);
}

/** The most net weight that fits into one of some lanes, wherever it stands: the fullest holes, as close as they go. */
export function mostLead(lanes: readonly Lane[], need: Need, filling: Filling): Gram {
  const ways = lanes.flatMap((lane) =>
    depthsOf(lane).map((depth) => ({ lane, depth, bound: bringsAtMost(lane, depth, filling, MOST_HOLES) })),
  );
  let best = 0;
  for (const { lane, depth, bound } of ways.toSorted((a, b) => b.bound - a.bound)) {
    if (bound <= best) break;
    const { seats, unit } = cutAt(lane, depth, need, filling);
    const chosen: Seat[] = [];
    for (const seat of seats.toSorted((a, b) => b.most - a.most)) {
      const isClear = chosen.every(({ station }) => Math.abs(station.x - seat.station.x) >= lane.spacing);
      if (isClear && chosen.length < MOST_HOLES) chosen.push(seat);
    }
    const net = chosen.reduce((sum, { empty, most }) => sum + empty + most * unit, 0);
    best = Math.max(best, net);
  }
  return best;
}

/** Lays out a lane at a depth: which stations take a hole so deep, and what lead in it does. */
function cutAt(lane: Lane, depth: Mm, need: Need, filling: Filling): Cut {
  const { drill, from, stations } = lane;
  const pair = from === 'flanks' ? 2 : 1;
  const unit = unitOf(lane, filling);
  const { inPoint, perMm } = fillingOf(lane);
  const point = pointHeight(drill);
  // k units lie k · t from the mouth: those of the point, then a column that grows towards the mouth
  const sunk: Quadratic = [
    inPoint * (depth + point / 4) - inPoint * depth - (inPoint * inPoint) / (2 * perMm),
    depth + inPoint / perMm,
    -1 / (2 * perMm),
  ];
  const least = Math.max(Math.ceil(LEAST_LEAD_G / LEAD_G - 1e-9), Math.ceil(inPoint + LEAST_LEAD_MM * perMm - 1e-9));
  const inward: Vec3 = from === 'flanks' ? [0, 0, 0] : [0, 0, 1];
  const [inAlong, inUp] = [dot(inward, need.along), dot(inward, need.up)];
  const woodOut = filling.wood * (1 + filling.soakShare);
  const seats: Seat[] = [];
  for (const station of stations) {
    if (depth > station.depthTo + 1e-9) continue;
    const most = Math.floor(inPoint + (depth - station.leadFrom) * perMm + 1e-9);
    if (most < least) continue;
    const taken = bothFlanks(takenOut(station.mouth(), depth, point), pair);
    const soaked = -filling.wood * filling.soakShare * taken.volume;
    const empty = (direction: Vec3) =>
      (filling.plug - filling.wood) * (dot(taken.moment, direction) - taken.volume * dot(need.about, direction)) +
      soaked * dot(subtract(filling.soakCentre, need.about), direction);
    const from0 = subtract(station.at, need.about);
    const [x, z] = [dot(from0, need.along), dot(from0, need.up)];
    const column = (base: number, arm: Mm, share: number, per: Gram): Quadratic => [
      base + per * share * sunk[0],
      per * (arm + share * sunk[1]),
      per * share * sunk[2],
    ];
    const raised = column(0, z, inUp, 1);
    seats.push({
      station,
      least,
      most,
      empty: taken.volume * (filling.plug - woodOut),
      moment: column(empty(need.along), x, inAlong, unit),
      rise: column(empty(need.up), z, inUp, unit),
      raised,
      lowest: at(raised, most) / most,
    });
  }
  return { lane, depth, seats, unit };
}

/**
 * What so many of the roomiest holes of a lane at a depth could bring. On the safe side, and without the mouths of the
 * holes, which are dear: as if the skin took nothing off their plugs.
 */
function bringsAtMost(lane: Lane, depth: Mm, filling: Filling, count: number): Gram {
  const pair = lane.from === 'flanks' ? 2 : 1;
  const { inPoint, perMm } = fillingOf(lane);
  // the roomiest, the next and the one after that
  let [first, second, third] = [0, 0, 0];
  for (const { leadFrom, depthTo } of lane.stations) {
    const room = depth <= depthTo + 1e-9 ? inPoint + (depth - leadFrom) * perMm : 0;
    if (room > first) [first, second, third] = [room, first, second];
    else if (room > second) [second, third] = [room, second];
    else if (room > third) third = room;
  }
  const units = first + (count > 1 ? second : 0) + (count > 2 ? third : 0);
  const { diameter } = lane.drill;
  const hole = (Math.PI / 4) * diameter ** 2 * (depth + pointHeight(lane.drill) / 3);
  const plugs = pair * count * hole * Math.max(0, filling.plug - filling.wood * (1 + filling.soakShare));
  return units * unitOf(lane, filling) + plugs;
}

/** Net weight of a unit of lead that takes a plug's place; of a pair from the flanks, a unit in each. */
function unitOf({ stock, from }: Lane, { plug }: Filling): Gram {
  return (from === 'flanks' ? 2 : 1) * LEAD_G * (1 - plug / stock.density);
}

/** How lead fills a hole of a lane: units in the drill's point, which what is poured fills first, and units for each mm. */
function fillingOf({ stock, drill }: Lane): { readonly inPoint: number; readonly perMm: number } {
  const point = pointHeight(drill);
  const radius = (stock.kind === 'slug' ? stock.diameter : drill.diameter) / 2;
  const perMm = (Math.PI * radius * radius * stock.density) / LEAD_G;
  return { inPoint: stock.kind === 'slug' ? 0 : (perMm * point) / 3, perMm };
}

/** Two holes from either flank are one on the centre plane as far as trim and height go. */
function onMiddle(at: Vec3, pair: number): Vec3 {
  return pair === 2 ? [at[0], 0, at[2]] : at;
}

function bothFlanks(taken: Part, pair: number): Part {
  return { volume: pair * taken.volume, moment: scale(onMiddle(taken.moment, pair), pair) };
}

/** Seats in order, for each number of them. */
const FROM_NOSE = [[0], [0, 1], [0, 1, 2]] as const;
const FROM_TAIL = [[0], [1, 0], [2, 1, 0]] as const;

/** The lowest pattern of so many holes in a cut; `known` if none of it is lower. */
function lowestOf(
  cut: Cut,
  need: Need,
  count: number,
  { trim, spare, effort }: Within,
  known: Pattern | null,
  goal: Goal,
): Pattern | null {
  const { seats, unit, lane } = cut;
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

/** What holds of all seats of a cut, and within which of them the last of several must stand. */
interface Range {
  /** What one seat brings at most and at least. */
  readonly mostEach: Gram;
  readonly leastEach: Gram;
  /** First and one past the last seat that can be the last, after `prefix` chosen ones whose holes weigh `empty`. */
  readonly lastSeat: (chosen: readonly Seat[], prefix: number, empty: Gram) => readonly [number, number];
}

/**
 * Seen from the first chosen seat, no lead has a negative arm. The last seat must not stand so near that even as much lead
 * as it can hold brings too little moment, nor so far that even as little as the others leave to it brings too much. Bounds
 * on the safe side: every seat as roomy, and every hole as heavy, as the most and the least of them.
 */
function rangeOf({ seats, unit, depth }: Cut, need: Need, count: number, trim: Radian): Range {
  let [roomiest, heaviest, lightest] = [0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [mostEach, leastEach] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [mostMoment, leastMoment, leastRise, lowest] = [
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ];
  for (const seat of seats) {
    roomiest = Math.max(roomiest, seat.most);
    heaviest = Math.max(heaviest, seat.empty);
    lightest = Math.min(lightest, seat.empty);
    mostEach = Math.max(mostEach, seat.empty + seat.most * unit);
    leastEach = Math.min(leastEach, seat.empty + seat.least * unit);
    mostMoment = Math.max(mostMoment, seat.moment[0]);
    leastMoment = Math.min(leastMoment, seat.moment[0]);
    leastRise = Math.min(leastRise, seat.rise[0] - unit * seat.raised[0]);
    lowest = Math.min(lowest, seat.lowest);
  }
  const arms = seats.map(({ moment }) => moment[1] / unit);
  const least = seats[0]?.least ?? 1;
  const mostUnits = Math.max(0, Math.round((need.net - count * lightest) / unit) + 1);
  const stiffest = need.stiffness.trim - count * leastRise - mostUnits * unit * Math.min(0, lowest);
  // an aim that leans lets the height of lead tell, by less than its whole depth
  const slack = Math.tan(trim) * Math.max(0, stiffest) + Math.abs(need.along[2]) * depth * mostUnits * unit + 1e-9;

  const lastSeat = (chosen: readonly Seat[], prefix: number, empty: Gram): readonly [number, number] => {
    const [a, b] = chosen;
    let [own, held] = [0, 0];
    for (let i = 0; i < prefix; i++) {
      own += chosen[i].moment[0];
      held += chosen[i].least;
    }
    const fewest = Math.round((need.net - empty - heaviest) / unit) - 1;
    const total = Math.round((need.net - empty - lightest) / unit) + 1;
    const start = a.moment[1] / unit;
    const step = prefix === 2 ? b.moment[1] / unit - start : 0;
    const bothEnds = [fewest * start, total * start];
    const from = (need.moment.along - own - mostMoment - slack) / unit - Math.max(...bothEnds);
    const to = (need.moment.along - own - leastMoment + slack) / unit - Math.min(...bothEnds);
    const atMost = Math.min(roomiest, total - held);
    if (atMost < least || total <= 0) return [0, 0];
    const spared = prefix === 2 ? b.most : 0;
    const atLeast = Math.max(least, fewest - a.most - spared);
    const between = prefix === 2 ? Math.max(b.least, fewest - a.most - atLeast) * step : 0;
    const near = start + (from - spared * step) / atMost;
    const farthest = start + (to - between) / atLeast;
    return [lowerBound(arms, near - 1e-9), lowerBound(arms, farthest + 1e-9)];
  };
  return { mostEach, leastEach, lastSeat };
}

function sumOf(seats: readonly Seat[], count: number, of: 'least' | 'most'): number {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += seats[i][of];
  return sum;
}

/** How many of some numbers, in rising order, are less than a bound. */
function lowerBound(rising: readonly number[], bound: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle] < bound) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * No way to share so many units between the first seats of a list lies lower on average. Height times units falls off
 * ever faster as a hole fills up, so the least of their sum has all seats but one as full or as empty as they may be.
 */
function lowestMean(seats: readonly Seat[], count: number, total: number): Mm {
  let least = Number.POSITIVE_INFINITY;
  for (let free = 0; free < count; free++) {
    for (let full = 0; full < 1 << count; full++) {
      if ((full >> free) & 1) continue;
      let left = total;
      let raised = 0;
      for (let i = 0; i < count; i++) {
        if (i === free) continue;
        const k = (full >> i) & 1 ? seats[i].most : seats[i].least;
        left -= k;
        raised += at(seats[i].raised, k);
      }
      const { least: fewest, most, raised: own } = seats[free];
      if (left >= fewest && left <= most) least = Math.min(least, raised + at(own, left));
    }
  }
  return least / total;
}

/** The moment that so many units bring between the first seats of a list when as much as can be lies in the first of `order`. */
function extremeMoment(seats: readonly Seat[], order: readonly number[], total: number): GramMm {
  let spare = total;
  for (const i of order) spare -= seats[i].least;
  let moment = 0;
  for (const i of order) {
    const more = Math.min(spare, seats[i].most - seats[i].least);
    spare -= more;
    moment += at(seats[i].moment, seats[i].least + more);
  }
  return moment;
}
