import { add, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramPerMm3, Mm, Mm3 } from '../units/brand.ts';
import type { Tree } from './tree.ts';

/** Something that floats as one rigid piece. Points in the body frame, millimetres. */
export interface FloatingBody {
  /** Closed meshes that displace; they must not overlap. */
  readonly trees: readonly Tree[];
  /** Closed meshes that displace too, but do not count for draft and for what stands proud; left out: none. */
  readonly fins?: readonly Tree[];
  readonly waterDensity: GramPerMm3;
  /** All that cannot swing. */
  readonly mass: Gram;
  readonly centre: Vec3;
  /** Small fixed parts outside the meshes, wet as balls of their volume. */
  readonly outside: readonly { readonly volume: Mm3; readonly at: Vec3 }[];
  /** Things that hang plumb from an eye: they pull there. hang: eye to lowest point. */
  readonly hung: readonly { readonly mass: Gram; readonly volume: Mm3; readonly eye: Vec3; readonly hang: Mm }[];
}

export interface Totals {
  /** Hung items included, counted at their eyes. */
  readonly mass: Gram;
  readonly massCentre: Vec3;
  /** Everything that can displace, hung items at their eyes. */
  readonly volume: Mm3;
  readonly volumeCentre: Vec3;
  /** The same without hung items. */
  readonly fixedVolume: Mm3;
  readonly fixedVolumeCentre: Vec3;
  readonly hungVolume: Mm3;
}

/** Volume and centre of the meshes, from the sums at the roots of their trees. */
function treeVolume(tree: Tree): { readonly volume: Mm3; readonly at: Vec3 } {
  const [six, mx, my, mz] = tree.sums;
  return { volume: six / 6, at: add(tree.origin, scale([mx, my, mz], 1 / (4 * six))) };
}

/** All that displaces as a mesh. */
export function meshesOf({ trees, fins }: FloatingBody): readonly Tree[] {
  return fins === undefined || fins.length === 0 ? trees : [...trees, ...fins];
}

/** Weights and volumes of a body with everything wet. */
export function totalsOf(body: FloatingBody): Totals {
  const solids = [...meshesOf(body).map(treeVolume), ...body.outside];
  const fixed = gather(solids.map(({ volume, at }) => [volume, at]));
  const all = gather([
    ...solids.map(({ volume, at }): Weighted => [volume, at]),
    ...body.hung.map((item): Weighted => [item.volume, item.eye]),
  ]);
  const weight = gather([[body.mass, body.centre], ...body.hung.map((item): Weighted => [item.mass, item.eye])]);
  return {
    mass: weight.sum,
    massCentre: weight.centre,
    volume: all.sum,
    volumeCentre: all.centre,
    fixedVolume: fixed.sum,
    fixedVolumeCentre: fixed.centre,
    hungVolume: all.sum - fixed.sum,
  };
}

type Weighted = readonly [number, Vec3];

/** Sum of weights and their centre, measured from the first point so that digits are kept. */
function gather(parts: readonly Weighted[]): { readonly sum: number; readonly centre: Vec3 } {
  const start = parts[0]?.[1] ?? [0, 0, 0];
  let sum = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const [weight, at] of parts) {
    sum += weight;
    moment = add(moment, scale(subtract(at, start), weight));
  }
  return { sum, centre: sum === 0 ? start : add(start, scale(moment, 1 / sum)) };
}
