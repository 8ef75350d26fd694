import { type BoardRing, boardPoint } from '../hull/board.ts';
import { type Hull, stationAt } from '../hull/hull.ts';
import type { Ring, UnitRing } from '../hull/section.ts';
import {
  type BevelFace,
  type Face,
  faceAt,
  isRound,
  type LinkSlot,
  type LinkSpec,
  type RoundFace,
  slotFloor,
} from '../links/cut.ts';
import { bracketedRoot } from '../numerics/root.ts';
import type { Mm } from '../units/brand.ts';
import { facePoint, faceStrips, type LinkCounts, layOutVertices, mouthStrips, type VertexLayout } from './topology.ts';

/** How far coats have grown the outside and the joint faces (slots grow inwards by as much as faces). */
export interface Growth {
  readonly skin: Mm;
  readonly face: Mm;
}

/**
 * Vertex positions of one link, grown by its coats, in the order of `layOutVertices`. Each lengthwise line of the skin
 * runs from face to face (or tip): where it meets a face is solved for, and its stations are spread between by the
 * angle t of x = length (1 - cos t)/2, which crowds them towards the tips as the round ends need.
 */
export function loftLink(hull: Hull, ring: Ring, spec: LinkSpec, counts: LinkCounts, growth: Growth): Float64Array {
  const layout = layOutVertices(counts);
  const positions = new Float64Array(layout.vertexCount * 3);
  const foreFace = spec.foreFace && grownFace(spec.foreFace, growth.face);
  const aftFace = spec.aftFace && grownFace(spec.aftFace, growth.face);
  const skin = skinPoint(hull, ring, growth.skin);

  for (let k = 0; k <= counts.steps; k++) {
    const from = foreFace ? meetFace(skin, k, foreFace, hull.length) : 0;
    const to = aftFace ? meetFace(skin, k, aftFace, hull.length) : hull.length;
    const [turnFrom, turnTo] = [turnOf(from, hull.length), turnOf(to, hull.length)];
    for (let station = layout.firstRing; station <= layout.lastRing; station++) {
      const turn = turnFrom + ((turnTo - turnFrom) * station) / counts.bands;
      // the ends exactly, not through the arc cosine and back
      const x = station === 0 ? from : station === counts.bands ? to : (hull.length * (1 - Math.cos(turn))) / 2;
      skin.at(k, x);
      const row = (station - layout.firstRing) * layout.ringSize;
      put(positions, row + k, skin.point[0], skin.point[1], skin.point[2]);
      if (k > 0 && k < counts.steps) {
        put(positions, row + layout.ringSize - k, skin.point[0], -skin.point[1], skin.point[2]);
      }
    }
  }
  if (layout.forePole >= 0) put(positions, layout.forePole, -growth.skin, 0, hull.back.nose.level);
  if (layout.aftPole >= 0) put(positions, layout.aftPole, hull.length + growth.skin, 0, hull.back.tail.level);
  straddle(positions, layout);
  if (foreFace) putFace(positions, layout, counts, 'fore', foreFace);
  if (aftFace) putFace(positions, layout, counts, 'aft', aftFace);
  spec.slots.forEach((slot, i) => {
    const face = slot.opens === 'fore' ? foreFace : aftFace;
    const bare = slot.opens === 'fore' ? spec.foreFace : spec.aftFace;
    if (face && bare) putSlot(positions, layout.slots[i], mouthStrips(counts, i), slot, face, bare, growth.face);
  });
  return positions;
}

/**
 * Moves the skin's points out by a twelfth of the second difference along their lengthwise lines, to where the straight
 * pieces between them lie as much outside the smooth line as inside: the best fit in the least-squares sense by such
 * pieces (mass matrix 1/6, 2/3, 1/6). Left on the line, all of a convex skin would lie a hair inside. Over a tip a line
 * runs on into the one across. Keel and back stay on their outlines, off which draft is read; rims stay in their faces.
 */
function straddle(positions: Float64Array, layout: VertexLayout): void {
  const { firstRing, lastRing, ringSize } = layout;
  const row = 3 * ringSize;
  const rows = lastRing - firstRing + 1;
  const [fore, aft] = [tipOf(positions, layout.forePole), tipOf(positions, layout.aftPole)];
  for (let k = 0; k < ringSize; k++) {
    // keel and back slide along their outlines
    const axes = k === 0 || 2 * k === ringSize ? 1 : 3;
    for (let axis = 0; axis < axes; axis++) {
      const first = 3 * k + axis;
      let before = fore ? fore[axis] : positions[first];
      for (let i = fore ? 0 : 1; i < (aft ? rows : rows - 1); i++) {
        const at = first + i * row;
        const here = positions[at];
        const after = aft && i + 1 === rows ? aft[axis] : positions[at + row];
        positions[at] = here - (before - 2 * here + after) / 12;
        before = here;
      }
    }
  }
  if (fore) positions[3 * layout.forePole] -= meanReach(positions, 0, ringSize, fore[0]) / 6;
  if (aft) positions[3 * layout.aftPole] -= meanReach(positions, rows - 1, ringSize, aft[0]) / 6;
}

