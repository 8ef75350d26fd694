import { worldAxes } from '../../frames.ts';
import { linkTree } from '../../hydro/link-tree.ts';
import { submerge, WET } from '../../hydro/submerge.ts';
import type { PlacedHung } from '../../mass/placed.ts';
import type { Mesh } from '../../mesh/mesh.ts';
import { add, dot, scale, type Vec3 } from '../../numerics/vec3.ts';
import type { Mm, Mm3 } from '../../units/brand.ts';

/** What is under a water surface, and the waterplane it makes. */
export interface WetAt {
  /** Body and fixed parts outside it, and their middle. */
  readonly volume: Mm3;
  readonly centre: Vec3;
  /** Of each hung item, in their order. */
  readonly hung: readonly { readonly volume: Mm3; readonly length: Mm }[];
  /** Middle of the waterplane along the level shadow of the body's x; null when nothing cuts the surface. */
  readonly middle: Mm | null;
  /** Second moments of the waterplane about its middle: leaning across, leaning along, and the mixed one. */
  readonly across: number;
  readonly along: number;
  readonly mixed: number;
}

/** A water surface over everything: all of it is under. */
export const OVER_ALL: Mm = 1e6;

export interface WetParts {
  readonly meshes: readonly Mesh[];
  /** Wet as balls of their volume. */
  readonly outside: readonly { readonly volume: Mm3; readonly at: Vec3 }[];
  readonly hung: readonly PlacedHung[];
}

/**
 * Cuts a bait with a water surface. Its own way through the same integrals as the kernel: what the page works out from
 * them is held against the kernel's answers.
 */
export function wetAt(parts: WetParts, up: Vec3, offset: Mm): WetAt {
  const { across, along } = worldAxes(up);
  const out = new Float64Array(WET.size);
  for (const mesh of parts.meshes) submerge(linkTree(mesh), up, along, across, offset, [0, 0, 0], out);
  let volume = out[WET.volume];
  let moment: Vec3 = [out[WET.moment], out[WET.moment + 1], out[WET.moment + 2]];
  let [area, a, c, aa, ac, cc] = out.slice(WET.area);
  const cut = (at: Vec3, piece: number) => {
    const [pa, pc] = [dot(at, along), dot(at, across)];
    area += piece;
    a += piece * pa;
    c += piece * pc;
    aa += piece * pa * pa;
    ac += piece * pa * pc;
    cc += piece * pc * pc;
  };
  for (const part of parts.outside) {
    const radius = Math.cbrt((3 * part.volume) / (4 * Math.PI));
    const cap = Math.min(Math.max(0, radius - (dot(up, part.at) - offset)), 2 * radius);
    // a cap of a ball: π h² (3 r − h)/3, its rim π h (2 r − h)
    const wet = (Math.PI * cap * cap * (3 * radius - cap)) / 3;
    volume += wet;
    moment = add(moment, scale(part.at, wet));
    cut(part.at, Math.PI * cap * (2 * radius - cap));
  }
  const hung = parts.hung.map((item) => {
    const under = offset - (dot(up, item.eye) - item.hang);
    const length = Math.min(Math.max(0, under), item.hang);
    if (under > 0 && under < item.hang) cut(item.eye, item.volume / item.hang);
    return { volume: (item.volume * length) / item.hang, length };
  });
  const flat = !(area > 0);
  return {
    volume,
    centre: scale(moment, 1 / volume),
    hung,
    middle: flat ? null : a / area,
    across: flat ? 0 : cc - (c * c) / area,
    along: flat ? 0 : aa - (a * a) / area,
    mixed: flat ? 0 : ac - (a * c) / area,
  };
}
