import { type Design, type DesignFile, valueAt, withValueAt } from '../../../sim/index.ts';
import type { Edit } from '../../document/commands.ts';

/** What a timed drop is written from. Values are in the file's units. */
export interface DropNumbers {
  readonly distance_mm: number;
  readonly time_s: number;
  /** What the bait weighed in the water. */
  readonly net_wet_g: number;
}

/** The drop of a setup as it was worked out, with what stands for the weight where none is given; null: none. */
export function dropOf(design: Design | undefined, setup: number, net: number): DropNumbers | null {
  const drop = design?.setups[setup]?.drop;
  if (!drop) return null;
  return { distance_mm: drop.distance, time_s: drop.time, net_wet_g: drop.netWet ?? net };
}

/**
 * Writes one number of a setup's drop. The first makes the drop, with what else it wants: from then on it keeps what the
 * bait weighed when it was dropped, whatever is changed afterwards.
 */
export function withDropNumber(setup: number, key: keyof DropNumbers, value: number, others: DropNumbers): Edit {
  return (file) => {
    const path = `setups.${setup}.drop`;
    const known = valueAt(file, path);
    if (known === undefined) return withValueAt(file, path, { ...tidied(others), [key]: value });
    return withValueAt(file, `${path}.${key}`, value);
  };
}

/** The design without the drop of a setup. */
export function withoutDrop(setup: number): Edit {
  return (file: DesignFile) => {
    const setups = file.setups.map((each, i) => {
      if (i !== setup) return each;
      const { drop: _, ...rest } = each;
      return rest;
    });
    return { ...file, setups };
  };
}

/** As a scale and a tape read. */
function tidied({ distance_mm, time_s, net_wet_g }: DropNumbers): DropNumbers {
  const rounded = (value: number, digits: number) => Number(value.toFixed(digits));
  return {
    distance_mm: rounded(distance_mm, 1),
    time_s: rounded(time_s, 2),
    net_wet_g: Math.max(0.01, rounded(net_wet_g, 2)),
  };
}
