import { type Design, type DesignFile, valueAt, withValueAt } from '../../../sim/index.ts';
import type { Edit } from '../../document/commands.ts';
import type { MeasureKind } from '../../view/measures.ts';

/** One number of the design as the margin shows it. Values are in the file's units: mm, g, g/cm³, °C, g/kg. */
export interface Field {
  readonly label: string;
  readonly kind: MeasureKind;
  /** null: not known, because the expression or the default has not been worked out yet. */
  readonly value: number | null;
  /** Where a value comes from that is not written as a number. */
  readonly note: string | null;
  /** The places in the file whose issues belong beside this field; the first is where a typed number goes. */
  readonly paths: readonly string[];
  /** What an edit of it is called in the history. */
  readonly edited: string;
  edit(value: number): Edit;
}

interface Place {
  readonly label: string;
  readonly kind: MeasureKind;
  readonly path: string;
  readonly edited: string;
  /** The value as worked out, in the file's unit, for what is an expression or left out. */
  readonly worked: number | undefined;
  /** Another place whose issues belong here too. */
  readonly within?: string;
  readonly edit?: (value: number) => Edit;
}

/** A place of the design file as a field. An expression shows what it came to; a typed number takes its place. */
function field(file: DesignFile, place: Place): Field {
  const written = valueAt(file, place.path);
  const path = targetOf(file, place.path);
  return {
    label: place.label,
    kind: place.kind,
    value: typeof written === 'number' ? written : (place.worked ?? null),
    note: noteFor(file, written, path),
    paths: [path, ...(path === place.path ? [] : [place.path]), ...(place.within === undefined ? [] : [place.within])],
    edited: place.edited,
    edit: place.edit ?? ((value) => (design) => withValueAt(design, path, value)),
  };
}

/**
 * Where a number typed at this place goes. A place that only names one of the design's own dimensions hands it on to
 * the dimension, so that all that was drawn from it moves along.
 */
function targetOf(file: DesignFile, path: string): string {
  const written = valueAt(file, path);
  return typeof written === 'string' && file.dimensions !== undefined && Object.hasOwn(file.dimensions, written.trim())
    ? `dimensions.${written.trim()}`
    : path;
}

function noteFor(file: DesignFile, written: unknown, path: string): string | null {
  if (written === undefined) return 'not given: its usual place';
  if (typeof written !== 'string') return null;
  if (!path.startsWith('dimensions.')) return `from ${written}`;
  const dimension = valueAt(file, path);
  return typeof dimension === 'string' ? `${written}, from ${dimension}` : written;
}

/** Length, height, width, and where the outlines are at their greatest: two places where they run straight. */
export function bodyFields(file: DesignFile, design: Design | undefined): readonly Field[] {
  const body = design?.body;
  const size = (label: string, key: 'length' | 'height' | 'width') =>
    field(file, { label, kind: 'length', path: `body.${key}_mm`, edited: key, worked: body?.[key] });
  const station = (word: string, key: 'deepest' | 'widest') => {
    const path = `body.${key}_x_mm`;
    const place = { kind: 'length', edited: `${key} station` } as const;
    if (!Array.isArray(valueAt(file, path))) {
      return [field(file, { ...place, label: `${word} at`, path, worked: body?.[key][0] })];
    }
    return [
      field(file, { ...place, label: `${word} from`, path: `${path}.0`, within: path, worked: body?.[key][0] }),
      field(file, { ...place, label: `${word} to`, path: `${path}.1`, worked: body?.[key][1] }),
    ];
  };
  return [
    size('Length', 'length'),
    size('Height', 'height'),
    size('Width', 'width'),
    ...station('Deepest', 'deepest'),
    ...station('Widest', 'widest'),
  ];
}

/** The place and the gap of one joint, and the radius of its knuckle if it has one. */
export function jointFields(file: DesignFile, design: Design | undefined, joint: number): readonly Field[] {
  const worked = design?.joints[joint];
  const path = `joints.${joint}.x_mm`;
  const at = field(file, {
    label: 'Place',
    kind: 'length',
    path,
    edited: `place of joint ${joint + 1}`,
    worked: worked?.x,
  });
  return [
    { ...at, edit: (x) => moveJoint(joint, at.paths[0] ?? path, x - (at.value ?? x), x) },
    field(file, {
      label: 'Gap',
      kind: 'length',
      path: `joints.${joint}.gap_mm`,
      edited: `gap of joint ${joint + 1}`,
      worked: worked?.gap,
    }),
    ...(file.joints[joint]?.faces.kind === 'knuckle' ? [knuckleField(file, worked?.faces, joint)] : []),
  ];
}

