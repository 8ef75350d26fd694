import { type Design, type DesignFile, type ShopList, valueAt } from '../../../sim/index.ts';
import type { MeasureKind } from '../../view/measures.ts';
import { type Field, field } from './field.ts';

/** Fields that stand folded away under a heading until they are asked for. */
export interface Fold {
  readonly title: string;
  readonly fields: readonly Field[];
}

/** A quarter ellipse fills this share of its box, and stands where no fullness is given. */
const ELLIPSE = Math.PI / 4;

interface Row {
  readonly label: string;
  readonly path: string;
  readonly usual?: number | undefined;
}

const KINDS: readonly (readonly [ending: string, kind: MeasureKind])[] = [
  ['_g_cm3', 'density'],
  ['_g_m2', 'spread'],
  ['_mm3', 'volume'],
  ['_mm_s', 'speed'],
  ['_percent', 'percent'],
  ['_deg', 'angle'],
  ['_mm', 'length'],
  ['_g', 'mass'],
];

/** The kind of number that a place holds: its key ends in the unit, or it is a ratio. */
function kindOf(path: string): MeasureKind {
  const key = path.split('.').findLast((part) => !/^\d+$/.test(part)) ?? '';
  return KINDS.find(([ending]) => key.endsWith(ending))?.[1] ?? 'ratio';
}

/** of: what the numbers belong to, for the history. */
function fold(
  file: DesignFile,
  design: Design | undefined,
  title: string,
  of: string,
  rows: readonly Row[],
): readonly Fold[] {
  const fields = rows.map(({ label, path, usual }) =>
    field(file, design, { label, kind: kindOf(path), path, usual, edited: `${label.toLowerCase()} of ${of}` }),
  );
  return fields.length === 0 ? [] : [{ title, fields }];
}

/** Rows of those keys that are there, or that are known to have a usual value. */
function rowsAt(file: DesignFile, place: string, labels: Readonly<Record<string, string>>): readonly Row[] {
  return Object.entries(labels)
    .filter(([key]) => valueAt(file, `${place}.${key}`) !== undefined)
    .map(([key, label]) => ({ label, path: `${place}.${key}` }));
}

function pairAt(file: DesignFile, path: string, low: string, high: string): readonly Row[] {
  if (valueAt(file, path) === undefined) return [];
  return [
    { label: low, path: `${path}.0` },
    { label: high, path: `${path}.1` },
  ];
}

const WIRE = { wire_mm: 'Wire', bore_mm: 'Inside of the loop', shank_mm: 'Shank' } as const;

/** The body's own named lengths, its outlines, ends and section. */
export function bodyFolds(file: DesignFile, design: Design | undefined): readonly Fold[] {
  const { body } = file;
  const worked = design?.body;
  const own = Object.keys(file.dimensions ?? {}).map((name): Row => {
    return { label: name.replace(/_[a-z0-9]+$/, '').replaceAll('_', ' '), path: `dimensions.${name}` };
  });
  const outlines = (['back', 'belly', 'plan'] as const).flatMap((outline): readonly Row[] => [
    { label: `${named(outline)}, nose`, path: `body.${outline}.nose_fullness`, usual: ELLIPSE },
    { label: `${named(outline)}, tail`, path: `body.${outline}.tail_fullness`, usual: ELLIPSE },
  ]);
  const { tail } = worked ?? {};
  return [
    ...fold(file, design, 'Named dimensions', 'the design', own),
    ...fold(file, design, 'Outlines: back over the datum, and how full', 'the body', [
      { label: 'Back over datum', path: 'body.back_mm', usual: worked?.back },
      ...outlines,
    ]),
    ...fold(file, design, 'Nose and tail', 'the body', [
      ...rowsAt(file, 'body.nose', { depth_mm: 'Nose depth', width_mm: 'Nose width', round_mm: 'Nose round' }),
      { label: 'Tail over datum', path: 'body.tail.z_mm', usual: tail?.z },
      { label: 'Tail depth', path: 'body.tail.depth_mm', usual: tail?.depth },
      { label: 'Tail width', path: 'body.tail.width_mm', usual: tail?.width },
      ...rowsAt(file, 'body.tail', { round_mm: 'Tail round' }),
    ]),
    ...fold(
      file,
      design,
      body.section.kind === 'oval' ? 'Section: exponents, 2 is an ellipse' : 'Section: rounded edges',
      'the section',
      body.section.kind === 'oval'
        ? [
            { label: 'Above', path: 'body.section.above' },
            { label: 'Below', path: 'body.section.below' },
            { label: 'Broadest at', path: 'body.section.breadth', usual: 0.5 },
          ]
        : [
            { label: 'Back edge', path: 'body.section.back_edge_mm' },
            { label: 'Belly edge', path: 'body.section.belly_edge_mm' },
          ],
    ),
    ...(body.readings ?? []).flatMap((_, i) =>
      fold(
        file,
        design,
        `Caliper reading ${i + 1}`,
        `reading ${i + 1}`,
        rowsAt(file, `body.readings.${i}`, {
          x_mm: 'From the nose',
          height_mm: 'Height',
          back_mm: 'Back',
          belly_mm: 'Belly',
          width_mm: 'Width',
        }),
      ),
    ),
  ];
}

