import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm, Radian } from '../units/brand.ts';
import { type ReachLink, steelHeights } from './link.ts';
import { type BothWays, type Contact, firstContact, type Polar, polarOf } from './polar.ts';
import { type Slice, type Surface, sliceLink } from './slice.ts';

/** How far a joint swings to one side, and what stops it. */
export interface Swing {
  readonly angle: Radian;
  /** What meets, of the fore link and of the aft link; null: nothing does, the joint turns right round. */
  readonly touch: readonly [Surface, Surface] | null;
  /** Where on the fore link at rest; null likewise. */
  readonly at: Vec3 | null;
}

/** To port: the aft link's far end goes to port, seen from the fore link. */
export interface Swings {
  readonly port: Swing;
  readonly starboard: Swing;
}

/** The links of a joint by level, each level cut once however often it is asked for. */
export interface Neighbours {
  readonly fore: Levels;
  readonly aft: Levels;
}

export interface Levels {
  readonly link: ReachLink;
  readonly at: (z: Mm) => Slice;
  /** The same about an upright line at (x, 0). */
  readonly about: (z: Mm, x: Mm) => Seen;
}

interface Seen {
  readonly wood: Polar;
  readonly steel: Polar | null;
}

export function levelsOf(link: ReachLink): Levels {
  const slices = new Map<Mm, Slice>();
  const seen = new Map<Mm, Map<Mm, Seen>>();
  const at = (z: Mm) => {
    let slice = slices.get(z);
    if (!slice) {
      slice = sliceLink(link, z);
      slices.set(z, slice);
    }
    return slice;
  };
  const about = (z: Mm, x: Mm) => {
    const ofPivot = seen.get(x) ?? new Map<Mm, Seen>();
    seen.set(x, ofPivot);
    let one = ofPivot.get(z);
    if (!one) {
      const { wood, steel } = at(z);
      one = { wood: polarOf(wood, x), steel: steel.length === 0 ? null : polarOf(steel, x) };
      ofPivot.set(z, one);
    }
    return one;
  };
  return { link, at, about };
}

/** Even levels that a joint is first looked at on. */
const LEVELS = 18;
/** Halvings of the stretch about the level that stops the joint first. */
const HALVINGS = 5;
/** Within a slot, wire or fin by this much of its height: at its very edge it is neither there nor not. */
const INSIDE = 0.02;

/**
 * Levels at which the two may first meet: even ones over the heights they share, and the middle and just inside the ends of
 * every slot, wire and fin, where outlines change at once.
 */
export function levelsToLook({ fore, aft }: Neighbours): readonly Mm[] {
  const [low, high] = sharedHeights(fore.link, aft.link);
  if (!(high > low)) return [];
  const even = Array.from({ length: LEVELS }, (_, i) => low + ((high - low) * (i + 0.5)) / LEVELS);
  const bands = [...bandsOf(fore.link, 'aft'), ...bandsOf(aft.link, 'fore')];
  const special = bands.flatMap(([from, to]) => {
    const edge = INSIDE * (to - from);
    return [from + edge, (from + to) / 2, to - edge];
  });
  const all = [...even, ...special.filter((z) => z > low && z < high)].toSorted((a, b) => a - b);
  return all.filter((z, i) => i === 0 || z > all[i - 1]);
}

/** From where to where something of a link stands that could meet its neighbour at one of its ends. */
function bandsOf({ slots, steel, fins }: ReachLink, end: 'fore' | 'aft'): readonly (readonly [Mm, Mm])[] {
  return [
    ...slots.filter(({ opens }) => opens === end).map(({ z }) => z),
    // eyes at the other end belong to the joint there
    ...steel.filter((wire) => wire.surface === 'hanger' || wire.end === end).map(steelHeights),
    ...fins.map(({ z }) => z),
  ];
}

function sharedHeights(fore: ReachLink, aft: ReachLink): readonly [Mm, Mm] {
  return [Math.max(fore.z[0], aft.z[0]), Math.min(fore.z[1], aft.z[1])];
}

/** Where the fore and the aft link have the line they turn about, each on its own rest. */
export interface Pivot {
  readonly fore: Mm;
  readonly aft: Mm;
}

/** The least swing over some levels. */
export function swingOver(links: Neighbours, pivot: Pivot, levels: readonly Mm[]): Swings {
  let port: Found | null = null;
  let starboard: Found | null = null;
  for (const z of levels) {
    const met = meetAt(links, pivot, z);
    port = nearer(port, met.port, z);
    starboard = nearer(starboard, met.starboard, z);
  }
  return { port: swingOf(port, pivot), starboard: swingOf(starboard, pivot) };
}

/** The levels, and finer ones about those that stop the joint first, either way. */
export function refined(links: Neighbours, pivot: Pivot, levels: readonly Mm[]): readonly Mm[] {
  const first = swingOver(links, pivot, levels);
  const added = new Set<Mm>(levels);
  for (const side of ['port', 'starboard'] as const) {
    const z = first[side].at?.[2];
    if (z === undefined) continue;
    const i = levels.indexOf(z);
    let [low, best, high] = [levels[i - 1] ?? z, z, levels[i + 1] ?? z];
    const angle = (level: Mm) => {
      added.add(level);
      return meetAt(links, pivot, level)[side]?.angle ?? Number.POSITIVE_INFINITY;
    };
    let least = first[side].angle;
    for (let n = 0; n < HALVINGS; n++) {
      const [below, above] = [(low + best) / 2, (best + high) / 2];
      const [under, over] = [below < best ? angle(below) : least, above > best ? angle(above) : least];
      if (under < least && under <= over) [best, high, least] = [below, best, under];
      else if (over < least) [low, best, least] = [best, above, over];
      else [low, high] = [below, above];
    }
  }
  return [...added].toSorted((a, b) => a - b);
}

interface Found {
  readonly contact: Contact;
  readonly z: Mm;
}

function nearer(best: Found | null, contact: Contact | null, z: Mm): Found | null {
  if (contact === null || (best !== null && best.contact.angle <= contact.angle)) return best;
  return { contact, z };
}

/** The aft link turned against the fore one on a level: wood on wood, and the steel of either on the other's wood. */
function meetAt({ fore, aft }: Neighbours, pivot: Pivot, z: Mm): BothWays {
  const [stands, turns] = [fore.about(z, pivot.fore), aft.about(z, pivot.aft)];
  const met = [firstContact(turns.wood, stands.wood)];
  if (turns.steel) met.push(firstContact(turns.steel, stands.wood));
  if (stands.steel) met.push(firstContact(turns.wood, stands.steel));
  const least = (side: keyof BothWays) =>
    met.reduce<Contact | null>((best, { [side]: one }) => {
      if (one === null || (best !== null && best.angle <= one.angle)) return best;
      return one;
    }, null);
  return { port: least('port'), starboard: least('starboard') };
}

function swingOf(found: Found | null, pivot: Pivot): Swing {
  // half a turn to one side is as good as one to the other
  if (found === null || found.contact.angle >= Math.PI) return { angle: Math.PI, touch: null, at: null };
  const { angle, radius, bearing, surfaces } = found.contact;
  const [turning, standing] = surfaces;
  const at: Vec3 = [pivot.fore + radius * Math.cos(bearing), radius * Math.sin(bearing), found.z];
  return { angle, touch: [standing, turning], at };
}
