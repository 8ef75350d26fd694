/**
 * The design file as written: units in the keys, expressions kept. This form is what is edited, saved, undone and
 * shared; `Design` is derived from it, one way, and never written.
 * Positions are absolute in the body frame: origin at the nose tip on the datum, x aft, y starboard, z up.
 */

/** A number in the unit its key names, or an expression: "length_mm * 0.42". */
export type Num = number | string;

/** The word that every design file says under `format`. */
export const FORMAT = 'floatwright-design';

export interface DesignFile {
  readonly format: typeof FORMAT;
  readonly version: 1;
  readonly name: string;
  readonly notes?: string;
  /** Own named dimensions; each name ends in its unit: head_mm, lean_deg. */
  readonly dimensions?: Readonly<Record<string, Num>>;
  readonly body: BodyEntry;
  /** From nose to tail; one more than there are joints. */
  readonly links: readonly LinkEntry[];
  readonly joints: readonly JointEntry[];
  /** species: a key of the wood table, for its spread and source. */
  readonly wood: { readonly species?: string; readonly density_g_cm3: Num };
  /** In the order they go on. */
  readonly coats: readonly CoatEntry[];
  /** Screw eyes that something hangs from, the line tie among them. */
  readonly hangers: readonly HangerEntry[];
  /** Anything else glued or tied on for good: painted eyes, rattles, a wrap of wire. */
  readonly fittings?: readonly FittingEntry[];
  readonly fins?: readonly FinEntry[];
  /** Limp things that trail from where they are tied on: hair, feather, soft plastic. */
  readonly tails?: readonly TrailingEntry[];
  /** What the maker owns. Enters the float only through the density and diameter of a hole's lead. */
  readonly shop?: ShopEntry;
  /** The first one is shown first. */
  readonly setups: readonly SetupEntry[];
}

export interface BodyEntry {
  /** Bare, sanded wood, nose tip to tail tip, gaps included, fins not. */
  readonly length_mm: Num;
  /** Back to belly at the deepest station. */
  readonly height_mm: Num;
  /** Flank to flank at the widest station. */
  readonly width_mm: Num;
  /** Back above the datum at the deepest station; the belly has the rest of height_mm. Half if left out. */
  readonly back_mm?: Num;
  /** One station, or [from, to] where the outline runs straight. 0.38 of the length if left out. */
  readonly deepest_x_mm?: Num | NumPair;
  /** As deepest_x_mm, for the plan outline. 0.36 of the length if left out. */
  readonly widest_x_mm?: Num | NumPair;
  readonly back?: FullnessEntry;
  readonly belly?: FullnessEntry;
  readonly plan?: FullnessEntry;
  /** A blunt nose; left out, the nose comes to a round tip at the datum. */
  readonly nose?: { readonly depth_mm: Num; readonly width_mm: Num; readonly round_mm?: Num };
  /** The tail stem. z_mm: its middle above the datum. */
  readonly tail?: TailEntry;
  readonly section: SectionEntry;
  /** Caliper readings of an existing bait: the outlines are bent to pass through them. */
  readonly readings?: readonly ReadingEntry[];
}

/** Two ends of a stretch: from, to. */
export type NumPair = readonly [Num, Num];

/** Share of its box that each quarter outline fills: pi/4 is an ellipse and stands where left out. */
export interface FullnessEntry {
  readonly nose_fullness?: Num;
  readonly tail_fullness?: Num;
}

export interface TailEntry {
  readonly z_mm?: Num;
  readonly depth_mm?: Num;
  readonly width_mm?: Num;
  readonly round_mm?: Num;
}

export type SectionEntry =
  /** Superellipse halves; exponents above and below the greatest breadth; breadth: its height as a share, 0.5 if left out. */
  | { readonly kind: 'oval'; readonly above: Num; readonly below: Num; readonly breadth?: Num }
  /** Flat flanks, edges rounded by a router bit of these radii. */
  | { readonly kind: 'board'; readonly back_edge_mm: Num; readonly belly_edge_mm: Num };

/** height_mm alone counts for back and belly alike; beside one of them it gives the other. belly_mm: depth under the datum. */
export interface ReadingEntry {
  readonly x_mm: Num;
  readonly height_mm?: Num;
  readonly back_mm?: Num;
  readonly belly_mm?: Num;
  readonly width_mm?: Num;
}