/** The faces, the hinge and the slots of one joint. */
export function jointFolds(file: DesignFile, design: Design | undefined, joint: number): readonly Fold[] {
  const entry = file.joints[joint];
  if (entry === undefined) return [];
  const place = `joints.${joint}`;
  const of = `joint ${joint + 1}`;
  const { hinge } = entry;
  const eyes: readonly Row[] =
    hinge.kind === 'pin'
      ? hinge.eyes.map((eye, i) => ({ label: `Eye ${i + 1} height, ${eye.in}`, path: `${place}.hinge.eyes.${i}.z_mm` }))
      : hinge.z_mm.map((_, i) => ({ label: `Pair ${i + 1} height`, path: `${place}.hinge.z_mm.${i}` }));
  const pin: readonly Row[] =
    hinge.kind === 'pin'
      ? [
          { label: 'Pin diameter', path: `${place}.hinge.pin.diameter_mm` },
          ...(entry.faces.kind === 'knuckle'
            ? []
            : [{ label: 'Pin at', path: `${place}.hinge.pin.x_mm`, usual: pinAt(design, joint) }]),
          ...pairAt(file, `${place}.hinge.pin.z_mm`, 'Pin from', 'Pin to'),
          ...rowsAt(file, `${place}.hinge.pin`, { density_g_cm3: 'Pin density' }),
        ]
      : [];
  return [
    ...fold(file, design, 'Bevels', of, rowsAt(file, `${place}.faces`, { fore_deg: 'Fore face', aft_deg: 'Aft face' })),
    ...fold(file, design, hinge.kind === 'pin' ? 'Eyes and pin' : 'Linked eyes', of, [
      ...eyes,
      ...rowsAt(file, `${place}.hinge`, WIRE),
      ...pin,
    ]),
    ...(entry.slots ?? []).flatMap((slot, i) =>
      fold(file, design, `Slot ${i + 1}, in the ${slot.in} link`, `${of}, slot ${i + 1}`, [
        { label: 'Width', path: `${place}.slots.${i}.width_mm` },
        { label: 'Depth', path: `${place}.slots.${i}.depth_mm` },
        ...pairAt(file, `${place}.slots.${i}.z_mm`, 'From', 'To'),
      ]),
    ),
  ];
}

function pinAt(design: Design | undefined, joint: number): number | undefined {
  return design?.joints[joint]?.x;
}

/** Links weighed apart from the rest of the wood. */
export function woodFolds(file: DesignFile, design: Design | undefined): readonly Fold[] {
  const rows = file.links.flatMap(({ name }, i) => rowsAt(file, `links.${i}`, { density_g_cm3: named(name) }));
  return fold(file, design, 'Links of their own density', 'the wood', rows);
}

