import type { Assembled, Assembly, JointRest, Stop } from '../../chain/assemble.ts';
import type { Folded, FoldWay } from '../../chain/fold.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian } from '../../units/convert.ts';

/** How the bait rests on its hinges. Signs as in the sums: see DEVELOPERS.md, The jointed bait. */
export interface JointedJson {
  readonly straight: AssemblyJson;
  /** null: let go it stays straight. */
  readonly let_go: AssemblyJson | null;
  /** Least curvature of the energy over the yaws of the straight bait, per radian squared; null: no joint turns. */
  readonly yaw_curvature_g_mm: number | null;
  /** Heel below which friction may keep a joint from turning; null: its hinge has a single loop. */
  readonly friction_deg: readonly (number | null)[];
  readonly folded: { readonly port: FoldJson; readonly starboard: FoldJson } | null;
}

export interface AssemblyJson {
  readonly links: readonly {
    readonly up: Vec3;
    readonly offset_mm: number | null;
    readonly trim_deg: number;
    readonly heel_deg: number;
  }[];
  readonly joints: readonly {
    readonly yaw_deg: number;
    readonly sag_deg: number;
    readonly lean_deg: number;
    readonly shift_mm: readonly [number, number];
    readonly rise_mm: number;
    readonly shear_g: number;
    readonly moment_g_mm: number;
    readonly twist_g_mm: number;
    readonly stops: readonly Stop[];
  }[];
  readonly converged: boolean;
}

export interface FoldJson {
  readonly points: readonly { readonly fold_deg: number; readonly heel_deg: number }[];
  readonly rolls_from_deg: number | null;
}

export function jointedJson({ straight, loose, yawCurve, friction }: Assembled, folded: Folded | null): JointedJson {
  return {
    straight: assemblyJson(straight),
    let_go: loose && assemblyJson(loose),
    yaw_curvature_g_mm: yawCurve,
    friction_deg: friction.map((band) => band && degreeFromRadian(band)),
    folded: folded && { port: foldJson(folded.port), starboard: foldJson(folded.starboard) },
  };
}

export function assemblyJson({ links, joints, converged }: Assembly): AssemblyJson {
  return {
    links: links.map(({ up, offset, trim, heel }) => ({
      up,
      offset_mm: offset,
      trim_deg: degreeFromRadian(trim),
      heel_deg: degreeFromRadian(heel),
    })),
    joints: joints.map(({ yaw, sag, lean, shift, rise, load, stops }: JointRest) => ({
      yaw_deg: degreeFromRadian(yaw),
      sag_deg: degreeFromRadian(sag),
      lean_deg: degreeFromRadian(lean),
      shift_mm: shift,
      rise_mm: rise,
      shear_g: load.shear,
      moment_g_mm: load.moment,
      twist_g_mm: load.twist,
      stops,
    })),
    converged,
  };
}

function foldJson({ points, rollsFrom }: FoldWay): FoldJson {
  return {
    points: points.map(({ fold, heel }) => ({ fold_deg: degreeFromRadian(fold), heel_deg: degreeFromRadian(heel) })),
    rolls_from_deg: rollsFrom === null ? null : degreeFromRadian(rollsFrom),
  };
}
