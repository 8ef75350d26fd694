import type { Coat, Design, Joint } from '../design/design.ts';
import type { Hull } from '../hull/hull.ts';
import type { LinkSpec } from '../links/cut.ts';
import { loopReach } from '../mass/place.ts';
import type { Mm, Radian } from '../units/brand.ts';
import { levelsOf, levelsToLook, type Neighbours, type Pivot, refined, type Swings, swingOver } from './joint.ts';
import { growthOf, type ReachHardware, reachLink } from './link.ts';
import type { Outline } from './slice.ts';
import { curlWhole, type WholeReach } from './whole.ts';

/** How far each joint of a bait swings before something touches, and how far all of them together. */
export interface Reach {
  /** One for each joint, from the nose. */
  readonly joints: readonly JointReach[];
  readonly whole: WholeReach;
}

export interface JointReach extends Swings {
  /** Counted from the nose, from 0. */
  readonly joint: number;
  readonly hinge: Joint['hinge']['kind'];
  /** x of the line that it turns about: the pin, or the middle between linked eyes. */
  readonly pivot: Mm;
  /** Linked eyes roll on each other: that they turn about their middle is near the truth, not the truth. */
  readonly approximate: boolean;
  readonly play: PlayReach;
  /** With no coat on it. */
  readonly bare: Swings;
  /** The level that stops it first, as it rests: what a drawing shows. */
  readonly level: { readonly z: Mm; readonly fore: readonly Outline[]; readonly aft: readonly Outline[] };
}

/** Reach with the links pushed together and drawn apart as far as eyes and slots let them, and the extremes of that. */
export interface PlayReach {
  /** How far the aft link moves against the fore one, from where it is drawn: negative fore, then aft. */
  readonly moves: readonly [Mm, Mm];
  readonly least: { readonly port: Radian; readonly starboard: Radian };
  readonly most: { readonly port: Radian; readonly starboard: Radian };
}

/** What reach is read from, and nothing else. */
export interface ReachParts {
  readonly hull: Hull;
  readonly links: readonly LinkSpec[];
  readonly joints: Design['joints'];
  readonly hardware: ReachHardware;
  readonly coats: readonly Coat[];
}

/**
 * Turns the links of a bait about their pins on slices of the coated solids. Everything turns about upright lines, so
 * what stands on one level stays on it, and first contact is the least over the levels of a contact in the plane.
 */
export function findReach(parts: ReachParts): Reach {
  const coated = linksOf(parts, parts.coats);
  const bare = linksOf(parts, []);
  const joints = parts.joints.map((joint, j): JointReach => {
    const links = { fore: coated[j], aft: coated[j + 1] };
    const pivot = pivotOf(joint);
    const middle: Pivot = { fore: pivot, aft: pivot };
    const levels = refined(links, middle, levelsToLook(links));
    const swings = swingOver(links, middle, levels);
    const z = swings.port.at?.[2] ?? swings.starboard.at?.[2] ?? levels[Math.floor(levels.length / 2)] ?? 0;
    const naked = { fore: bare[j], aft: bare[j + 1] };
    const shown = (which: 'fore' | 'aft') => {
      const { wood, steel } = links[which].at(z);
      return [...wood, ...steel];
    };
    return {
      joint: j,
      hinge: joint.hinge.kind,
      pivot,
      approximate: joint.hinge.kind === 'linked-eyes',
      ...swings,
      play: playOf(joint, links, levels, swings),
      bare: swingOver(naked, middle, levels),
      level: { z, fore: shown('fore'), aft: shown('aft') },
    };
  });
  return { joints, whole: curlWhole(coated, joints) };
}

/** How far one joint swings, by itself: what a change of it is tried by. */
export function swingsOfJoint(parts: ReachParts, j: number): Swings {
  const [fore, aft] = linksOf({ ...parts, links: parts.links.slice(j, j + 2) }, parts.coats);
  const pivot = pivotOf(parts.joints[j]);
  const middle: Pivot = { fore: pivot, aft: pivot };
  return swingOver({ fore, aft }, middle, refined({ fore, aft }, middle, levelsToLook({ fore, aft })));
}

function linksOf(
  { hull, links, hardware }: ReachParts,
  coats: readonly Coat[],
): readonly ReturnType<typeof levelsOf>[] {
  const growth = growthOf(coats);
  return links.map((spec) => levelsOf(reachLink(hull, spec, hardware, growth)));
}

function pivotOf({ x, hinge }: Joint): Mm {
  return hinge.kind === 'pin' ? hinge.pin.x : x;
}

/** The swing at either end of the play, and as drawn. */
function playOf(joint: Joint, links: Neighbours, levels: readonly Mm[], asDrawn: Swings): PlayReach {
  const moves = movesOf(joint, links);
  const all = [asDrawn, ...moves.filter((by) => by !== 0).map((by) => swingOver(links, movedPivot(joint, by), levels))];
  const over = (pick: (...angles: number[]) => number) => ({
    port: pick(...all.map(({ port }) => port.angle)),
    starboard: pick(...all.map(({ starboard }) => starboard.angle)),
  });
  return { moves, least: over(Math.min), most: over(Math.max) };
}

/** The line both turn about once the aft link has moved `by` aft: where the pin is held it stays put in its wood. */
function movedPivot({ x, hinge }: Joint, by: Mm): Pivot {
  if (hinge.kind === 'linked-eyes') return { fore: x + by / 2, aft: x - by / 2 };
  const { pin } = hinge;
  return pin.heldBy === 'fore' ? { fore: pin.x, aft: pin.x - by } : { fore: pin.x + by, aft: pin.x };
}

/**
 * How far the aft link can move fore and aft against the fore one with the bait straight: a pin by half its play either
 * way, linked eyes from taut by a bore less a wire; no further together than faces and the floors of slots let it.
 */
function movesOf({ x, hinge }: Joint, links: Neighbours): readonly [Mm, Mm] {
  const [foreFace, aftFace] = [links.fore.link.aftFace, links.aft.link.foreFace];
  const between = foreFace && aftFace ? aftFace.at - foreFace.at : 0;
  const reach = loopReach(hinge);
  const pinned = hinge.kind === 'pin';
  /** Free way of a loop of one link before the floor of the other's slot, which it lies in at a height. */
  const room = (side: 'fore' | 'aft', loop: Mm, z: Mm): Mm => {
    const other = side === 'aft' ? links.fore.link : links.aft.link;
    const floors = other.slots
      .filter((slot) => slot.opens === (side === 'aft' ? 'aft' : 'fore') && slot.z[0] < z && z < slot.z[1])
      .map(({ floor }) => (side === 'aft' ? loop - reach - floor : floor - loop - reach));
    return Math.min(Number.POSITIVE_INFINITY, ...floors);
  };
  const rooms = pinned
    ? hinge.eyes.filter((eye) => eye.in !== hinge.pin.heldBy).map((eye) => room(eye.in, hinge.pin.x, eye.z))
    : hinge.z.flatMap((z) => [room('fore', x - hinge.bore / 2, z), room('aft', x + hinge.bore / 2, z)]);
  const play = pinned ? (hinge.bore - hinge.pin.diameter) / 2 : hinge.bore - hinge.wire;
  const together = Math.max(0, Math.min(play, between, ...rooms));
  return [-together, pinned ? play : 0];
}

/** How far each joint turns by itself. */
export function yawRanges({ joints }: Reach): readonly { readonly port: Radian; readonly starboard: Radian }[] {
  return joints.map(({ port, starboard }) => ({ port: port.angle, starboard: starboard.angle }));
}
