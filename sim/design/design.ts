import type {
  Celsius,
  Gram,
  GramPerKg,
  GramPerMm2,
  GramPerMm3,
  Mm,
  Mm3,
  MmPerS,
  Radian,
  Second,
} from '../units/brand.ts';
import type { WorkedFile } from './work-out.ts';

/**
 * A design with every expression worked out, every default filled in and every number in house units: millimetres,
 * grams, radians, grams per cubic millimetre. Derived from the file, one way, and never written back.
 * Body frame: origin at the nose tip on the datum line, x aft, y starboard, z up.
 */
export interface Design {
  readonly name: string;
  readonly notes: string;
  readonly body: Body;
  /** From nose to tail; one more than there are joints. */
  readonly links: readonly Link[];
  readonly joints: readonly Joint[];
  readonly wood: Wood;
  readonly hangers: readonly Hanger[];
  readonly fittings: readonly Fitting[];
  readonly tails: readonly Trailing[];
  readonly fins: readonly Fin[];
  readonly shop: Shop;
  /** Never empty; the first is shown first. Coats of the design are already copied into setups without their own. */
  readonly setups: readonly Setup[];
  /** What the file's expressions came to, at their places and in the file's units. */
  readonly worked: WorkedFile;
}

export interface Body {
  readonly length: Mm;
  readonly height: Mm;
  readonly width: Mm;
  /** Back above the datum at the deepest station. */
  readonly back: Mm;
  /** Stations between which the side outline is at its deepest: one and the same number twice for a plain peak. */
  readonly deepest: readonly [Mm, Mm];
  readonly widest: readonly [Mm, Mm];
  readonly fullness: { readonly back: Fullness; readonly belly: Fullness; readonly plan: Fullness };
  readonly nose: Nose;
  readonly tail: Tail;
  readonly section: Section;
  /** In the order of the file. */
  readonly readings: readonly Reading[];
}

/** Share of its box that each quarter outline fills. */
export interface Fullness {
  readonly nose: number;
  readonly tail: number;
}

/** A blunt nose, its middle on the datum; a depth and width of 0 is a plain round tip. */
export interface Nose {
  readonly depth: Mm;
  readonly width: Mm;
  /** Length over which the end is rounded. */
  readonly round: Mm;
}

/** The tail stem, its middle at z. */
export interface Tail extends Nose {
  readonly z: Mm;
}

export type Section = OvalSection | BoardSection;

/** Superellipse halves; exponents above and below the greatest breadth, whose height is a share of the section. */
export interface OvalSection {
  readonly kind: 'oval';
  readonly above: number;
  readonly below: number;
  readonly breadth: number;
}

/** Flat flanks, edges rounded by these radii. */
export interface BoardSection {
  readonly kind: 'board';
  readonly backEdge: Mm;
  readonly bellyEdge: Mm;
}

/** What calipers read at a station; null: not read. back is a height over the datum, belly a depth under it. */
export interface Reading {
  readonly x: Mm;
  readonly height: Mm | null;
  readonly back: Mm | null;
  readonly belly: Mm | null;
  readonly width: Mm | null;
}

export interface Link {
  readonly name: string;
  /** This piece's own wood, if weighed apart; null: the design's wood. */
  readonly density: GramPerMm3 | null;
}

export interface Wood {
  readonly species: string | null;
  readonly density: GramPerMm3;
}

/** fore: the link nearer the nose; aft: the link nearer the tail. */
export type Side = 'fore' | 'aft';

export interface Joint {
  /** Middle of the gap on the centre line. */
  readonly x: Mm;
  readonly gap: Mm;
  readonly faces: Bevels | Knuckle;
  readonly hinge: PinHinge | LinkedEyes;
  readonly slots: readonly Slot[];
}

/** Both faces fall back from an upright ridge on the centre line, each by its own angle; 0 is flat. */
export interface Bevels {
  readonly kind: 'bevel';
  readonly fore: Radian;
  readonly aft: Radian;
}

/** An upright round nose on one link, a hollow about the same axis and wider by the gap in the other. */
export interface Knuckle {
  readonly kind: 'knuckle';
  /** The link that has the nose. */
  readonly on: Side;
  readonly radius: Mm;
  /** x of the axis, on which the pin stands. */
  readonly axis: Mm;
}

/** An upright pin through screw eyes. */
export interface PinHinge extends Wire {
  readonly kind: 'pin';
  /** in: the link that holds the shank. */
  readonly eyes: readonly { readonly in: Side; readonly z: Mm }[];
  readonly pin: Pin;
}

/** Screw eyes that hold each other, one of each link at each height. */
export interface LinkedEyes extends Wire {
  readonly kind: 'linked-eyes';
  readonly z: readonly Mm[];
}

export interface Pin {
  readonly x: Mm;
  readonly diameter: Mm;
  readonly z: readonly [Mm, Mm];
  readonly heldBy: Side;
  readonly density: GramPerMm3;
}

/** A screw eye: wire thickness, inside of the loop, length in the wood. */
export interface Wire {
  readonly wire: Mm;
  readonly bore: Mm;
  readonly shank: Mm;
}

/** A slot sawn into a joint face; open to it and flooded. depth: from the face on the centre line. */
export interface Slot {
  readonly in: Side;
  readonly width: Mm;
  readonly depth: Mm;
  readonly z: readonly [Mm, Mm];
}

export type Coat = FilmCoat | SoakCoat;