function tipOf(positions: Float64Array, pole: number): Float64Array | null {
  return pole < 0 ? null : positions.slice(3 * pole, 3 * pole + 3);
}

/** How far along x the points of a ring stand from a place, on the whole. */
function meanReach(positions: Float64Array, ring: number, ringSize: number, from: Mm): Mm {
  let sum = 0;
  for (let k = 0; k < ringSize; k++) sum += positions[3 * (ring * ringSize + k)] - from;
  return sum / ringSize;
}

/** A face moved out along its own normal: on a bevel a longer way along x; a knuckle gains radius, a hollow loses it. */
export function grownFace(face: BevelFace, growth: Mm): BevelFace;
export function grownFace(face: Face, growth: Mm): Face;
export function grownFace(face: Face, growth: Mm): Face {
  const outward = isRound(face) ? growth : growth * Math.hypot(1, face.lean);
  const at = face.looks === 'fore' ? face.at - outward : face.at + outward;
  return isRound(face) ? { ...face, at, radius: Math.abs(face.axis - at) } : { ...face, at };
}

/** How far out a share of the way from the middle of a face to y lies, a round one measured by its angle. */
function partWay(face: Face, y: Mm, share: number): Mm {
  if (!isRound(face)) return y * share;
  return face.radius * Math.sin(Math.asin(Math.min(1, y / face.radius)) * share);
}

function turnOf(x: Mm, length: Mm): number {
  return Math.acos(Math.min(1, Math.max(-1, 1 - (2 * x) / length)));
}

interface SkinPoint {
  /** Moves `point` to line k of the ring at station x of the bare hull, grown along the skin's normal. */
  readonly at: (k: number, x: Mm) => void;
  readonly point: Float64Array;
}

function skinPoint(hull: Hull, ring: Ring, growth: Mm): SkinPoint {
  return ring.kind === 'board' ? boardSkin(hull, ring, growth) : ovalSkin(hull, ring, growth);
}

function boardSkin(hull: Hull, ring: BoardRing, growth: Mm): SkinPoint {
  const station = new Float64Array(6);
  const point = new Float64Array(3);
  const at = (k: number, x: Mm) => {
    stationAt(hull, x, station);
    point[0] = x;
    boardPoint(ring, k, station, growth, point);
  };
  return { at, point };
}

function ovalSkin(hull: Hull, ring: UnitRing, growth: Mm): SkinPoint {
  const station = new Float64Array(6);
  const point = new Float64Array(3);
  const { breadth } = ring.section;
  const at = (k: number, x: Mm) => {
    stationAt(hull, x, station);
    const [back, backSlope, belly, bellySlope, half, halfSlope] = station;
    const upper = ring.smoothUpright[k] >= 0;
    const share = upper ? 1 - breadth : breadth;
    const rise = share * (back - belly);
    const riseSlope = share * (backSlope - bellySlope);
    const broadest = belly + breadth * (back - belly);
    point[0] = x;
    point[1] = half * ring.across[k];
    point[2] = broadest + rise * ring.upright[k];
    if (growth > 0) {
      // gradient of |y/w|ⁿ + |(z - z_b)/h|ⁿ, times w h so that it stays finite at the tips
      const broadestSlope = bellySlope + breadth * (backSlope - bellySlope);
      const gy = ring.gradAcross[k] * rise;
      const gz = ring.gradUpright[k] * half;
      const gx = -(
        ring.gradAcross[k] * ring.smoothAcross[k] * halfSlope * rise +
        ring.gradUpright[k] * (broadestSlope + ring.smoothUpright[k] * riseSlope) * half
      );
      const long = Math.sqrt(gx * gx + gy * gy + gz * gz);
      if (long > 0) {
        point[0] += (growth * gx) / long;
        point[1] += (growth * gy) / long;
        point[2] += (growth * gz) / long;
      }
    }
  };
  return { at, point };
}

/** Far below what a plane or a scale could tell, far above rounding. */
const MEET_TOLERANCE_MM = 1e-11;

