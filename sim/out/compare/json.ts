import type { Hole } from '../../design/design.ts';
import type { Band } from '../../sinking/drag-law.ts';
import { type FloatJson, floatJson } from '../float-json.ts';
import type { Comparison, HoleChange } from './compare.ts';

/** What `compare --json` prints. Pairs are in the order of `setups`; keys may be added, never renamed. */
export interface CompareJson {
  readonly design: string;
  readonly setups: readonly [string, string];
  readonly assembled: readonly FloatJson[];
  /** Time to the first foot, lowest, middle, highest; null where it does not sink. */
  readonly first_foot_s: readonly (Band | null)[];
  readonly lead_g: readonly [number, number];
  readonly hung_g: readonly [number, number];
  readonly links: readonly {
    readonly name: string;
    readonly lead_g: readonly [number, number];
    readonly floats: readonly FloatJson[];
    readonly first_foot_s: readonly (Band | null)[];
    readonly holes: readonly HoleChangeJson[];
  }[];
}

export type HoleChangeJson =
  | { readonly kind: 'same'; readonly name: string }
  | { readonly kind: 'only'; readonly in: string; readonly hole: HolePlaceJson }
  | {
      readonly kind: 'changed';
      readonly from: HolePlaceJson;
      readonly to: HolePlaceJson;
      readonly moved_mm: number;
      readonly deeper_mm: number;
      readonly lead_g: number;
      readonly in_place: boolean;
    };

export interface HolePlaceJson {
  readonly name: string;
  readonly from: Hole['from'];
  readonly x_mm: number;
  readonly across_mm: number;
  readonly diameter_mm: number;
  readonly depth_mm: number;
  readonly lead_g: number;
}

/** Two setups side by side as plain JSON values. */
export function compareJson({ design, setups, floats, sinkings, lead, hung, links }: Comparison): CompareJson {
  return {
    design,
    setups,
    assembled: floats.map((float, i) => floatJson(float, sinkings[i]?.speed ?? null)),
    first_foot_s: footOf(sinkings),
    lead_g: lead,
    hung_g: hung,
    links: links.map((link) => ({
      name: link.name,
      lead_g: link.lead,
      floats: link.floats.map((float, i) => floatJson(float, link.sinkings[i]?.speed ?? null)),
      first_foot_s: footOf(link.sinkings),
      holes: link.holes.map((change) => changeJson(change, setups)),
    })),
  };
}

function footOf(sinkings: Comparison['sinkings']): readonly (Band | null)[] {
  return sinkings.map((sinking) => sinking?.firstFoot ?? null);
}

function changeJson(change: HoleChange, setups: Comparison['setups']): HoleChangeJson {
  if (change.kind === 'same') return { kind: 'same', name: change.hole.name };
  if (change.kind === 'only') return { kind: 'only', in: setups[change.in], hole: holePlace(change.hole) };
  const { from, to, moved, deeper, lead, inPlace } = change;
  return {
    kind: 'changed',
    from: holePlace(from),
    to: holePlace(to),
    moved_mm: moved,
    deeper_mm: deeper,
    lead_g: lead,
    in_place: inPlace,
  };
}

function holePlace({ name, from, x, across, diameter, depth, lead }: Hole): HolePlaceJson {
  return {
    name,
    from,
    x_mm: x,
    across_mm: across,
    diameter_mm: diameter,
    depth_mm: depth,
    lead_g: lead?.mass ?? 0,
  };
}
