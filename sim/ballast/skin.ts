import { isSame } from '../flow/share.ts';
import { type Hull, halfWidthAt, heightAt, stationOf } from '../hull/hull.ts';
import { holeMouth, type Mouth } from '../mass/hole.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';

/** Distance between the points of skin that are looked at: a wall of 3 mm is told 0.02 mm too thick at most. */
const CLOUD_MM = 0.5;

/** From where holes are drilled, and in which row: its y for the belly, its z for the flanks. */
export interface Way {
  readonly from: 'belly' | 'flanks';
  readonly row: Mm;
}

export interface WallRoom {
  /** Distances along the axis from the mouth: between these a cylinder keeps its wall, up to that the drill's point. */
  readonly leadFrom: Mm;
  readonly shoulderTo: Mm;
  readonly tipTo: Mm;
}

/** What the bare skin leaves of holes. It remembers what it was asked: plans of one bait ask the same again and again. */
export interface Skin {
  /**
   * Within which part of its axis a cylinder stays `wall` away from all skin. A point of the skin beside the axis by less
   * than radius + wall bars a stretch of it: on the mouth's side what is nearer than it, else what is deeper.
   * mouth: where the axis meets the skin.
   */
  readonly wallRoom: (way: Way, radius: Mm, wall: Mm) => (x: Mm, mouth: Vec3) => WallRoom;
  /** The mouths of holes whose axes meet the skin. */
  readonly mouths: (way: Way, diameter: Mm) => (x: Mm) => Mouth;
}

/** Changes of a bait take turns with the bait itself. */
const MOST_KNOWN = 4;
const known: { readonly hull: Hull; readonly skin: Skin }[] = [];

/** The skin of a hull; the same for hulls that say the same. */
export function skinOf(hull: Hull): Skin {
  const at = known.findIndex((each) => each.hull === hull || isSame(each.hull, hull));
  const [found = { hull, skin: createSkin(hull) }] = at < 0 ? [] : known.splice(at, 1);
  known.unshift(found);
  known.length = Math.min(known.length, MOST_KNOWN);
  return found.skin;
}

function createSkin(hull: Hull): Skin {
  const ringAt = remembered((i: number) => ringOf(hull, i));
  const last = Math.ceil(hull.length / CLOUD_MM);
  const rooms = remembered((_key: string, way: Way, radius: Mm, wall: Mm) =>
    remembered((x: Mm, mouth: Vec3) => roomAt(way, x, mouth, radius, wall)),
  );
  const mouths = remembered((_key: string, { from, row }: Way, diameter: Mm) => {
    const side = from === 'belly' ? 'belly' : 'starboard';
    return remembered((x: Mm) => holeMouth(hull, { from: side, x, across: row, diameter }) as Mouth);
  });

  function roomAt(way: Way, x: Mm, mouth: Vec3, radius: Mm, wall: Mm): WallRoom {
    const reach = radius + wall;
    const low = Math.max(0, Math.ceil((x - reach) / CLOUD_MM));
    const high = Math.min(last, Math.floor((x + reach) / CLOUD_MM));
    const barred = createBarred(way, mouth, radius, wall);
    for (let i = low; i <= high; i++) barred.by(ringAt(i), x);
    return barred.room();
  }

  return {
    wallRoom: (way, radius, wall) => rooms(`${way.from} ${way.row} ${radius} ${wall}`, way, radius, wall),
    mouths: (way, diameter) => mouths(`${way.from} ${way.row} ${diameter}`, way, diameter),
  };
}

/** A function that works out each answer once, told apart by its first argument. */
function remembered<Key, Rest extends readonly unknown[], Value>(work: (key: Key, ...rest: Rest) => Value) {
  const answers = new Map<Key, Value>();
  return (key: Key, ...rest: Rest): Value => {
    const before = answers.get(key);
    if (before !== undefined) return before;
    const answer = work(key, ...rest);
    answers.set(key, answer);
    return answer;
  };
}

/** One section of the starboard skin, port is its image: heights of belly and back over y, half widths over heights. */
interface Ring {
  readonly x: Mm;
  /** Step by step from the middle. */
  readonly belly: Float64Array;
  readonly back: Float64Array;
  /** Step by step from the lowest; widest at `broadest`. */
  readonly firstZ: Mm;
  readonly half: Float64Array;
  readonly broadest: Mm;
}

