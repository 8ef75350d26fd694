import type { Drill, LeadStock } from '../design/design.ts';
import { type Hull, halfWidthAt, heightAt, stationOf } from '../hull/hull.ts';
import type { LinkSpec } from '../links/cut.ts';
import { betweenFaces } from '../mass/checks/wood.ts';
import { type Mouth, pointHeight } from '../mass/hole.ts';
import { depthClearOf, type KeepOut } from '../mass/keep-out.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';
import { type Skin, skinOf, type Way } from './skin.ts';

/** Holes are marked out at whole millimetres from the nose tip. */
const STATION_MM = 1;
/** Of the wall to the skin, this much is kept to steel, slots and other holes. */
const INNER_SHARE = 2 / 3;
/** Round stock goes into a drill no more than this much wider: glue fills the rest. */
const LOOSE_MM = 1;
/** Taller than this for its width a link may be drilled crosswise. */
const SLAB = 1.8;

/** Where one hole, or one on each flank, may go. Depths are from the mouth on the axis to the drill's shoulder. */
export interface Station {
  readonly x: Mm;
  /** Where the axis meets the bare skin; of a pair from the flanks, the middle between them. */
  readonly at: Vec3;
  /** The skin over its disc; of a pair, on the starboard side. Dear to work out, so only when it is asked for. */
  readonly mouth: () => Mouth;
  /** Lead nearer to the mouth than this has too thin a wall. */
  readonly leadFrom: Mm;
  /** The deepest shoulder. */
  readonly depthTo: Mm;
}

/** One way to drill a link: a stock, a drill, from where, in which row. */
export interface Lane {
  readonly stock: LeadStock;
  readonly drill: Drill;
  /** flanks: two holes at each station, from starboard and from port. */
  readonly from: 'belly' | 'flanks';
  /** y of the row for the belly, z for the flanks. */
  readonly row: Mm;
  /** Between the axes of two holes. */
  readonly spacing: Mm;
  /** From nose to tail. */
  readonly stations: readonly Station[];
}

export interface RoomParts {
  readonly hull: Hull;
  readonly spec: LinkSpec;
  readonly keepOuts: readonly KeepOut[];
  readonly wall: Mm;
  readonly drills: readonly Drill[];
  readonly lead: readonly LeadStock[];
  /** y of the row along the belly. */
  readonly across: Mm;
}

/** A lane that is laid out when it is first asked for. */
export interface Offer {
  /** Height over the datum of a row along the flanks, where all its lead lies; null: from the belly. */
  readonly row: Mm | null;
  readonly span: LinkSpec['span'];
  /** null: no hole has a place in it. */
  readonly lane: () => Lane | null;
}

/** Every way to drill a link: along the belly, and in rows along the flanks of a tall slab. */
export function offersOf(parts: RoomParts): readonly Offer[] {
  const { spec, hull, wall, across } = parts;
  const clear = wall * INNER_SHARE;
  const skin = skinOf(hull);
  const ways: readonly Way[] = [{ from: 'belly', row: across }, ...(across === 0 ? flankRows(hull, spec) : [])];
  // drills and rows are shared by several stocks
  const known = new Map<string, readonly Station[]>();
  const places = new Map<string, readonly Mm[]>();
  return pairsOf(parts).flatMap(({ stock, drill }) =>
    ways.map((way): Offer => {
      let laid: Lane | null | undefined;
      const layOut = (): Lane | null => {
        const key = `${drill.diameter} ${drill.point} ${way.from} ${way.row}`;
        const along = `${drill.diameter} ${way.from}`;
        const xs = places.get(along) ?? placesAlong(hull, spec, way.from, way.row, drill.diameter / 2, wall);
        places.set(along, xs);
        const stations = known.get(key) ?? stationsOf(parts, skin, drill, way, clear, xs);
        known.set(key, stations);
        return stations.length === 0 ? null : { stock, drill, ...way, spacing: drill.diameter + clear, stations };
      };
      return {
        row: way.from === 'flanks' ? way.row : null,
        span: spec.span,
        lane: () => {
          laid = laid === undefined ? layOut() : laid;
          return laid;
        },
      };
    }),
  );
}

/** What goes with what: round stock with the narrowest drill that takes it, the rest with any. */
export function pairsOf({ drills, lead }: Pick<RoomParts, 'drills' | 'lead'>) {
  return lead.flatMap((stock): readonly { readonly stock: LeadStock; readonly drill: Drill }[] => {
    if (stock.kind === 'filled') return drills.map((drill) => ({ stock, drill }));
    const takes = drills
      .filter(({ diameter }) => diameter >= stock.diameter && diameter <= stock.diameter + LOOSE_MM)
      .toSorted((a, b) => a.diameter - b.diameter);
    return takes.slice(0, 1).map((drill) => ({ stock, drill }));
  });
}

