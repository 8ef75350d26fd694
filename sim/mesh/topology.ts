import type { Patch, PatchKind, Topology } from './mesh.ts';

/** How finely a link is meshed, and what ends it has. */
export interface LinkCounts {
  /** Bands from end to end. */
  readonly bands: number;
  /** Steps from keel to back along half a ring; even. */
  readonly steps: number;
  readonly foreTip: boolean;
  readonly aftTip: boolean;
  readonly slots: number;
}

/** Corners of a slot: five at the bottom, five at the top, in one turn each. */
export const SLOT_CORNERS = 10;

/** Triangles of a slot's patch that close its mouth, first and one past the last: they lie on the joint face. */
export const SLOT_MOUTH = [8, 12] as const;

/** Where each kind of vertex starts. Rings run from the nose aft; a ring runs keel, starboard, back, port. */
export interface VertexLayout {
  readonly ringSize: number;
  /** Stations that have a ring rather than a pole, first and last. */
  readonly firstRing: number;
  readonly lastRing: number;
  /** -1 where there is none. */
  readonly forePole: number;
  readonly aftPole: number;
  /** Ridge points of the faces, between keel and back. */
  readonly foreRidge: number;
  readonly aftRidge: number;
  readonly slots: number;
  readonly vertexCount: number;
}

/** Numbers the vertices of a link. */
export function layOutVertices(counts: LinkCounts): VertexLayout {
  const ringSize = 2 * counts.steps;
  const firstRing = counts.foreTip ? 1 : 0;
  const lastRing = counts.aftTip ? counts.bands - 1 : counts.bands;
  let next = (lastRing - firstRing + 1) * ringSize;
  const take = (wanted: boolean, size: number) => {
    if (!wanted) return -1;
    next += size;
    return next - size;
  };
  const forePole = take(counts.foreTip, 1);
  const aftPole = take(counts.aftTip, 1);
  const foreRidge = take(!counts.foreTip, counts.steps - 1);
  const aftRidge = take(!counts.aftTip, counts.steps - 1);
  const slots = next;
  next += counts.slots * SLOT_CORNERS;
  return { ringSize, firstRing, lastRing, forePole, aftPole, foreRidge, aftRidge, slots, vertexCount: next };
}

const made = new Map<string, Topology>();
const countsOfMade = new WeakMap<Topology, LinkCounts>();

/** The counts that `linkTopology` made a topology from; undefined for any other. */
export function countsOf(topology: Topology): LinkCounts | undefined {
  return countsOfMade.get(topology);
}

/** The topology of these counts: the same object every time. */
export function linkTopology(counts: LinkCounts): Topology {
  const key = `${counts.bands}x${counts.steps}${counts.foreTip ? ' fore tip' : ''}${counts.aftTip ? ' aft tip' : ''} ${counts.slots} slots`;
  let topology = made.get(key);
  if (!topology) {
    topology = buildTopology(key, counts);
    made.set(key, topology);
    countsOfMade.set(topology, counts);
  }
  return topology;
}

function buildTopology(key: string, counts: LinkCounts): Topology {
  const layout = layOutVertices(counts);
  const index: number[] = [];
  const patches: Patch[] = [];
  const patch = (kind: PatchKind, write: () => void) => {
    const from = index.length / 3;
    write();
    patches.push({ kind, from, count: index.length / 3 - from });
  };
  patch('skin', () => writeSkin(index, counts, layout));
  if (!counts.foreTip) {
    patch('fore-face', () => writeFace(index, counts, layout.firstRing, layout.foreRidge, layout, true));
  }
  if (!counts.aftTip) {
    patch('aft-face', () => writeFace(index, counts, layout.lastRing, layout.aftRidge, layout, false));
  }
  for (let slot = 0; slot < counts.slots; slot++) {
    patch('slot', () => writeSlot(index, layout.slots + slot * SLOT_CORNERS));
  }
  return { key, vertexCount: layout.vertexCount, index: Uint32Array.from(index), patches };
}

function writeSkin(index: number[], counts: LinkCounts, layout: VertexLayout): void {
  const { ringSize, firstRing, lastRing } = layout;
  const vertex = (station: number, k: number) => (station - firstRing) * ringSize + (k % ringSize);
  if (layout.forePole >= 0) {
    for (let k = 0; k < ringSize; k++) index.push(layout.forePole, vertex(firstRing, k + 1), vertex(firstRing, k));
  }
  for (let station = firstRing; station < lastRing; station++) {
    for (let k = 0; k < ringSize; k++) {
      const [a, b] = [vertex(station, k), vertex(station, k + 1)];
      const [c, d] = [vertex(station + 1, k + 1), vertex(station + 1, k)];
      // port mirrors starboard to the letter, so a symmetric bait has no side
      if (k < counts.steps) index.push(a, b, c, a, c, d);
      else index.push(a, b, d, b, c, d);
    }
  }
  if (layout.aftPole >= 0) {
    for (let k = 0; k < ringSize; k++) index.push(layout.aftPole, vertex(lastRing, k), vertex(lastRing, k + 1));
  }
}

/** A face: strips from the upright ridge on the centre plane out to the ring, starboard and port. */
function writeFace(
  index: number[],
  counts: LinkCounts,
  station: number,
  ridge: number,
  layout: VertexLayout,
  looksForward: boolean,
): void {
  const ring = (k: number) => (station - layout.firstRing) * layout.ringSize + (k % layout.ringSize);
  const centre = (level: number) => (level === 0 || level === counts.steps ? ring(level) : ridge + level - 1);
  const triangle = (a: number, b: number, c: number) => {
    if (a === b || b === c || c === a) return;
    if (looksForward) index.push(a, c, b);
    else index.push(a, b, c);
  };
  for (let level = 0; level < counts.steps; level++) {
    const [lowStarboard, highStarboard] = [ring(level), ring(level + 1)];
    const [lowPort, highPort] = [ring(layout.ringSize - level), ring(layout.ringSize - level - 1)];
    const [low, high] = [centre(level), centre(level + 1)];
    triangle(low, lowStarboard, highStarboard);
    triangle(low, highStarboard, high);
    triangle(low, highPort, lowPort);
    triangle(low, high, highPort);
  }
}

/** A five-cornered prism, wound inside out: its water is taken off the link. Ends first, then the sides in turn. */
function writeSlot(index: number[], first: number): void {
  const half = SLOT_CORNERS / 2;
  const low = (i: number) => first + (i % half);
  const high = (i: number) => first + half + (i % half);
  for (let i = 1; i < half - 1; i++) {
    index.push(low(0), low(i), low(i + 1));
    index.push(high(0), high(i + 1), high(i));
  }
  for (let i = 0; i < half; i++) {
    index.push(low(i), high(i), high(i + 1), low(i), high(i + 1), low(i + 1));
  }
}
