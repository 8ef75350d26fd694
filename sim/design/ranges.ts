import type { Issue } from '../flow/outcome.ts';
import { WATER_RANGE } from '../tables/waters.ts';
import { withUnit } from './number-keys.ts';
import type { WorkedFile } from './work-out.ts';

/** Lowest and highest value of a field, in the unit its key names. above: the lowest itself is not allowed. */
export interface Range {
  readonly low: number;
  readonly high: number;
  readonly above?: true;
}

/*
 * Ranges chosen by us: wide enough for any bait a maker carves by hand, narrow enough that a slip of the decimal
 * point or of the unit shows at once.
 */
const POSITION: Range = { low: -1000, high: 1000 };
const BREADTH: Range = { low: 4, high: 200 };
const DIAMETER: Range = { low: 0.3, high: 40 };
const DENSITY: Range = { low: 0.05, high: 25 };
const EXPONENT: Range = { low: 1.3, high: 8 };
const ANGLE: Range = { low: 0, high: 60 };
const MASS: Range = { low: 0, high: 500 };
const SHANK: Range = { low: 0, high: 100, above: true };
const DEPTH: Range = { low: 0, high: 200, above: true };
const OUTSIDE_VOLUME: Range = { low: 0, high: 100_000 };
const EDGE: Range = { low: 0, high: 100 };
/** Leaner than this, an outline can only run into an end that has a size of its own. */
export const LEANEST_TO_A_TIP = 0.73;
/**
 * Whatever the other quarter does, an outline within this range is smooth and falls all the way to its end. To a plain
 * tip it must not be leaner than `LEANEST_TO_A_TIP`, which is a matter of proportion.
 */
const FULLNESS: Range = { low: 0.5, high: 0.87 };
/** Length over which a blunt end is rounded. */
const ROUND: Range = { low: 0.1, high: 200 };
/** What sinks weighs something in the water. */
const SINKING_MASS: Range = { low: 0, high: 500, above: true };
/** A target may ask for less than nothing: a bait that sinks has a negative reserve. */
const SIGNED_MASS: Range = { low: -500, high: 500 };

const COATS: readonly (readonly [string, Range])[] = [
  ['thickness_mm', { low: 0, high: 3 }],
  ['density_g_cm3', DENSITY],
  ['soak_percent', { low: 0, high: 100 }],
  ['soak_g_m2', { low: 0, high: 500 }],
];

const TARGETS: readonly (readonly [string, Range])[] = [
  ['proud_mm', { low: 0, high: 200 }],
  ['waterline_z_mm', { low: -200, high: 200 }],
  ['reserve_g', SIGNED_MASS],
  ['reserve_percent', { low: -100, high: 1000 }],
  ['net_wet_g', SIGNED_MASS],
  ['sink_mm_s', { low: 0, high: 1000, above: true }],
  ['trim_deg', { low: -60, high: 60 }],
];

