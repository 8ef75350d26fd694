import { type Part, pointHeight, takenOut } from '../mass/hole.ts';
import { dot, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramPerMm3, Mm } from '../units/brand.ts';
import type { Need } from './need.ts';
import type { Lane, Station } from './room.ts';

/** Lead is weighed to this, and drilled to that: a kitchen scale, and a stop on the drill. Common practice. */
export const LEAD_G: Gram = 0.1;
export const DEPTH_MM: Mm = 0.5;
/** Less lead than this is not worth a hole, and a shorter piece cannot be cut. Common practice. */
const LEAST_LEAD_G: Gram = 0.2;
const LEAST_LEAD_MM: Mm = 1.5;
export const MOST_HOLES = 3;

/** What a hole does to the wood round it, beside its lead. */
export interface Filling {
  readonly wood: GramPerMm3;
  readonly plug: GramPerMm3;
  /** Sealer that is given as a share of the wood goes with it: so much of it, and it lies there. */
  readonly soakShare: number;
  readonly soakCentre: Vec3;
}

/** No lead in holes of a lane so deep or deeper can lie lower, along the aim's upright: it reaches down to its wall. */
export function lowestFrom({ stations, from }: Lane, depth: Mm, { up }: Need): Mm {
  let least = Number.POSITIVE_INFINITY;
  for (const { at, leadFrom, depthTo } of stations) {
    if (depth > depthTo + 1e-9) continue;
    const sunk = from === 'flanks' ? 0 : Math.min(up[2], 1) * ((Math.max(depth, leadFrom) + leadFrom) / 2);
    least = Math.min(least, dot(at, up) + sunk);
  }
  return least;
}

/** From the shallowest that holds any lead to the deepest. */
export function depthsOf(lane: Lane): readonly Mm[] {
  const first = firstDepth(lane);
  const last = Math.floor(Math.max(...lane.stations.map(({ depthTo }) => depthTo)) / DEPTH_MM + 1e-9) * DEPTH_MM;
  return Array.from({ length: Math.max(0, Math.round((last - first) / DEPTH_MM) + 1) }, (_, i) => first + i * DEPTH_MM);
}

function firstDepth({ stations }: Lane): Mm {
  const least = Math.min(...stations.map(({ leadFrom }) => leadFrom)) + LEAST_LEAD_MM;
  return Math.ceil(least / DEPTH_MM - 1e-9) * DEPTH_MM;
}

/** One lane drilled to one depth: what each station would take and bring, in units of lead. */
export interface Cut {
  readonly lane: Lane;
  readonly depth: Mm;
  /** From nose to tail. */
  readonly seats: readonly Seat[];
  /** Net weight of a unit of lead that takes a plug's place. */
  readonly unit: Gram;
}

/** c0 + c1 k + c2 k² for k units of lead, which reach up from the hole's floor. */
type Quadratic = readonly [number, number, number];

export interface Seat {
  readonly station: Station;
  readonly least: number;
  readonly most: number;
  /** Net weight of the hole without lead: wood out, plug in. */
  readonly empty: Gram;
  /** Moment along the aim about the need's point, and moment of height, of all that is put in. */
  readonly moment: Quadratic;
  readonly rise: Quadratic;
  /** Units times the height of their centre over the need's point. */
  readonly raised: Quadratic;
  /** The lowest that its lead can lie: all of it. */
  readonly lowest: Mm;
}

export function at([c0, c1, c2]: Quadratic, k: number): number {
  return c0 + k * (c1 + k * c2);
}

/** The most net weight that fits into one of some lanes, wherever it stands: the fullest holes, as close as they go. */
export function mostLead(lanes: readonly Lane[], need: Need, filling: Filling): Gram {
  const ways = lanes.flatMap((lane) =>
    depthsOf(lane).map((depth) => ({ lane, depth, bound: bringsAtMost(lane, depth, filling, MOST_HOLES) })),
  );
  let best = 0;
  for (const { lane, depth, bound } of ways.toSorted((a, b) => b.bound - a.bound)) {
    if (bound <= best) break;
    const { seats, unit } = cutAt(lane, depth, need, filling);
    const chosen: Seat[] = [];
    for (const seat of seats.toSorted((a, b) => b.most - a.most)) {
      const isClear = chosen.every(({ station }) => Math.abs(station.x - seat.station.x) >= lane.spacing);
      if (isClear && chosen.length < MOST_HOLES) chosen.push(seat);
    }
    const net = chosen.reduce((sum, { empty, most }) => sum + empty + most * unit, 0);
    best = Math.max(best, net);
  }
  return best;
}

