import { totalsOf } from '../hydro/body.ts';
import { solveDefinite } from '../numerics/symmetric.ts';
import type { GramMm, Mm, Radian } from '../units/brand.ts';
import type { Hinge, YawRange } from './hinge.ts';
import { type Chain, type ChainState, type Ground, groundOf, JOINT, ROOT, stepped } from './system.ts';

/** How yaw is treated: held where the start has it, or free within reach. */
export type Yaws = 'held' | readonly YawRange[];

export interface Settled {
  readonly state: ChainState;
  readonly ground: Ground;
  /** Curvature with the walls as they stand at the end, row by row, and the coordinates that were free. */
  readonly stiff: { readonly curve: Float64Array; readonly count: number; readonly free: readonly number[] };
  readonly converged: boolean;
  /** Passes over all links. */
  readonly passes: number;
}

/**
 * Walls begin as soft as this, a share of weight times 1 mm, and each round makes them ten times harder; the last leaves
 * a contact that bears 1 g·mm of moment on a bait of 100 g open by a millionth of a radian: harder ones drown in rounding.
 */
const SOFTEST = 1e-2;
const HARDEST = 1e-8;
const HARDER = 0.1;
/** No step uses up more of what is left to a wall. */
const NEARER = 0.8;
/** Longest turn of the whole or of a yaw in one step: short, so that it goes down into the valley it is in. */
const LONGEST: Radian = 0.12;
const MOST_STEPS = 400;
/** A room narrower than that is none, and its coordinates stay where they are. */
const LEAST_ROOM = 1e-9;
const ARMIJO = 1e-4;
const MOST_TRIES = 12;
const MOST_LOOKS = 4;
const LOOSER = 0.97;

/** The same state a little off its walls: from hard against one, a step along it is short. */
export function loosened(hinges: readonly Hinge[], { root, joints }: ChainState): ChainState {
  return {
    root,
    joints: joints.map(({ yaw, shift, rise, pitch, roll }, j) => {
      const middle = (hinges[j].rise[1] - hinges[j].rise[0]) / 2;
      return {
        yaw,
        shift: [LOOSER * shift[0], LOOSER * shift[1]],
        rise: middle + LOOSER * (rise - middle),
        pitch: LOOSER * pitch,
        roll: LOOSER * roll,
      };
    }),
  };
}

/** How wide a wall's inside is at a state, and how that changes with the coordinates of its joint. */
interface Wall {
  readonly inside: number;
  readonly at: readonly number[];
  readonly slope: readonly number[];
  /** Of the inside: concave, row by row over `at`. */
  readonly curve: readonly number[];
}

/**
 * A resting state of a chain from a start inside its walls, by Newton's method on the energy with a logarithmic barrier
 * at every wall (A. V. Fiacco, G. P. McCormick, Nonlinear Programming, 1968), made harder round by round. The energy is
 * not convex: where its curvature is not positive, or a step does not go down, steps are shortened as Levenberg and
 * Marquardt do. floats: it has a draft to find.
 */
export function settle(chain: Chain, start: ChainState, yaws: Yaws, floats: boolean, softest = SOFTEST): Settled {
  const { hinges } = chain;
  const mass = chain.bodies.reduce((sum, body) => sum + totalsOf(body).mass, 0);
  const count = ROOT.size + JOINT.size * hinges.length;
  const free = freeCoordinates(hinges, yaws, floats);
  const size = sizeOf(hinges);
  const scales = scalesOf(hinges.length, size);
  const longest = LONGEST * size;
  let state = start;
  let ground = groundOf(chain, state);
  let passes = 1;
  // of the sum of weights and buoyancies at their heights, what doubles leave
  const noise = 1e-15 * mass * (size + Math.abs(start.root.origin[2]));
  let radius = longest;
  let converged = false;
  let steps = 0;
  const told = (at: GramMm): Settled => {
    const { curve } = withWalls(ground, wallsAt(hinges, state, yaws), at, count);
    return { state, ground, stiff: { curve, count, free }, converged, passes };
  };
  for (let hardness = softest * mass; ; hardness *= HARDER) {
    let looks = 0;
    for (;;) {
      const walls = wallsAt(hinges, state, yaws);
      const model = modelOf(withWalls(ground, walls, hardness, count), free, scales);
      const step = boundedStep(model, radius, (1e-9 * mass) / size);
      // what a step may still gain is less than the softness of the walls, or than what rounding leaves of the energy
      if (step === null || step.gain <= Math.max(1e-2 * hardness, noise)) {
        // along a level valley a short radius finds too little: it is looked for further off before that is believed
        if (step && !step.isInside && radius < longest && looks < MOST_LOOKS) {
          radius = longest;
          looks++;
          continue;
        }
        converged = step !== null;
        break;
      }
      if (++steps > MOST_STEPS) return { ...told(hardness), converged: false };
      const move = new Float64Array(count);
      free.forEach((k, i) => {
        move[k] = step.at[i] * scales[k];
      });
      const here = ground.value + barrier(walls, hardness);
      let share = Math.min(1, shareOf(walls, move));
      let went = false;
      // Newton's own step is only shortened for the walls' sake; one into the unknown answers for its length
      for (let tries = 0; tries < (step.isInside ? MOST_TRIES : 1) && !went; tries++) {
        const by = share;
        const next = stepped(
          state,
          ground.about,
          move.map((each) => by * each),
        );
        const there = groundOf(chain, next);
        passes++;
        const gained = here - there.value - barrier(wallsAt(hinges, next, yaws), hardness);
        const promised = promiseOf(model, step.at, share);
        went = gained > ARMIJO * promised - noise;
        if (went) [state, ground] = [next, there];
        if (step.isInside) share /= 4;
        else if (!(gained > 0.25 * promised)) radius = (step.length * share) / 4;
        else if (gained > 0.75 * promised && share === 1) radius = Math.min(longest, 2 * radius);
      }
      if (!went && (step.isInside || radius < 1e-9 * longest)) break;
    }
    if (hardness <= HARDEST * mass) return told(hardness);
    // it was short for this round's walls
    radius = longest;
  }
}

