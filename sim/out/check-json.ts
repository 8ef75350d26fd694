import type { Aim } from '../ballast/target.ts';
import type { Assembly } from '../chain/assemble.ts';
import type { Accuracy } from '../hydro/accuracy.ts';
import { type Attitudes, shareError } from '../hydro/attitudes.ts';
import type { Film } from '../hydro/film.ts';
import type { LedgerLine } from '../mass/ledger.ts';
import type { PlacedHung, PlacedPin } from '../mass/placed.ts';
import { slotVolume } from '../mesh/wetted.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Radian } from '../units/brand.ts';
import { degreeFromRadian, percentFromShare } from '../units/convert.ts';
import type { Warning } from '../warnings.ts';
import { type LinkBallastJson, linkBallastJson, type WhatIfJson, whatIfJson } from './ballast/json.ts';
import type { CheckedBait, CheckedLink } from './checked-bait.ts';
import { type FloatJson, floatJson } from './float-json.ts';
import { type AssemblyJson, assemblyJson, type JointedJson, jointedJson } from './joints/json.ts';
import { type ReachJson, reachJson } from './reach-json.ts';
import { type BaitRollJson, baitRollJson, type LinkRollJson, linkRollJson } from './roll/json.ts';
import { type DropJson, dropJson, type SinkingJson, sinkingJson } from './sinking/json.ts';

/**
 * What `check --json` prints: every answer about a bait, degrees for angles and the unit in every key, at full
 * precision. Other people's programs read it, so keys may be added but never renamed. null: not worked out, or there
 * is none; never 0 instead.
 */
export interface CheckJson {
  readonly design: string;
  readonly setup: string;
  readonly water: {
    readonly density_g_mm3: number;
    /** null, both, when the density itself was measured. */
    readonly temperature_c: number | null;
    readonly salinity_g_kg: number | null;
  };
  readonly links: readonly LinkJson[];
  readonly assembled: {
    readonly float: FloatJson;
    /** How it falls; null: it floats or hangs. */
    readonly sinking: SinkingJson | null;
    readonly other_attitudes: readonly OtherFloatJson[];
    readonly accuracy: AccuracyJson;
    readonly film: FilmJson;
    readonly air_in_slots_g: number;
    readonly roll: BaitRollJson;
    readonly links: readonly { readonly up: Vec3; readonly offset_mm: number | null }[];
    /** Hinge pins, from the nose. A joint of linked eyes has none; a warning says what that means for the whole bait. */
    readonly pins: readonly PinJson[];
    /** How far it folds at all joints together, to the side to which it folds less; null: it has no joint. */
    readonly total_fold_deg: number | null;
    readonly reach: ReachJson;
    /** null: it has no joints. */
    readonly jointed: JointedJson | null;
  };
  /** What the setup's timed drop comes to; null: none was timed. */
  readonly drop: DropJson | null;
  readonly warnings: readonly WarningJson[];
  /** What becomes of the setup when one thing is different. */
  readonly what_ifs: readonly WhatIfJson[];
  /** How it rests with its joints held where they were asked to be; null: nothing was asked. */
  readonly folded_at: AssemblyJson | null;
}

/** A link alone. */
export interface LinkJson {
  readonly name: string;
  readonly span_mm: readonly [number, number];
  /** Wood, coats, hardware, ballast: all that cannot swing. */
  readonly fixed: { readonly mass_g: number; readonly cg_mm: Vec3 };
  /** Fixed parts that displace water outside the solid. Fins are not among them: they are shells of the exported solid. */
  readonly outside: readonly { readonly name: string; readonly volume_mm3: number; readonly at_mm: Vec3 }[];
  readonly hung: readonly HungJson[];
  readonly ledger: readonly LineJson[];
  readonly target: TargetJson | null;
  readonly float: FloatJson;
  readonly sinking: SinkingJson | null;
  readonly other_attitudes: readonly OtherFloatJson[];
  readonly accuracy: AccuracyJson;
  readonly film: FilmJson;
  /** What air caught in the slots can hold up, until it is shaken out. */
  readonly air_in_slots_g: number;
  readonly roll: LinkRollJson;
  /** The plan for its ballast. */
  readonly ballast: LinkBallastJson;
}

export interface HungJson {
  readonly name: string;
  readonly mass_g: number;
  readonly volume_mm3: number;
  readonly eye_mm: Vec3;
  /** Eye to lowest point. */
  readonly hang_mm: number;
}

