import { worldAxes } from '../frames.ts';
import { measureReach } from '../mesh/measure.ts';
import { dot, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import { type FloatingBody, meshesOf, totalsOf } from './body.ts';
import { type Float, NEUTRAL_MM } from './float.ts';
import { planeAxes, potentialAt } from './potential.ts';
import type { Tree } from './tree.ts';

/** What the skin of the water may do to a bait: it pulls along the wet edge, and which way depends on what is wet. */
export interface Film {
  /** Length of the wet edge; under water, the longest it can have on its way down. Hooks are left out. */
  readonly edge: Mm;
  /** At most this much more or less weight. */
  readonly force: Gram;
  /** How far that moves the draft, and a couple of it heel and trim; null where there is nothing to say. */
  readonly draft: Mm | null;
  readonly heel: Radian | null;
  readonly trim: Radian | null;
  /** The bait's net weight is within the force: whether it floats or sinks is up to the film. */
  readonly tooClose: boolean;
}

/** Levels at which the edge of a sinking bait is measured. */
const LEVELS = 15;
/** A couple that would turn it further than this turns it over, as far as one can tell. */
const MOST_RAD = Math.PI / 2;

/**
 * The band that surface tension lays on a float. Force: tension times the wet edge. Couple: at most the tension times
 * ∮ |lever| along the edge, the film pulling up on one side and down on the other; over m GM it is an angle.
 *
 * tension: grams of force for each mm of edge.
 */
export function filmOf(body: FloatingBody, float: Float, tension: number): Film {
  const close = (force: Gram) => Math.abs(float.netWet) < force;
  if (float.offset === null) {
    const edge = longestEdge(body, float.up);
    const force = tension * edge;
    return { edge, force, draft: null, heel: null, trim: null, tooClose: close(force) };
  }
  const [u, v] = planeAxes(float.up);
  const { centre, curveDD } = potentialAt(body, float.up, u, v, float.offset);
  const { across, along } = worldAxes(float.up);
  const edge = { length: 0, across: 0, along: 0 };
  for (const tree of meshesOf(body)) {
    const [middleAcross, middleAlong] = [across, along].map((axis) => dot(axis, centre) - dot(axis, tree.origin));
    eachEdge(tree, float.up, float.offset, (p, q, size) => {
      edge.length += size;
      edge.across += size * meanSize(dot(across, p) - middleAcross, dot(across, q) - middleAcross);
      edge.along += size * meanSize(dot(along, p) - middleAlong, dot(along, q) - middleAlong);
    });
  }
  const { mass } = totalsOf(body);
  const angle = (lever: number, gm: Mm) =>
    gm < NEUTRAL_MM ? null : Math.min(MOST_RAD, (tension * lever) / (mass * gm));
  const force = tension * edge.length;
  return {
    edge: edge.length,
    force,
    draft: curveDD > 0 ? force / curveDD : null,
    heel: angle(edge.across, float.gm),
    trim: angle(edge.along, float.gmLong),
    tooClose: close(force),
  };
}

function longestEdge(body: FloatingBody, up: Vec3): Mm {
  const reaches = meshesOf(body).map(({ points, origin }) => measureReach(points, up).map((h) => h + dot(up, origin)));
  const low = Math.min(...reaches.map(([least]) => least));
  const high = Math.max(...reaches.map(([, most]) => most));
  const edges = Array.from({ length: LEVELS }, (_, level) => {
    let sum = 0;
    for (const tree of meshesOf(body)) {
      eachEdge(tree, up, low + ((high - low) * (level + 0.5)) / LEVELS, (_p, _q, size) => {
        sum += size;
      });
    }
    return sum;
  });
  return Math.max(...edges);
}

/** Mean of the size of what runs evenly from a to b. */
function meanSize(a: number, b: number): number {
  return a * b >= 0 ? Math.abs(a + b) / 2 : (a * a + b * b) / (2 * (Math.abs(a) + Math.abs(b)));
}

/** Every segment in which the water surface cuts a mesh, measured from the tree's origin. */
function eachEdge(tree: Tree, up: Vec3, offset: Mm, take: (p: Vec3, q: Vec3, size: Mm) => void): void {
  const { points, origin, shape } = tree;
  const level = offset - dot(up, origin);
  const at = (vertex: number): Vec3 => [points[3 * vertex], points[3 * vertex + 1], points[3 * vertex + 2]];
  const heights = new Float64Array(points.length / 3);
  for (let i = 0; i < heights.length; i++) heights[i] = dot(up, at(i)) - level;
  const between = (a: number, b: number): Vec3 => {
    const [p, q] = [at(a), at(b)];
    const share = heights[a] / (heights[a] - heights[b]);
    return [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]), p[2] + share * (q[2] - p[2])];
  };
  for (let i = 0; i < shape.index.length; i += 3) {
    const corners = [shape.index[i], shape.index[i + 1], shape.index[i + 2]];
    const wet = corners.filter((corner) => heights[corner] < 0);
    if (wet.length === 0 || wet.length === 3) continue;
    const dry = corners.filter((corner) => !(heights[corner] < 0));
    const [p, q] =
      wet.length === 1 ? dry.map((corner) => between(wet[0], corner)) : wet.map((corner) => between(corner, dry[0]));
    take(p, q, Math.hypot(q[0] - p[0], q[1] - p[1], q[2] - p[2]));
  }
}
