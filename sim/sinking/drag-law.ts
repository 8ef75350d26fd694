import { worldAxes } from '../frames.ts';
import { type FloatingBody, totalsOf } from '../hydro/body.ts';
import { type Float, NEUTRAL_MM } from '../hydro/float.ts';
import { add, dot, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm2, Mm2PerS, Mm3, MmPerS } from '../units/brand.ts';
import { addedVolume } from './added-mass.ts';
import {
  addPowers,
  ballDrag,
  barDrag,
  endRelief,
  likenessDrag,
  NO_DRAG,
  type Powers,
  powersAt,
  SHORT_PLATE,
  sectionDrag,
} from './section-drag.ts';
import { type Axes, cutFinStrips, cutStrips, girthArea, type Strip } from './strips.ts';

/** Lowest, middle and highest that something may be. */
export type Band = readonly [low: number, mid: number, high: number];

/** What C_d · A of a body is at any speed, as it falls with one way up. */
export interface DragLaw {
  /** Summed over its slices. */
  readonly strips: Powers;
  /** By its likeness to a ball. */
  readonly likeness: Powers;
  /** Eyes and other small things outside the wood. */
  readonly balls: readonly Ball[];
  /** What a timed drop makes of it; null: not timed. */
  readonly timed: Timed | null;
}

/** What a timed drop says about drag, as factors on the middle estimate. */
export interface Timed {
  readonly factor: number;
  /** As wide as the timing leaves it; null: as wide as without, about that factor. */
  readonly band: Band | null;
}

interface Ball {
  readonly area: Mm2;
  /** Re at a speed of 1. */
  readonly reynolds: number;
}

/** A part of a body that takes its share of the drag: a slice, a fin's edge, a ball, a hook. */
interface Part {
  readonly at: Vec3;
  readonly area: Mm2;
  readonly drag: Powers;
  readonly ball: Ball | null;
}

/** A body as it falls with one way up. */
export interface Shown {
  readonly parts: readonly Part[];
  /** The same by its links, nose to tail. */
  readonly links: readonly (readonly Part[])[];
  readonly law: DragLaw;
  /** What it shows to the fall. */
  readonly area: Mm2;
  /** Water that moves with it. */
  readonly added: Mm3;
}

/**
 * Hooks count as wire: five times as long as they hang, one of these lengths lying across the fall. Common practice, by
 * the proportions of round-bend trebles; they are a few hundredths of a bait's drag.
 */
const WIRE_HANGS = 5;
const ACROSS_HANGS = 1;
/**
 * Least half-width of the band of C_d as a factor: what bodies that wander as they fall scatter by (±30 %, common
 * practice). Where the two estimates lie further apart, they are the band.
 */
const SCATTER = 1.3;

/**
 * Works out what a body shows to the fall. links: the bodies it is made of, in order; for a link alone, itself.
 *
 * Two estimates of C_d · A, which go by different things: slices with what is known of long bars and of their ends (it
 * knows that a slab on edge parts the water), and the sphericities of the whole (it knows that a bait is short, and
 * nothing of edges). The middle is their geometric mean. A demo bait's two lie a factor of 1.2 to 1.9 apart, spheroids'
 * 1.1 to 1.4: so much is not known, and a timed drop is worth more than either.
 */
export function showToFall(links: readonly FloatingBody[], up: Vec3, viscosity: Mm2PerS, timed: Timed | null): Shown {
  const axes = worldAxes(up);
  const cut = links.map((body) => {
    const wood = body.trees.flatMap((tree) => cutStrips(tree, axes));
    return { body, wood, fins: (body.fins ?? []).flatMap((fin) => cutFinStrips(fin, wood, axes)) };
  });
  const strips = cut.flatMap(({ wood }) => wood).toSorted((a, b) => a.at - b.at);
  const shown = strips.reduce((sum, { width, step }) => sum + width * step, 0);
  const span = spanOf(strips);
  const relief = endRelief((span * span) / shown);
  const perLink = cut.map(({ body, wood, fins }): readonly Part[] => [
    ...wood.map((strip) => woodPart(strip, axes, relief, viscosity)),
    ...fins.map((strip) => finPart(strip, axes)),
    ...body.outside.filter(({ volume }) => volume > 0).map(({ volume, at }) => ballPart(volume, at, viscosity)),
    ...body.hung.filter(({ volume }) => volume > 0).map((item) => wirePart(item, viscosity)),
  ]);
  const parts = perLink.flat();
  const volume = links.reduce((sum, body) => sum + totalsOf({ ...body, outside: [], hung: [] }).volume, 0);
  const extras = cut.flatMap(({ wood }, i) => perLink[i].slice(wood.length));
  const others = extras.reduce((sum, { drag }) => addPowers(sum, drag), NO_DRAG);
  return {
    parts,
    links: perLink,
    law: {
      strips: parts.reduce((sum, { drag }) => addPowers(sum, drag), NO_DRAG),
      likeness: addPowers(others, likenessOf(volume, girthArea(strips), shown, viscosity)),
      balls: parts.flatMap(({ ball }) => (ball ? [ball] : [])),
      timed,
    },
    area: parts.reduce((sum, { area }) => sum + area, 0),
    added: addedVolume(strips, span) + smallAdded(links),
  };
}

