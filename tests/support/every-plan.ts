import { DEPTH_MM, type Filling, LEAD_G } from '../../sim/ballast/drilling.ts';
import type { Need } from '../../sim/ballast/need.ts';
import type { Lane, Station } from '../../sim/ballast/room.ts';
import type { Hole } from '../../sim/design/design.ts';
import type { Hull } from '../../sim/hull/hull.ts';
import { fillHole, holeMouth, type Mouth } from '../../sim/mass/hole.ts';
import { dot, subtract, type Vec3 } from '../../sim/numerics/vec3.ts';

const DEGREE = Math.PI / 180;
/** What a plan may leave of trim: the first that any plan comes to. */
const TRIM_STEPS = [0.3, 1, 2].map((degrees) => degrees * DEGREE);
/** A lead that is no more than this higher than the lowest lies as low. */
const AS_LOW = 0.5;

/** What one hole, or a pair, puts in: plain sums over wood, plug, lead and sealer. */
export interface Put {
  readonly units: number;
  readonly net: number;
  readonly along: number;
  readonly up: number;
  readonly lead: number;
  /** Grams of lead times their height. */
  readonly raised: number;
}

/** One station drilled to one depth, with every number of units that it may hold. */
interface Drilled {
  readonly x: number;
  readonly empty: number;
  readonly puts: readonly Put[];
}

function mouthsOf(hull: Hull, lane: Lane, station: Station): readonly Mouth[] {
  if (lane.from === 'belly') return [station.mouth()];
  return (['starboard', 'port'] as const).map(
    (from) => holeMouth(hull, { from, x: station.x, across: lane.row, diameter: lane.drill.diameter }) as Mouth,
  );
}

function holeOf(lane: Lane, x: number, depth: number, mass: number | null): Hole {
  return {
    name: 'h',
    from: 'belly',
    x,
    across: lane.row,
    diameter: lane.drill.diameter,
    depth,
    point: lane.drill.point,
    lead: mass === null ? null : { stock: lane.stock, mass },
    air: null,
    plugDensity: 0,
    done: false,
  };
}

/** One station of a lane drilled to a depth. */
export function drilledAt(
  hull: Hull,
  lane: Lane,
  station: Station,
  depth: number,
  need: Need,
  filling: Filling,
): Drilled {
  const mouths = mouthsOf(hull, lane, station);
  const put = (units: number | null): Put & { readonly from: number; readonly to: number } => {
    let [net, along, up, lead, raised, from, to] = [0, 0, 0, 0, 0, 0, depth];
    for (const mouth of mouths) {
      const hole = { ...holeOf(lane, station.x, depth, units && units * LEAD_G), plugDensity: filling.plug };
      const placed = fillHole(mouth, hole, 0);
      const weigh = (mass: number, at: Vec3) => {
        net += mass;
        along += mass * dot(subtract(at, need.about), need.along);
        up += mass * dot(subtract(at, need.about), need.up);
      };
      weigh(-placed.volume * filling.wood, placed.centre);
      weigh(-placed.volume * filling.wood * filling.soakShare, filling.soakCentre);
      weigh(placed.plug.mass, placed.plug.centre);
      if (!placed.lead) continue;
      weigh(placed.lead.mass, placed.lead.centre);
      lead += placed.lead.mass;
      raised += placed.lead.mass * dot(placed.lead.centre, need.up);
      // of what fills the point too, what stands over the shoulder counts
      [from, to] = [placed.lead.from, Math.min(placed.lead.to, depth)];
    }
    return { units: units ?? 0, net, along, up, lead, raised, from, to };
  };
  const puts: Put[] = [];
  for (let units = 2; ; units++) {
    const one = put(units);
    if (one.from < station.leadFrom - 1e-9) break;
    if (one.to - one.from >= 1.5 - 1e-9) puts.push(one);
  }
  return { x: station.x, empty: put(null).net, puts };
}

export interface Found {
  readonly count: number;
  readonly height: number;
}

/** Every plan there is, one by one, and the best of them by the order that makers were promised. */
export function bestByTrying(hull: Hull, lanes: readonly Lane[], need: Need, filling: Filling): Found | null {
  // the lowest of each number of holes, for each step of trim
  const best = TRIM_STEPS.map(() => [1, 2, 3].map(() => Number.POSITIVE_INFINITY));
  const deepest = Math.max(...lanes.flatMap(({ stations }) => stations.map(({ depthTo }) => depthTo)));
  for (const lane of lanes) {
    const unit = (lane.from === 'flanks' ? 2 : 1) * LEAD_G * (1 - filling.plug / lane.stock.density);
    for (let depth = DEPTH_MM; depth <= deepest; depth += DEPTH_MM) {
      const holes = lane.stations
        .filter(({ depthTo }) => depth <= depthTo)
        .map((station) => drilledAt(hull, lane, station, depth, need, filling))
        .filter(({ puts }) => puts.length > 0);
      const judge = (chosen: readonly Put[]) => {
        let [along, up, lead, raised] = [-need.moment.along, 0, 0, 0];
        for (const one of chosen) {
          along += one.along;
          up += one.up;
          lead += one.lead;
          raised += one.raised;
        }
        if (need.stiffness.heel - up <= 0 || need.stiffness.trim - up <= 0) return;
        const left = Math.abs(Math.atan2(along, need.stiffness.trim - up));
        TRIM_STEPS.forEach((step, i) => {
          const count = chosen.length - 1;
          if (left <= step && raised / lead < best[i][count]) best[i][count] = raised / lead;
        });
      };
      const share = (chosen: readonly Drilled[], total: number, taken: readonly Put[]) => {
        const [hole, ...rest] = chosen;
        for (const one of hole.puts) {
          if (rest.length > 0) share(rest, total - one.units, [...taken, one]);
          else if (one.units === total) judge([...taken, one]);
        }
      };
      const choose = (from: number, chosen: readonly Drilled[]) => {
        if (chosen.length > 0) {
          const empty = chosen.reduce((sum, hole) => sum + hole.empty, 0);
          share(chosen, Math.round((need.net - empty) / unit), []);
        }
        if (chosen.length === 3) return;
        for (let i = from; i < holes.length; i++) {
          const last = chosen.at(-1);
          if (!last || holes[i].x - last.x >= lane.spacing) choose(i + 1, [...chosen, holes[i]]);
        }
      };
      choose(0, []);
    }
  }
  for (const heights of best) {
    const lowest = Math.min(...heights);
    const fewest = heights.findIndex((height) => height <= lowest + AS_LOW);
    if (Number.isFinite(lowest)) return { count: fewest + 1, height: heights[fewest] };
  }
  return null;
}
