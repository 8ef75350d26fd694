import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm, Radian } from '../units/brand.ts';
import type { Levels, Swings } from './joint.ts';
import type { ReachLink, Steel } from './link.ts';
import type { Outline } from './slice.ts';

/** All joints curled towards one side, each in proportion to its reach, until one is at its stop or far links meet. */
export interface Curl {
  /** What all joints turn together. */
  readonly fold: Radian;
  /** Sum of what the joints reach one by one. */
  readonly joints: Radian;
  /** Links that are no neighbours and meet before that, and where, on the one nearer the nose at rest; null: none do. */
  readonly far: { readonly links: readonly [number, number]; readonly at: Vec3 } | null;
}

export interface WholeReach {
  readonly port: Curl;
  readonly starboard: Curl;
  /** It can be folded through half a turn, to one side at least: nose and tail then point the same way. */
  readonly turnsRound: boolean;
}

export function curlWhole(links: readonly Levels[], joints: readonly (Swings & { readonly pivot: Mm })[]): WholeReach {
  const levels = commonLevels(links);
  const boxes = links.map(({ link }) => boxRound(link));
  const ways = ['port', 'starboard'] as const;
  const [port, starboard] = ways.map((side) => curl(boxes, levels, joints, side));
  return { port, starboard, turnsRound: Math.max(port.fold, starboard.fold) >= Math.PI - ROUNDING };
}

/** Rounding of a sum of angles. */
const ROUNDING = 1e-9;
/** Levels the whole bait is looked at on. */
const LEVELS = 12;
/** No point of the bait goes further than this between two looks. */
const STEP_MM = 2;
const MOST_STEPS = 240;
const BISECTIONS = 24;

/** Even levels, and the middle of each fin and wire; each with the outlines of every link. */
function commonLevels(links: readonly Levels[]): readonly Level[] {
  const low = Math.min(...links.map(({ link }) => link.z[0]));
  const high = Math.max(...links.map(({ link }) => link.z[1]));
  const even = Array.from({ length: LEVELS }, (_, i) => low + ((high - low) * (i + 0.5)) / LEVELS);
  const special = links.flatMap(({ link }) => link.fins.map(({ z: [from, to] }) => (from + to) / 2));
  return [...even, ...special].map((z) => ({
    z,
    links: links.map(({ at, link }) => {
      if (z < link.z[0] || z > link.z[1]) return [];
      const { wood, steel } = at(z);
      return [...wood, ...steel].map((outline) => ({ outline, ...boxOf(outline.x, outline.y) }));
    }),
  }));
}

interface Level {
  readonly z: Mm;
  readonly links: readonly (readonly Boxed[])[];
}

interface Box {
  readonly low: Point;
  readonly high: Point;
}

interface Boxed extends Box {
  readonly outline: Outline;
}

type Point = readonly [Mm, Mm];

function boxOf(x: readonly Mm[], y: readonly Mm[]): Box {
  return { low: [Math.min(...x), Math.min(...y)], high: [Math.max(...x), Math.max(...y)] };
}

/** Round all of a link, in plan. */
function boxRound({ skin: { positions }, fins, steel }: ReachLink): Box {
  const [x, y] = [0, 1].map((axis) => positions.filter((_, i) => i % 3 === axis));
  const ends = (values: Float64Array): readonly [Mm, Mm] => [
    values.reduce((a, b) => Math.min(a, b)),
    values.reduce((a, b) => Math.max(a, b)),
  ];
  const finX = fins.flatMap(({ triangles }) => ends(triangles.filter((_, i) => i % 2 === 0)));
  const steelX = steel.flatMap((wire) =>
    wire.shape === 'bar' ? [wire.from, wire.to] : [wire.x - widthOf(wire), wire.x + widthOf(wire)],
  );
  const steelY = steel.flatMap((wire) => [wire.y - widthOf(wire), wire.y + widthOf(wire)]);
  return boxOf([...ends(x), ...finX, ...steelX], [...ends(y), ...steelY]);
}

function widthOf(wire: Steel): Mm {
  return wire.shape === 'ring' ? wire.outer : wire.radius;
}

function curl(
  boxes: readonly Box[],
  levels: readonly Level[],
  joints: readonly (Swings & { readonly pivot: Mm })[],
  side: 'port' | 'starboard',
): Curl {
  const reach = joints.map((joint) => joint[side].angle);
  const whole = reach.reduce((sum, angle) => sum + angle, 0);
  if (boxes.length < 3 || whole === 0) return { fold: whole, joints: whole, far: null };
  const way = side === 'starboard' ? 1 : -1;
  const at = (share: number) => meetFar(boxes, levels, posesAt(joints, reach, way * share));
  const long = Math.max(...boxes.map(({ high }) => high[0])) - Math.min(...boxes.map(({ low }) => low[0]));
  const steps = Math.min(MOST_STEPS, Math.ceil((whole * long) / STEP_MM));
  for (let step = 1; step <= steps; step++) {
    let found = at(step / steps);
    if (!found) continue;
    let [free, met] = [(step - 1) / steps, step / steps];
    for (let n = 0; n < BISECTIONS; n++) {
      const middle = (free + met) / 2;
      const there = at(middle);
      if (there) [met, found] = [middle, there];
      else free = middle;
    }
    return { fold: met * whole, joints: whole, far: found };
  }
  return { fold: whole, joints: whole, far: null };
}