/** C_d · A at a speed: lowest, middle, highest. */
export function dragAreas({ strips, likeness, balls, timed }: DragLaw, speed: MmPerS): Band {
  const small = balls.reduce((sum, ball) => sum + ballArea(ball, speed), 0);
  const [one, other] = [powersAt(strips, speed) + small, powersAt(likeness, speed) + small];
  const mid = Math.sqrt(one * other);
  if (timed?.band) return scaled(timed.band, mid);
  return scaled([Math.min(one, other, mid / SCATTER), mid, Math.max(one, other, mid * SCATTER)], timed?.factor ?? 1);
}

function scaled([low, mid, high]: Band, by: number): Band {
  return [low * by, mid * by, high * by];
}

/** Where the drag of these parts acts at a speed, and how much C_d · A it is, by the slices. */
export function dragCentre(parts: readonly Part[], speed: MmPerS): { readonly area: Mm2; readonly at: Vec3 } {
  let area = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const part of parts) {
    const own = powersAt(part.drag, speed) + (part.ball ? ballArea(part.ball, speed) : 0);
    area += own;
    moment = add(moment, scale(part.at, own));
  }
  return { area, at: area > 0 ? scale(moment, 1 / area) : [0, 0, 0] };
}

function ballArea({ area, reynolds }: Ball, speed: MmPerS): Mm2 {
  return area * ballDrag(reynolds * speed);
}

function woodPart(strip: Strip, axes: Axes, relief: number, viscosity: Mm2PerS): Part {
  const { width, height, step, fullness } = strip;
  const area = width * step;
  const drag = sectionDrag(height / width, fullness, relief, width / viscosity);
  return { at: pointOf(strip, axes), area, drag: addPowers(NO_DRAG, drag, area), ball: null };
}

function finPart(strip: Strip, axes: Axes): Part {
  const area = strip.width * strip.step;
  return { at: pointOf(strip, axes), area, drag: { ...NO_DRAG, constant: SHORT_PLATE * area }, ball: null };
}

function ballPart(volume: Mm3, at: Vec3, viscosity: Mm2PerS): Part {
  const diameter = Math.cbrt((6 * volume) / Math.PI);
  const area = (Math.PI / 4) * diameter ** 2;
  return { at, area, drag: NO_DRAG, ball: { area, reynolds: diameter / viscosity } };
}

/** It pulls at its eye, so its drag acts there. */
function wirePart({ volume, hang, eye }: FloatingBody['hung'][number], viscosity: Mm2PerS): Part {
  // a thing that hangs by no length is a ball at its eye
  if (!(hang > 0)) return ballPart(volume, eye, viscosity);
  const thick = Math.sqrt((4 * volume) / (Math.PI * WIRE_HANGS * hang));
  const area = ACROSS_HANGS * hang * thick;
  return { at: eye, area, drag: addPowers(NO_DRAG, barDrag(thick / viscosity), area), ball: null };
}

function pointOf({ at, middle, level }: Strip, { along, across, up }: Axes): Vec3 {
  return add(add(scale(along, at), scale(across, middle)), scale(up, level));
}

function likenessOf(volume: Mm3, surface: Mm2, shown: Mm2, viscosity: Mm2PerS): Powers {
  const diameter = Math.cbrt((6 * volume) / Math.PI);
  const section = (Math.PI / 4) * diameter ** 2;
  const drag = likenessDrag({
    sphericity: (4 * section) / surface,
    crosswise: section / shown,
    reynolds: diameter / viscosity,
  });
  return addPowers(NO_DRAG, drag, section);
}

function spanOf(strips: readonly Strip[]): Mm {
  if (strips.length === 0) return 0;
  const ends = strips.flatMap(({ at, step }) => [at - step / 2, at + step / 2]);
  return Math.max(...ends) - Math.min(...ends);
}

/** Balls carry half their volume along, wires all of it. */
function smallAdded(links: readonly FloatingBody[]): Mm3 {
  return links
    .flatMap(({ outside, hung }) => [...outside.map(({ volume }) => volume / 2), ...hung.map(({ volume }) => volume)])
    .reduce((sum, volume) => sum + volume, 0);
}

/** The up-vector of a body that falls: n ∥ ρV (B - G) + w (P - G). null: nothing turns it. */
export function fallingUp(
  { mass, netWet, gravityCentre, volumeCentre }: Balance,
  centre: Vec3,
  least: Mm,
): Vec3 | null {
  const buoyancy = scale(subtract(volumeCentre, gravityCentre), mass - netWet);
  const drag = scale(subtract(centre, gravityCentre), netWet);
  const pull = add(buoyancy, drag);
  const size = Math.sqrt(dot(pull, pull));
  return size < least * mass ? null : scale(pull, 1 / size);
}

/** Weight, buoyancy and where they act, hung items at their eyes. */
export interface Balance {
  readonly mass: number;
  readonly netWet: number;
  readonly gravityCentre: Vec3;
  readonly volumeCentre: Vec3;
}

/**
 * The way up of a body that rests like this under water, once it falls with its drag acting there: B stands gmMin over G,
 * along up. What floats, or is turned by nothing, stays as it rests.
 */
export function upInFall({ up, mass, netWet, gravityCentre, gmMin, offset }: Float, centre: Vec3): Vec3 {
  if (offset !== null || netWet <= 0) return up;
  const volumeCentre = add(gravityCentre, scale(up, gmMin));
  return fallingUp({ mass, netWet, gravityCentre, volumeCentre }, centre, NEUTRAL_MM) ?? up;
}