/** Range of every number in the file by its place; `*` stands for a place in a list or a name. */
const RANGES: ReadonlyMap<string, Range> = new Map([
  ['body.length_mm', { low: 30, high: 600 }],
  ['body.height_mm', BREADTH],
  ['body.width_mm', BREADTH],
  ['body.back_mm', DEPTH],
  ['body.deepest_x_mm', POSITION],
  ['body.deepest_x_mm.*', POSITION],
  ['body.widest_x_mm', POSITION],
  ['body.widest_x_mm.*', POSITION],
  ...['back', 'belly', 'plan'].flatMap((outline): [string, Range][] => [
    [`body.${outline}.nose_fullness`, FULLNESS],
    [`body.${outline}.tail_fullness`, FULLNESS],
  ]),
  ['body.nose.depth_mm', EDGE],
  ['body.nose.width_mm', EDGE],
  ['body.nose.round_mm', ROUND],
  ['body.tail.z_mm', POSITION],
  ['body.tail.depth_mm', EDGE],
  ['body.tail.width_mm', EDGE],
  ['body.tail.round_mm', ROUND],
  ['body.section.above', EXPONENT],
  ['body.section.below', EXPONENT],
  ['body.section.breadth', { low: 0.2, high: 0.8 }],
  ['body.section.back_edge_mm', EDGE],
  ['body.section.belly_edge_mm', EDGE],
  ['body.readings.*.x_mm', POSITION],
  ['body.readings.*.height_mm', DEPTH],
  ['body.readings.*.back_mm', DEPTH],
  ['body.readings.*.belly_mm', DEPTH],
  ['body.readings.*.width_mm', DEPTH],
  ['links.*.density_g_cm3', DENSITY],
  ['joints.*.x_mm', POSITION],
  ['joints.*.gap_mm', { low: 0.2, high: 10 }],
  ['joints.*.faces.fore_deg', ANGLE],
  ['joints.*.faces.aft_deg', ANGLE],
  ['joints.*.faces.radius_mm', DEPTH],
  ['joints.*.hinge.eyes.*.z_mm', POSITION],
  ['joints.*.hinge.z_mm.*', POSITION],
  ['joints.*.hinge.wire_mm', DIAMETER],
  ['joints.*.hinge.bore_mm', DIAMETER],
  ['joints.*.hinge.shank_mm', SHANK],
  ['joints.*.hinge.pin.diameter_mm', DIAMETER],
  ['joints.*.hinge.pin.z_mm.*', POSITION],
  ['joints.*.hinge.pin.x_mm', POSITION],
  ['joints.*.hinge.pin.density_g_cm3', DENSITY],
  ['joints.*.slots.*.width_mm', DEPTH],
  ['joints.*.slots.*.depth_mm', DEPTH],
  ['joints.*.slots.*.z_mm.*', POSITION],
  ['wood.density_g_cm3', DENSITY],
  ...COATS.map(([key, range]): [string, Range] => [`coats.*.${key}`, range]),
  ['hangers.*.x_mm', POSITION],
  ['hangers.*.z_mm', POSITION],
  ['hangers.*.across_mm', POSITION],
  ['hangers.*.wire_mm', DIAMETER],
  ['hangers.*.bore_mm', DIAMETER],
  ['hangers.*.shank_mm', SHANK],
  ['hangers.*.stand_mm', { low: 0, high: 100 }],
  ['hangers.*.mass_g', MASS],
  ['fittings.*.x_mm', POSITION],
  ['fittings.*.y_mm', POSITION],
  ['fittings.*.z_mm', POSITION],
  ['fittings.*.mass_g', MASS],
  ['fittings.*.outside_mm3', OUTSIDE_VOLUME],
  ['fins.*.edge_mm.*.*', POSITION],
  ['fins.*.thickness_mm', { low: 0.1, high: 20 }],
  ['fins.*.tab_mm', EDGE],
  ['fins.*.density_g_cm3', DENSITY],
  ['tails.*.x_mm', POSITION],
  ['tails.*.y_mm', POSITION],
  ['tails.*.z_mm', POSITION],
  ['tails.*.mass_g', MASS],
  ['tails.*.density_g_cm3', DENSITY],
  ['tails.*.air_mm3.*', OUTSIDE_VOLUME],
  ['shop.kerf_mm', { low: 0, high: 10 }],
  ['shop.wall_mm', { low: 0.5, high: 20 }],
  ['shop.drills.*.diameter_mm', DIAMETER],
  ['shop.drills.*.point_deg', { low: 60, high: 180 }],
  ['shop.lead.*.diameter_mm', DIAMETER],
  ['shop.lead.*.density_g_cm3', DENSITY],
  ['setups.*.water.temperature_c', between(WATER_RANGE.temperature)],
  ['setups.*.water.salinity_g_kg', between(WATER_RANGE.salinity)],
  ['setups.*.water.measured_g_cm3', { low: 0.9, high: 1.3 }],
  ...TARGETS.flatMap(([key, range]): [string, Range][] => [
    [`setups.*.target.${key}`, range],
    [`setups.*.link_targets.*.${key}`, range],
  ]),
  ['setups.*.hung.*.mass_g', MASS],
  ['setups.*.hung.*.hang_mm', { low: 1, high: 200 }],
  ['setups.*.hung.*.density_g_cm3', DENSITY],
  ['setups.*.holes.*.x_mm', POSITION],
  ['setups.*.holes.*.across_mm', POSITION],
  ['setups.*.holes.*.diameter_mm', DIAMETER],
  ['setups.*.holes.*.depth_mm', DEPTH],
  ['setups.*.holes.*.point_deg', { low: 60, high: 180 }],
  ['setups.*.holes.*.lead.mass_g', MASS],
  ['setups.*.holes.*.air.plug_mm', DEPTH],
  ['setups.*.holes.*.plug_g_cm3', DENSITY],
  ...COATS.map(([key, range]): [string, Range] => [`setups.*.coats.*.${key}`, range]),
  ['setups.*.drop.distance_mm', { low: 50, high: 20_000 }],
  ['setups.*.drop.time_s', { low: 0.1, high: 600 }],
  ['setups.*.drop.net_wet_g', SINKING_MASS],
]);

/** The range of the number at this place of the file; null for the version and the maker's own dimensions. */
export function rangeAt(path: readonly (string | number)[]): Range | null {
  const [first, , third] = path;
  const place = path.map((key, index) =>
    typeof key === 'number' || (first === 'setups' && third === 'link_targets' && index === 3) ? '*' : key,
  );
  return RANGES.get(place.join('.')) ?? null;
}

/** Every number of the file that lies outside its range. */
export function rangeIssues(file: WorkedFile): readonly Issue[] {
  const issues: Issue[] = [];
  const walk = (part: unknown, path: readonly (string | number)[]): void => {
    if (typeof part === 'number') {
      const range = rangeAt(path);
      const key = path.findLast((step) => typeof step === 'string') ?? '';
      if (range !== null && !isWithin(part, range)) issues.push(outside(part, range, key, path.join('.')));
    } else if (Array.isArray(part)) {
      part.forEach((child, index) => {
        walk(child, [...path, index]);
      });
    } else if (typeof part === 'object' && part !== null) {
      for (const [key, child] of Object.entries(part)) walk(child, [...path, key]);
    }
  };
  walk(file, []);
  return issues;
}

function between([low, high]: readonly [number, number]): Range {
  return { low, high };
}

/** Whether a number lies in a range; NaN lies in none. */
export function isWithin(value: number, { low, high, above }: Range): boolean {
  return (above === true ? value > low : value >= low) && value <= high;
}

/** A number outside its range, with both ends named in the unit of the key. */
export function outside(value: number, { low, high, above }: Range, key: string, path: string): Issue {
  const from = above === true ? `more than ${withUnit(low, key)}, up to` : `${withUnit(low, key)} to`;
  return {
    code: 'design/out-of-range',
    path,
    message: `${withUnit(value, key)} is outside what is allowed: ${from} ${withUnit(high, key)}`,
  };
}
