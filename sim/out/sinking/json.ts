import type { Vec3 } from '../../numerics/vec3.ts';
import type { Band } from '../../sinking/drag-law.ts';
import type { Sinking } from '../../sinking/sink.ts';
import type { DropFit } from '../../sinking/timed-drop.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import { timedDropWords } from './words.ts';

/** How something falls, as JSON. Lists of three: lowest, middle, highest. */
export interface SinkingJson {
  readonly speed_mm_s: Band;
  readonly first_foot_s: Band;
  readonly first_metre_s: Band;
  readonly up: Vec3;
  readonly trim_deg: number;
  readonly heel_deg: number;
  readonly neutral: boolean;
  readonly settled: boolean;
  readonly net_wet_g: number;
  readonly added_mass_g: number;
  readonly drag_area_mm2: Band;
  readonly drag_at_mm: Vec3;
  readonly shown_area_mm2: number;
  /** Of each link, nose to tail: they add up to 1. */
  readonly drag_shares: readonly { readonly share: number; readonly at_mm: Vec3 }[];
}

/** drag_factor: lowest, middle, highest, on the drag of the shape; null: the drop could not be used. */
export interface DropJson {
  readonly kind: DropFit['kind'];
  readonly drag_factor: Band | null;
  readonly text: string;
}

export function sinkingJson(sinking: Sinking): SinkingJson {
  return {
    speed_mm_s: sinking.speed,
    first_foot_s: sinking.firstFoot,
    first_metre_s: sinking.firstMetre,
    up: sinking.up,
    trim_deg: degreeFromRadian(sinking.trim),
    heel_deg: degreeFromRadian(sinking.heel),
    neutral: sinking.neutral,
    settled: sinking.settled,
    net_wet_g: sinking.netWet,
    added_mass_g: sinking.addedMass,
    drag_area_mm2: sinking.dragArea,
    drag_at_mm: sinking.dragCentre,
    shown_area_mm2: sinking.area,
    drag_shares: sinking.shares.map(({ share, at }) => ({ share, at_mm: at })),
  };
}

export function dropJson(fit: DropFit): DropJson {
  return {
    kind: fit.kind,
    drag_factor: fit.kind === 'fitted' ? fit.timed.band : null,
    text: timedDropWords(fit),
  };
}
