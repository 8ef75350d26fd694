import { heelOf, trimOf } from '../frames.ts';
import { totalsOf } from '../hydro/body.ts';
import { lowestMode, solveDefinite } from '../numerics/symmetric.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { GramMm, Mm, Radian } from '../units/brand.ts';
import { type Hinge, slopOf, type YawRange } from './hinge.ts';
import { loadsOf, type PinLoad } from './loads.ts';
import type { Pose } from './pose.ts';
import { loosened, type Settled, settle, type Yaws } from './settle.ts';
import { AT_EASE, type Chain, type ChainState, JOINT, type JointState, ROOT, straightIn, waterOf } from './system.ts';

/** What a joint's play is used up by. */
export type Stop = 'loops' | 'slot floor' | 'slot roof' | 'port' | 'starboard';

/** How a joint stands in a resting bait. */
export interface JointRest {
  /** The aft link's tail to starboard is positive. */
  readonly yaw: Radian;
  /** The joint lower than the ends of its links is positive. */
  readonly sag: Radian;
  /** The aft link further over to starboard than the fore one is positive. */
  readonly lean: Radian;
  /** The loops off the pin along x and y, and up it, in the frame of the link that holds the pin. */
  readonly shift: readonly [Mm, Mm];
  readonly rise: Mm;
  readonly load: PinLoad;
  /** How far its loops let it sag or lean; null: a single loop, which bears no moment. */
  readonly slop: Radian | null;
  /** What it leans on. */
  readonly stops: readonly Stop[];
}

/** A jointed bait at rest. */
export interface Assembly {
  /** Up-vector and offset of the water for each link, in the link's own frame. offset: null under water. */
  readonly links: readonly {
    readonly up: Vec3;
    readonly offset: Mm | null;
    readonly trim: Radian;
    readonly heel: Radian;
  }[];
  readonly joints: readonly JointRest[];
  /** Where each link is over the water, for who draws it. */
  readonly poses: readonly Pose[];
  readonly energy: GramMm;
  readonly converged: boolean;
  readonly passes: number;
}

/** What a jointed bait does in the water. */
export interface Assembled {
  /** With all joints held straight. */
  readonly straight: Assembly;
  /** With joints free; null: it stays straight. */
  readonly loose: Assembly | null;
  /**
   * How the energy of the straight bait curves over its yaws, of the way it curves least: below nothing it curls by
   * itself. null: no joint turns.
   */
  readonly yawCurve: GramMm | null;
  /** Heel below which friction keeps each joint from turning: asin(2 μ r/h); null: a single loop. */
  readonly friction: readonly (Radian | null)[];
}

export interface ChainStart {
  /** Of the bait in one piece; offset null: it is under water. */
  readonly up: Vec3;
  readonly offset: Mm | null;
}

/** Steel on steel, wet. Common practice, from memory: 0.2 to 0.4. */
const FRICTION = 0.3;
/** As deep as no bait reaches: nothing of it is near the surface. */
const DEEP_MM: Mm = 1000;
/** A stop is leant on where less of the room to it is left than that. */
const TOUCHING = 1e-3;
/** A curl that lifts the bait by less than that is none: no water is so still. */
const LEVEL_MM: Mm = 1e-4;
/** So far off straight, of what it reaches, before it is let go. */
const NUDGE: Radian = 0.03;
/** It begins no nearer to a stop than that, of what it reaches to both sides. */
const CLEAR_OF_STOP = 0.02;
/** Walls of the second round: soft enough to leave them, hard enough not to push the bait about. */
export const SOFT_AGAIN = 1e-3;

/** A share of the drag of a bait that sinks, and where it acts. */
export interface Drag {
  readonly share: number;
  readonly at: Vec3;
}

/**
 * Links and hinges as one. What a bait under water weighs more than its water is borne by drag as it falls, each link's
 * share at its own centre; one that hangs has next to nothing, shared by what the links displace.
 */
export function chainOf(
  bodies: Chain['bodies'],
  hinges: readonly Hinge[],
  isUnder: boolean,
  drags: readonly Drag[] | null,
): Chain {
  if (!isUnder) return { bodies, hinges, lifts: [] };
  const totals = bodies.map(totalsOf);
  const net = totals.reduce((sum, { mass, volume }, i) => sum + mass - bodies[i].waterDensity * volume, 0);
  const volume = totals.reduce((sum, each) => sum + each.volume, 0);
  const shares = drags ?? totals.map((each): Drag => ({ share: each.volume / volume, at: each.volumeCentre }));
  return { bodies, hinges, lifts: shares.map(({ share, at }) => ({ force: share * net, at })) };
}

/** How a bait in several links rests, straight and let go. `reach`: of each joint. */
export function assemble(chain: Chain, start: ChainStart, reach: readonly YawRange[]): Assembled {
  const straight = settle(chain, startOf(chain, start), 'held', start.offset !== null);
  const mass = massOf(chain);
  const curve = yawCurve(straight, reach);
  const told = assemblyOf(chain, straight, 'held', start);
  const shared = { straight: told, friction: chain.hinges.map(frictionOf) };
  const slope = curve ? Math.max(...curve.turning.map((k) => Math.abs(straight.ground.slope[k]))) : 0;
  const isLevel = curve === null || (curve.value > -LEVEL_MM * mass && slope < LEVEL_MM * mass);
  if (curve === null || isLevel) return { ...shared, loose: null, yawCurve: curve?.value ?? null };
  // let go to starboard: what curls either way curls its mirror image's way as well
  const sign = curve.mode.reduce((sum, each) => sum + each, 0) < 0 ? -1 : 1;
  const eased = loosened(chain.hinges, straight.state);
  const joints = eased.joints.map((joint, j): JointState => {
    const at = curve.joints.indexOf(j);
    if (at < 0) return joint;
    const { port, starboard } = reach[j];
    const wanted = joint.yaw + sign * curve.mode[at] * NUDGE;
    // clear of its stops, of which one may be where it is straight
    const off = CLEAR_OF_STOP * (port + starboard);
    return { ...joint, yaw: Math.min(starboard - off, Math.max(off - port, wanted)) };
  });
  const loose = settle(chain, { ...eased, joints }, reach, start.offset !== null, SOFT_AGAIN);
  return { ...shared, loose: assemblyOf(chain, loose, reach, start), yawCurve: curve.value };
}

