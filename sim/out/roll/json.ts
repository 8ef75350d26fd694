import { type Attitudes, shareError } from '../../hydro/attitudes.ts';
import { type Steadiness, stiffFrom } from '../../hydro/steadiness.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import type { ArmAt, ArmsOver } from '../../roll/arms.ts';
import { OFF_CENTRE_MM } from '../../roll/off-centre.ts';
import type { BaitRoll, LeadMass, LinkRoll, Roll } from '../../roll/roll.ts';
import type { Radian } from '../../units/brand.ts';
import { degreeFromRadian, percentFromShare } from '../../units/convert.ts';

/** How it takes being rolled. null: it stands on end, or has no preferred way up. */
export interface RollJson {
  readonly word: Steadiness | null;
  /** Held upright; under water the height of its buoyancy over its weight. */
  readonly gm_mm: number;
  readonly width_mm: number;
  readonly gm_percent_of_width: number;
  /** Under the first it is tender, from the second on stiff. */
  readonly steady_from_mm: number;
  readonly stiff_from_mm: number;
  /** false: wholly under water, where the arm is the height of buoyancy over weight times the sine of the heel. */
  readonly afloat: boolean;
  /** The heel it comes to where upright does not hold it. */
  readonly loll_deg: number | null;
  readonly starboard: WayJson | null;
  readonly port: WayJson | null;
  readonly comes_back_from_belly_up: boolean | null;
  /** Free to trim, from port to starboard; a positive arm turns it to port. Empty where there is none. */
  readonly arms: readonly ArmJson[];
  readonly drops: {
    readonly starts: number;
    /** Share of the starts that end at the first rest, and its sampling error. */
    readonly first_percent: number;
    readonly first_error_percent: number;
  };
}

export interface LinkRollJson extends RollJson {
  /** Heel that its lead adds when it lies so far to starboard, the link alone and in the whole bait; null: no lead. */
  readonly off_centre: {
    readonly by_mm: number;
    readonly heel_deg: number;
    readonly assembled_heel_deg: number | null;
  } | null;
  /** Lead at one place that stands the link up, and makes it steady, were it without lead; null: it stands on end. */
  readonly least_lead: {
    readonly at_mm: Vec3;
    readonly place: 'own' | 'plan' | 'keel';
    readonly stands: LeadJson | null;
    readonly steady: LeadJson | null;
  } | null;
}

export interface BaitRollJson extends RollJson {
  /** Heel that all its lead adds when it lies so far to starboard; null: no lead. */
  readonly off_centre: { readonly by_mm: number; readonly heel_deg: number } | null;
}

interface WayJson {
  /** null: it comes back from as far as it can be heeled. */
  readonly limit_deg: number | null;
  readonly most_arm_mm: number;
  readonly most_arm_deg: number;
  readonly energy_g_mm: number;
  readonly on_end_deg: number | null;
}

interface ArmJson {
  readonly heel_deg: number;
  readonly arm_mm: number;
  readonly energy_g_mm: number;
}

interface LeadJson {
  readonly net_g: number;
  readonly lead_g: number | null;
}

/** joined: heel that the same lead adds to the whole bait. */
export function linkRollJson(roll: LinkRoll, joined: Radian | null, attitudes: Attitudes): LinkRollJson {
  const { offCentre, least } = roll;
  return {
    ...rollJson(roll, attitudes),
    off_centre:
      offCentre === null
        ? null
        : { by_mm: OFF_CENTRE_MM, heel_deg: degreeFromRadian(offCentre), assembled_heel_deg: degreesOf(joined) },
    least_lead: least && {
      at_mm: least.at,
      place: least.of,
      stands: leadJson(least.stands),
      steady: leadJson(least.steady),
    },
  };
}

export function baitRollJson(roll: BaitRoll, attitudes: Attitudes): BaitRollJson {
  const heel = roll.offCentre?.all ?? null;
  return {
    ...rollJson(roll, attitudes),
    off_centre: heel === null ? null : { by_mm: OFF_CENTRE_MM, heel_deg: degreeFromRadian(heel) },
  };
}

function rollJson(roll: Roll, { firstShare, starts }: Attitudes): RollJson {
  const { steadiness, gm, width, isAfloat, arms, loll, fromBellyUp } = roll;
  return {
    word: steadiness,
    gm_mm: gm,
    width_mm: width,
    gm_percent_of_width: percentFromShare(gm / width),
    steady_from_mm: roll.steadyFrom,
    stiff_from_mm: stiffFrom(width),
    afloat: isAfloat,
    loll_deg: degreesOf(loll),
    starboard: arms && wayJson(arms.starboard),
    port: arms && wayJson(arms.port),
    comes_back_from_belly_up: fromBellyUp,
    arms: arms?.points.map(armJson) ?? [],
    drops: {
      starts,
      first_percent: percentFromShare(firstShare),
      first_error_percent: percentFromShare(shareError(firstShare, starts)),
    },
  };
}

function wayJson({ limit, most, energy, onEnd }: ArmsOver): WayJson {
  return {
    limit_deg: degreesOf(limit),
    most_arm_mm: most.arm,
    most_arm_deg: degreeFromRadian(most.heel),
    energy_g_mm: energy,
    on_end_deg: degreesOf(onEnd),
  };
}

function armJson({ heel, arm, energy }: ArmAt): ArmJson {
  return { heel_deg: degreeFromRadian(heel), arm_mm: arm, energy_g_mm: energy };
}

function leadJson(mass: LeadMass | null): LeadJson | null {
  return mass && { net_g: mass.net, lead_g: mass.lead };
}

function degreesOf(angle: Radian | null): number | null {
  return angle === null ? null : degreeFromRadian(angle);
}
