import { type Design, type DesignFile, valueAt, withValueAt } from '../../../sim/index.ts';
import type { Edit } from '../../document/commands.ts';
import { type Field, field } from './field.ts';

/** Length, height, width, and where the outlines are at their greatest: two places where they run straight. */
export function bodyFields(file: DesignFile, design: Design | undefined): readonly Field[] {
  const body = design?.body;
  const size = (label: string, key: 'length' | 'height' | 'width') =>
    field(file, design, { label, kind: 'length', path: `body.${key}_mm`, edited: key });
  const station = (word: string, key: 'deepest' | 'widest') => {
    const path = `body.${key}_x_mm`;
    const place = { kind: 'length', edited: `${key} station` } as const;
    if (!Array.isArray(valueAt(file, path))) {
      return [field(file, design, { ...place, label: `${word} at`, path, usual: body?.[key][0] })];
    }
    return [
      field(file, design, { ...place, label: `${word} from`, path: `${path}.0`, within: path }),
      field(file, design, { ...place, label: `${word} to`, path: `${path}.1` }),
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
  const path = `joints.${joint}.x_mm`;
  const at = field(file, design, {
    label: 'Place',
    kind: 'length',
    path,
    edited: `place of joint ${joint + 1}`,
  });
  return [
    { ...at, edit: (x) => moveJoint(joint, at.paths[0] ?? path, x - (at.value ?? x), x) },
    field(file, design, {
      label: 'Gap',
      kind: 'length',
      path: `joints.${joint}.gap_mm`,
      edited: `gap of joint ${joint + 1}`,
    }),
    ...(file.joints[joint]?.faces.kind === 'knuckle' ? [knuckleField(file, design, joint)] : []),
  ];
}

function knuckleField(file: DesignFile, design: Design | undefined, joint: number): Field {
  return field(file, design, {
    label: 'Knuckle radius',
    kind: 'length',
    path: `joints.${joint}.faces.radius_mm`,
    edited: `knuckle of joint ${joint + 1}`,
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
  return field(file, design, {
    label: 'Density',
    kind: 'density',
    path: 'wood.density_g_cm3',
    edited: 'wood density',
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
  const mass = field(file, design, {
    label: 'Mass',
    kind: 'mass',
    path: `setups.${setup}.hung.${hook}.mass_g`,
    edited: `mass of ${hung.name}`,
  });
  const index = file.hangers.findIndex((hanger) => hanger.name === hung.from);
  const hanger = file.hangers[index];
  if (hanger === undefined) return [mass];
  const alongBody = hanger.on === 'belly' || hanger.on === 'back';
  return [
    mass,
    field(file, design, {
      label: alongBody ? 'Hanger at' : 'Hanger above datum',
      kind: 'length',
      path: `hangers.${index}.${alongBody ? 'x_mm' : 'z_mm'}`,
      edited: `place of hanger ${hanger.name}`,
    }),
  ];
}

/** The mass of the lead in a hole; null where there is none. */
export function slugField(file: DesignFile, design: Design | undefined, setup: number, hole: number): Field | null {
  const drilled = file.setups[setup]?.holes[hole];
  if (drilled?.lead === undefined) return null;
  return field(file, design, {
    label: 'Lead',
    kind: 'mass',
    path: `setups.${setup}.holes.${hole}.lead.mass_g`,
    edited: `lead in ${drilled.name}`,
  });
}

/** Temperature and salinity, or the density as measured. */
export function waterFields(file: DesignFile, design: Design | undefined, setup: number): readonly Field[] {
  const water = file.setups[setup]?.water;
  if (water === undefined) return [];
  const path = `setups.${setup}.water`;
  if ('measured_g_cm3' in water) {
    return [
      field(file, design, {
        label: 'Density',
        kind: 'density',
        path: `${path}.measured_g_cm3`,
        edited: 'water density',
      }),
    ];
  }
  return [
    field(file, design, {
      label: 'Temperature',
      kind: 'temperature',
      path: `${path}.temperature_c`,
      edited: 'water temperature',
    }),
    field(file, design, {
      label: 'Salinity',
      kind: 'salinity',
      path: `${path}.salinity_g_kg`,
      edited: 'salinity',
    }),
  ];
}