export interface LineJson {
  readonly name: string;
  readonly kind: string;
  readonly mass_g: number;
  readonly at_mm: Vec3;
  readonly source: string;
}

export interface TargetJson {
  readonly up: Vec3;
  /** One of these two is null: the aim is a waterline, or a net weight. */
  readonly offset_mm: number | null;
  readonly net_wet_g: number | null;
}

/** Another way to rest than the first. */
export interface OtherFloatJson extends FloatJson {
  readonly hump_back_g_mm: number | null;
  /** Share of evenly spread starts that end there, and its sampling error. */
  readonly starts_percent: number;
  readonly starts_error_percent: number;
  /** Which it is the mirror image of, port for starboard: 0 the float, 1 the first other attitude; null: none. */
  readonly mirror_of: number | null;
}

/** How far the sums may be off for the bait as drawn; null: nothing can be told, or there is none. */
export interface AccuracyJson {
  readonly mesh: {
    readonly draft_mm: number | null;
    readonly proud_mm: number | null;
    readonly trim_deg: number;
    readonly heel_deg: number;
    readonly gm_mm: number;
  } | null;
  readonly solver: { readonly draft_mm: number | null; readonly angle_deg: number | null };
}

/** What the skin of the water may add or take. */
export interface FilmJson {
  readonly edge_mm: number;
  readonly force_g: number;
  readonly draft_mm: number | null;
  readonly trim_deg: number | null;
  readonly heel_deg: number | null;
  readonly too_close: boolean;
}

/** number and limit in `unit`. fix: one edit of the design file that makes it better; null: no single one is known. */
export interface WarningJson {
  readonly code: string;
  readonly where: string;
  readonly text: string;
  readonly at_mm: Vec3 | null;
  readonly number: number | null;
  readonly limit: number | null;
  readonly unit: Warning['unit'];
  readonly fix: Warning['fix'];
}

export interface PinJson {
  readonly x_mm: number;
  /** Held straight: what all that is forward of it displaces more than it weighs, in grams and about the pin. */
  readonly shear_g: number | null;
  /** Positive where it makes the bait sag. */
  readonly moment_g_mm: number | null;
  /** Positive where it turns the fore part starboard side down. */
  readonly twist_g_mm: number | null;
  /** How far its loops let it sag or lean; null: a single loop. */
  readonly slop_deg: number | null;
  /** To port and to starboard: how far the aft link swings before something touches. */
  readonly reach_deg: readonly [number, number];
}

/** All answers about a bait as plain JSON values, keys in the order that readers know. */
export function checkJson(bait: CheckedBait, folded: Assembly | null = null): CheckJson {
  const { density, temperature, salinity } = bait.water;
  return {
    design: bait.design.name,
    setup: bait.setup.name,
    water: { density_g_mm3: density, temperature_c: temperature, salinity_g_kg: salinity },
    links: bait.links.map((link, index) => linkJson(bait, link, index)),
    assembled: {
      float: floatJson(bait.assembled, bait.assembledSinking?.speed ?? null),
      sinking: bait.assembledSinking && sinkingJson(bait.assembledSinking),
      other_attitudes: otherJson(bait.assembledAttitudes),
      accuracy: accuracyJson(bait.assembledAccuracy),
      film: filmJson(bait.assembledAccuracy.film),
      air_in_slots_g: density * bait.links.reduce((sum, { wetted }) => sum + slotVolume(wetted), 0),
      roll: baitRollJson(bait.assembledRoll, bait.assembledAttitudes),
      // held straight each link still sags and leans as far as the play of its joints lets it
      links:
        bait.jointed?.straight.links.map(({ up, offset }) => ({ up, offset_mm: offset })) ??
        bait.links.map(() => ({ up: bait.assembled.up, offset_mm: bait.assembled.offset })),
      pins: bait.hardware.pins.toSorted((a, b) => a.joint - b.joint).map((pin) => pinJson(bait, pin)),
      total_fold_deg: totalFold(bait),
      reach: reachJson(bait.reach),
      jointed: bait.jointed && jointedJson(bait.jointed, bait.folded),
    },
    drop: bait.drop && dropJson(bait.drop),
    warnings: bait.warnings.map(warningJson),
    what_ifs: bait.whatIfs.map(whatIfJson),
    folded_at: folded && assemblyJson(folded),
  };
}

