import * as z from 'zod';
import { EXPRESSION_LIMITS } from './expression-limits.ts';
import { FORMAT } from './file.ts';
import { given, quoted } from './given.ts';
import { NAME_RULE } from './name-rule.ts';
import { SHOP_LIMITS } from './shop-limits.ts';

/*
 * The shape of version 1 of the design file: which fields there are, which may be left out, what kind of value each
 * takes. Ranges, names and expressions are later phases. Messages here replace zod's where a maker needs more than
 * "wrong type"; the rest are in schema-issues.ts.
 */

/** The units that an own dimension may be in: the ends of its name. */
const DIMENSION_NAME = /^[a-z][a-z0-9_]*_(mm|g|deg|g_cm3|percent)$/;

/** One name may need another; this bounds how far such a chain goes. */
const MOST_DIMENSIONS = 100;

/** Nine links with three holes each, and some for what is done already. */
const MOST_HOLES = 36;

/** An object of exactly these fields; another field is refused with the list of those there are. */
function fields<Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape, z.core.$strict> {
  const allowed = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' ? `unknown field; fields allowed here: ${allowed}` : undefined,
  });
}

/** The text for a union that is told apart by which fields it has. */
function oneOf(what: string): { error: z.core.$ZodErrorMap } {
  return { error: (issue) => `${what} is wanted, got ${given(issue.input)}` };
}

function numberWanted(value: unknown): string {
  if (typeof value === 'number') return `a number that a computer can hold is wanted, got ${value}`;
  if (typeof value === 'string' && value.length > EXPRESSION_LIMITS.characters) {
    return `an expression has at most ${EXPRESSION_LIMITS.characters} characters, got ${value.length}`;
  }
  return `a number or an expression in quotes is wanted, got ${given(value)}`;
}

const inNumbers = { error: (issue: { readonly input?: unknown }) => numberWanted(issue.input) };
const expression = z.string().min(1, inNumbers).max(EXPRESSION_LIMITS.characters, inNumbers);
const num = z.union([z.number(), expression], inNumbers);
const pair = z.tuple([num, num], {
  error: (issue) => `a list of two numbers is wanted, got ${given(issue.input)}`,
});
const station = z.union([num, pair], {
  error: (issue) =>
    typeof issue.input === 'string'
      ? numberWanted(issue.input)
      : `a number, an expression in quotes, or [from, to] is wanted, got ${given(issue.input)}`,
});
const optional = z.exactOptional;
const some = optional(num);

const name = z
  .string()
  .max(NAME_RULE.characters)
  .regex(NAME_RULE.pattern, {
    error: (issue) => `a name on one line, with something to see in it, is wanted, got ${given(issue.input)}`,
  });
const note = z
  .string()
  .max(4000)
  .regex(/^(?:[^\p{Cc}\p{Cs}]|[\t\r\n])*$/u, {
    error: (issue) => `text without control characters is wanted, got ${given(issue.input)}`,
  });
const side = z.enum(['fore', 'aft']);
const wire = { wire_mm: num, bore_mm: num, shank_mm: num };

const fullness = fields({ nose_fullness: some, tail_fullness: some });

const section = z.discriminatedUnion('kind', [
  fields({ kind: z.literal('oval'), above: num, below: num, breadth: some }),
  fields({ kind: z.literal('board'), back_edge_mm: num, belly_edge_mm: num }),
]);

const body = fields({
  length_mm: num,
  height_mm: num,
  width_mm: num,
  back_mm: some,
  deepest_x_mm: optional(station),
  widest_x_mm: optional(station),
  back: optional(fullness),
  belly: optional(fullness),
  plan: optional(fullness),
  nose: optional(fields({ depth_mm: num, width_mm: num, round_mm: some })),
  tail: optional(fields({ z_mm: some, depth_mm: some, width_mm: some, round_mm: some })),
  section,
  readings: optional(
    z.array(fields({ x_mm: num, height_mm: some, back_mm: some, belly_mm: some, width_mm: some })).max(40),
  ),
});

const joint = fields({
  x_mm: num,
  gap_mm: num,
  faces: z.discriminatedUnion('kind', [
    fields({ kind: z.literal('flat') }),
    fields({ kind: z.literal('bevel'), fore_deg: num, aft_deg: num }),
    fields({ kind: z.literal('knuckle'), on: side, radius_mm: num }),
  ]),
  hinge: z.discriminatedUnion('kind', [
    fields({
      kind: z.literal('pin'),
      eyes: z
        .array(fields({ in: side, z_mm: num }))
        .min(1)
        .max(6),
      ...wire,
      pin: fields({ diameter_mm: num, z_mm: pair, x_mm: some, held_by: side, density_g_cm3: some }),
    }),
    fields({ kind: z.literal('linked-eyes'), z_mm: z.array(num).min(1).max(2), ...wire }),
  ]),
  slots: optional(z.array(fields({ in: side, width_mm: num, depth_mm: num, z_mm: pair })).max(6)),
});