/** A turn and a shift in plan: x = cos·x₀ - sin·y₀ + dx. */
interface Pose {
  readonly cos: number;
  readonly sin: number;
  readonly x: Mm;
  readonly y: Mm;
}

/** The fore link stays; every link turns with the one before it, and about the pin between them. */
function posesAt(joints: readonly { readonly pivot: Mm }[], reach: readonly Radian[], share: number): readonly Pose[] {
  const poses: Pose[] = [{ cos: 1, sin: 0, x: 0, y: 0 }];
  let turn = 0;
  joints.forEach(({ pivot }, j) => {
    const [x, y] = placed(poses[j], pivot, 0);
    turn += share * reach[j];
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    poses.push({ cos, sin, x: x - cos * pivot, y: y - sin * pivot });
  });
  return poses;
}

function placed({ cos, sin, x, y }: Pose, px: Mm, py: Mm): Point {
  return [cos * px - sin * py + x, sin * px + cos * py + y];
}

/** Links that are no neighbours and overlap on a level: where, on the one nearer the nose. */
function meetFar(boxes: readonly Box[], levels: readonly Level[], poses: readonly Pose[]): Curl['far'] {
  for (let a = 0; a < poses.length; a++) {
    for (let b = a + 2; b < poses.length; b++) {
      const pose = between(poses[a], poses[b]);
      if (boxesApart(boxes[a], boxes[b], pose)) continue;
      for (const { z, links } of levels) {
        for (const one of links[a]) {
          for (const other of links[b]) {
            const at = overlapAt(one, other, pose);
            if (at) return { links: [a, b], at: [at[0], at[1], z] };
          }
        }
      }
    }
  }
  return null;
}

/** Where b stands as a sees it. */
function between(a: Pose, b: Pose): Pose {
  const [cos, sin] = [a.cos * b.cos + a.sin * b.sin, a.cos * b.sin - a.sin * b.cos];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return { cos, sin, x: a.cos * dx + a.sin * dy, y: a.cos * dy - a.sin * dx };
}

/** A point of both, in the frame of the first; null where they are clear of each other. */
function overlapAt(one: Boxed, other: Boxed, pose: Pose): Point | null {
  if (boxesApart(one, other, pose)) return null;
  const { x: ax, y: ay } = one.outline;
  const size = other.outline.x.length;
  const bx = new Float64Array(size);
  const by = new Float64Array(size);
  for (let i = 0; i < size; i++) [bx[i], by[i]] = placed(pose, other.outline.x[i], other.outline.y[i]);
  for (let j = 0; j < size; j++) {
    const next = (j + 1) % size;
    const [x0, y0, x1, y1] = [bx[j], by[j], bx[next], by[next]];
    if (Math.max(x0, x1) < one.low[0] || Math.min(x0, x1) > one.high[0]) continue;
    if (Math.max(y0, y1) < one.low[1] || Math.min(y0, y1) > one.high[1]) continue;
    for (let i = 0; i < ax.length; i++) {
      const after = i + 1 === ax.length ? 0 : i + 1;
      const at = crossing(ax[i], ay[i], ax[after], ay[after], x0, y0, x1, y1);
      if (at) return at;
    }
  }
  if (holds(ax, ay, bx[0], by[0])) return [bx[0], by[0]];
  if (holds(bx, by, ax[0], ay[0])) return [ax[0], ay[0]];
  return null;
}

/** True only where the boxes round two outlines lie apart along a side of either. */
function boxesApart(one: Box, other: Box, pose: Pose): boolean {
  const back: Pose = {
    cos: pose.cos,
    sin: -pose.sin,
    x: -(pose.cos * pose.x + pose.sin * pose.y),
    y: pose.sin * pose.x - pose.cos * pose.y,
  };
  return beside(one, other, pose) || beside(other, one, back);
}

function beside({ low, high }: Box, other: Box, pose: Pose): boolean {
  const corners = [other.low, other.high].flatMap(([x]) => [other.low, other.high].map(([, y]) => placed(pose, x, y)));
  return ([0, 1] as const).some(
    (axis) => corners.every((p) => p[axis] < low[axis]) || corners.every((p) => p[axis] > high[axis]),
  );
}

function crossing(ax: Mm, ay: Mm, bx: Mm, by: Mm, cx: Mm, cy: Mm, dx: Mm, dy: Mm): Point | null {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, dx - cx, dy - cy];
  const area = ux * vy - uy * vx;
  if (area === 0) return null;
  const s = ((cx - ax) * vy - (cy - ay) * vx) / area;
  const t = ((cx - ax) * uy - (cy - ay) * ux) / area;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1 ? [ax + s * ux, ay + s * uy] : null;
}

/** Whether a closed outline holds a point: a line from it aft crosses the outline an odd number of times. */
function holds(x: ArrayLike<Mm>, y: ArrayLike<Mm>, px: Mm, py: Mm): boolean {
  let inside = false;
  for (let i = 0, j = x.length - 1; i < x.length; j = i++) {
    if (y[i] > py !== y[j] > py && px < ((x[j] - x[i]) * (py - y[i])) / (y[j] - y[i]) + x[i]) inside = !inside;
  }
  return inside;
}