/** Grows the surface outward. covers: 'all' wets joint faces and slots too; 'skin' leaves them masked. */
export interface FilmCoat {
  readonly kind: 'film';
  readonly name: string;
  readonly thickness: Mm;
  readonly density: GramPerMm3;
  readonly covers: 'all' | 'skin';
}

/** Soaked in: weighs, adds no volume. A share of the link's wood, or grams per area of all its bare surfaces. */
export type SoakCoat =
  | { readonly kind: 'soak-share'; readonly name: string; readonly share: number }
  | { readonly kind: 'soak-area'; readonly name: string; readonly perArea: GramPerMm2 };

/** A screw eye that something hangs from. at: x on belly and back, z on nose and tail. */
export interface Hanger extends Wire {
  readonly name: string;
  readonly on: 'belly' | 'back' | 'nose' | 'tail';
  readonly at: Mm;
  /** y. */
  readonly across: Mm;
  /** Middle of the loop off the bare skin. */
  readonly stand: Mm;
  /** Weighed by the maker; null: from its wire. */
  readonly mass: Gram | null;
}

/** Glued or tied on for good, a point. pair: a second one at -y. mass and outside: of each. */
export interface Fitting {
  readonly name: string;
  readonly x: Mm;
  readonly y: Mm;
  readonly z: Mm;
  readonly mass: Gram;
  /** What it displaces outside the skin. What of it is let into the wood is not taken off the wood's weight. */
  readonly outside: Mm3;
  readonly pair: boolean;
}

/** Limp stuff that trails from its root and acts there. air: least and most that is caught in it under water. */
export interface Trailing {
  readonly name: string;
  readonly x: Mm;
  readonly y: Mm;
  readonly z: Mm;
  readonly mass: Gram;
  readonly density: GramPerMm3;
  readonly air: readonly [Mm3, Mm3];
}

/** A flat plate on the centre plane. edge: x, z of its free edge; the skin closes it. tab: how deep it is let in. */
export interface Fin {
  readonly name: string;
  readonly on: 'back' | 'belly' | 'tail';
  readonly edge: readonly (readonly [Mm, Mm])[];
  readonly thickness: Mm;
  readonly tab: Mm;
  readonly density: GramPerMm3;
}

export interface Shop {
  /** null: not said. For templates only, never the float. */
  readonly kerf: Mm | null;
  /** Least wood between ballast and the skin or a joint face. */
  readonly wall: Mm;
  readonly drills: readonly Drill[];
  readonly lead: readonly LeadStock[];
}

/** point: full angle of its point; pi is a flat bottom. */
export interface Drill {
  readonly name: string;
  readonly diameter: Mm;
  readonly point: Radian;
}

/** slug: round bar of its own diameter; filled: takes the hole's diameter. */
export type LeadStock =
  | { readonly name: string; readonly kind: 'slug'; readonly diameter: Mm; readonly density: GramPerMm3 }
  | { readonly name: string; readonly kind: 'filled'; readonly density: GramPerMm3 };

export interface Setup {
  readonly name: string;
  readonly notes: string;
  readonly water: Water;
  readonly target: Target;
  /** By link name. */
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly hung: readonly Hung[];
  readonly holes: readonly Hole[];
  readonly coats: readonly Coat[];
  /** A timed drop of the whole bait; null: it was not timed. */
  readonly drop: Drop | null;
}

/** From rest under water. netWet: what it weighed in the water then; null: as drawn. */
export interface Drop {
  readonly distance: Mm;
  readonly time: Second;
  readonly netWet: Gram | null;
}

export type Water =
  | { readonly kind: 'natural'; readonly temperature: Celsius; readonly salinity: GramPerKg }
  | { readonly kind: 'measured'; readonly density: GramPerMm3 };

/** What the maker wants: one aim, and the trim that goes with it (nose-down positive, 0 unless asked). */
export type Target = { readonly trim: Radian } & (
  | { readonly kind: 'proud'; readonly proud: Mm }
  | { readonly kind: 'waterline'; readonly z: Mm }
  | { readonly kind: 'reserve'; readonly reserve: Gram }
  | { readonly kind: 'reserve-share'; readonly share: number }
  | { readonly kind: 'net'; readonly net: Gram }
  /** Steady speed; level as it falls, not at rest. */
  | { readonly kind: 'sink'; readonly speed: MmPerS }
);

/** Something that hangs from a hanger's eye. hang: middle of the loop to the lowest point. */
export interface Hung {
  readonly name: string;
  /** A hanger's name. */
  readonly from: string;
  readonly mass: Gram;
  readonly hang: Mm;
  readonly density: GramPerMm3;
}

/** A ballast hole: drilled from the skin, lead at its floor, plug above it up to the skin. */
export interface Hole {
  readonly name: string;
  readonly from: 'belly' | 'back' | 'port' | 'starboard';
  readonly x: Mm;
  /** y for belly and back, z for port and starboard. */
  readonly across: Mm;
  readonly diameter: Mm;
  /** Bare skin on the axis to the full-diameter shoulder; the drill point goes deeper. */
  readonly depth: Mm;
  /** Full angle of the drill point; pi is a flat bottom. */
  readonly point: Radian;
  /** stock: the entry of shop.lead, copied here so that a hole knows its own metal. */
  readonly lead: { readonly stock: LeadStock; readonly mass: Gram } | null;
  /** A sealed air chamber under a plug that goes from the skin down to this depth. */
  readonly air: { readonly plug: Mm } | null;
  readonly plugDensity: GramPerMm3;
  /** Drilled and glued: nothing may change it. */
  readonly done: boolean;
}
