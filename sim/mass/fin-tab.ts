import type { Fin } from '../design/design.ts';
import { type Hull, stationOf } from '../hull/hull.ts';
import type { Box } from '../numerics/distance.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm3 } from '../units/brand.ts';
import { SAME_MM, type Strip } from './fin-strips.ts';

/** What of a fin is let into the wood. */
export interface FinTab {
  readonly depth: Mm;
  readonly thickness: Mm;
  /** Which way it goes into the wood. */
  readonly inward: Vec3;
  readonly volume: Mm3;
  readonly centre: Vec3;
  /** Four numbers for each: x and z of its middle on the skin, its length along the root, how the skin rises to its ends. */
  readonly slices: Float64Array;
}

/** A slice of a tab: its middle on the skin, its size along the root, and half of how the skin rises within it. */
interface Slice {
  readonly skin: Vec3;
  readonly size: Mm;
  readonly rise: Mm;
}

const TAIL_SLICES = 64;

/**
 * The tab under the root of a fin: as deep everywhere, straight down from the back, up from the belly, along x from the
 * tail. Where the section is narrower than the plate the tab's flanks stand out of the wood; that sliver is counted as
 * wood taken. null: no tab, or no root.
 */
export function placeTab(hull: Hull, fin: Fin, strips: readonly Strip[]): FinTab | null {
  if (fin.tab === 0) return null;
  const slices = fin.on === 'tail' ? tailSlices(hull, strips) : sideSlices(strips, fin.on);
  const length = slices.reduce((sum, { size }) => sum + size, 0);
  if (length === 0) return null;
  const inward: Vec3 = fin.on === 'tail' ? [-1, 0, 0] : fin.on === 'back' ? [0, 0, -1] : [0, 0, 1];
  const root = slices.reduce<Vec3>((sum, { skin, size }) => add(sum, scale(skin, size)), [0, 0, 0]);
  return {
    depth: fin.tab,
    thickness: fin.thickness,
    inward,
    volume: fin.tab * fin.thickness * length,
    centre: add(scale(root, 1 / length), scale(inward, fin.tab / 2)),
    slices: Float64Array.from(slices.flatMap(({ skin: [x, , z], size, rise }) => [x, z, size, rise])),
  };
}

/** Boxes that together cover a tab. */
export function tabBoxes(tab: FinTab): readonly Box[] {
  return slicesOf(tab).map((slice) => boxOf(slice, tab));
}

/** Points of a tab's edge deep in the wood. */
export function tabFloor(tab: FinTab): readonly Vec3[] {
  return slicesOf(tab).map(({ skin }) => add(skin, scale(tab.inward, tab.depth)));
}

function slicesOf({ slices }: FinTab): readonly Slice[] {
  return Array.from({ length: slices.length / 4 }, (_, i): Slice => {
    const [x, z, size, rise] = slices.subarray(4 * i, 4 * i + 4);
    return { skin: [x, 0, z], size, rise };
  });
}

function sideSlices(strips: readonly Strip[], on: 'back' | 'belly'): readonly Slice[] {
  return strips
    .filter(({ place, rooted }) => rooted && place === on)
    .map(({ x, low, high }): Slice => {
      const skin = on === 'back' ? low : high;
      const rise = Math.abs(skin[1] - skin[0]) / 2;
      return { skin: [(x[0] + x[1]) / 2, 0, (skin[0] + skin[1]) / 2], size: x[1] - x[0], rise };
    });
}

function tailSlices(hull: Hull, strips: readonly Strip[]): readonly Slice[] {
  const root = rootOnTail(hull, strips);
  if (root === null) return [];
  const size = (root[1] - root[0]) / TAIL_SLICES;
  const height = (i: number) => root[0] + size * i;
  const ends = Array.from({ length: 2 * TAIL_SLICES + 1 }, (_, i) => tailAt(hull, height(i / 2)) ?? hull.length);
  return Array.from({ length: TAIL_SLICES }, (_, i): Slice => {
    const [under, skin, over] = ends.slice(2 * i, 2 * i + 3);
    return { skin: [skin, 0, height(i + 0.5)], size, rise: Math.abs(over - under) / 2 };
  });
}

/** Heights between which a fin stands on the tail; null when it does not. */
function rootOnTail(hull: Hull, strips: readonly Strip[]): readonly [Mm, Mm] | null {
  const end = stationOf(hull, hull.length);
  const heights = strips.flatMap(({ x, low, high, place, rooted }) => {
    if (place === 'off') {
      if (Math.abs(x[0] - hull.length) > SAME_MM) return [];
      const [from, to] = [Math.max(low[0], end.belly), Math.min(high[0], end.back)];
      return from <= to ? [from, to] : [];
    }
    return rooted ? (place === 'back' ? low : high) : [];
  });
  const root = [Math.min(...heights), Math.max(...heights)] as const;
  return root[1] - root[0] > SAME_MM ? root : null;
}

/** Where the skin ends at a height, on the centre plane; null over the back and under the belly. */
export function tailAt(hull: Hull, z: Mm): Mm | null {
  const { back, belly } = stationOf(hull, hull.length);
  if (z >= belly && z <= back) return hull.length;
  const side = z > back ? 'back' : 'belly';
  const peak = hull.length - hull[side].tail.run;
  const reaches = stationOf(hull, peak)[side];
  if (z > back ? z > reaches : z < reaches) return null;
  return bracketedRoot((x) => stationOf(hull, x)[side] - z, hull.length, peak, 1e-9).x;
}

function boxOf({ skin, size, rise }: Slice, { thickness, depth, inward }: FinTab): Box {
  const alongX = inward[0] === 0;
  const [x, , z] = skin;
  const half = thickness / 2;
  const span = (at: Mm, towards: number): readonly [Mm, Mm] => [
    at - rise - (towards < 0 ? depth : 0),
    at + rise + (towards > 0 ? depth : 0),
  ];
  const across = (at: Mm): readonly [Mm, Mm] => [at - size / 2, at + size / 2];
  const [xs, zs] = alongX ? [across(x), span(z, inward[2])] : [span(x, inward[0]), across(z)];
  return { low: [xs[0], -half, zs[0]], high: [xs[1], half, zs[1]] };
}
