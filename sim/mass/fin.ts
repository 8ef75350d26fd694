import type { Design, Fin } from '../design/design.ts';
import type { Issue } from '../flow/outcome.ts';
import { type Hull, stationOf } from '../hull/hull.ts';
import type { LinkSpec } from '../links/cut.ts';
import { measureVolume } from '../mesh/measure.ts';
import type { Mm } from '../units/brand.ts';
import { mm } from './checks/wood.ts';
import { plateMesh } from './fin-mesh.ts';
import {
  finStrips,
  overlap,
  type Point,
  plates,
  SAME_MM,
  type SideRow,
  type Strip,
  sideRows,
  stripsWithin,
} from './fin-strips.ts';
import { placeTab, tailAt } from './fin-tab.ts';
import type { PlacedFin } from './placed.ts';

/** Fins as they stand, and what is wrong with those that cannot. */
export interface PlacedFins {
  readonly pieces: readonly PlacedFin[];
  readonly faults: readonly Issue[];
}

/**
 * Stands each fin on the bare side outline and cuts it at the joints: one piece for each link that has any of it, by x
 * alone. The ends of a free edge go straight down (or up) to the skin; what of it runs inside the body is left out.
 *
 * A piece is a flat plate that ends at the bare skin on the centre plane. The coats run up to it rather than under it,
 * so that the plate's foot, thickness times the coats' thickness along the root, is in both: a few cubic millimetres,
 * of which half that is coat is too much mass too. The wedge between the foot and a rounded back is taken as filled.
 */
export function placeFins(hull: Hull, links: readonly LinkSpec[], fins: Design['fins']): PlacedFins {
  const placed = fins.map((fin, i) => placeFin(hull, links, fin, `fins.${i}`));
  const meeting = placed.flatMap((fin, i) =>
    placed.slice(0, i).flatMap((other, j): readonly Issue[] => {
      if (!overlap(fin.strips, other.strips)) return [];
      const message = `"${fins[i].name}" stands in the same place as "${fins[j].name}" (fins.${j})`;
      return [{ code: 'fins/meet', path: `fins.${i}.edge_mm`, message, hint: 'move one of them' }];
    }),
  );
  return {
    pieces: placed.flatMap(({ pieces }) => pieces),
    faults: [...placed.flatMap(({ faults }) => faults), ...meeting],
  };
}

interface Placing extends PlacedFins {
  readonly strips: readonly Strip[];
}

function placeFin(hull: Hull, links: readonly LinkSpec[], fin: Fin, path: string): Placing {
  const fault = (code: string, message: string, hint: string): Placing => ({
    pieces: [],
    strips: [],
    faults: [{ code, path: `${path}.edge_mm`, message: `"${fin.name}" ${message}`, hint }],
  });
  const edge = fin.edge.filter(
    ([x, z], i) => i === 0 || Math.hypot(x - fin.edge[i - 1][0], z - fin.edge[i - 1][1]) > 0,
  );
  const ends = [edge[0], edge[edge.length - 1]] as const;
  const [fore, aft] = ends.map((end) => footOf(hull, fin.on, end));
  if (!fore || !aft) {
    const message = `has an end at ${where(ends[fore ? 1 : 0])}, where there is no body to stand on; the body goes from 0 mm to ${mm(hull.length)}`;
    return fault('fins/off-the-body', message, 'end its edge on the body');
  }
  if (crossesItself(edge, fore, aft)) return fault('fins/edge-crosses', 'has an edge that meets itself', 'redraw it');
  const xs = [...edge, fore, aft].map(([x]) => x);
  const rows = sideRows(hull, [...xs, ...links.flatMap(({ span }) => span)], [Math.min(...xs), Math.max(...xs)]);
  const outline = closed(rows, edge, fore, aft);
  const strips = finStrips(outline, rows);
  if (strips.length === 0) return fault('fins/inside-the-body', 'has an edge wholly inside the body', 'draw it higher');
  const wrong = strips.find(({ place }) => fin.on !== 'tail' && place !== 'off' && place !== fin.on);
  if (wrong) {
    const message = `is a fin on the ${fin.on}, yet at ${mm(wrong.x[0])} it stands on the ${wrong.place}`;
    return fault('fins/wrong-side', message, `keep it off the ${wrong.place}, or make two fins of it`);
  }
  const pieces = links.flatMap((spec): readonly Piece[] => {
    const own = stripsWithin(strips, reachOf(links, spec));
    return own.length === 0 ? [] : [{ spec, own, plates: plates(own) }];
  });
  if (pieces.length === 0) {
    return fault('hardware/in-a-gap', `stands wholly in the gap of a joint, at ${where(ends[0])}`, 'move it along');
  }
  const last = links[links.length - 1];
  if (fin.on === 'tail' && pieces.some(({ spec }) => spec !== last)) {
    const message = `is a fin on the tail, yet begins at ${mm(strips[0].x[0])}, before link "${last.name}", ${mm(last.span[0])} to ${mm(last.span[1])}`;
    return fault('fins/over-a-joint', message, 'begin it on the last link');
  }
  const loose = pieces.find((piece) => piece.plates.some((plate) => !plate.some((strip) => isRooted(hull, strip))));
  if (loose) {
    const { spec, own } = loose;
    const message = `has a piece at ${mm(own[0].x[0])} that stands on no wood of link "${spec.name}", ${mm(spec.span[0])} to ${mm(spec.span[1])}`;
    return fault('fins/loose-piece', message, 'end it before the joint, or draw it down to the skin');
  }
  return { pieces: pieces.map((piece) => pieceOf(hull, fin, piece, path)), strips, faults: [] };
}

