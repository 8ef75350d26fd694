import type { Aim } from '../ballast/target.ts';
import type { Float } from '../hydro/float.ts';
import type { LedgerLine } from '../mass/ledger.ts';
import type { PlacedHung, PlacedPin } from '../mass/placed.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import { degreeFromRadian, percentFromShare } from '../units/convert.ts';
import type { Warning } from '../warnings.ts';
import type { CheckedBait, CheckedLink } from './checked-bait.ts';

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
    readonly other_attitudes: null;
    readonly links: readonly { readonly up: Vec3; readonly offset_mm: number | null }[];
    readonly pins: readonly PinJson[];
    readonly total_fold_deg: null;
  };
  readonly warnings: readonly Warning[];
}

/** A link alone. */
export interface LinkJson {
  readonly name: string;
  readonly span_mm: readonly [number, number];
  /** Wood, coats, hardware, ballast: all that cannot swing. */
  readonly fixed: { readonly mass_g: number; readonly cg_mm: Vec3 };
  /** Fixed parts that displace water outside the solid. */
  readonly outside: readonly { readonly name: string; readonly volume_mm3: number; readonly at_mm: Vec3 }[];
  readonly hung: readonly HungJson[];
  readonly ledger: readonly LineJson[];
  readonly target: TargetJson | null;
  readonly float: FloatJson;
  readonly other_attitudes: null;
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

export interface FloatJson {
  readonly state: Float['state'];
  readonly up: Vec3;
  readonly offset_mm: number | null;
  readonly trim_deg: number;
  readonly heel_deg: number;
  /** Solid less flooded slots plus outside parts, what is wet of them; hung items apart. */
  readonly displaced_mm3: number;
  readonly cb_mm: Vec3;
  readonly reserve_percent: number;
  readonly gm_mm: number;
  readonly gm_long_mm: number;
  readonly gm_min_mm: number;
  readonly proud_mm: number | null;
  readonly net_wet_g: number;
  readonly sink_mm_s: null;
  readonly neutral: boolean;
  readonly tender: boolean;
  readonly hump_g_mm: null;
}

export interface PinJson {
  readonly x_mm: number;
  readonly shear_g: null;
  readonly moment_g_mm: null;
  readonly twist_g_mm: null;
  readonly slop_deg: null;
  readonly reach_deg: null;
}

/** All answers about a bait as plain JSON values, keys in the order that readers know. */
export function checkJson(bait: CheckedBait): CheckJson {
  const { density, temperature, salinity } = bait.water;
  return {
    design: bait.design.name,
    setup: bait.setup.name,
    water: { density_g_mm3: density, temperature_c: temperature, salinity_g_kg: salinity },
    links: bait.links.map((link, index) => linkJson(link, bait.hardware.hung, bait.target.links[index])),
    assembled: {
      float: floatJson(bait.assembled),
      other_attitudes: null,
      // held straight, every link stands as the whole bait does
      links: bait.links.map(() => ({ up: bait.assembled.up, offset_mm: bait.assembled.offset })),
      pins: bait.hardware.pins.toSorted((a, b) => a.joint - b.joint).map(pinJson),
      total_fold_deg: null,
    },
    warnings: bait.warnings.map(({ code, where, text }) => ({ code, where, text })),
  };
}

function linkJson(link: CheckedLink, hung: readonly PlacedHung[], aim: Aim | undefined): LinkJson {
  const { spec, ledger } = link;
  return {
    name: spec.name,
    span_mm: spec.span,
    fixed: { mass_g: ledger.mass, cg_mm: ledger.centre },
    outside: ledger.lines
      .filter((line) => line.outsideVolume > 0)
      .map((line) => ({ name: line.name, volume_mm3: line.outsideVolume, at_mm: line.outsideAt })),
    hung: hung.filter((item) => item.link === spec.index).map(hungJson),
    ledger: ledger.lines.map(lineJson),
    target: aim === undefined ? null : { up: aim.up, offset_mm: aim.offset, net_wet_g: aim.netWet },
    float: floatJson(link.float),
    other_attitudes: null,
  };
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

function floatJson(float: Float): FloatJson {
  return {
    state: float.state,
    up: float.up,
    offset_mm: float.offset,
    trim_deg: degreeFromRadian(float.trim),
    heel_deg: degreeFromRadian(float.heel),
    displaced_mm3: float.displaced,
    cb_mm: float.buoyancyCentre,
    reserve_percent: percentFromShare(float.reserveShare),
    gm_mm: float.gm,
    gm_long_mm: float.gmLong,
    gm_min_mm: float.gmMin,
    proud_mm: float.proud,
    net_wet_g: float.netWet,
    sink_mm_s: null,
    neutral: float.neutral,
    tender: float.tender,
    hump_g_mm: null,
  };
}

function pinJson(pin: PlacedPin): PinJson {
  return { x_mm: pin.x, shear_g: null, moment_g_mm: null, twist_g_mm: null, slop_deg: null, reach_deg: null };
}