export interface LinkEntry {
  readonly name: string;
  /** This piece's own wood, if weighed apart. */
  readonly density_g_cm3?: Num;
}

/** fore: the link nearer the nose; aft: the link nearer the tail. */
export type SideEntry = 'fore' | 'aft';

export interface JointEntry {
  /** Middle of the gap, on the centre line. An item at x belongs to the link on its side of this. */
  readonly x_mm: Num;
  /** Bare face to bare face, along x on the centre line. */
  readonly gap_mm: Num;
  readonly faces: FacesEntry;
  readonly hinge: HingeEntry;
  /** Open to the joint face, flooded. width: across (y); depth: from the face on the centre line; z: from, to. */
  readonly slots?: readonly SlotEntry[];
}

export type FacesEntry =
  | { readonly kind: 'flat' }
  /** Both faces fall back from an upright ridge on the centre line, each by its own angle. */
  | { readonly kind: 'bevel'; readonly fore_deg: Num; readonly aft_deg: Num }
  /** Upright round nose of this radius on one link, hollow of radius + gap in the other; the pin is its axis. */
  | { readonly kind: 'knuckle'; readonly on: SideEntry; readonly radius_mm: Num };

export type HingeEntry = PinHingeEntry | LinkedEyesEntry;

export interface PinHingeEntry extends WireEntry {
  readonly kind: 'pin';
  /** in: the link that holds the shank. */
  readonly eyes: readonly { readonly in: SideEntry; readonly z_mm: Num }[];
  readonly pin: PinEntry;
}

export interface LinkedEyesEntry extends WireEntry {
  readonly kind: 'linked-eyes';
  /** One pair of eyes at each height, one of each link: the fore link's loops stand upright, the aft link's lie flat. */
  readonly z_mm: readonly Num[];
}

export interface SlotEntry {
  readonly in: SideEntry;
  readonly width_mm: Num;
  readonly depth_mm: Num;
  readonly z_mm: NumPair;
}

/**
 * Upright. x_mm: x_mm of the joint if left out; a knuckle's pin is its axis and takes none. held_by: the link it is
 * glued in, which carries its weight.
 */
export interface PinEntry {
  readonly diameter_mm: Num;
  readonly z_mm: NumPair;
  readonly x_mm?: Num;
  readonly held_by: SideEntry;
  readonly density_g_cm3?: Num;
}

/** A screw eye: wire thickness, inside of the loop, length in the wood. */
export interface WireEntry {
  readonly wire_mm: Num;
  readonly bore_mm: Num;
  readonly shank_mm: Num;
}

export type CoatEntry =
  /** covers: 'all' wets joint faces and slots too; 'skin' leaves them masked. 'all' if left out. */
  | {
      readonly name: string;
      readonly thickness_mm: Num;
      readonly density_g_cm3: Num;
      readonly covers?: 'all' | 'skin';
    }
  /** Soaked in: weighs, adds no volume. Percent of the link's wood, or grams per square metre of all its surfaces. */
  | { readonly name: string; readonly soak_percent: Num }
  | { readonly name: string; readonly soak_g_m2: Num };

/**
 * On belly or back: x_mm. On nose or tail: z_mm. across_mm: y, 0 if left out. stand_mm: middle of the loop off the bare
 * skin, bore/2 + wire if left out.
 */
export interface HangerEntry extends WireEntry {
  readonly name: string;
  readonly on: 'belly' | 'back' | 'nose' | 'tail';
  readonly x_mm?: Num;
  readonly z_mm?: Num;
  readonly across_mm?: Num;
  readonly stand_mm?: Num;
  readonly mass_g?: Num;
}

/**
 * pair: a second one at -y. mass_g and outside_mm3, what it displaces outside the skin: of each. Wood it is let into still
 * counts as wood.
 */
export interface FittingEntry {
  readonly name: string;
  readonly x_mm: Num;
  readonly y_mm?: Num;
  readonly z_mm: Num;
  readonly mass_g: Num;
  readonly outside_mm3?: Num;
  readonly pair?: boolean;
}

/**
 * Limp: it floats or sinks about its root and passes on no moment, so what it weighs and displaces acts there. x, y, z:
 * the root. density: of the stuff itself. air_mm3: least and most air caught in it under water; none if left out.
 */
export interface TrailingEntry {
  readonly name: string;
  readonly x_mm: Num;
  readonly y_mm?: Num;
  readonly z_mm: Num;
  readonly mass_g: Num;
  readonly density_g_cm3: Num;
  readonly air_mm3?: NumPair;
}

