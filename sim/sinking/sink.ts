import { heelOf, trimOf } from '../frames.ts';
import { type FloatingBody, totalsOf } from '../hydro/body.ts';
import { type Float, NEUTRAL_MM } from '../hydro/float.ts';
import { add, length, scale, subtract, unit, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramPerMm3, Mm, Mm2, Mm2PerS, MmPerS, Radian, Second } from '../units/brand.ts';
import { MM_PER_FOOT } from '../units/convert.ts';
import { type Band, dragAreas, dragCentre, fallingUp, type Shown, showToFall, type Timed } from './drag-law.ts';
import { type Fall, type Faller, fallAt, fallFrom, GRAVITY, steadySpeed, timeTo } from './motion.ts';

/** How something wholly under water falls. Bands are lowest, middle, highest: of a speed, of a time. */
export interface Sinking {
  /** Steady speed. */
  readonly speed: Band;
  /** From rest. */
  readonly firstFoot: Band;
  readonly firstMetre: Band;
  /** How it lies as it falls at its steady speed. */
  readonly up: Vec3;
  readonly trim: Radian;
  readonly heel: Radian;
  /** Nothing turns it: it falls as it is let go. */
  readonly neutral: boolean;
  /** false: its way up was still on the move after the last step. */
  readonly settled: boolean;
  /** Where its drag acts. */
  readonly dragCentre: Vec3;
  readonly netWet: Gram;
  /** Water that moves with it, as a mass. */
  readonly addedMass: Gram;
  /** C_d · A at the steady speed, lowest, middle, highest; and what it shows to the fall. */
  readonly dragArea: Band;
  readonly area: Mm2;
  /** Of each link, nose to tail: its share of the drag, and where that acts. */
  readonly shares: readonly DragShare[];
  /** What a timed drop has made of the drag; null: worked out from its shape alone. */
  readonly timed: Timed | null;
  /** The fall from rest to a metre, for drawing; depth and speed lowest, middle, highest. */
  readonly curve: readonly FallPoint[];
}

export interface DragShare {
  /** Of the whole bait's C_d · A: the links' add up to 1. */
  readonly share: number;
  readonly at: Vec3;
}

export interface FallPoint {
  readonly time: Second;
  readonly depth: Band;
  readonly speed: Band;
}

/** What falls, in which water. */
export interface SinkParts {
  /** The whole as one rigid body, and the links that it is made of; a link alone is its only one. */
  readonly body: FloatingBody;
  readonly links: readonly FloatingBody[];
  readonly viscosity: Mm2PerS;
  /** What a timed drop makes of the drag; null: it was not timed. */
  readonly timed: Timed | null;
}

const METRE: Mm = 1000;
/** A fall is drawn through this many points. */
const POINTS = 40;
/** Turns of less than this are none: a thousandth of a degree. */
const STILL_RAD = 2e-5;
const MOST_TURNS = 60;

/** How a body falls; null where it floats or hangs. float: how it rests, from which it turns into its fall. */
export function sinkBody(parts: SinkParts, float: Pick<Float, 'state' | 'up'>): Sinking | null {
  if (float.state !== 'sinks') return null;
  const { body } = parts;
  const balance = balanceOf(body);
  const { shown, up, neutral, settled } = settleInFall(parts, float.up);
  const fallers = fallersOf(body, balance, shown);
  const falls = fallers.map(fallFrom);
  const [slow, mid, fast] = falls.map(({ steady }) => steady);
  const { at } = dragCentre(shown.parts, mid);
  const times = (depth: Mm): Band => {
    const [late, usual, soon] = fallers.map((faller, i) => timeTo(faller, falls[i], depth));
    return [soon, usual, late];
  };
  const firstMetre = times(METRE);
  return {
    speed: [slow, mid, fast],
    firstFoot: times(MM_PER_FOOT),
    firstMetre,
    up,
    trim: trimOf(up),
    heel: heelOf(up),
    neutral,
    settled,
    dragCentre: at,
    netWet: balance.netWet,
    addedMass: shown.added * body.waterDensity,
    dragArea: dragAreas(shown.law, mid),
    area: shown.area,
    shares: sharesOf(shown, mid),
    timed: parts.timed,
    curve: curveOf(falls, firstMetre[2]),
  };
}