function freeCoordinates(hinges: readonly Hinge[], yaws: Yaws, floats: boolean): readonly number[] {
  const free: number[] = floats ? [ROOT.heave, ROOT.tiltX, ROOT.tiltY] : [ROOT.tiltX, ROOT.tiltY];
  hinges.forEach(({ room, rise, jam }, j) => {
    const at = ROOT.size + JOINT.size * j;
    if (room > LEAST_ROOM) free.push(at + JOINT.shiftX, at + JOINT.shiftY);
    if (rise[0] + rise[1] > LEAST_ROOM) free.push(at + JOINT.rise);
    if (room > LEAST_ROOM && jam > LEAST_ROOM) free.push(at + JOINT.pitch, at + JOINT.roll);
    if (yaws !== 'held' && yaws[j].port + yaws[j].starboard > LEAST_ROOM) free.push(at + JOINT.yaw);
  });
  return free;
}

/** Half the length between the outermost joints, or what stands for it. */
function sizeOf(hinges: readonly Hinge[]): Mm {
  const xs = hinges.map(({ pivot }) => pivot[0]);
  return Math.max(20, (Math.max(...xs, 0) - Math.min(...xs, 0)) / 2);
}

/** What a coordinate is measured in, so that a step's size means something: turns by the way they move wood. */
function scalesOf(joints: number, size: Mm): Float64Array {
  const scales = new Float64Array(ROOT.size + JOINT.size * joints).fill(1);
  const turns = [JOINT.pitch, JOINT.roll, JOINT.yaw];
  for (const k of [ROOT.tiltX, ROOT.tiltY]) scales[k] = 1 / size;
  for (let j = 0; j < joints; j++) for (const k of turns) scales[ROOT.size + JOINT.size * j + k] = 1 / size;
  return scales;
}

/** Loops round pins, slots over and under them, and how far the joint reaches. */
function wallsAt(hinges: readonly Hinge[], state: ChainState, yaws: Yaws): readonly Wall[] {
  return hinges.flatMap(({ loops, room, rise, jam }, j): readonly Wall[] => {
    const at = ROOT.size + JOINT.size * j;
    const { yaw, shift, rise: risen, pitch, roll } = state.joints[j];
    const walls: Wall[] = [];
    if (room > LEAST_ROOM) {
      const names = [at + JOINT.shiftX, at + JOINT.shiftY, at + JOINT.pitch, at + JOINT.roll];
      for (const z of loops) {
        // a loop at height z goes off the pin by the shift and by z times (pitch, -roll)
        const [dx, dy] = [shift[0] + z * pitch, shift[1] - z * roll];
        const two = -2 / room ** 2;
        walls.push({
          inside: 1 - (dx * dx + dy * dy) / room ** 2,
          at: names,
          slope: [two * dx, two * dy, two * z * dx, -two * z * dy],
          curve: [two, 0, two * z, 0, 0, two, 0, -two * z, two * z, 0, two * z * z, 0, 0, -two * z, 0, two * z * z],
        });
      }
      const tight = -2 / jam ** 2;
      walls.push({
        inside: 1 - (pitch * pitch + roll * roll) / jam ** 2,
        at: [at + JOINT.pitch, at + JOINT.roll],
        slope: [tight * pitch, tight * roll],
        curve: [tight, 0, 0, tight],
      });
    }
    const [down, up] = rise;
    if (down + up > LEAST_ROOM) walls.push(...between(at + JOINT.rise, risen, -down, up));
    if (yaws !== 'held') {
      const { port, starboard } = yaws[j];
      if (port + starboard > LEAST_ROOM) walls.push(...between(at + JOINT.yaw, yaw, -port, starboard));
    }
    return walls;
  });
}