/** Every coat of a setup: its own where it has any. */
export function coatFolds(file: DesignFile, design: Design | undefined, setup: number): readonly Fold[] {
  const own = file.setups[setup]?.coats;
  const place = own === undefined ? 'coats' : `setups.${setup}.coats`;
  return (own ?? file.coats).flatMap(({ name }, i) =>
    fold(
      file,
      design,
      named(name),
      name,
      rowsAt(file, `${place}.${i}`, {
        thickness_mm: 'Thickness',
        density_g_cm3: 'Density, dry',
        soak_percent: 'Soaks in, of the wood',
        soak_g_m2: 'Soaks in',
      }),
    ),
  );
}

/** How a hook hangs, and the screw eye it hangs from. */
export function hookFolds(file: DesignFile, design: Design | undefined, setup: number, hook: number): readonly Fold[] {
  const hung = file.setups[setup]?.hung[hook];
  if (hung === undefined) return [];
  const place = `setups.${setup}.hung.${hook}`;
  const index = file.hangers.findIndex(({ name }) => name === hung.from);
  const hanger = file.hangers[index];
  return [
    ...fold(file, design, 'How it hangs', hung.name, [
      { label: 'Eye to lowest point', path: `${place}.hang_mm` },
      { label: 'Density', path: `${place}.density_g_cm3`, usual: STEEL },
    ]),
    ...(hanger === undefined ? [] : hangerFolds(file, design, index)),
  ];
}

/** Steel in g/cm³, which stands where no density is given. */
const STEEL = 7.85;

function hangerFolds(file: DesignFile, design: Design | undefined, index: number): readonly Fold[] {
  const hanger = file.hangers[index];
  if (hanger === undefined) return [];
  const place = `hangers.${index}`;
  const stand = [hanger.bore_mm, hanger.wire_mm].every((size) => typeof size === 'number')
    ? Number(hanger.bore_mm) / 2 + Number(hanger.wire_mm)
    : undefined;
  return fold(file, design, `Screw eye: ${hanger.name}`, hanger.name, [
    ...rowsAt(file, place, WIRE),
    { label: 'Loop off the skin', path: `${place}.stand_mm`, usual: stand },
    { label: 'Off the middle', path: `${place}.across_mm`, usual: 0 },
    ...rowsAt(file, place, { mass_g: 'Mass, weighed' }),
  ]);
}

/** Screw eyes that nothing hangs from in a setup, the line tie among them. */
export function bareHangerFolds(file: DesignFile, design: Design | undefined, setup: number): readonly Fold[] {
  const used = new Set(file.setups[setup]?.hung.map(({ from }) => from));
  return file.hangers.flatMap(({ name, on }, i) => {
    if (used.has(name)) return [];
    const along = on === 'belly' || on === 'back' ? { x_mm: 'From the nose' } : { z_mm: 'Over datum' };
    const [own] = hangerFolds(file, design, i);
    const [at] = fold(file, design, '', name, rowsAt(file, `hangers.${i}`, along));
    return own === undefined ? [] : [{ title: own.title, fields: [...(at?.fields ?? []), ...own.fields] }];
  });
}

/** A hole as it is drilled and filled. */
export function holeFolds(file: DesignFile, design: Design | undefined, setup: number, hole: number): readonly Fold[] {
  const drilled = file.setups[setup]?.holes[hole];
  if (drilled === undefined) return [];
  const place = `setups.${setup}.holes.${hole}`;
  return fold(file, design, 'Drilling and plug', drilled.name, [
    { label: 'From the nose', path: `${place}.x_mm` },
    { label: 'Off the middle', path: `${place}.across_mm`, usual: 0 },
    { label: 'Drill', path: `${place}.diameter_mm` },
    { label: 'Depth', path: `${place}.depth_mm` },
    { label: 'Point of the drill', path: `${place}.point_deg`, usual: POINT },
    ...rowsAt(file, `${place}.air`, { plug_mm: 'Plug over the air' }),
    { label: 'Plug density', path: `${place}.plug_g_cm3`, usual: EPOXY },
  ]);
}

/** Epoxy in g/cm³, which stands where no plug is given. */
const EPOXY = 1.15;

