import type { Float } from '../hydro/float.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Band } from '../sinking/drag-law.ts';
import { degreeFromRadian, percentFromShare } from '../units/convert.ts';

/** How something rests, as JSON. null: not worked out, or there is none. */
export interface FloatJson {
  readonly state: Float['state'];
  readonly up: Vec3;
  readonly offset_mm: number | null;
  readonly trim_deg: number;
  readonly heel_deg: number;
  /** Solid with its fins, less flooded slots, plus outside parts: what is wet of them; hung items apart. */
  readonly displaced_mm3: number;
  readonly cb_mm: Vec3;
  readonly reserve_percent: number;
  readonly gm_mm: number;
  readonly gm_long_mm: number;
  readonly gm_min_mm: number;
  readonly proud_mm: number | null;
  readonly net_wet_g: number;
  /** Steady speed as it sinks: lowest, middle, highest; null where it floats or hangs. */
  readonly sink_mm_s: Band | null;
  readonly neutral: boolean;
  readonly tender: boolean;
  /** On other attitudes: what it takes to get there from the first. */
  readonly hump_g_mm: number | null;
}

/** speed: of its fall, null where there is none. */
export function floatJson(float: Float, speed: Band | null): FloatJson {
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
    sink_mm_s: speed,
    neutral: float.neutral,
    tender: float.tender,
    hump_g_mm: null,
  };
}
