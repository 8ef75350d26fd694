import type { FloatingBody } from '../hydro/body.ts';
import { potentialAt } from '../hydro/potential.ts';
import { add, cross, dot, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm, Radian } from '../units/brand.ts';
import type { Hinge } from './hinge.ts';
import { IN_PLACE, type Pose, pointAt, slid, tilted, turned } from './pose.ts';

/** A push upwards that moves with its link: drag, in the fall. */
export interface Lift {
  readonly force: Gram;
  readonly at: Vec3;
}

/** What floats together: links from nose to tail, and a hinge between each two. */
export interface Chain {
  readonly bodies: readonly FloatingBody[];
  readonly hinges: readonly Hinge[];
  /** One of each link, or none at all. */
  readonly lifts: readonly Lift[];
}

/** What a joint is doing, in the frame of the link that holds the pin. */
export interface JointState {
  /** The aft link's tail to starboard is positive. */
  readonly yaw: Radian;
  /** Of the other link's loops: off the pin, up it, and turned about y and x. */
  readonly shift: readonly [Mm, Mm];
  readonly rise: Mm;
  readonly pitch: Radian;
  readonly roll: Radian;
}

export const AT_EASE: JointState = { yaw: 0, shift: [0, 0], rise: 0, pitch: 0, roll: 0 };

export interface ChainState {
  /** Of the link at the nose. */
  readonly root: Pose;
  readonly joints: readonly JointState[];
}

/** What a coordinate moves, as a slow turn about the world's origin and a slide: p goes to p + turn × p + slide. */
interface Twist {
  readonly turn: Vec3;
  readonly slide: Vec3;
}

/** Coordinates of the root, and of each joint behind them; in this order along a joint that the fore link holds. */
export const ROOT = { heave: 0, tiltX: 1, tiltY: 2, size: 3 } as const;
export const JOINT = { shiftX: 0, shiftY: 1, rise: 2, pitch: 3, roll: 4, yaw: 5, size: 6 } as const;
const NO_TURN: Vec3 = [0, 0, 0];

/** Up-vector and offset of the water, in the frame of a link. */
export function waterOf({ x, y, z, origin }: Pose): { readonly up: Vec3; readonly offset: Mm } {
  // + 0 turns -0 into 0
  return { up: [x[2] + 0, y[2] + 0, z[2] + 0], offset: -origin[2] + 0 };
}

/** A state in which all is straight, in water of a straight bait. Which way it looks over the water does not matter. */
export function straightIn(up: Vec3, offset: Mm, joints: number): ChainState {
  const lean = Math.hypot(up[0], up[1]);
  let root: Pose = { ...IN_PLACE };
  if (lean > 0 || up[2] < 0) {
    // turned about the level line square to `up`, by the angle between it and the body's z
    const angle = Math.atan2(lean, up[2]);
    const axis: Vec3 = lean > 0 ? [up[1] / lean, -up[0] / lean, 0] : [1, 0, 0];
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const spin = (p: Vec3): Vec3 => {
      const e = cross(axis, p);
      const along = dot(axis, p);
      return [0, 1, 2].map((i) => p[i] * c + e[i] * s + axis[i] * along * (1 - c)) as unknown as Vec3;
    };
    root = { x: spin([1, 0, 0]), y: spin([0, 1, 0]), z: spin([0, 0, 1]), origin: [0, 0, 0] };
  }
  return { root: { ...root, origin: [0, 0, -offset] }, joints: Array.from({ length: joints }, () => AT_EASE) };
}

/** The steps from a link's pose to that of the next aft, each about or along one axis, and the coordinate it is. */
type Step = readonly [kind: 'slid' | 'turned', axis: 'x' | 'y' | 'z', by: number, coordinate: number, sign: 1 | -1];

function stepsOf({ holder }: Hinge, { yaw, shift, rise, pitch, roll }: JointState): readonly Step[] {
  const play: readonly Step[] = [
    ['slid', 'x', shift[0], JOINT.shiftX, 1],
    ['slid', 'y', shift[1], JOINT.shiftY, 1],
    ['slid', 'z', rise, JOINT.rise, 1],
    ['turned', 'y', pitch, JOINT.pitch, 1],
    ['turned', 'x', roll, JOINT.roll, 1],
  ];
  if (holder === 'fore') return [...play, ['turned', 'z', yaw, JOINT.yaw, 1]];
  // seen from the fore link, what the aft one holds is undone from its end
  const undone = play.toReversed().map(([kind, axis, by, at]): Step => [kind, axis, -by, at, -1]);
  return [['turned', 'z', yaw, JOINT.yaw, 1], ...undone];
}

