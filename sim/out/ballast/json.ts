import type { Cure, WhatIfRow } from '../../ballast/advised.ts';
import type { Forgiveness } from '../../ballast/forgiveness.ts';
import type { LinkPlan, Obstacle } from '../../ballast/plan.ts';
import type { SettledPlan } from '../../ballast/settle.ts';
import type { Hole } from '../../design/design.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import { type FloatJson, floatJson } from '../float-json.ts';
import { obstacleWords } from './words.ts';

/** What `ballast --json` prints. The unit is in every key, at full precision; keys may be added, never renamed. */
export interface BallastJson {
  readonly design: string;
  readonly setup: string;
  readonly links: readonly LinkBallastJson[];
  readonly assembled: { readonly float: FloatJson; readonly target_met: boolean };
  readonly what_ifs: readonly WhatIfJson[];
}

export interface LinkBallastJson {
  readonly name: string;
  /** What is to be added in all, net of its own buoyancy, and where; null: nothing is. */
  readonly need: { readonly net_g: number; readonly at_mm: Vec3 | null };
  readonly state: LinkPlan['state'];
  readonly holes: readonly HoleJson[];
  readonly lead_g: number;
  /** What rounding leaves; null: nothing is planned. */
  readonly left: { readonly trim_deg: number; readonly net_g: number } | null;
  readonly fill_last: string | null;
  readonly cannot: (ObstacleJson & { readonly text: string }) | null;
  readonly cures: readonly CureJson[];
  /** The link alone, with the plan as rounded. */
  readonly float: FloatJson;
  /** Of the link as it stands in the file; null: it does not stand. */
  readonly forgiveness: ForgivenessJson | null;
}

/** Why a link cannot be ballasted, by its kind. */
export type ObstacleJson =
  | { readonly kind: 'too-heavy'; readonly over_g: number }
  | { readonly kind: 'no-weight-left'; readonly net_g: number; readonly moment_g_mm: number }
  | { readonly kind: 'empty-shop'; readonly lacks: string }
  | { readonly kind: 'outside'; readonly x_mm: number; readonly from_mm: number; readonly to_mm: number }
  | { readonly kind: 'no-room'; readonly wanted_g: number; readonly most_g: number }
  | { readonly kind: 'not-level' };

export interface HoleJson {
  readonly name: string;
  readonly from: Hole['from'];
  readonly x_mm: number;
  readonly across_mm: number;
  readonly diameter_mm: number;
  readonly depth_mm: number;
  readonly point_deg: number;
  readonly lead: { readonly of: string; readonly mass_g: number } | null;
  readonly air: { readonly plug_mm: number } | null;
  readonly plug_g: number | null;
  /** Least wood from the lead to the skin, and where. */
  readonly wall_mm: number | null;
  readonly wall_at_mm: Vec3 | null;
}

export interface CureJson {
  readonly kind: string;
  readonly says: string;
  readonly sets: readonly { readonly path: string; readonly value: unknown }[];
  readonly link: FloatJson;
  readonly assembled: FloatJson;
  readonly lead_g: number;
  readonly target_met: boolean;
  readonly pin: {
    readonly shear_g: number;
    readonly moment_g_mm: number;
    /** Let go: all joints together, starboard positive, and the heel of the link that then heels most; null: it stays straight. */
    readonly curl_deg: number | null;
    readonly curled_heel_deg: number | null;
  } | null;
}

export interface ForgivenessJson {
  readonly trim_deg_per_mm: number;
  readonly trim_deg_per_g_at_nose: number;
  readonly trim_deg_per_g_at_tail: number;
  readonly hung: readonly {
    readonly name: string;
    readonly trim_deg: number;
    readonly level_x_mm: number | null;
    readonly level_mass_g: number | null;
  }[];
}

export interface WhatIfJson {
  readonly name: string;
  readonly state: string;
  readonly net_wet_g: number;
  readonly trim_deg: number;
  readonly proud_mm: number | null;
  /** Time to its first foot, the middle of what it may be; null where it does not sink. */
  readonly first_foot_s: number | null;
  readonly change: {
    readonly net_wet_g: number;
    readonly trim_deg: number;
    readonly proud_mm: number | null;
    readonly first_foot_s: number | null;
  };
  readonly lead: { readonly mass_g: number; readonly change_g: number } | null;
}

