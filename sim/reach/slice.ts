import { type Face, faceAt, isRound } from '../links/cut.ts';
import type { Mm } from '../units/brand.ts';
import type { Plate, ReachLink, Steel } from './link.ts';

/** What an edge of an outline belongs to; where a corner joins two, the later in this list names it. */
export const SURFACES = ['skin', 'face', 'slot', 'knuckle', 'fin', 'eye', 'hanger'] as const;
export type Surface = (typeof SURFACES)[number];

/** A closed outline on one level, anticlockwise seen from above: corners x, y; surface: of the edge from each corner on. */
export interface Outline {
  readonly x: readonly Mm[];
  readonly y: readonly Mm[];
  readonly surface: readonly Surface[];
}

/** What stands on one level of a link. Steel apart: it may meet wood, while eyes are meant to hold each other. */
export interface Slice {
  readonly wood: readonly Outline[];
  readonly steel: readonly Outline[];
}

/** Cuts a link at a height. */
export function sliceLink(link: ReachLink, z: Mm): Slice {
  const fins = link.fins.flatMap((fin) => sliceFin(fin, z));
  return {
    wood: [...sliceWood(link, z), ...fins],
    steel: link.steel.flatMap((steel) => sliceSteel(steel, z)),
  };
}

/** The skin's half of a level from fore to aft; first and last point on a face, or on the centre plane. */
interface Run {
  readonly x: Mm[];
  readonly y: Mm[];
  readonly fromFace: boolean;
  toFace: boolean;
}

function sliceWood(link: ReachLink, z: Mm): readonly Outline[] {
  return runsOf(link, z).map((run) => {
    const outline = { x: [] as Mm[], y: [] as Mm[], surface: [] as Surface[] };
    const put = (x: Mm, y: Mm, surface: Surface) => {
      outline.x.push(x);
      outline.y.push(y);
      outline.surface.push(surface);
    };
    const last = run.x.length - 1;
    // port from fore to aft, the aft face, starboard back again, the fore face
    for (let i = 0; i < last; i++) put(run.x[i], -run.y[i], 'skin');
    if (run.toFace && link.aftFace) putFace(put, link, link.aftFace, z, run.x[last], run.y[last]);
    else put(run.x[last], 0, 'skin');
    for (let i = last - 1; i > 0; i--) put(run.x[i], run.y[i], 'skin');
    if (run.fromFace && link.foreFace) {
      putFace(put, link, link.foreFace, z, run.x[0], run.y[0]);
      // the face ends on the first corner of all
      for (const list of [outline.x, outline.y, outline.surface]) list.pop();
    } else if (run.y[0] > 0) put(run.x[0], run.y[0], 'skin');
    return outline;
  });
}

/** Steps of a round face from its middle to its rim on one level: chords stand off 0.03 % of the radius at a quarter turn. */
const ARC_STEPS = 32;

/**
 * From corner to corner along a face: an aft one from port to starboard, a fore one the other way, round its slot. The
 * corners are where the skin's mesh meets the face.
 */
function putFace(
  put: (x: Mm, y: Mm, surface: Surface) => void,
  link: ReachLink,
  face: Face,
  z: Mm,
  cornerX: Mm,
  cornerY: Mm,
): void {
  const aft = face.looks === 'aft';
  const side = aft ? 1 : -1;
  const kind = isRound(face) ? 'knuckle' : 'face';
  const slot = link.slots.find(({ opens, z: [low, high] }) => opens === (aft ? 'aft' : 'fore') && low < z && z < high);
  // a slot never comes through the skin, but its level may
  const half = slot ? Math.min(slot.width / 2, cornerY) : 0;
  const steps = isRound(face) ? ARC_STEPS : 1;
  const inner: Mm[] = [];
  for (let i = 1; i < steps; i++) {
    const y = half + (cornerY - half) * Math.sin(((1 - i / steps) * Math.PI) / 2);
    inner.push(y);
  }
  put(cornerX, -side * cornerY, kind);
  for (const y of inner) put(faceAt(face, y), -side * y, kind);
  if (slot) {
    put(faceAt(face, half), -side * half, 'slot');
    put(slot.floor, -side * half, 'slot');
    put(slot.floor, side * half, 'slot');
    put(faceAt(face, half), side * half, kind);
  } else put(face.at, 0, kind);
  for (const y of inner.toReversed()) put(faceAt(face, y), side * y, kind);
  put(cornerX, side * cornerY, 'skin');
}

