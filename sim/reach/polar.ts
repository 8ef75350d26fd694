import type { Mm, Radian } from '../units/brand.ts';
import { type Outline, SURFACES, type Surface } from './slice.ts';

/**
 * Outlines of one level seen from the line they turn about: every corner by its distance and bearing, every edge by the
 * bearing at which circles about the line cross it,
 *
 *   bearing(r) = normal ± acos(d/r)      d: from the line to the straight line of the edge
 *
 * Bearings from aft (+x) to starboard (+y).
 */
export interface Polar {
  readonly corners: number;
  readonly radius: Float64Array;
  readonly bearing: Float64Array;
  /** Numbers of `SURFACES`, of the corners. */
  readonly of: Uint8Array;
  readonly pieces: Pieces;
  readonly nearest: Mm;
  readonly furthest: Mm;
}

/** Edges cut where they come nearest, so that along each piece the distance only grows: [near, far). */
interface Pieces {
  readonly near: Float64Array;
  readonly far: Float64Array;
  readonly normal: Float64Array;
  readonly foot: Float64Array;
  /** +1, -1: the sign before acos. */
  readonly sign: Int8Array;
  /** 1: who goes round to starboard enters here, 0: leaves. */
  readonly enters: Uint8Array;
  readonly of: Uint8Array;
  /** Pieces by distance: those of bin i are items[start[i]] up to items[start[i + 1]]. */
  readonly start: Int32Array;
  readonly items: Int32Array;
  readonly perMm: number;
}

const BINS = 128;
const NUMBER_OF = new Map<Surface, number>(SURFACES.map((surface, i) => [surface, i]));

/** Sees outlines from an upright line at (x, 0). */
export function polarOf(outlines: readonly Outline[], x: Mm): Polar {
  const corners = outlines.reduce((sum, outline) => sum + outline.x.length, 0);
  const radius = new Float64Array(corners);
  const bearing = new Float64Array(corners);
  const of = new Uint8Array(corners);
  const most = 2 * corners;
  const near = new Float64Array(most);
  const far = new Float64Array(most);
  const normal = new Float64Array(most);
  const foot = new Float64Array(most);
  const sign = new Int8Array(most);
  const enters = new Uint8Array(most);
  const pieceOf = new Uint8Array(most);
  let corner = 0;
  let count = 0;
  let furthest = 0;
  let nearest = Number.POSITIVE_INFINITY;
  for (const outline of outlines) {
    const size = outline.x.length;
    const first = corner;
    for (let i = 0; i < size; i++, corner++) {
      const [dx, dy] = [outline.x[i] - x, outline.y[i]];
      radius[corner] = Math.sqrt(dx * dx + dy * dy);
      bearing[corner] = Math.atan2(dy, dx);
      const before = NUMBER_OF.get(outline.surface[(i + size - 1) % size]) as number;
      of[corner] = Math.max(before, NUMBER_OF.get(outline.surface[i]) as number);
      if (radius[corner] > furthest) furthest = radius[corner];
      if (radius[corner] < nearest) nearest = radius[corner];
    }
    for (let i = 0; i < size; i++) {
      const next = (i + 1) % size;
      const [ax, ay] = [outline.x[i] - x, outline.y[i]];
      const [ex, ey] = [outline.x[next] - outline.x[i], outline.y[next] - outline.y[i]];
      const long = Math.sqrt(ex * ex + ey * ey);
      if (long === 0) continue;
      const [ux, uy] = [ex / long, ey / long];
      const from = ax * ux + ay * uy;
      const [fx, fy] = [ax - from * ux, ay - from * uy];
      const d = Math.sqrt(fx * fx + fy * fy);
      // an edge that points at the line has no foot to take a bearing of
      const [nx, ny] = d > 1e-9 ? [fx, fy] : [-uy, ux];
      const turn = nx * uy - ny * ux > 0 ? 1 : -1;
      const surface = NUMBER_OF.get(outline.surface[i]) as number;
      const piece = (low: Mm, high: Mm, outward: boolean) => {
        if (!(high > low)) return;
        near[count] = low;
        far[count] = high;
        normal[count] = Math.atan2(ny, nx);
        foot[count] = d > 1e-9 ? d : 0;
        sign[count] = outward ? turn : -turn;
        // what an outline encloses lies to the left of its edges
        enters[count] = outward ? 1 : 0;
        pieceOf[count] = surface;
        count++;
      };
      const [ra, rb] = [radius[first + i], radius[first + next]];
      if (from >= 0) piece(ra, rb, true);
      else if (from + long <= 0) piece(rb, ra, false);
      else {
        piece(d, ra, false);
        piece(d, rb, true);
        if (d < nearest) nearest = d;
      }
    }
  }
  return {
    corners,
    radius,
    bearing,
    of,
    pieces: { near, far, normal, foot, sign, enters, of: pieceOf, ...binned(near, far, count, furthest) },
    nearest,
    furthest,
  };
}