/** Straight, each loop well inside its room. */
export function startOf({ hinges }: Chain, { up, offset }: ChainStart): ChainState {
  const state = straightIn(up, offset ?? DEEP_MM, hinges.length);
  const joints = hinges.map(({ rise: [down, high] }): JointState => {
    const isInside = Math.min(down, high) > 0.01 * (down + high);
    return isInside ? AT_EASE : { ...AT_EASE, rise: (high - down) / 2 };
  });
  return { ...state, joints };
}

function massOf({ bodies }: Chain): number {
  return bodies.reduce((sum, body) => sum + totalsOf(body).mass, 0);
}

/** Heel of the link that heels most. */
export function mostHeel({ links }: Pick<Assembly, 'links'>): Radian {
  return links.reduce((most, { heel }) => (Math.abs(heel) > Math.abs(most) ? heel : most), 0);
}

/** What a settled chain comes to in words of the bait. */
export function assemblyOf(
  chain: Chain,
  { state, ground, converged, passes }: Settled,
  yaws: Yaws,
  start: ChainStart,
): Assembly {
  const loads = loadsOf(chain.hinges, ground);
  const links = ground.poses.map((pose) => {
    const { up, offset } = waterOf(pose);
    return { up, offset: start.offset === null ? null : offset, trim: trimOf(up), heel: heelOf(up) };
  });
  const joints = chain.hinges.map((hinge, j): JointRest => {
    const { yaw, shift, rise, pitch, roll } = state.joints[j];
    // the play is that of the aft link where the fore one holds the pin, else the other way round
    const way = hinge.holder === 'fore' ? -1 : 1;
    return {
      yaw,
      sag: way * pitch + 0,
      lean: way * roll + 0,
      shift,
      rise,
      load: loads[j],
      slop: slopOf(hinge),
      stops: stopsOf(hinge, state.joints[j], yaws === 'held' ? null : yaws[j]),
    };
  });
  return { links, joints, poses: ground.poses, energy: ground.value, converged, passes };
}

function stopsOf({ loops, room, rise, jam }: Hinge, state: JointState, reach: YawRange | null): readonly Stop[] {
  const { shift, pitch, roll, rise: risen, yaw } = state;
  const off = Math.max(...loops.map((z) => Math.hypot(shift[0] + z * pitch, shift[1] - z * roll)));
  const isJammed = Math.hypot(pitch, roll) > (1 - TOUCHING) * jam;
  const near = (left: number, whole: number) => whole > 0 && left < TOUCHING * whole;
  return [
    ...(room > 0 && (off > (1 - TOUCHING) * room || isJammed) ? (['loops'] as const) : []),
    ...(near(risen + rise[0], rise[0] + rise[1]) ? (['slot floor'] as const) : []),
    ...(near(rise[1] - risen, rise[0] + rise[1]) ? (['slot roof'] as const) : []),
    ...(reach && near(yaw + reach.port, reach.port + reach.starboard) ? (['port'] as const) : []),
    ...(reach && near(reach.starboard - yaw, reach.port + reach.starboard) ? (['starboard'] as const) : []),
  ];
}

function frictionOf(hinge: Hinge): Radian | null {
  const apart = Math.max(...hinge.loops) - Math.min(...hinge.loops);
  return apart > 0 ? Math.asin(Math.min(1, (2 * FRICTION * hinge.radius) / apart)) : null;
}

/**
 * The lowest curvature of the energy over the yaws with all else relaxed: H_yy - H_yo H_oo⁻¹ H_oy, walls counted as they
 * stand. Worked out by differences of the relaxed bait would be dearer and less exact.
 */
function yawCurve(settled: Settled, reach: readonly YawRange[]) {
  const joints = reach.flatMap(({ port, starboard }, j) => (port + starboard > 0 ? [j] : []));
  if (joints.length === 0) return null;
  const turning = joints.map((j) => ROOT.size + JOINT.size * j + JOINT.yaw);
  const { curve, count, free } = settled.stiff;
  const n = turning.length;
  const coupled = turning.map((k) => {
    const right = Float64Array.from(free, (a) => curve[a * count + k]);
    const matrix = Float64Array.from(free.flatMap((a) => free.map((b) => curve[a * count + b])));
    return { right, solved: solveDefinite(matrix, right) };
  });
  const relaxed = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < n; k++) {
      const through = coupled[k].solved;
      const taken = through ? coupled[i].right.reduce((sum, each, a) => sum + each * through[a], 0) : 0;
      relaxed[i * n + k] = settled.ground.curve[turning[i] * count + turning[k]] - taken;
    }
  }
  return { ...lowestMode(relaxed, n), joints, turning };
}
