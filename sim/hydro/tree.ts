import type { Topology } from '../mesh/mesh.ts';
import type { Vec3 } from '../numerics/vec3.ts';

/**
 * The order in which a mesh's triangles are visited: a binary tree laid out depth first. Node i's first child is i + 1,
 * its second is skip[i + 1]; skip[i] is where to go on when the whole of node i has been dealt with.
 */
export interface TreeShape {
  /** Vertex numbers, three a triangle, in tree order. */
  readonly index: Uint32Array;
  readonly skip: Int32Array;
  /** First triangle and number of triangles of a leaf; a count of 0 marks an inner node. */
  readonly first: Int32Array;
  readonly count: Int32Array;
}

/**
 * A mesh ready for planes. A triangle's share of volume and moment does not depend on the plane, so each node keeps
 * the sums below it, and a plane has to visit only the nodes it cuts.
 */
export interface Tree {
  readonly shape: TreeShape;
  /** Middle of the mesh's box; `points` are measured from it, which keeps digits. */
  readonly origin: Vec3;
  readonly points: Float64Array;
  /** Centre and half size of each node's box, six numbers a node, measured from the origin. */
  readonly boxes: Float64Array;
  /** Σ a·(b × c) and Σ a·(b × c) (a + b + c), four numbers a node: six times the volume, 24 times the moment. */
  readonly sums: Float64Array;
}

/** Small enough that few dry or wet triangles are looked at one by one; 4 and 16 were slower. */
const LEAF = 8;

/** Builds the order for a mesh by halving along the longest side of the triangles' middles. */
export function buildTreeShape(topology: Topology, positions: Float64Array): TreeShape {
  const { index } = topology;
  const triangles = index.length / 3;
  const middles = new Float64Array(index.length);
  for (let t = 0; t < triangles; t++) {
    for (let axis = 0; axis < 3; axis++) {
      middles[3 * t + axis] =
        positions[3 * index[3 * t] + axis] +
        positions[3 * index[3 * t + 1] + axis] +
        positions[3 * index[3 * t + 2] + axis];
    }
  }
  const order = Uint32Array.from({ length: triangles }, (_, t) => t);
  const skip: number[] = [];
  const first: number[] = [];
  const count: number[] = [];
  const split = (from: number, to: number) => {
    const node = skip.length;
    skip.push(0);
    first.push(from);
    count.push(to - from <= LEAF ? to - from : 0);
    if (to - from > LEAF) {
      const half = from + LEAF * Math.ceil((to - from) / (2 * LEAF));
      selectAlong(order, middles, longestAxis(order, middles, from, to), from, to, half);
      split(from, half);
      split(half, to);
    }
    skip[node] = skip.length;
  };
  split(0, triangles);
  const ordered = new Uint32Array(index.length);
  order.forEach((t, i) => {
    ordered.set(index.subarray(3 * t, 3 * t + 3), 3 * i);
  });
  return { index: ordered, skip: Int32Array.from(skip), first: Int32Array.from(first), count: Int32Array.from(count) };
}

function longestAxis(order: Uint32Array, middles: Float64Array, from: number, to: number): number {
  let axis = 0;
  let longest = -1;
  for (let candidate = 0; candidate < 3; candidate++) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = from; i < to; i++) {
      const value = middles[3 * order[i] + candidate];
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (high - low > longest) {
      longest = high - low;
      axis = candidate;
    }
  }
  return axis;
}

/** Quickselect: afterwards no middle before `nth` lies beyond one after it along the axis. */
function selectAlong(
  order: Uint32Array,
  middles: Float64Array,
  axis: number,
  from: number,
  to: number,
  nth: number,
): void {
  let low = from;
  let high = to - 1;
  while (low < high) {
    const pivot = middles[3 * order[(low + high) >> 1] + axis];
    let i = low;
    let j = high;
    while (i <= j) {
      while (middles[3 * order[i] + axis] < pivot) i++;
      while (middles[3 * order[j] + axis] > pivot) j--;
      if (i <= j) {
        const swap = order[i];
        order[i++] = order[j];
        order[j--] = swap;
      }
    }
    if (nth <= j) high = j;
    else if (nth >= i) low = i;
    else return;
  }
}