/** Poses of all links. */
function posesOf(hinges: readonly Hinge[], { root, joints }: ChainState): readonly Pose[] {
  const poses = [root];
  hinges.forEach((hinge, j) => {
    let at = shifted(poses[j], hinge.pivot, 1);
    for (const [kind, axis, by] of stepsOf(hinge, joints[j]))
      at = kind === 'slid' ? slid(at, axis, by) : turned(at, axis, by);
    poses.push(shifted(at, hinge.pivot, -1));
  });
  return poses;
}

function shifted(pose: Pose, by: Vec3, sign: 1 | -1): Pose {
  return { ...pose, origin: pointAt(pose, [sign * by[0], sign * by[1], sign * by[2]]) };
}

/**
 * How the weight of a link, less what it displaces, pulls on heights: moment (x, y, z) and sum, about the world's origin;
 * and the waterplane's second moments xx, xy, yy, its first x, y and its area, times the density of water.
 */
interface Pull {
  readonly value: GramMm;
  readonly moment: Vec3;
  readonly sum: Gram;
  readonly plane: readonly [number, number, number, number, number, number];
}

function pullOf(body: FloatingBody, pose: Pose, lift: Lift | undefined): Pull {
  const { up, offset } = waterOf(pose);
  // the world's level axes, written in the frame of the link
  const u: Vec3 = [pose.x[0], pose.y[0], pose.z[0]];
  const v: Vec3 = [pose.x[1], pose.y[1], pose.z[1]];
  const p = potentialAt(body, up, u, v, offset);
  const [cx, cy, cz] = pointAt(pose, p.centre);
  // Φ is of the first degree in heights: Φ = n·(mG - ρM) + (m - ρV)(n·c - d) about any point c
  const upright = p.value + p.force * cz;
  const sum = -p.force;
  const area = p.curveDD;
  let moment: Vec3 = [p.slopeU + sum * cx, p.slopeV + sum * cy, upright + sum * cz];
  let [value, total] = [p.value, sum];
  if (lift) {
    const at = pointAt(pose, lift.at);
    value -= lift.force * at[2];
    moment = [moment[0] - lift.force * at[0], moment[1] - lift.force * at[1], moment[2] - lift.force * at[2]];
    total -= lift.force;
  }
  return {
    value,
    moment,
    sum: total,
    plane: [
      p.curveUU + upright + area * cx * cx,
      p.curveUV + area * cx * cy,
      p.curveVV + upright + area * cy * cy,
      area * cx,
      area * cy,
      area,
    ],
  };
}

/** Energy of a chain, how it changes with every coordinate, and how that does. */
export interface Ground {
  readonly value: GramMm;
  readonly slope: Float64Array;
  /** Symmetric, row by row. */
  readonly curve: Float64Array;
  readonly poses: readonly Pose[];
  readonly pulls: readonly Pull[];
  /** What the root tilts about. */
  readonly about: Vec3;
}

/** Energy alone. */
export function energyOf({ bodies, hinges, lifts }: Chain, state: ChainState): GramMm {
  return posesOf(hinges, state).reduce((sum, pose, i) => sum + pullOf(bodies[i], pose, lifts[i]).value, 0);
}

/**
 * Energy with its first and second derivatives. Each coordinate turns and slides all that is aft of it, after those nearer
 * to the nose: p ↦ exp(A₁) exp(A₂) … p. The height of a point so has slope e·A_a p, and curvature e·A_a A_b p for a before
 * b; weights and buoyancies are summed over the links aft of both, and the waterplane adds ρ∫ (e·A_a p)(e·A_b p) dA.
 * Exact, at any yaw. Derived for this project.
 */