/** Stretches of a link that a level passes through, by the rings of its mesh. */
function runsOf({ skin, layout, counts }: ReachLink, z: Mm): readonly Run[] {
  const { positions } = skin;
  const { ringSize, firstRing, lastRing, forePole, aftPole } = layout;
  const runs: Run[] = [];
  let run: Run | null = null;
  // a level runs along much the same line of the mesh from ring to ring: looked for from where it was last
  let line = Math.floor(counts.steps / 2);
  for (let station = 0; station <= counts.bands; station++) {
    const inRing = station >= firstRing && station <= lastRing;
    const keel = inRing ? (station - firstRing) * ringSize : station === 0 ? forePole : aftPole;
    const back = inRing ? keel + counts.steps : keel;
    const reaches = positions[3 * keel + 2] <= z && z <= positions[3 * back + 2];
    if (reaches) {
      if (run === null) {
        run = { x: [], y: [], fromFace: station === 0 && forePole < 0, toFace: false };
        runs.push(run);
        if (station > 0) putOnMiddle(run, crossing(positions, layout, counts.steps, station - 1, z));
      }
      if (inRing) line = putSkin(positions, keel, counts.steps, line, z, run);
      else if (run.y.at(-1) !== 0) putOnMiddle(run, positions[3 * keel]);
      if (station === counts.bands) run.toFace = aftPole < 0;
    } else if (run !== null) {
      putOnMiddle(run, crossing(positions, layout, counts.steps, station - 1, z));
      run = null;
    }
  }
  return runs.filter(({ x }) => x.length > 1).map(thinned);
}

function putOnMiddle(run: Run, x: Mm): void {
  run.x.push(x);
  run.y.push(0);
}

/** What an outline may lose in width where points of it are left out: far below what a hand shapes. */
const THINNED_MM = 0.002;
/** Most points left out in a row. */
const MOST_THINNED = 12;

/** Leaves out points that stand on the straight line between those kept: of a slim flank that is most of them. */
function thinned(run: Run): Run {
  const { x, y } = run;
  const kept: [Mm[], Mm[]] = [[x[0]], [y[0]]];
  const last = x.length - 1;
  let from = 0;
  while (from < last) {
    let to = from + 1;
    while (to < last && to - from < MOST_THINNED && isStraight(x, y, from, to + 1)) to++;
    kept[0].push(x[to]);
    kept[1].push(y[to]);
    from = to;
  }
  return { ...run, x: kept[0], y: kept[1] };
}

function isStraight(x: readonly Mm[], y: readonly Mm[], from: number, to: number): boolean {
  const [ex, ey] = [x[to] - x[from], y[to] - y[from]];
  const most = THINNED_MM * Math.sqrt(ex * ex + ey * ey);
  for (let i = from + 1; i < to; i++) {
    if (Math.abs(ex * (y[i] - y[from]) - ey * (x[i] - x[from])) > most) return false;
  }
  return true;
}

/** Where keel or back passes a height between a station and the next. */
function crossing(positions: Float64Array, layout: ReachLink['layout'], steps: number, station: number, z: Mm): Mm {
  const { ringSize, firstRing, lastRing, forePole, aftPole } = layout;
  const vertex = (at: number, up: number) =>
    at < firstRing ? forePole : at > lastRing ? aftPole : (at - firstRing) * ringSize + up;
  // of the two lines it is the one that has the height between its ends
  for (const up of [steps, 0]) {
    const [a, b] = [3 * vertex(station, up), 3 * vertex(station + 1, up)];
    const [from, to] = [positions[a + 2] - z, positions[b + 2] - z];
    if (from === to || from * to > 0) continue;
    return positions[a] + ((positions[b] - positions[a]) * from) / (from - to);
  }
  return positions[3 * vertex(station, 0)];
}