/** First stride of the search for where a line meets a face, as a share of the length. */
const FIRST_STRIDE = 1 / 128;

/** Station of the bare hull whose grown point on line k lies on the face. */
function meetFace(skin: SkinPoint, k: number, face: Face, length: Mm): Mm {
  const beyond = (x: Mm) => {
    skin.at(k, x);
    return skin.point[0] - faceAt(face, skin.point[1]);
  };
  // the flank can lie far behind the ridge: step out from it until the line has crossed the face, in shares of the
  // body, so that a line folded by its coat is met at the same one of its places whatever the body's size
  const direction = face.looks === 'fore' ? 1 : -1;
  const stride = direction * FIRST_STRIDE * length;
  let near = Math.min(length, Math.max(0, face.at - stride));
  let far = near;
  for (let step = 2 * stride; beyond(near) * direction > 0 && near > 0 && near < length; step *= 2) {
    near = Math.min(length, Math.max(0, near - step));
  }
  for (let step = 2 * stride; beyond(far) * direction < 0 && far > 0 && far < length; step *= 2) {
    far = Math.min(length, Math.max(0, far + step));
  }
  return bracketedRoot(beyond, near, far, MEET_TOLERANCE_MM).x;
}

function put(positions: Float64Array, vertex: number, x: Mm, y: Mm, z: Mm): void {
  positions[3 * vertex] = x;
  positions[3 * vertex + 1] = y;
  positions[3 * vertex + 2] = z;
}

/** Points of a face stand level with the ring's own points, so that the strips between them are level too. */
function putFace(
  positions: Float64Array,
  layout: VertexLayout,
  counts: LinkCounts,
  end: 'fore' | 'aft',
  face: Face,
): void {
  const [station, first] = end === 'fore' ? [layout.firstRing, layout.foreRidge] : [layout.lastRing, layout.aftRidge];
  const strips = faceStrips(counts, end);
  const row = (station - layout.firstRing) * layout.ringSize;
  for (let level = 1; level < counts.steps; level++) {
    const rim = positions[3 * (row + level) + 1];
    const z = positions[3 * (row + level) + 2];
    // on a cylinder the points between the rims stand off it, as far as makes the level's area that of its segment
    const standOff = isRound(face) ? arcFactor(face, rim, strips) : 1;
    const axis = isRound(face) ? face.axis : face.at;
    put(positions, facePoint(first, strips, level, 0), axis + (face.at - axis) * standOff, 0, z);
    for (let column = 1; column < strips; column++) {
      const y = partWay(face, rim, column / strips);
      const x = axis + (faceAt(face, y) - axis) * standOff;
      put(positions, facePoint(first, strips, level, column), x, y * standOff, z);
      put(positions, facePoint(first, strips, level, -column), x, -y * standOff, z);
    }
  }
}

/**
 * How much further from the axis than the radius the points of an arc between its ends stand, so that the chords cut off
 * as much as the arc itself: of n strips of angle d on either side, ((n - 1) c² + c) sin d = n d. The ends stay.
 */
function arcFactor({ radius }: RoundFace, rim: Mm, strips: number): number {
  const each = Math.asin(Math.min(1, rim / radius)) / strips;
  if (each < FLAT_RAD) return 1;
  const inner = strips - 1;
  return (Math.sqrt(1 + (4 * inner * strips * each) / Math.sin(each)) - 1) / (2 * inner);
}

/** Under this the arc of a strip and its chord are one: the factor is 1 to the last digit. */
const FLAT_RAD = 1e-7;

function putSlot(
  positions: Float64Array,
  first: number,
  strips: number,
  slot: LinkSlot,
  face: Face,
  bare: Face,
  growth: Mm,
): void {
  const aft = slot.opens === 'aft';
  const half = slot.width / 2 - growth;
  const floor = slotFloor(slot, bare) + (aft ? growth : -growth);
  // one turn, counter-clockwise seen from above, whichever way the slot opens
  const side = aft ? 1 : -1;
  const mouth = Array.from({ length: 2 * strips + 1 }, (_, i): readonly [Mm, Mm] => {
    const column = i - strips;
    const y = partWay(face, half, Math.abs(column) / strips);
    return [faceAt(face, y), column === 0 ? 0 : side * Math.sign(column) * y];
  });
  const corners: readonly (readonly [Mm, Mm])[] = [[floor, -side * half], ...mouth, [floor, side * half]];
  corners.forEach(([x, y], i) => {
    put(positions, first + i, x, y, slot.z[0] + growth);
    put(positions, first + corners.length + i, x, y, slot.z[1] - growth);
  });
}