function ringOf(hull: Hull, index: number): Ring {
  const x = Math.min(hull.length, index * CLOUD_MM);
  const station = stationOf(hull, x);
  const { back, belly, halfWidth, broadest } = station;
  const over = (on: 'back' | 'belly') =>
    Float64Array.from(
      { length: Math.max(0, Math.ceil(halfWidth / CLOUD_MM)) },
      (_step, k) => heightAt(hull, station, on, k * CLOUD_MM) ?? broadest,
    );
  const firstZ = belly + CLOUD_MM / 2;
  const half = Float64Array.from(
    { length: Math.max(0, Math.floor((back - belly) / CLOUD_MM)) },
    (_step, k) => halfWidthAt(hull, station, firstZ + k * CLOUD_MM) ?? 0,
  );
  return { x, belly: over('belly'), back: over('back'), firstZ, half, broadest };
}

/** Takes section after section, and leaves what they do not bar of a hole's axis. */
function createBarred({ from, row }: Way, mouth: Vec3, radius: Mm, wall: Mm) {
  const reach = radius + wall;
  let [leadFrom, shoulderTo, tipTo] = [0, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  /** How far along the axis a point bars it, to either side; 0: it does not. */
  const bar = (square: number): Mm => {
    if (square >= reach * reach) return 0;
    const lateral = Math.sqrt(square) - radius;
    return lateral <= 0 ? wall : Math.sqrt(wall * wall - lateral * lateral);
  };

  const acrossBy = ({ belly, back, firstZ, half }: Ring, square: number): void => {
    const to = Math.min(half.length - 1, Math.floor((row + reach - firstZ) / CLOUD_MM));
    for (let k = Math.max(0, Math.ceil((row - reach - firstZ) / CLOUD_MM)); k <= to; k++) {
      const dz = firstZ + k * CLOUD_MM - row;
      const barred = bar(square + dz * dz);
      if (barred > 0) leadFrom = Math.max(leadFrom, mouth[1] - half[k] + barred);
    }
    // of belly and back the outermost points lie nearest to the row
    for (const face of [belly, back]) {
      for (let k = face.length - 1; k >= 0 && Math.abs(face[k] - row) < reach; k--) {
        const dz = face[k] - row;
        leadFrom = Math.max(leadFrom, mouth[1] - k * CLOUD_MM + bar(square + dz * dz));
      }
    }
  };

  const uprightBy = ({ belly, back, firstZ, half, broadest }: Ring, square: number): void => {
    const side = Math.abs(row);
    const to = Math.min(belly.length - 1, Math.floor((side + reach) / CLOUD_MM));
    for (let k = Math.max(0, Math.ceil((side - reach) / CLOUD_MM)); k <= to; k++) {
      const dy = k * CLOUD_MM - side;
      const beside = square + dy * dy;
      const barred = bar(beside);
      if (barred === 0) continue;
      leadFrom = Math.max(leadFrom, belly[k] - mouth[2] + barred);
      shoulderTo = Math.min(shoulderTo, back[k] - mouth[2] - barred);
      if (beside < wall * wall) tipTo = Math.min(tipTo, back[k] - mouth[2] - Math.sqrt(wall * wall - beside));
    }
    const flank = (k: number): boolean => {
      const dy = half[k] - side;
      if (dy >= reach) return false;
      const barred = bar(square + dy * dy);
      const z = firstZ + k * CLOUD_MM;
      if (barred > 0 && z < broadest) leadFrom = Math.max(leadFrom, z - mouth[2] + barred);
      else if (barred > 0) shoulderTo = Math.min(shoulderTo, z - mouth[2] - barred);
      return true;
    };
    // a section only widens towards where it is broadest: past the first that is out of reach all others are
    let low = 0;
    while (low < half.length && flank(low)) low++;
    for (let k = half.length - 1; k > low && flank(k); k--);
  };

  return {
    by: (ring: Ring, x: Mm): void => {
      const square = (ring.x - x) ** 2;
      if (from === 'flanks') acrossBy(ring, square);
      else uprightBy(ring, square);
    },
    room: (): WallRoom => ({ leadFrom, shoulderTo, tipTo }),
  };
}