function warningJson({ code, where, text, at, number, limit, unit, fix }: Warning): WarningJson {
  const edit = fix && { says: fix.says, sets: fix.sets.map(({ path, value }) => ({ path, value })) };
  return { code, where, text, at_mm: at, number, limit, unit, fix: edit };
}

function linkJson(bait: CheckedBait, link: CheckedLink, index: number): LinkJson {
  const { spec, ledger } = link;
  const aim: Aim | undefined = bait.target.links[index];
  return {
    name: spec.name,
    span_mm: spec.span,
    fixed: { mass_g: ledger.mass, cg_mm: ledger.centre },
    outside: ledger.lines
      .filter((line) => line.outsideVolume > 0)
      .map((line) => ({ name: line.name, volume_mm3: line.outsideVolume, at_mm: line.outsideAt })),
    hung: bait.hardware.hung.filter((item) => item.link === spec.index).map(hungJson),
    ledger: ledger.lines.map(lineJson),
    target: aim === undefined ? null : { up: aim.up, offset_mm: aim.offset, net_wet_g: aim.netWet },
    float: floatJson(link.float, link.sinking?.speed ?? null),
    sinking: link.sinking && sinkingJson(link.sinking),
    other_attitudes: otherJson(link.attitudes),
    accuracy: accuracyJson(link.accuracy),
    film: filmJson(link.accuracy.film),
    air_in_slots_g: bait.water.density * slotVolume(link.wetted),
    roll: linkRollJson(link.roll, bait.assembledRoll.offCentre?.links[index] ?? null, link.attitudes),
    ballast: linkBallastJson(bait, link, index),
  };
}

function otherJson({ others, starts }: Attitudes): readonly OtherFloatJson[] {
  return others.map(({ float, hump, back, share, mirrorOf }) => ({
    // whatever can rest another way floats
    ...floatJson(float, null),
    hump_g_mm: hump,
    hump_back_g_mm: back,
    starts_percent: percentFromShare(share),
    starts_error_percent: percentFromShare(shareError(share, starts)),
    mirror_of: mirrorOf,
  }));
}

function accuracyJson({ mesh, solver }: Accuracy): AccuracyJson {
  return {
    mesh: mesh && {
      draft_mm: mesh.draft,
      proud_mm: mesh.proud,
      trim_deg: degreeFromRadian(mesh.trim),
      heel_deg: degreeFromRadian(mesh.heel),
      gm_mm: mesh.gm,
    },
    solver: { draft_mm: solver.draft, angle_deg: degreesOf(solver.angle) },
  };
}

function filmJson({ edge, force, draft, trim, heel, tooClose }: Film): FilmJson {
  return {
    edge_mm: edge,
    force_g: force,
    draft_mm: draft,
    trim_deg: degreesOf(trim),
    heel_deg: degreesOf(heel),
    too_close: tooClose,
  };
}

function degreesOf(angle: Radian | null): number | null {
  return angle === null ? null : degreeFromRadian(angle);
}

function hungJson(item: PlacedHung): HungJson {
  return {
    name: item.name,
    mass_g: item.mass,
    volume_mm3: item.volume,
    eye_mm: item.eye,
    hang_mm: item.hang,
  };
}

function lineJson(line: LedgerLine): LineJson {
  return { name: line.name, kind: line.kind, mass_g: line.mass, at_mm: line.at, source: line.source };
}

function pinJson({ reach, jointed }: CheckedBait, pin: PlacedPin): PinJson {
  const joint = jointed?.straight.joints[pin.joint];
  const { port, starboard } = reach.joints[pin.joint];
  return {
    x_mm: pin.x,
    shear_g: joint?.load.shear ?? null,
    moment_g_mm: joint?.load.moment ?? null,
    twist_g_mm: joint?.load.twist ?? null,
    slop_deg: joint?.slop === undefined || joint.slop === null ? null : degreeFromRadian(joint.slop),
    reach_deg: [degreeFromRadian(port.angle), degreeFromRadian(starboard.angle)],
  };
}

function totalFold({ reach: { joints, whole } }: CheckedBait): number | null {
  if (joints.length === 0) return null;
  return degreeFromRadian(Math.min(whole.port.fold, whole.starboard.fold));
}