/** The net weight at which a body falls at a steady speed, this way up; where its drag then acts, and of each link. */
export function netAtSpeed(
  { links, viscosity, timed, body }: SinkParts,
  up: Vec3,
  speed: MmPerS,
): { readonly netWet: Gram; readonly dragCentre: Vec3; readonly shares: readonly DragShare[] } {
  const shown = showToFall(links, up, viscosity, timed);
  const [, area] = dragAreas(shown.law, speed);
  return {
    netWet: bornAt(body.waterDensity, area, speed),
    dragCentre: dragCentre(shown.parts, speed).at,
    shares: sharesOf(shown, speed),
  };
}

/** Net weight that drag bears at a speed: ½ ρ C_d A v²/g. */
function bornAt(density: GramPerMm3, area: Mm2, speed: MmPerS): Gram {
  return (density * area * speed * speed) / (2 * GRAVITY);
}

export function balanceOf(body: FloatingBody) {
  const { mass, massCentre, volume, volumeCentre } = totalsOf(body);
  return { mass, netWet: mass - body.waterDensity * volume, gravityCentre: massCentre, volumeCentre };
}

/** The slowest first: it has the most drag. */
function fallersOf(body: FloatingBody, { mass, netWet }: { mass: Gram; netWet: Gram }, shown: Shown): Faller[] {
  const inertia = mass + shown.added * body.waterDensity;
  return [2, 1, 0].map((which) => ({
    netWet,
    inertia,
    waterDensity: body.waterDensity,
    dragArea: (speed: MmPerS) => dragAreas(shown.law, speed)[which],
  }));
}

/**
 * The way up in the fall: drag acts at a place that depends on the way up, so the body is turned to what the balance
 * says, looked at again, and so on. Steps are halved where they do not get smaller.
 */
export function settleInFall(
  { body, links, viscosity, timed }: SinkParts,
  start: Vec3,
): { readonly shown: Shown; readonly up: Vec3; readonly neutral: boolean; readonly settled: boolean } {
  const balance = balanceOf(body);
  const waterDensity = body.waterDensity;
  let up = start;
  let ease = 1;
  let before = Number.POSITIVE_INFINITY;
  for (let turn = 0; ; turn++) {
    const shown = showToFall(links, up, viscosity, timed);
    const dragArea = (speed: MmPerS) => dragAreas(shown.law, speed)[1];
    const speed = steadySpeed({ netWet: balance.netWet, waterDensity, dragArea });
    const wanted = fallingUp(balance, dragCentre(shown.parts, speed).at, NEUTRAL_MM);
    if (wanted === null) return { shown, up, neutral: true, settled: true };
    const off = length(subtract(wanted, up));
    if (off < STILL_RAD || turn === MOST_TURNS) return { shown, up, neutral: false, settled: off < 1e-4 };
    if (off > 0.7 * before) ease = Math.max(ease / 2, 1 / 64);
    before = off;
    const next = add(scale(up, 1 - ease), scale(wanted, ease));
    up = length(next) > 1e-6 ? unit(next) : wanted;
  }
}

function sharesOf(shown: Shown, speed: MmPerS): readonly DragShare[] {
  const drags = shown.links.map((parts) => dragCentre(parts, speed));
  const all = drags.reduce((sum, { area }) => sum + area, 0);
  return drags.map(({ area, at }) => ({ share: area / all, at }));
}

function curveOf(falls: readonly Fall[], until: Second): readonly FallPoint[] {
  return Array.from({ length: POINTS + 1 }, (_, i): FallPoint => {
    const time = (until * i) / POINTS;
    const [slow, mid, fast] = falls.map((fall) => fallAt(fall, time));
    return {
      time,
      depth: [slow.depth, mid.depth, fast.depth],
      speed: [slow.speed, mid.speed, fast.speed],
    };
  });
}
