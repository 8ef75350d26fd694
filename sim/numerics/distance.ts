import { add, dot, length, scale, subtract, type Vec3 } from './vec3.ts';

export interface Segment {
  readonly from: Vec3;
  readonly to: Vec3;
}

export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

/** A round bar with flat ends. */
export interface Cylinder extends Segment {
  readonly radius: number;
}

/** Shortest distance between a segment and a solid cylinder; 0 where they meet. */
export function segmentCylinderDistance(segment: Segment, cylinder: Cylinder): number {
  const axis = subtract(cylinder.to, cylinder.from);
  const long = length(axis);
  const along = long > 0 ? scale(axis, 1 / long) : axis;
  return leastAlong(segment, (point) => {
    const away = subtract(point, cylinder.from);
    const depth = dot(away, along);
    const beside = length(subtract(away, scale(along, depth)));
    return Math.hypot(Math.max(-depth, 0, depth - long), Math.max(0, beside - cylinder.radius));
  });
}

/** Shortest distance between a segment and an axis-parallel box; 0 where they meet. */
export function segmentBoxDistance(segment: Segment, box: Box): number {
  return leastAlong(segment, (point) =>
    Math.hypot(...point.map((value, axis) => Math.max(box.low[axis] - value, 0, value - box.high[axis]))),
  );
}

/**
 * Shortest distance between a solid cylinder along one of the axes and an axis-parallel box; 0 where they meet. Along its
 * axis a cylinder is as far from a box as their ends are, across it as far as its middle, less its radius.
 */
export function cylinderBoxDistance({ from, to, radius }: Cylinder, { low, high }: Box): number {
  const axis = [0, 1, 2].reduce((most, i) => (Math.abs(to[i] - from[i]) > Math.abs(to[most] - from[most]) ? i : most));
  const beside = [0, 1, 2].map((i) => (i === axis ? 0 : Math.max(low[i] - from[i], 0, from[i] - high[i])));
  const lateral = Math.max(0, Math.hypot(...beside) - radius);
  const ends = [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])];
  return Math.hypot(lateral, Math.max(low[axis] - ends[1], 0, ends[0] - high[axis]));
}

type Flat = readonly [number, number];

/** A flat plate about y = 0; its corners are x and z. */
export interface Plate {
  readonly corners: readonly [Flat, Flat, Flat];
  readonly thickness: number;
}

/** Shortest distance between a segment and a three-cornered plate; 0 where they meet. */
export function segmentPlateDistance(segment: Segment, { corners, thickness }: Plate): number {
  return leastAlong(segment, ([x, y, z]) =>
    Math.hypot(triangleDistance([x, z], ...corners), Math.max(0, Math.abs(y) - thickness / 2)),
  );
}

/** Shortest distance between a point and a triangle in a plane; 0 inside it, whichever way round it runs. */
function triangleDistance(point: Flat, a: Flat, b: Flat, c: Flat): number {
  const sides: readonly (readonly [Flat, Flat])[] = [
    [a, b],
    [b, c],
    [c, a],
  ];
  const turns = sides.map(([[px, py], [qx, qy]]) => (qx - px) * (point[1] - py) - (qy - py) * (point[0] - px));
  if (turns.every((turn) => turn > 0) || turns.every((turn) => turn < 0)) return 0;
  return Math.min(...sides.map(([from, to]) => sideDistance(point, from, to)));
}

function sideDistance([x, y]: Flat, [px, py]: Flat, [qx, qy]: Flat): number {
  const [dx, dy] = [qx - px, qy - py];
  const long = dx * dx + dy * dy;
  const share = long > 0 ? Math.min(1, Math.max(0, ((x - px) * dx + (y - py) * dy) / long)) : 0;
  return Math.hypot(x - px - share * dx, y - py - share * dy);
}

/** Least of a distance to a convex body along a segment: it is convex there, so thirds close in on it. */
function leastAlong(segment: Segment, distance: (point: Vec3) => number): number {
  const along = subtract(segment.to, segment.from);
  const at = (share: number) => distance(add(segment.from, scale(along, share)));
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const third = (high - low) / 3;
    if (at(low + third) <= at(high - third)) high -= third;
    else low += third;
  }
  return Math.min(at(0), at(low), at(high), at(1));
}