/** The starboard place of a ring at a height, looked for from a line of the mesh; gives back the line it was found on. */
function putSkin(positions: Float64Array, keel: number, steps: number, from: number, z: Mm, run: Run): number {
  let k = from;
  while (k > 0 && z < positions[3 * (keel + k) + 2]) k--;
  while (k < steps - 1 && z > positions[3 * (keel + k) + 5]) k++;
  const a = 3 * (keel + k);
  const [low, high] = [positions[a + 2], positions[a + 5]];
  const share = high > low ? Math.min(1, Math.max(0, (z - low) / (high - low))) : 1;
  run.x.push(positions[a] + share * (positions[a + 3] - positions[a]));
  run.y.push(Math.max(0, positions[a + 1] + share * (positions[a + 4] - positions[a + 1])));
  return k;
}

function sliceFin({ triangles, thickness, z: [lowest, highest] }: Plate, z: Mm): readonly Outline[] {
  if (z < lowest || z > highest) return [];
  const spans: [Mm, Mm][] = [];
  for (let i = 0; i < triangles.length; i += 6) {
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let edge = 0; edge < 3; edge++) {
      const [a, b] = [i + 2 * edge, i + 2 * ((edge + 1) % 3)];
      const [below, above] = [triangles[a + 1] - z, triangles[b + 1] - z];
      if (below * above > 0 || below === above) continue;
      const x = triangles[a] + ((triangles[b] - triangles[a]) * below) / (below - above);
      from = Math.min(from, x);
      to = Math.max(to, x);
    }
    if (to > from) spans.push([from, to]);
  }
  return merged(spans).map(([from, to]) => rectangle(from, to, -thickness / 2, thickness / 2, 'fin'));
}

/** Far below what can be made, far above rounding. */
const SAME_MM = 1e-6;

function merged(spans: readonly (readonly [Mm, Mm])[]): readonly (readonly [Mm, Mm])[] {
  const whole: [Mm, Mm][] = [];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = whole.at(-1);
    if (last && from <= last[1] + SAME_MM) last[1] = Math.max(last[1], to);
    else whole.push([from, to]);
  }
  return whole;
}

function rectangle(from: Mm, to: Mm, port: Mm, starboard: Mm, surface: Surface): Outline {
  return {
    x: [from, to, to, from],
    y: [port, port, starboard, starboard],
    surface: [surface, surface, surface, surface],
  };
}

/** Corners of a ring lying flat, about its outside. */
const RING_CORNERS = 48;
const POST_CORNERS = 16;

function sliceSteel(steel: Steel, z: Mm): readonly Outline[] {
  if (steel.shape === 'post') {
    if (z < steel.z[0] || z > steel.z[1]) return [];
    return [disc(steel.x, steel.y, steel.radius, POST_CORNERS, steel.surface)];
  }
  const off = Math.abs(z - steel.z);
  if (steel.shape === 'bar') {
    if (off >= steel.radius) return [];
    const half = Math.sqrt(steel.radius ** 2 - off ** 2);
    return [rectangle(steel.from, steel.to, steel.y - half, steel.y + half, steel.surface)];
  }
  if (steel.axis === 'y') {
    if (off >= steel.outer) return [];
    const half = Math.sqrt(steel.outer ** 2 - off ** 2);
    const { x, y, radius } = steel;
    return [rectangle(x - half, x + half, y - radius, y + radius, steel.surface)];
  }
  if (off >= steel.radius) return [];
  const outer = steel.outer - steel.radius + Math.sqrt(steel.radius ** 2 - off ** 2);
  return [disc(steel.x, steel.y, outer, RING_CORNERS, steel.surface)];
}

function disc(x: Mm, y: Mm, radius: Mm, corners: number, surface: Surface): Outline {
  const turns = Array.from({ length: corners }, (_, i) => (2 * Math.PI * i) / corners);
  return {
    x: turns.map((turn) => x + radius * Math.cos(turn)),
    y: turns.map((turn) => y + radius * Math.sin(turn)),
    surface: turns.map(() => surface),
  };
}
