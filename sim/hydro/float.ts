import { heelOf, isOnEnd, trimOf, worldAxes } from '../frames.ts';
import { measureReach } from '../mesh/measure.ts';
import { dot, length, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm, Mm3, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type FloatingBody, type Totals, totalsOf } from './body.ts';
import { principalAxes, type Rest, restFrom } from './equilibrium.ts';
import { heldUpright } from './righting-arm.ts';
import { steadyFrom } from './steadiness.ts';

/** How a body rests in still water, with hooks hung. Vectors and points in the body frame. */
export interface Float {
  /** hangs: within 0.1 g or 0.1 % of neutral, whichever is more; sinks: heavier than that. */
  readonly state: 'floats' | 'hangs' | 'sinks';
  /** Unit vector that points up; the water is where up·p < offset. */
  readonly up: Vec3;
  /** null when wholly under water. */
  readonly offset: Mm | null;
  /** Nose-down positive. */
  readonly trim: Radian;
  /** Starboard side down positive. */
  readonly heel: Radian;
  /** Water surface to the lowest point of the coated solid; null when wholly under. */
  readonly draft: Mm | null;
  /** Highest point of the coated solid above the water; null when wholly under. */
  readonly proud: Mm | null;
  /** Fixed displacement in the water: solid less flooded slots plus outside parts; hung items apart. */
  readonly displaced: Mm3;
  readonly buoyancyCentre: Vec3;
  /** Volume of hung items under water; it pulls at their eyes. */
  readonly hungDisplaced: Mm3;
  /** Everything, hung items included. */
  readonly mass: Gram;
  /** Centre of gravity with hung items counted at their eyes. */
  readonly gravityCentre: Vec3;
  /** Weight less buoyancy with everything wet; positive sinks. */
  readonly netWet: Gram;
  /** -netWet as a share of mass. */
  readonly reserveShare: number;
  /** Curvature of the potential about the body's length, divided by mass; under water the height of B over G. */
  readonly gm: Mm;
  readonly gmLong: Mm;
  /** The smaller eigenvalue: decides whether it stands. */
  readonly gmMin: Mm;
  /** gm where it is held upright, free to trim; at a rest that is upright the same. */
  readonly gmUpright: Mm;
  /** gmUpright is below -0.005 mm: upright does not hold it. Never true of one that stands on end. */
  readonly laysOver: boolean;
  /** Greatest width of the coated solid, which GM is held against. */
  readonly width: Mm;
  /** |gmMin| below 0.005 mm: no preferred way up that this model could tell. */
  readonly neutral: boolean;
  /** |gmMin| too little for its width: a breath tips it. */
  readonly tender: boolean;
  /** Upright was a balance on a knife's edge: it rests equally well with heel (or trim) the other way. */
  readonly mirrored: boolean;
  /** Past 80 degrees a hook lies on the body instead of hanging clear: the attitude is approximate. */
  readonly lyingHooks: boolean;
  readonly solver: Solver;
}

export interface Solver {
  readonly converged: boolean;
  readonly steps: number;
  /** Passes over the mesh. */
  readonly passes: number;
  /** Weight less buoyancy left over. */
  readonly force: Gram;
  /** Righting moment left over. */
  readonly moment: GramMm;
}

/** A hanging bait is one whose net weight is within this, or within the share of its mass. Common practice. */
export const HANGS_G = 0.1;
export const HANGS_SHARE = 0.001;
const UPRIGHT: Vec3 = [0, 0, 1];
/** Below the noise of a mesh and of sandpaper: no preferred way up that this model could tell. */
export const NEUTRAL_MM = 0.005;
/** Past this a hook would have to hang through the body. */
export const LYING_RAD = radianFromDegree(80);
/** Within this heel of upright GM there is GM at rest, unless upright was a knife's edge. */
const UPRIGHT_RAD = radianFromDegree(0.5);

/**
 * How a body rests: the attitude it settles to from upright, what shows and what is drowned, and how stiffly. Never
 * throws for a body with finite numbers, positive mass and at least one mesh; `solver.converged` says if the attitude
 * could not be settled.
 */
export function floatBody(body: FloatingBody): Float {
  const totals = totalsOf(body);
  const netWet = totals.mass - body.waterDensity * totals.volume;
  const state = stateOf(netWet, totals.mass);
  return state === 'floats'
    ? afloat(body, totals, netWet, restFrom(body, UPRIGHT))
    : under(body, totals, netWet, state);
}

/** How a body that can float rests at one of its rests. */
export function floatAt(body: FloatingBody, rest: Rest): Float {
  const totals = totalsOf(body);
  return afloat(body, totals, totals.mass - body.waterDensity * totals.volume, rest);
}

function stateOf(netWet: Gram, mass: Gram): Float['state'] {
  if (Math.abs(netWet) <= Math.max(HANGS_G, HANGS_SHARE * mass)) return 'hangs';
  return netWet < 0 ? 'floats' : 'sinks';
}