/** Lays out a lane at a depth: which stations take a hole so deep, and what lead in it does. */
export function cutAt(lane: Lane, depth: Mm, need: Need, filling: Filling): Cut {
  const { drill, from, stations } = lane;
  const pair = from === 'flanks' ? 2 : 1;
  const unit = unitOf(lane, filling);
  const { inPoint, perMm } = fillingOf(lane);
  const point = pointHeight(drill);
  // k units lie k · t from the mouth: those of the point, then a column that grows towards the mouth
  const sunk: Quadratic = [
    inPoint * (depth + point / 4) - inPoint * depth - (inPoint * inPoint) / (2 * perMm),
    depth + inPoint / perMm,
    -1 / (2 * perMm),
  ];
  const least = Math.max(Math.ceil(LEAST_LEAD_G / LEAD_G - 1e-9), Math.ceil(inPoint + LEAST_LEAD_MM * perMm - 1e-9));
  const inward: Vec3 = from === 'flanks' ? [0, 0, 0] : [0, 0, 1];
  const [inAlong, inUp] = [dot(inward, need.along), dot(inward, need.up)];
  const woodOut = filling.wood * (1 + filling.soakShare);
  const seats: Seat[] = [];
  for (const station of stations) {
    if (depth > station.depthTo + 1e-9) continue;
    const most = Math.floor(inPoint + (depth - station.leadFrom) * perMm + 1e-9);
    if (most < least) continue;
    const taken = bothFlanks(takenOut(station.mouth(), depth, point), pair);
    const soaked = -filling.wood * filling.soakShare * taken.volume;
    const empty = (direction: Vec3) =>
      (filling.plug - filling.wood) * (dot(taken.moment, direction) - taken.volume * dot(need.about, direction)) +
      soaked * dot(subtract(filling.soakCentre, need.about), direction);
    const from0 = subtract(station.at, need.about);
    const [x, z] = [dot(from0, need.along), dot(from0, need.up)];
    const column = (base: number, arm: Mm, share: number, per: Gram): Quadratic => [
      base + per * share * sunk[0],
      per * (arm + share * sunk[1]),
      per * share * sunk[2],
    ];
    const raised = column(0, z, inUp, 1);
    seats.push({
      station,
      least,
      most,
      empty: taken.volume * (filling.plug - woodOut),
      moment: column(empty(need.along), x, inAlong, unit),
      rise: column(empty(need.up), z, inUp, unit),
      raised,
      lowest: at(raised, most) / most,
    });
  }
  return { lane, depth, seats, unit };
}

/**
 * What so many of the roomiest holes of a lane at a depth could bring. On the safe side, and without the mouths of the
 * holes, which are dear: as if the skin took nothing off their plugs.
 */
export function bringsAtMost(lane: Lane, depth: Mm, filling: Filling, count: number): Gram {
  const pair = lane.from === 'flanks' ? 2 : 1;
  const { inPoint, perMm } = fillingOf(lane);
  // the roomiest, the next and the one after that
  let [first, second, third] = [0, 0, 0];
  for (const { leadFrom, depthTo } of lane.stations) {
    const room = depth <= depthTo + 1e-9 ? inPoint + (depth - leadFrom) * perMm : 0;
    if (room > first) [first, second, third] = [room, first, second];
    else if (room > second) [second, third] = [room, second];
    else if (room > third) third = room;
  }
  const units = first + (count > 1 ? second : 0) + (count > 2 ? third : 0);
  const { diameter } = lane.drill;
  const hole = (Math.PI / 4) * diameter ** 2 * (depth + pointHeight(lane.drill) / 3);
  const plugs = pair * count * hole * Math.max(0, filling.plug - filling.wood * (1 + filling.soakShare));
  return units * unitOf(lane, filling) + plugs;
}

/** Net weight of a unit of lead that takes a plug's place; of a pair from the flanks, a unit in each. */
export function unitOf({ stock, from }: Lane, { plug }: Filling): Gram {
  return (from === 'flanks' ? 2 : 1) * LEAD_G * (1 - plug / stock.density);
}

/** How lead fills a hole of a lane: units in the drill's point, which what is poured fills first, and units for each mm. */
function fillingOf({ stock, drill }: Lane): { readonly inPoint: number; readonly perMm: number } {
  const point = pointHeight(drill);
  const radius = (stock.kind === 'slug' ? stock.diameter : drill.diameter) / 2;
  const perMm = (Math.PI * radius * radius * stock.density) / LEAD_G;
  return { inPoint: stock.kind === 'slug' ? 0 : (perMm * point) / 3, perMm };
}

/** Two holes from either flank are one on the centre plane as far as trim and height go. */
function onMiddle(at: Vec3, pair: number): Vec3 {
  return pair === 2 ? [at[0], 0, at[2]] : at;
}

function bothFlanks(taken: Part, pair: number): Part {
  return { volume: pair * taken.volume, moment: scale(onMiddle(taken.moment, pair), pair) };
}