/** The ballast plan of a setup, its cures and what-ifs as plain JSON values. */
export function ballastJson(bait: CheckedBait): BallastJson {
  const { design, setup, planned } = bait;
  return {
    design: design.name,
    setup: setup.name,
    links: bait.links.map((link, i) => linkBallastJson(bait, link, i)),
    assembled: {
      float: floatJson(planned.assembled, planned.assembledSinking?.speed ?? null),
      target_met: planned.target.met,
    },
    what_ifs: bait.whatIfs.map(whatIfJson),
  };
}

/** One link's plan. */
export function linkBallastJson(
  { ballast, planned }: CheckedBait,
  { cures, forgiveness }: CheckedLink,
  i: number,
): LinkBallastJson {
  const { name, need, place, state, holes, lead, left, last, why } = ballast.links[i];
  return {
    name,
    need: { net_g: need.net, at_mm: place },
    state,
    holes: holes.map((hole) => holeJson(hole, planned)),
    lead_g: lead,
    left: left && { trim_deg: degreeFromRadian(left.trim), net_g: left.net },
    fill_last: last,
    cannot: why && { ...obstacleJson(why), text: obstacleWords(name, why) },
    cures: cures.map(cureJson),
    float: floatJson(planned.floats[i], planned.sinkings[i]?.speed ?? null),
    forgiveness: forgiveness && forgivenessJson(forgiveness),
  };
}

function obstacleJson(why: Obstacle): ObstacleJson {
  switch (why.kind) {
    case 'too-heavy':
      return { kind: why.kind, over_g: why.over };
    case 'no-weight-left':
      return { kind: why.kind, net_g: why.net, moment_g_mm: why.moment };
    case 'outside':
      return { kind: why.kind, x_mm: why.x, from_mm: why.from, to_mm: why.to };
    case 'no-room':
      return { kind: why.kind, wanted_g: why.wanted, most_g: why.most };
    case 'empty-shop':
    case 'not-level':
      return why;
  }
}

function holeJson(hole: Hole, { holes }: SettledPlan): HoleJson {
  const settled = holes.find((each) => each.hole.hole === hole);
  return {
    name: hole.name,
    from: hole.from,
    x_mm: hole.x,
    across_mm: hole.across,
    diameter_mm: hole.diameter,
    depth_mm: hole.depth,
    point_deg: degreeFromRadian(hole.point),
    lead: hole.lead && { of: hole.lead.stock.name, mass_g: hole.lead.mass },
    air: hole.air && { plug_mm: hole.air.plug },
    plug_g: settled?.hole.plug.mass ?? null,
    wall_mm: settled?.wall.thickness ?? null,
    wall_at_mm: settled?.wall.at ?? null,
  };
}

function cureJson({ kind, edit, after }: Cure): CureJson {
  return {
    kind,
    says: edit.says,
    sets: edit.sets,
    link: floatJson(after.link, after.speeds.link),
    assembled: floatJson(after.assembled, after.speeds.assembled),
    lead_g: after.lead,
    target_met: after.met,
    pin: after.pin && {
      shear_g: after.pin.force,
      moment_g_mm: after.pin.moment,
      curl_deg: after.pin.curl && degreeFromRadian(after.pin.curl.yaw),
      curled_heel_deg: after.pin.curl && degreeFromRadian(after.pin.curl.heel),
    },
  };
}

function forgivenessJson({ perMm, perGram, hung }: Forgiveness): ForgivenessJson {
  return {
    trim_deg_per_mm: degreeFromRadian(perMm),
    trim_deg_per_g_at_nose: degreeFromRadian(perGram[0]),
    trim_deg_per_g_at_tail: degreeFromRadian(perGram[1]),
    hung: hung.map(({ name, trim, levelX, levelMass }) => ({
      name,
      trim_deg: degreeFromRadian(trim),
      level_x_mm: levelX,
      level_mass_g: levelMass,
    })),
  };
}

export function whatIfJson({ name, state, netWet, trim, proud, firstFoot, change, lead }: WhatIfRow): WhatIfJson {
  return {
    name,
    state,
    net_wet_g: netWet,
    trim_deg: degreeFromRadian(trim),
    proud_mm: proud,
    first_foot_s: firstFoot,
    change: {
      net_wet_g: change.netWet,
      trim_deg: degreeFromRadian(change.trim),
      proud_mm: change.proud,
      first_foot_s: change.firstFoot,
    },
    lead: lead && { mass_g: lead.mass, change_g: lead.change },
  };
}