function binned(near: Float64Array, far: Float64Array, count: number, furthest: Mm) {
  const perMm = furthest > 0 ? BINS / furthest : 0;
  const start = new Int32Array(BINS + 2);
  const first = (i: number) => Math.min(BINS, Math.floor(near[i] * perMm));
  const last = (i: number) => Math.min(BINS, Math.floor(far[i] * perMm));
  for (let i = 0; i < count; i++) for (let bin = first(i); bin <= last(i); bin++) start[bin + 1]++;
  for (let bin = 0; bin <= BINS; bin++) start[bin + 1] += start[bin];
  const items = new Int32Array(start[BINS + 1]);
  const next = start.slice();
  for (let i = 0; i < count; i++) for (let bin = first(i); bin <= last(i); bin++) items[next[bin]++] = i;
  return { start, items, perMm };
}

/** The first contact when one turns towards the other. */
export interface Contact {
  readonly angle: Radian;
  readonly radius: Mm;
  /** Where on the one that stands. */
  readonly bearing: Radian;
  /** Of the one that turns and of the one that stands. */
  readonly surfaces: readonly [Surface, Surface];
}

export interface BothWays {
  /** null: they never meet. */
  readonly port: Contact | null;
  readonly starboard: Contact | null;
}

const ROUND = 2 * Math.PI;
/** Bearings this near are one. */
const SAME_RAD = 1e-9;

/**
 * How far `turning` swings about the line to either side until it meets `standing`. Between straight edges the first
 * contact is a corner of one on an edge of the other, so the least angle over the distances of all corners is exact:
 *
 *   reach = min over r of the gap between the two on the circle r
 *
 * 0 both ways where they overlap as they stand.
 */
export function firstContact(turning: Polar, standing: Polar): BothWays {
  const best: Found = { port: null, starboard: null };
  scan(turning, standing, best, true);
  scan(standing, turning, best, false);
  return best;
}

interface Found {
  port: Contact | null;
  starboard: Contact | null;
}

/** Corners of one against the edges of the other. cornersTurn: the corners are on the one that turns. */
function scan(one: Polar, other: Polar, best: Found, cornersTurn: boolean): void {
  const { pieces } = other;
  for (let i = 0; i < one.corners; i++) {
    const r = one.radius[i];
    if (r < other.nearest || r > other.furthest) continue;
    const at = one.bearing[i];
    const bin = Math.min(BINS, Math.floor(r * pieces.perMm));
    // ahead is to starboard; who enters the other there meets it, and so does who enters it going back
    let ahead = ROUND;
    let aheadPiece = -1;
    let behind = ROUND;
    let behindPiece = -1;
    let outAhead = ROUND;
    let outBehind = ROUND;
    for (let k = pieces.start[bin]; k < pieces.start[bin + 1]; k++) {
      const piece = pieces.items[k];
      if (r < pieces.near[piece] || r >= pieces.far[piece]) continue;
      const crossing = pieces.normal[piece] + pieces.sign[piece] * Math.acos(Math.min(1, pieces.foot[piece] / r));
      const [on, back] = [turned(crossing - at), turned(at - crossing)];
      if (pieces.enters[piece] === 1) {
        if (back < outBehind) outBehind = back;
        if (on < ahead || aheadPiece < 0) {
          ahead = on;
          aheadPiece = piece;
        }
      } else {
        if (on < outAhead) outAhead = on;
        if (back < behind || behindPiece < 0) {
          behind = back;
          behindPiece = piece;
        }
      }
    }
    if (aheadPiece < 0 || behindPiece < 0) continue;
    // either way one comes out of the other before one can enter it: they overlap. Two crossings in one place, a corner
    // or what has no width, are in whatever order rounding has them
    if (Math.min(outAhead, outBehind) > SAME_RAD && outAhead < ahead - SAME_RAD && outBehind < behind - SAME_RAD) {
      ahead = 0;
      behind = 0;
    }
    // a corner that turns meets what is ahead; one that stands is met by what was behind it
    const [starboard, port] = cornersTurn ? [ahead, behind] : [behind, ahead];
    const [starboardPiece, portPiece] = cornersTurn ? [aheadPiece, behindPiece] : [behindPiece, aheadPiece];
    if (best.starboard === null || starboard < best.starboard.angle) {
      best.starboard = contact(starboard, r, at, one.of[i], pieces.of[starboardPiece], cornersTurn ? 1 : 0);
    }
    if (best.port === null || port < best.port.angle) {
      best.port = contact(port, r, at, one.of[i], pieces.of[portPiece], cornersTurn ? -1 : 0);
    }
  }
}

function contact(angle: Radian, radius: Mm, at: Radian, corner: number, edge: number, turns: number): Contact {
  const [one, other] = [SURFACES[corner], SURFACES[edge]];
  return { angle, radius, bearing: at + turns * angle, surfaces: turns === 0 ? [other, one] : [one, other] };
}

/** An angle from 0 up to a whole turn; what is a hair short of one is none. */
function turned(angle: Radian): Radian {
  const rest = angle - ROUND * Math.floor(angle / ROUND);
  return rest > ROUND - SAME_RAD ? 0 : rest;
}