function between(at: number, value: number, low: number, high: number): readonly Wall[] {
  const width = (high - low) / 2;
  return [
    { inside: (value - low) / width, at: [at], slope: [1 / width], curve: [0] },
    { inside: (high - value) / width, at: [at], slope: [-1 / width], curve: [0] },
  ];
}

function barrier(walls: readonly Wall[], hardness: GramMm): GramMm {
  return walls.reduce((sum, { inside }) => sum - hardness * Math.log(inside), 0);
}

function withWalls(ground: Ground, walls: readonly Wall[], hardness: GramMm, count: number) {
  const slope = Float64Array.from(ground.slope);
  const curve = Float64Array.from(ground.curve);
  for (const { inside, at, slope: own, curve: bend } of walls) {
    const push = hardness / inside;
    at.forEach((a, i) => {
      slope[a] -= push * own[i];
      at.forEach((b, k) => {
        curve[a * count + b] += (push / inside) * own[i] * own[k] - push * bend[i * at.length + k];
      });
    });
  }
  return { slope, curve };
}

/** Slopes and curvatures in the free coordinates, each measured in its scale. */
interface Model {
  readonly slope: Float64Array;
  readonly curve: Float64Array;
}

function modelOf(
  { slope, curve }: { readonly slope: Float64Array; readonly curve: Float64Array },
  free: readonly number[],
  scales: Float64Array,
): Model {
  const [n, count] = [free.length, slope.length];
  const own = new Float64Array(n * n);
  free.forEach((a, i) => {
    free.forEach((b, k) => {
      own[i * n + k] = curve[a * count + b] * scales[a] * scales[b];
    });
  });
  return { slope: Float64Array.from(free, (a) => slope[a] * scales[a]), curve: own };
}

/** What a share of a step should gain: -(g·p s + pᵀHp s²/2). */
function promiseOf({ slope, curve }: Model, at: Float64Array, share: number): GramMm {
  const n = at.length;
  let [first, second] = [0, 0];
  for (let i = 0; i < n; i++) {
    first += slope[i] * at[i];
    for (let k = 0; k < n; k++) second += at[i] * curve[i * n + k] * at[k];
  }
  return -(first * share + (second * share * share) / 2);
}

interface BoundedStep {
  readonly at: Float64Array;
  readonly length: Mm;
  readonly gain: GramMm;
  /** It is Newton's own: the curvature is positive, and its bottom within the radius. */
  readonly isInside: boolean;
}

/**
 * The lowest point of the model within a radius: (H + λ) p = -g with the least λ >= 0 that makes H + λ positive and p
 * short enough, to a tenth of the radius (J. J. Moré, D. C. Sorensen, SIAM J. Sci. Stat. Comput. 4 (1983) 553).
 * least: far below any curvature that tells.
 */
function boundedStep(model: Model, radius: Mm, least: number): BoundedStep | null {
  const n = model.slope.length;
  const right = model.slope.map((each) => -each);
  const tried = (damping: number): BoundedStep | null => {
    const damped = Float64Array.from(model.curve);
    for (let i = 0; i < n; i++) damped[i * n + i] += damping;
    const at = solveDefinite(damped, right);
    if (!at) return null;
    const size = Math.hypot(...at);
    return { at, length: size, gain: promiseOf(model, at, 1), isInside: damping === 0 && size <= radius };
  };
  const plain = tried(0);
  if (plain?.isInside) return plain;
  let [low, high] = [0, least];
  let best = tried(high);
  while (!best || best.length > radius) {
    if (high > 1e24 * least) return best;
    low = high;
    high *= 10;
    best = tried(high);
  }
  // from there down to the radius
  for (let i = 0; i < 12 && best.length < 0.9 * radius && high > 1.05 * low; i++) {
    const middle = low > 0 ? Math.sqrt(low * high) : high / 10;
    const next = tried(middle);
    if (next && next.length <= radius) {
      best = next;
      high = middle;
    } else low = middle;
  }
  return best;
}

/** How much of a step may be taken so that no wall comes nearer than it may. Insides are quadratic in the step. */
function shareOf(walls: readonly Wall[], step: Float64Array): number {
  let share = 1;
  for (const { inside, at, slope, curve } of walls) {
    let [first, second] = [0, 0];
    at.forEach((a, i) => {
      first += slope[i] * step[a];
      at.forEach((b, k) => {
        second += curve[i * at.length + k] * step[a] * step[b];
      });
    });
    const [room, fall] = [NEARER * inside, -second / 2];
    if (fall > 1e-300) share = Math.min(share, (first + Math.sqrt(first * first + 4 * fall * room)) / (2 * fall));
    else if (first < 0) share = Math.min(share, -room / first);
  }
  return share;
}