const coat = z.union(
  [
    fields({ name, thickness_mm: num, density_g_cm3: num, covers: optional(z.enum(['all', 'skin'])) }),
    fields({ name, soak_percent: num }),
    fields({ name, soak_g_m2: num }),
  ],
  oneOf('a name with thickness_mm and density_g_cm3, or with soak_percent, or with soak_g_m2'),
);

const hanger = fields({
  name,
  on: z.enum(['belly', 'back', 'nose', 'tail']),
  x_mm: some,
  z_mm: some,
  across_mm: some,
  ...wire,
  stand_mm: some,
  mass_g: some,
});

const fitting = fields({
  name,
  x_mm: num,
  y_mm: some,
  z_mm: num,
  mass_g: num,
  outside_mm3: some,
  pair: optional(z.boolean()),
});

const fin = fields({
  name,
  on: z.enum(['back', 'belly', 'tail']),
  edge_mm: z.array(pair).min(2).max(40),
  thickness_mm: num,
  tab_mm: some,
  density_g_cm3: num,
});

const tail = fields({
  name,
  x_mm: num,
  y_mm: some,
  z_mm: num,
  mass_g: num,
  density_g_cm3: num,
  air_mm3: optional(pair),
});

const shop = fields({
  kerf_mm: some,
  wall_mm: some,
  drills: optional(z.array(fields({ name, diameter_mm: num, point_deg: some })).max(SHOP_LIMITS.drills)),
  lead: optional(
    z
      .array(fields({ name, kind: z.enum(['slug', 'filled']), diameter_mm: some, density_g_cm3: num }))
      .max(SHOP_LIMITS.lead),
  ),
});

const water = z.union(
  [fields({ temperature_c: num, salinity_g_kg: num }), fields({ measured_g_cm3: num })],
  oneOf('temperature_c with salinity_g_kg, or measured_g_cm3,'),
);

const trim = { trim_deg: some };
const target = z.union(
  [
    fields({ proud_mm: num, ...trim }),
    fields({ waterline_z_mm: num, ...trim }),
    fields({ reserve_g: num, ...trim }),
    fields({ reserve_percent: num, ...trim }),
    fields({ net_wet_g: num, ...trim }),
    fields({ sink_mm_s: num, ...trim }),
  ],
  oneOf('exactly one of proud_mm, waterline_z_mm, reserve_g, reserve_percent, net_wet_g, sink_mm_s, beside trim_deg,'),
);

const hung = fields({ name, from: name, mass_g: num, hang_mm: num, density_g_cm3: some });

const hole = fields({
  name,
  from: z.enum(['belly', 'back', 'port', 'starboard']),
  x_mm: num,
  across_mm: some,
  diameter_mm: num,
  depth_mm: num,
  point_deg: some,
  lead: optional(fields({ of: name, mass_g: num })),
  air: optional(fields({ plug_mm: num })),
  plug_g_cm3: some,
  done: optional(z.boolean()),
});

const setup = fields({
  name,
  notes: optional(note),
  water,
  target,
  link_targets: optional(z.record(name, target)),
  hung: z.array(hung).max(20),
  holes: z.array(hole).max(MOST_HOLES),
  coats: optional(z.array(coat).max(12)),
  drop: optional(fields({ distance_mm: num, time_s: num, net_wet_g: some })),
});

const dimensionName = z.string().regex(DIMENSION_NAME, {
  error: (issue) =>
    `a dimension's name is small letters, digits and _, and ends in _mm, _g, _deg, _g_cm3 or _percent, got ${quoted(String(issue.input))}`,
});

const dimensions = z.record(dimensionName, num).refine((names) => Object.keys(names).length <= MOST_DIMENSIONS, {
  error: (issue) => `at most ${MOST_DIMENSIONS} dimensions are allowed, got ${Object.keys(Object(issue.input)).length}`,
});

/** The whole file. Its output has the fields in the order written here. */
export const designFileSchema = fields({
  format: z.literal(FORMAT),
  version: z.literal(1),
  name,
  notes: optional(note),
  dimensions: optional(dimensions),
  body,
  links: z
    .array(fields({ name, density_g_cm3: some }))
    .min(1)
    .max(9),
  joints: z.array(joint).max(8),
  wood: fields({ species: optional(name), density_g_cm3: num }),
  coats: z.array(coat).max(12),
  hangers: z.array(hanger).max(20),
  fittings: optional(z.array(fitting).max(40)),
  fins: optional(z.array(fin).max(8)),
  tails: optional(z.array(tail).max(8)),
  shop: optional(shop),
  setups: z.array(setup).min(1).max(12),
});