/** No more rows than that: on a slab of more than 50 mm they stand two millimetres apart, and so on. */
const MOST_ROWS = 25;

/** Rows along the flanks of a tall slab, from the belly up to half its height, on whole millimetres. */
function flankRows(hull: Hull, { span: [from, to] }: LinkSpec): readonly Way[] {
  const { back, belly, halfWidth } = stationOf(hull, (from + to) / 2);
  if (back - belly < SLAB * 2 * halfWidth) return [];
  const step = STATION_MM * Math.max(1, Math.ceil((back - belly) / 2 / MOST_ROWS / STATION_MM));
  const rows: Way[] = [];
  for (let z = Math.ceil(belly / STATION_MM) * STATION_MM; z < (back + belly) / 2; z += step) {
    rows.push({ from: 'flanks', row: z });
  }
  return rows;
}

function stationsOf(
  { hull, keepOuts, wall }: RoomParts,
  skin: Skin,
  drill: Drill,
  way: Way,
  clear: Mm,
  xs: readonly Mm[],
): readonly Station[] {
  const point = pointHeight(drill);
  const radius = drill.diameter / 2;
  const roomAt = skin.wallRoom(way, radius, wall);
  const mouthAt = skin.mouths(way, drill.diameter);
  return xs.flatMap((x): readonly Station[] => {
    const bare = skinPoint(hull, way, x, radius + wall);
    // on the flanks two holes share the width: where that holds no lead between its walls there is nothing to look for
    if (bare === null || (way.from === 'flanks' && bare.at[1] - clear / 2 <= wall)) return [];
    const tipTo = clearDepth(keepOuts, bare, radius, clear);
    if (tipTo <= point + wall) return [];
    const room = roomAt(x, bare.at);
    // crosswise a hole from the other side comes to meet it
    const half = way.from === 'flanks' ? bare.at[1] - clear / 2 - point : Number.POSITIVE_INFINITY;
    const depthTo = Math.min(room.shoulderTo, room.tipTo - point, tipTo - point, half);
    if (depthTo <= room.leadFrom) return [];
    return [
      {
        x,
        at: way.from === 'flanks' ? [x, 0, way.row] : bare.at,
        leadFrom: room.leadFrom,
        depthTo,
        mouth: () => mouthAt(x),
      },
    ];
  });
}

/** Whole millimetres at which a drill stays clear of the joint faces. */
function placesAlong(hull: Hull, spec: LinkSpec, from: Way['from'], row: Mm, radius: Mm, wall: Mm): readonly Mm[] {
  const [first, last] = [Math.ceil(spec.span[0] / STATION_MM), Math.floor(spec.span[1] / STATION_MM)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * STATION_MM).filter((x) =>
    clearOfFaces(hull, spec, from, row, x, radius, wall),
  );
}

/** Where the axis meets the skin; null where the body has no wood there, or too little under a row along the flanks. */
function skinPoint(hull: Hull, { from, row }: Way, x: Mm, reach: Mm): Pick<Mouth, 'at' | 'inward'> | null {
  const station = stationOf(hull, x);
  if (from === 'belly') {
    const z = heightAt(hull, station, 'belly', row);
    return z === null ? null : { at: [x, row, z], inward: [0, 0, 1] };
  }
  if (row - station.belly < reach) return null;
  const half = halfWidthAt(hull, station, row);
  return half === null ? null : { at: [x, half, row], inward: [0, -1, 0] };
}

/** How deep the drill may go, its point included; a hole on the other flank counts with it. */
function clearDepth(keepOuts: readonly KeepOut[], bare: Pick<Mouth, 'at' | 'inward'>, radius: Mm, clear: Mm): Mm {
  const one = depthClearOf(keepOuts, { ...bare, radius }, clear);
  if (bare.inward[1] === 0) return one;
  const [x, y, z] = bare.at;
  return Math.min(one, depthClearOf(keepOuts, { at: [x, -y, z], inward: [0, 1, 0], radius }, clear));
}

const TURNS = 16;
const ROUND = Array.from({ length: TURNS }, (_, turn) => {
  const angle = (2 * Math.PI * turn) / TURNS;
  return [Math.cos(angle), Math.sin(angle)] as const;
});

/** Whether a hole stays a wall away from the link's joint faces, seen in plan. */
function clearOfFaces(hull: Hull, spec: LinkSpec, from: Way['from'], row: Mm, x: Mm, radius: Mm, wall: Mm): boolean {
  const round = (cx: Mm, cy: Mm, reach: Mm) =>
    ROUND.every(([cos, sin]) => betweenFaces(spec, [cx + reach * cos, cy + reach * sin, 0]));
  if (from === 'belly') return round(x, row, radius + wall);
  const half = stationOf(hull, x).halfWidth;
  return [0, half].every((y) => round(x - radius, y, wall) && round(x + radius, y, wall));
}
