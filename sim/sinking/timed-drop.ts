import type { Drop } from '../design/design.ts';
import { totalsOf } from '../hydro/body.ts';
import { NEUTRAL_MM } from '../hydro/float.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { length, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { MmPerS, Second } from '../units/brand.ts';
import { dragAreas, type Timed } from './drag-law.ts';
import { fallFrom, timeTo } from './motion.ts';
import { balanceOf, type SinkParts, settleInFall } from './sink.ts';

/** What a timed drop comes to. */
export type DropFit =
  | { readonly kind: 'fitted'; readonly timed: Timed; readonly isFar: boolean }
  /** With next to no drag it takes this long, and it was timed faster. */
  | { readonly kind: 'too-fast'; readonly least: Second }
  /** No drag that a bait could have is so high. */
  | { readonly kind: 'too-slow'; readonly most: Second }
  /** As drawn it does not sink, and nothing says what it weighed then. */
  | { readonly kind: 'afloat' };

/** A watch in the hand: common practice. */
const TIMING_S: Second = 0.2;
/** Factors on the drag that are looked through. */
const LEAST = 0.02;
const MOST = 50;
/** A factor outside the band of the shape by more than this is a slip of the tape or of the scale. */
const FAR = 1.5;

/**
 * The drag that makes a bait take as long to a depth as it was timed, from rest and by the same equation of motion as its
 * fall: read as steady speed, a short drop would give about twice the drag. It stretches C_d as a whole; the band is what
 * 0.2 s more or less on the watch make of it, and never wider than that of the shape.
 */
export function fitDrop(parts: Omit<SinkParts, 'timed'>, drop: Drop): DropFit {
  const drawn = balanceOf(parts.body);
  const netWet = drop.netWet ?? drawn.netWet;
  if (!(netWet > 0)) return { kind: 'afloat' };
  // what it weighed then, put in or taken out where its weight acts
  const more = netWet - drawn.netWet;
  const timedBody = { ...parts.body, mass: parts.body.mass + more, centre: shiftedCentre(parts, more) };
  const untimed: SinkParts = { ...parts, body: timedBody, timed: null };
  const { shown } = settleInFall(untimed, restingUp(untimed));
  const inertia = drawn.mass + more + shown.added * timedBody.waterDensity;
  const fallerWith = (factor: number) => ({
    netWet,
    inertia,
    waterDensity: timedBody.waterDensity,
    dragArea: (speed: MmPerS) => factor * dragAreas(shown.law, speed)[1],
  });
  const timeWith = (factor: number) => {
    const faller = fallerWith(factor);
    return timeTo(faller, fallFrom(faller), drop.distance);
  };
  const [soonest, latest] = [timeWith(LEAST), timeWith(MOST)];
  if (drop.time <= soonest) return { kind: 'too-fast', least: soonest };
  if (drop.time >= latest) return { kind: 'too-slow', most: latest };
  const factorFor = (time: Second) => {
    if (time <= soonest) return LEAST;
    if (time >= latest) return MOST;
    const off = (log: number) => Math.log(timeWith(Math.exp(log)) / time);
    return Math.exp(bracketedRoot(off, Math.log(LEAST), Math.log(MOST), 1e-10).x);
  };
  const factor = factorFor(drop.time);
  const [low, mid, high] = dragAreas(shown.law, fallFrom(fallerWith(factor)).steady);
  const [least, most] = [factorFor(drop.time - TIMING_S), factorFor(drop.time + TIMING_S)];
  return {
    kind: 'fitted',
    timed: {
      factor,
      band: [Math.max(least, (factor * low) / mid), factor, Math.min(most, (factor * high) / mid)],
    },
    isFar: factor < low / mid / FAR || factor > (high / mid) * FAR,
  };
}

/** Where all that is fixed acts when `more` is put in where the whole weight acts. */
function shiftedCentre({ body }: Pick<SinkParts, 'body'>, more: number): Vec3 {
  const { massCentre } = totalsOf(body);
  const share = more / (body.mass + more);
  const [x, y, z] = subtract(massCentre, body.centre);
  return [body.centre[0] + share * x, body.centre[1] + share * y, body.centre[2] + share * z];
}

function restingUp({ body }: Pick<SinkParts, 'body'>): Vec3 {
  const { massCentre, volumeCentre } = totalsOf(body);
  const lever = subtract(volumeCentre, massCentre);
  const height = length(lever);
  return height < NEUTRAL_MM ? [0, 0, 1] : scale(lever, 1 / height);
}