function afloat(body: FloatingBody, totals: Totals, netWet: Gram, rest: Rest): Float {
  const { potential } = rest;
  const { across, along } = worldAxes(rest.up);
  const curvature = (direction: Vec3) => {
    const a = dot(direction, rest.axes[0]);
    const b = dot(direction, rest.axes[1]);
    return (potential.curveUU * a * a + 2 * potential.curveUV * a * b + potential.curveVV * b * b) / totals.mass;
  };
  const [lowest, highest] = reachOfSolids(body, rest.up);
  const gm = curvature(across);
  const onEnd = isOnEnd(trimOf(rest.up));
  const isUpright = Math.abs(heelOf(rest.up)) < UPRIGHT_RAD && !rest.mirrored;
  const gmUpright = isUpright || onEnd ? gm : heldUpright(body).gm;
  return {
    state: 'floats',
    ...attitude(rest.up, body),
    offset: rest.offset,
    draft: rest.offset - lowest,
    proud: highest - rest.offset,
    displaced: potential.displaced,
    buoyancyCentre: potential.buoyancyCentre,
    hungDisplaced: potential.hungDisplaced,
    ...weights(totals, netWet),
    ...stiffness(body, {
      gm,
      gmLong: curvature(along),
      gmMin: principalAxes(potential).low / totals.mass,
      gmUpright,
      laysOver: gmUpright < -NEUTRAL_MM && !onEnd,
    }),
    mirrored: rest.mirrored,
    solver: {
      converged: rest.converged,
      steps: rest.steps,
      passes: rest.passes,
      force: rest.force,
      moment: rest.moment,
    },
  };
}

/** Wholly under water the body turns until the centre of all it displaces stands over the centre of all its weight. */
function under(body: FloatingBody, totals: Totals, netWet: Gram, state: 'hangs' | 'sinks'): Float {
  const lever = subtract(totals.volumeCentre, totals.massCentre);
  const height = length(lever);
  const up: Vec3 = height < NEUTRAL_MM ? [0, 0, 1] : scale(lever, 1 / height);
  // its arm is height · sin of the heel from its rest: that is its slope at upright
  const gmUpright = isOnEnd(trimOf(up)) ? height : height * Math.cos(heelOf(up));
  return {
    state,
    ...attitude(up, body),
    offset: null,
    draft: null,
    proud: null,
    displaced: totals.fixedVolume,
    buoyancyCentre: totals.fixedVolumeCentre,
    hungDisplaced: totals.hungVolume,
    ...weights(totals, netWet),
    ...stiffness(body, { gm: height, gmLong: height, gmMin: height, gmUpright, laysOver: gmUpright < -NEUTRAL_MM }),
    mirrored: false,
    solver: { converged: true, steps: 0, passes: 0, force: -netWet, moment: 0 },
  };
}

function attitude(up: Vec3, body: FloatingBody): Pick<Float, 'up' | 'trim' | 'heel' | 'lyingHooks'> {
  const trim = trimOf(up);
  const heel = heelOf(up);
  const lyingHooks = body.hung.length > 0 && Math.max(Math.abs(trim), Math.abs(heel)) > LYING_RAD;
  return { up, trim, heel, lyingHooks };
}

function weights(totals: Totals, netWet: Gram): Pick<Float, 'mass' | 'gravityCentre' | 'netWet' | 'reserveShare'> {
  return { mass: totals.mass, gravityCentre: totals.massCentre, netWet, reserveShare: -netWet / totals.mass };
}

type Stiffness = Pick<Float, 'gm' | 'gmLong' | 'gmMin' | 'gmUpright' | 'laysOver' | 'width' | 'neutral' | 'tender'>;

function stiffness(body: FloatingBody, heights: Omit<Stiffness, 'width' | 'neutral' | 'tender'>): Stiffness {
  const size = Math.abs(heights.gmMin);
  const width = widthOf(body);
  return { ...heights, width, neutral: size < NEUTRAL_MM, tender: size < steadyFrom(width) };
}

/** Greatest width of the solids, from the boxes at the roots of their trees. */
function widthOf({ trees }: FloatingBody): Mm {
  const middle = trees.map(({ origin, boxes }) => origin[1] + boxes[1]);
  const port = trees.map(({ boxes }, i) => middle[i] - boxes[4]);
  const starboard = trees.map(({ boxes }, i) => middle[i] + boxes[4]);
  return Math.max(...starboard) - Math.min(...port);
}

/** Lowest and highest point of the meshes along a direction. */
function reachOfSolids(body: FloatingBody, n: Vec3): readonly [Mm, Mm] {
  const reaches = body.trees.map(({ points, origin }) => {
    const [low, high] = measureReach(points, n);
    return [dot(n, origin) + low, dot(n, origin) + high] as const;
  });
  return [Math.min(...reaches.map(([low]) => low)), Math.max(...reaches.map(([, high]) => high))];
}