/**
 * A flat plate on the centre plane: its free edge as [x, z] points from fore to aft (tail fin: top to bottom). The skin
 * closes it: an end off the skin goes straight down to it (on the tail, along x if that is nearer), one in the wood is cut
 * there. Joints cut it at their gaps. No coat goes over it.
 */
export interface FinEntry {
  readonly name: string;
  readonly on: 'back' | 'belly' | 'tail';
  readonly edge_mm: readonly NumPair[];
  readonly thickness_mm: Num;
  /** How deep it is let into the wood. */
  readonly tab_mm?: Num;
  readonly density_g_cm3: Num;
}

export interface ShopEntry {
  readonly kerf_mm?: Num;
  /** Least wood to leave between ballast and the skin or a joint face; 3 mm if left out. */
  readonly wall_mm?: Num;
  readonly drills?: readonly DrillEntry[];
  readonly lead?: readonly LeadEntry[];
}

/** point_deg: full angle of its point, 118 if left out; 180 is a flat bottom. */
export interface DrillEntry {
  readonly name: string;
  readonly diameter_mm: Num;
  readonly point_deg?: Num;
}

/** Any metal by its density. slug: round bar of its own diameter; filled: takes the hole's diameter (poured, shot in epoxy, putty). */
export interface LeadEntry {
  readonly name: string;
  readonly kind: 'slug' | 'filled';
  readonly diameter_mm?: Num;
  readonly density_g_cm3: Num;
}

export interface SetupEntry {
  readonly name: string;
  readonly notes?: string;
  readonly water: WaterEntry;
  readonly target: TargetEntry;
  /** By link name; links not named take their share of the whole. */
  readonly link_targets?: Readonly<Record<string, TargetEntry>>;
  readonly hung: readonly HungEntry[];
  /** Ballast holes. */
  readonly holes: readonly HoleEntry[];
  /** Instead of the design's coats. */
  readonly coats?: readonly CoatEntry[];
  /** How long the whole bait took to sink so far. */
  readonly drop?: DropEntry;
}

/**
 * A timed drop of the whole bait, let go from rest under water. time_s: until it has sunk that far. net_wet_g: what it
 * weighed in the water then; the bait as drawn if left out.
 */
export interface DropEntry {
  readonly distance_mm: Num;
  readonly time_s: Num;
  readonly net_wet_g?: Num;
}

export type WaterEntry =
  | { readonly temperature_c: Num; readonly salinity_g_kg: Num }
  | { readonly measured_g_cm3: Num };

/** One aim, and the trim that goes with it: nose-down positive, 0 if left out. */
export type TargetEntry = { readonly trim_deg?: Num } & (
  | { readonly proud_mm: Num }
  | { readonly waterline_z_mm: Num }
  | { readonly reserve_g: Num }
  | { readonly reserve_percent: Num }
  | { readonly net_wet_g: Num }
  | { readonly sink_mm_s: Num }
);

/** from: a hanger's name. hang_mm: middle of the hanger's loop to the lowest point. density: steel, 7.85, if left out. */
export interface HungEntry {
  readonly name: string;
  readonly from: string;
  readonly mass_g: Num;
  readonly hang_mm: Num;
  readonly density_g_cm3?: Num;
}

export interface HoleEntry {
  readonly name: string;
  readonly from: 'belly' | 'back' | 'port' | 'starboard';
  readonly x_mm: Num;
  /** y for belly and back, z for port and starboard; 0 if left out. */
  readonly across_mm?: Num;
  readonly diameter_mm: Num;
  /** Bare skin to the full-diameter shoulder, on the axis; the drill point goes deeper. */
  readonly depth_mm: Num;
  /** 118 if left out; 180 is a flat bottom. */
  readonly point_deg?: Num;
  /** of: a name in shop.lead. Lies at the bottom of the hole, furthest from the skin it was drilled from. */
  readonly lead?: { readonly of: string; readonly mass_g: Num };
  /** Instead of lead: a sealed air chamber. The plug closes it from the skin down to this depth; below, it stays empty. */
  readonly air?: { readonly plug_mm: Num };
  /** Fills the rest up to the skin. 1.15, epoxy, if left out. */
  readonly plug_g_cm3?: Num;
  /** Drilled and glued: nothing may change it. */
  readonly done?: boolean;
}
