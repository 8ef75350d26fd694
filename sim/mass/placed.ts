import type { Hole, Side } from '../design/design.ts';
import type { Issue } from '../flow/outcome.ts';
import type { Mesh } from '../mesh/mesh.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramPerMm3, Mm, Mm3 } from '../units/brand.ts';
import type { FinTab } from './fin-tab.ts';

/** A screw eye where it stands. All points in the body frame, millimetres. */
export interface PlacedEye {
  readonly name: string;
  readonly kind: 'hinge' | 'hanger';
  /** The link that its shank sits in, counted from the nose. */
  readonly link: number;
  /** Middle of the loop. */
  readonly loop: Vec3;
  /** Axis of the loop's hole: along the pin for an eye on one. */
  readonly axis: Vec3;
  /** Unit vector along the shank into the wood. */
  readonly inward: Vec3;
  /** Where the shank enters the bare wood. */
  readonly entry: Vec3;
  readonly wire: Mm;
  readonly bore: Mm;
  readonly shank: Mm;
  /** Wire from the outside of the loop to the wood; never negative. */
  readonly neck: Mm;
  readonly mass: Gram;
  /** Weighed by the maker, rather than from the wire. */
  readonly weighed: boolean;
  /** Loop and neck: what displaces water outside the wood. */
  readonly outsideVolume: Mm3;
  readonly outsideCentre: Vec3;
  readonly shankVolume: Mm3;
  readonly shankCentre: Vec3;
}

/** A hinge pin where it stands. */
export interface PlacedPin {
  readonly name: string;
  readonly joint: number;
  /** The link that carries it. */
  readonly link: number;
  readonly heldBy: Side;
  readonly x: Mm;
  readonly z: readonly [Mm, Mm];
  readonly diameter: Mm;
  readonly density: GramPerMm3;
  /** Runs of z where the pin stands in a slot or in the gap: wet. */
  readonly wet: readonly (readonly [Mm, Mm])[];
  /** Runs of z where it sits in its bore. */
  readonly bored: readonly (readonly [Mm, Mm])[];
}

/** A ballast hole as drilled and filled. Distances along the axis are from the mouth on the bare skin, inward. */
export interface PlacedHole {
  readonly name: string;
  readonly link: number;
  readonly hole: Hole;
  /** Where the axis meets the bare skin. */
  readonly mouth: Vec3;
  readonly inward: Vec3;
  readonly diameter: Mm;
  readonly depth: Mm;
  /** How much deeper than the shoulder the drill's point goes; 0 for a flat bottom. */
  readonly pointDepth: Mm;
  /** Wood taken out: skin to shoulder averaged over the disc, and the point. */
  readonly volume: Mm3;
  readonly centre: Vec3;
  readonly lead: {
    readonly mass: Gram;
    readonly volume: Mm3;
    readonly centre: Vec3;
    readonly diameter: Mm;
    /** Distance from the mouth of the face nearer the skin, and of the floor the lead stands on. */
    readonly from: Mm;
    readonly to: Mm;
    readonly fillsPoint: boolean;
  } | null;
  /** A sealed chamber: from the plug's inner face to the floor, the point included. It weighs nothing. */
  readonly air: { readonly volume: Mm3; readonly centre: Vec3; readonly from: Mm } | null;
  readonly plug: { readonly mass: Gram; readonly volume: Mm3; readonly centre: Vec3 };
}

/** Something fixed on at a point: a fitting, or the root of a limp tail. */
export interface PlacedFitting {
  readonly name: string;
  readonly kind: 'fitting' | 'tail';
  readonly link: number;
  readonly at: Vec3;
  readonly mass: Gram;
  readonly outsideVolume: Mm3;
  /** How much more or less than that it may displace, by the air caught in it. */
  readonly outsideSpread: Mm3;
  /** Its place in the design file, for messages. */
  readonly path: string;
}

/** What of a fin stands on one link. */
export interface PlacedFin {
  readonly name: string;
  readonly link: number;
  /** Its place in the design file, for messages. */
  readonly path: string;
  readonly thickness: Mm;
  readonly density: GramPerMm3;
  /** The plate outside the bare skin: closed shells, outward. */
  readonly mesh: Mesh;
  readonly outsideVolume: Mm3;
  readonly outsideCentre: Vec3;
  readonly tab: FinTab | null;
}

/** A hook or the like, hanging plumb from an eye. */
export interface PlacedHung {
  readonly name: string;
  readonly link: number;
  readonly eye: Vec3;
  readonly mass: Gram;
  readonly volume: Mm3;
  readonly hang: Mm;
}

/** What is screwed, pinned or drilled into wood for good, each with the link that holds it. */
export interface FixedHardware {
  readonly eyes: readonly PlacedEye[];
  readonly pins: readonly PlacedPin[];
  readonly holes: readonly PlacedHole[];
  readonly fittings: readonly PlacedFitting[];
  readonly fins: readonly PlacedFin[];
  /** Why fins that are not among them cannot stand. */
  readonly finFaults: readonly Issue[];
}

/** The same with what hangs from it. */
export interface Hardware extends FixedHardware {
  readonly hung: readonly PlacedHung[];
}