export function groundOf({ bodies, hinges, lifts }: Chain, state: ChainState): Ground {
  const poses = posesOf(hinges, state);
  const pulls = poses.map((pose, i) => pullOf(bodies[i], pose, lifts[i]));
  const count = ROOT.size + JOINT.size * hinges.length;
  const about = tiltingPoint(bodies, poses, pulls);
  const twists = twistsOf(hinges, state, poses, about);

  // summed from the tail: what hangs on each joint
  const behind = pulls.map(() => new Float64Array(10));
  for (let i = pulls.length - 1; i >= 0; i--) {
    const { moment, sum, plane } = pulls[i];
    const own = behind[i];
    own.set([...moment, sum, ...plane]);
    const next = behind[i + 1];
    if (next) for (let k = 0; k < 10; k++) own[k] += next[k];
  }

  const slope = new Float64Array(count);
  const curve = new Float64Array(count * count);
  // A_a A_b p for a before b along the chain; twists are listed in that order, `slot` is where each is told
  for (let b = 0; b < twists.length; b++) {
    const { twist: tb, link, slot: sb } = twists[b];
    const on = behind[link];
    const [mx, my, mz, sum, xx, xy, yy, fx, fy, area] = on;
    const rowB: Vec3 = [-tb.turn[1], tb.turn[0], tb.slide[2]];
    slope[sb] = rowB[0] * mx + rowB[1] * my + rowB[2] * sum;
    const moved = cross(tb.turn, [mx, my, mz]);
    const movedX = moved[0] + tb.slide[0] * sum;
    const movedY = moved[1] + tb.slide[1] * sum;
    const planeX = xx * rowB[0] + xy * rowB[1] + fx * rowB[2];
    const planeY = xy * rowB[0] + yy * rowB[1] + fy * rowB[2];
    const plane1 = fx * rowB[0] + fy * rowB[1] + area * rowB[2];
    for (let a = 0; a <= b; a++) {
      const { twist: ta, slot: sa } = twists[a];
      const [ax, ay, az] = [-ta.turn[1], ta.turn[0], ta.slide[2]];
      const value = ax * movedX + ay * movedY + ax * planeX + ay * planeY + az * plane1;
      curve[sa * count + sb] = value;
      curve[sb * count + sa] = value;
    }
  }
  const value = pulls.reduce((sum, pull) => sum + pull.value, 0);
  return { value, slope, curve, poses, pulls, about };
}

/** The middle of all waterplanes; of what is wholly under, the centre of its mass. */
function tiltingPoint(bodies: Chain['bodies'], poses: readonly Pose[], pulls: readonly Pull[]): Vec3 {
  let [x, y, area] = [0, 0, 0];
  for (const { plane } of pulls) {
    x += plane[3];
    y += plane[4];
    area += plane[5];
  }
  if (area > 0) return [x / area, y / area, 0];
  const mass = bodies.reduce((sum, body) => sum + body.mass, 0);
  return bodies.reduce<Vec3>(
    (sum, body, i) => add(sum, scale(pointAt(poses[i], body.centre), body.mass / mass)),
    [0, 0, 0],
  );
}

/** Every coordinate's twist, in the order in which they act from the nose; link: the first that it moves. */
function twistsOf(hinges: readonly Hinge[], { joints }: ChainState, poses: readonly Pose[], about: Vec3) {
  const twists: { readonly twist: Twist; readonly link: number; readonly slot: number }[] = [
    { twist: { turn: NO_TURN, slide: [0, 0, 1] }, link: 0, slot: ROOT.heave },
    { twist: turnAbout([1, 0, 0], about), link: 0, slot: ROOT.tiltX },
    { twist: turnAbout([0, 1, 0], about), link: 0, slot: ROOT.tiltY },
  ];
  hinges.forEach((hinge, j) => {
    let at = shifted(poses[j], hinge.pivot, 1);
    for (const [kind, axis, by, coordinate, sign] of stepsOf(hinge, joints[j])) {
      const e = at[axis];
      const way: Vec3 = sign === 1 ? e : [-e[0], -e[1], -e[2]];
      const twist = kind === 'slid' ? { turn: NO_TURN, slide: way } : turnAbout(way, at.origin);
      twists.push({ twist, link: j + 1, slot: ROOT.size + JOINT.size * j + coordinate });
      at = kind === 'slid' ? slid(at, axis, by) : turned(at, axis, by);
    }
  });
  return twists;
}

function turnAbout(axis: Vec3, point: Vec3): Twist {
  return { turn: axis, slide: cross(point, axis) };
}

/** The state after a step of every coordinate; root tilts are about `about`. */
export function stepped(state: ChainState, about: Vec3, step: ArrayLike<number>): ChainState {
  let root = tilted(state.root, 'y', step[ROOT.tiltY], about);
  root = tilted(root, 'x', step[ROOT.tiltX], about);
  const [x, y, z] = root.origin;
  return {
    root: { ...root, origin: [x, y, z + step[ROOT.heave]] },
    joints: state.joints.map(({ yaw, shift, rise, pitch, roll }, j) => {
      const at = ROOT.size + JOINT.size * j;
      return {
        yaw: yaw + step[at + JOINT.yaw],
        shift: [shift[0] + step[at + JOINT.shiftX], shift[1] + step[at + JOINT.shiftY]],
        rise: rise + step[at + JOINT.rise],
        pitch: pitch + step[at + JOINT.pitch],
        roll: roll + step[at + JOINT.roll],
      };
    }),
  };
}