/** Fins, what is glued on, and limp tails. */
export function fittedFolds(file: DesignFile, design: Design | undefined): readonly Fold[] {
  return [
    ...(file.fins ?? []).flatMap(({ name, edge_mm: edge }, i) =>
      fold(file, design, `Fin: ${name}`, name, [
        ...rowsAt(file, `fins.${i}`, { thickness_mm: 'Thickness', tab_mm: 'Let in', density_g_cm3: 'Density' }),
        ...edge.flatMap((_, k) =>
          pairAt(file, `fins.${i}.edge_mm.${k}`, `Point ${k + 1}, along`, `Point ${k + 1}, up`),
        ),
      ]),
    ),
    ...(file.fittings ?? []).flatMap(({ name }, i) =>
      fold(
        file,
        design,
        named(name),
        name,
        rowsAt(file, `fittings.${i}`, {
          mass_g: 'Mass',
          x_mm: 'From the nose',
          y_mm: 'Off the middle',
          z_mm: 'Over datum',
          outside_mm3: 'Outside the skin',
        }),
      ),
    ),
    ...(file.tails ?? []).flatMap(({ name }, i) =>
      fold(file, design, named(name), name, [
        ...rowsAt(file, `tails.${i}`, {
          mass_g: 'Mass',
          density_g_cm3: 'Density',
          x_mm: 'Root from the nose',
          y_mm: 'Root off the middle',
          z_mm: 'Root over datum',
        }),
        ...pairAt(file, `tails.${i}.air_mm3`, 'Air, least', 'Air, most'),
      ]),
    ),
  ];
}

/** What the setup aims for. */
export function targetFields(file: DesignFile, design: Design | undefined, setup: number): readonly Field[] {
  const place = `setups.${setup}.target`;
  const aims = rowsAt(file, place, {
    proud_mm: 'Proud',
    waterline_z_mm: 'Waterline over datum',
    reserve_g: 'Reserve',
    reserve_percent: 'Reserve, of the weight',
    net_wet_g: 'Heavier than water',
    sink_mm_s: 'Sinking speed',
  });
  const own = file.links.flatMap(({ name }) =>
    rowsAt(file, `setups.${setup}.link_targets.${name}`, {
      proud_mm: `${named(name)} proud`,
      waterline_z_mm: `${named(name)}, waterline`,
      reserve_g: `${named(name)}, reserve`,
      reserve_percent: `${named(name)}, reserve`,
      net_wet_g: `${named(name)} heavier than water`,
      sink_mm_s: `${named(name)}, sinking speed`,
    }),
  );
  const trim: Row = { label: 'Trim, nose-down', path: `${place}.trim_deg`, usual: 0 };
  return fold(file, design, '', 'the target', [...aims, trim, ...own])[0]?.fields ?? [];
}

/** The wood that a plan of ballast leaves round lead. */
export function wallFields(file: DesignFile, design: Design | undefined): readonly Field[] {
  const wall: Row = { label: 'Wood round lead', path: 'shop.wall_mm', usual: WALL };
  return fold(file, design, '', 'the shop', [wall])[0]?.fields ?? [];
}

/** One thing of the shop by its name, as a fold of its numbers. */
export function shopFolds(file: DesignFile, design: Design | undefined, list: ShopList): readonly Fold[] {
  const { drills = [], lead = [] } = file.shop ?? {};
  const folds =
    list === 'drills'
      ? drills.map(({ name }, i) =>
          fold(file, design, name, `drill ${name}`, [
            { label: 'Diameter', path: `shop.drills.${i}.diameter_mm` },
            { label: 'Point of the drill', path: `shop.drills.${i}.point_deg`, usual: POINT },
          ]),
        )
      : lead.map(({ name }, i) =>
          fold(
            file,
            design,
            name,
            name,
            rowsAt(file, `shop.lead.${i}`, { diameter_mm: 'Diameter', density_g_cm3: 'Density' }),
          ),
        );
  return folds.flat();
}

/** In mm and degrees, where the shop says nothing. */
const WALL = 3;
const POINT = 118;

function named(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