/** What of a fin stands on one link. */
interface Piece {
  readonly spec: LinkSpec;
  readonly own: readonly Strip[];
  readonly plates: readonly (readonly Strip[])[];
}

function pieceOf(hull: Hull, fin: Fin, { spec, own, plates }: Piece, path: string): PlacedFin {
  const mesh = plateMesh(plates, fin.thickness);
  const { volume, centre } = measureVolume(mesh);
  return {
    name: fin.name,
    link: spec.index,
    path,
    thickness: fin.thickness,
    density: fin.density,
    mesh,
    outsideVolume: volume,
    outsideCentre: centre,
    tab: placeTab(hull, fin, own),
  };
}

/** Stations that belong to a link; the end links have all that lies before the nose and behind the tail. */
function reachOf(links: readonly LinkSpec[], { index, span }: LinkSpec): readonly [Mm, Mm] {
  return [
    index === 0 ? Number.NEGATIVE_INFINITY : span[0],
    index === links.length - 1 ? Number.POSITIVE_INFINITY : span[1],
  ];
}

/**
 * Where the end of an edge comes to the skin: straight up or down, or on the tail along x if that is the shorter way.
 * The end itself where it lies in the wood; null where there is no body either way.
 */
function footOf(hull: Hull, on: Fin['on'], [x, z]: Point): Point | null {
  const over = x >= 0 && x <= hull.length;
  const { back, belly } = stationOf(hull, x);
  if (over && z >= belly && z <= back) return [x, z];
  const upright: Point | null = over ? [x, z > back ? back : belly] : null;
  const tail = on === 'tail' ? tailAt(hull, z) : null;
  if (tail === null || tail > x) return upright;
  return upright === null || x - tail < Math.abs(z - upright[1]) ? [tail, z] : upright;
}

/** The outline of a fin: its edge, down to the skin, and back from end to end through the middle of the body. */
function closed(rows: readonly SideRow[], edge: readonly Point[], fore: Point, aft: Point): readonly Point[] {
  const [from, to] = [Math.min(fore[0], aft[0]), Math.max(fore[0], aft[0])];
  const through = rows
    .filter(({ x }) => x >= from - SAME_MM && x <= to + SAME_MM)
    .map(({ x, back, belly }): Point => [x, (back + belly) / 2]);
  return [...edge, aft, ...(aft[0] > fore[0] ? through.toReversed() : through), fore];
}

/** Whether an edge, brought to the skin at both ends, meets itself anywhere but from point to point. */
function crossesItself(edge: readonly Point[], fore: Point, aft: Point): boolean {
  const all = [...apart(fore, edge[0]), ...edge, ...apart(aft, edge[edge.length - 1])];
  const sides = all.slice(1).map((to, i) => [all[i], to] as const);
  return sides.some((side, i) => sides.slice(i + 2).some((other) => meet(side, other)));
}

function apart(foot: Point, end: Point): readonly Point[] {
  return Math.hypot(foot[0] - end[0], foot[1] - end[1]) > SAME_MM ? [foot] : [];
}

type Side = readonly [Point, Point];

/** Whether two straight sides have a point in common. */
function meet([a, b]: Side, [c, d]: Side): boolean {
  const [c1, d1] = [turn(a, b, c), turn(a, b, d)];
  const [a1, b1] = [turn(c, d, a), turn(c, d, b)];
  if (c1 * d1 > 0 || a1 * b1 > 0) return false;
  // all four in one line: they meet where their boxes do
  return [0, 1].every(
    (axis) =>
      Math.max(Math.min(a[axis], b[axis]), Math.min(c[axis], d[axis])) <=
      Math.min(Math.max(a[axis], b[axis]), Math.max(c[axis], d[axis])),
  );
}

function turn([ax, az]: Point, [bx, bz]: Point, [cx, cz]: Point): number {
  return Math.sign((bx - ax) * (cz - az) - (bz - az) * (cx - ax));
}

/** Whether a strip stands on the skin: over or under it, or against the end of the tail. */
function isRooted(hull: Hull, { x, low, high, rooted }: Strip): boolean {
  if (rooted) return true;
  const { back, belly } = stationOf(hull, hull.length);
  return Math.abs(x[0] - hull.length) <= SAME_MM && low[0] <= back + SAME_MM && high[0] >= belly - SAME_MM;
}

function where([x, z]: Point): string {
  return `x ${mm(x)}, z ${mm(z)}`;
}