function knuckleField(file: DesignFile, worked: Design['joints'][number]['faces'] | undefined, joint: number): Field {
  return field(file, {
    label: 'Knuckle radius',
    kind: 'length',
    path: `joints.${joint}.faces.radius_mm`,
    edited: `knuckle of joint ${joint + 1}`,
    worked: worked?.kind === 'knuckle' ? worked.radius : undefined,
  });
}

/** A pin whose place is a plain number goes along with its joint; one that is drawn from it follows by itself. */
function moveJoint(joint: number, path: string, by: number, x: number): Edit {
  return (file) => {
    const moved = withValueAt(file, path, x);
    const pinPath = `joints.${joint}.hinge.pin.x_mm`;
    const pin = valueAt(moved, pinPath);
    return typeof pin === 'number' ? withValueAt(moved, pinPath, Number((pin + by).toPrecision(12))) : moved;
  };
}

export function woodField(file: DesignFile, design: Design | undefined): Field {
  return field(file, {
    label: 'Density',
    kind: 'density',
    path: 'wood.density_g_cm3',
    edited: 'wood density',
    worked: inFileUnit(design?.wood.density),
  });
}

/** The mass of what hangs from an eye, and the place of the hanger that it hangs from. */
export function hookFields(
  file: DesignFile,
  design: Design | undefined,
  setup: number,
  hook: number,
): readonly Field[] {
  const hung = file.setups[setup]?.hung[hook];
  if (hung === undefined) return [];
  const mass = field(file, {
    label: 'Mass',
    kind: 'mass',
    path: `setups.${setup}.hung.${hook}.mass_g`,
    edited: `mass of ${hung.name}`,
    worked: design?.setups[setup]?.hung[hook]?.mass,
  });
  const index = file.hangers.findIndex((hanger) => hanger.name === hung.from);
  const hanger = file.hangers[index];
  if (hanger === undefined) return [mass];
  const alongBody = hanger.on === 'belly' || hanger.on === 'back';
  return [
    mass,
    field(file, {
      label: alongBody ? 'Hanger at' : 'Hanger above datum',
      kind: 'length',
      path: `hangers.${index}.${alongBody ? 'x_mm' : 'z_mm'}`,
      edited: `place of hanger ${hanger.name}`,
      worked: design?.hangers[index]?.at,
    }),
  ];
}

/** The mass of the lead in a hole; null where there is none. */
export function slugField(file: DesignFile, design: Design | undefined, setup: number, hole: number): Field | null {
  const drilled = file.setups[setup]?.holes[hole];
  if (drilled?.lead === undefined) return null;
  return field(file, {
    label: 'Lead',
    kind: 'mass',
    path: `setups.${setup}.holes.${hole}.lead.mass_g`,
    edited: `lead in ${drilled.name}`,
    worked: design?.setups[setup]?.holes[hole]?.lead?.mass,
  });
}

/** Temperature and salinity, or the density as measured. */
export function waterFields(file: DesignFile, design: Design | undefined, setup: number): readonly Field[] {
  const water = file.setups[setup]?.water;
  const worked = design?.setups[setup]?.water;
  if (water === undefined) return [];
  const path = `setups.${setup}.water`;
  if ('measured_g_cm3' in water) {
    return [
      field(file, {
        label: 'Density',
        kind: 'density',
        path: `${path}.measured_g_cm3`,
        edited: 'water density',
        worked: worked?.kind === 'measured' ? inFileUnit(worked.density) : undefined,
      }),
    ];
  }
  const natural = worked?.kind === 'natural' ? worked : undefined;
  return [
    field(file, {
      label: 'Temperature',
      kind: 'temperature',
      path: `${path}.temperature_c`,
      edited: 'water temperature',
      worked: natural?.temperature,
    }),
    field(file, {
      label: 'Salinity',
      kind: 'salinity',
      path: `${path}.salinity_g_kg`,
      edited: 'salinity',
      worked: natural?.salinity,
    }),
  ];
}

/** g/cm³ from g/mm³, free of the noise of the factor. */
function inFileUnit(density: number | undefined): number | undefined {
  return density === undefined ? undefined : Number((density * 1000).toPrecision(12));
}
