import type { Gram, GramMm, Mm, Radian } from '../units/brand.ts';
import { at, type Cut, type Seat } from './drilling.ts';
import type { Need } from './need.ts';

/** Seats in order, for each number of them. */
export const FROM_NOSE = [[0], [0, 1], [0, 1, 2]] as const;
export const FROM_TAIL = [[0], [1, 0], [2, 1, 0]] as const;

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
export function rangeOf({ seats, unit, depth }: Cut, need: Need, count: number, trim: Radian): Range {
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

export function sumOf(seats: readonly Seat[], count: number, of: 'least' | 'most'): number {
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
export function lowestMean(seats: readonly Seat[], count: number, total: number): Mm {
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
export function extremeMoment(seats: readonly Seat[], order: readonly number[], total: number): GramMm {
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