/** Hangs a mesh's positions on an order: boxes and sums from the leaves up. The order may stem from other positions. */
export function fitTree(shape: TreeShape, positions: Float64Array): Tree {
  const origin = boxMiddle(positions);
  const points = new Float64Array(positions.length);
  for (let i = 0; i < points.length; i += 3) {
    points[i] = positions[i] - origin[0];
    points[i + 1] = positions[i + 1] - origin[1];
    points[i + 2] = positions[i + 2] - origin[2];
  }
  const nodes = shape.skip.length;
  const boxes = new Float64Array(6 * nodes);
  const sums = new Float64Array(4 * nodes);
  for (let node = nodes - 1; node >= 0; node--) {
    if (shape.count[node] > 0) fitLeaf(shape, points, boxes, sums, node);
    else fitInner(boxes, sums, node, node + 1, shape.skip[node + 1]);
  }
  return { shape, origin, points, boxes, sums };
}

function boxMiddle(positions: Float64Array): Vec3 {
  const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < positions.length; i += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const value = positions[i + axis];
      if (value < low[axis]) low[axis] = value;
      if (value > high[axis]) high[axis] = value;
    }
  }
  return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
}

function fitLeaf(shape: TreeShape, p: Float64Array, boxes: Float64Array, sums: Float64Array, node: number): void {
  const { index } = shape;
  const from = 3 * shape.first[node];
  const to = from + 3 * shape.count[node];
  let x0 = Number.POSITIVE_INFINITY;
  let y0 = Number.POSITIVE_INFINITY;
  let z0 = Number.POSITIVE_INFINITY;
  let x1 = Number.NEGATIVE_INFINITY;
  let y1 = Number.NEGATIVE_INFINITY;
  let z1 = Number.NEGATIVE_INFINITY;
  let sum = 0;
  let mx = 0;
  let my = 0;
  let mz = 0;
  for (let i = from; i < to; i += 3) {
    const a = 3 * index[i];
    const b = 3 * index[i + 1];
    const c = 3 * index[i + 2];
    const ax = p[a];
    const ay = p[a + 1];
    const az = p[a + 2];
    const bx = p[b];
    const by = p[b + 1];
    const bz = p[b + 2];
    const cx = p[c];
    const cy = p[c + 1];
    const cz = p[c + 2];
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    sum += six;
    mx += six * (ax + bx + cx);
    my += six * (ay + by + cy);
    mz += six * (az + bz + cz);
    x0 = Math.min(x0, ax, bx, cx);
    y0 = Math.min(y0, ay, by, cy);
    z0 = Math.min(z0, az, bz, cz);
    x1 = Math.max(x1, ax, bx, cx);
    y1 = Math.max(y1, ay, by, cy);
    z1 = Math.max(z1, az, bz, cz);
  }
  boxes[6 * node] = (x0 + x1) / 2;
  boxes[6 * node + 1] = (y0 + y1) / 2;
  boxes[6 * node + 2] = (z0 + z1) / 2;
  boxes[6 * node + 3] = (x1 - x0) / 2;
  boxes[6 * node + 4] = (y1 - y0) / 2;
  boxes[6 * node + 5] = (z1 - z0) / 2;
  sums[4 * node] = sum;
  sums[4 * node + 1] = mx;
  sums[4 * node + 2] = my;
  sums[4 * node + 3] = mz;
}

function fitInner(boxes: Float64Array, sums: Float64Array, node: number, left: number, right: number): void {
  for (let axis = 0; axis < 3; axis++) {
    const l = 6 * left + axis;
    const r = 6 * right + axis;
    const low = Math.min(boxes[l] - boxes[l + 3], boxes[r] - boxes[r + 3]);
    const high = Math.max(boxes[l] + boxes[l + 3], boxes[r] + boxes[r + 3]);
    boxes[6 * node + axis] = (low + high) / 2;
    boxes[6 * node + axis + 3] = (high - low) / 2;
  }
  for (let i = 0; i < 4; i++) sums[4 * node + i] = sums[4 * left + i] + sums[4 * right + i];
}
