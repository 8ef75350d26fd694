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
  /** Which faces are round, and which of the slots open to one of those; left out where none is. */
  readonly round?: { readonly fore: boolean; readonly aft: boolean; readonly slots: readonly boolean[] };
}

/**
 * Strips of a face from its middle to either rim, of equal angle about the axis where it is round. A facet that spans
 * an angle t stands off the cylinder by radius·(1 - cos(t/2)): with eight strips to a rim at most a quarter turn away,
 * by 0.5 % of the radius, and less by the square of the step.
 */
export function faceStrips(counts: LinkCounts, end: 'fore' | 'aft'): number {
  return counts.round?.[end] ? Math.max(2, Math.round(counts.steps / 4)) : 1;
}

/**
 * Strips of a slot's mouth from its middle to either cheek. Its corners lie on the cylinder, so the mouth parts from
 * the facets of the face by no more than the two stand off it; what is taken off for that sliver errs by as little.
 */
export function mouthStrips(counts: LinkCounts, slot: number): number {
  return counts.round?.slots[slot] ? Math.max(2, Math.round(counts.steps / 8)) : 1;
}

/** Corners of a slot: floor, mouth and floor again at the bottom, as many at the top, in one turn each. */
export function slotCorners(strips: number): number {
  return 2 * (2 * strips + 3);
}

/** Triangles of a slot's patch that close its mouth, first and one past the last: they lie on the joint face. */
export function slotMouth({ count }: Patch): readonly [number, number] {
  return [count / 2, count - 4];
}

/** Where each kind of vertex starts. Rings run from the nose aft; a ring runs keel, starboard, back, port. */
export interface VertexLayout {
  readonly ringSize: number;
  /** Stations that have a ring rather than a pole, first and last. */
  readonly firstRing: number;
  readonly lastRing: number;
  /** -1 where there is none. */
  readonly forePole: number;
  readonly aftPole: number;
  /** Points of the faces between keel and back, see `facePoint`. */
  readonly foreRidge: number;
  readonly aftRidge: number;
  /** First vertex of each slot. */
  readonly slots: readonly number[];
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
  const pointsOfFace = (end: 'fore' | 'aft') => (counts.steps - 1) * faceRow(faceStrips(counts, end));
  const foreRidge = take(!counts.foreTip, pointsOfFace('fore'));
  const aftRidge = take(!counts.aftTip, pointsOfFace('aft'));
  const slots = Array.from({ length: counts.slots }, (_, slot) => take(true, slotCorners(mouthStrips(counts, slot))));
  return { ringSize, firstRing, lastRing, forePole, aftPole, foreRidge, aftRidge, slots, vertexCount: next };
}

/** Points of a face on one level, its rim left out. */
function faceRow(strips: number): number {
  return 2 * strips - 1;
}

/** Vertex of a face whose points start at `first`: level from 1 over the keel; column 0 is the middle, + starboard, - port. */
export function facePoint(first: number, strips: number, level: number, column: number): number {
  return first + (level - 1) * faceRow(strips) + (column >= 0 ? column : strips - 1 - column);
}

const made = new Map<string, Topology>();
const countsOfMade = new WeakMap<Topology, LinkCounts>();

/** The counts that `linkTopology` made a topology from; undefined for any other. */
export function countsOf(topology: Topology): LinkCounts | undefined {
  return countsOfMade.get(topology);
}

/** The topology of these counts: the same object every time. */
export function linkTopology(counts: LinkCounts): Topology {
  const key = `${counts.bands}x${counts.steps}${counts.foreTip ? ' fore tip' : ''}${counts.aftTip ? ' aft tip' : ''} ${counts.slots} slots${roundKey(counts)}`;
  let topology = made.get(key);
  if (!topology) {
    topology = buildTopology(key, counts);
    made.set(key, topology);
    countsOfMade.set(topology, counts);
  }
  return topology;
}

function roundKey({ round }: LinkCounts): string {
  if (!round) return '';
  const slots = round.slots.map((isRound) => (isRound ? 'r' : 'f')).join('');
  return ` round${round.fore ? ' fore' : ''}${round.aft ? ' aft' : ''} ${slots}`;
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
  if (!counts.foreTip) patch('fore-face', () => writeFace(index, counts, layout, 'fore'));
  if (!counts.aftTip) patch('aft-face', () => writeFace(index, counts, layout, 'aft'));
  layout.slots.forEach((first, slot) => {
    patch('slot', () => writeSlot(index, first, mouthStrips(counts, slot)));
  });
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

/** A face: strips from the upright line on the centre plane out to the ring, starboard and port. */
function writeFace(index: number[], counts: LinkCounts, layout: VertexLayout, end: 'fore' | 'aft'): void {
  const looksForward = end === 'fore';
  const [station, first] = looksForward ? [layout.firstRing, layout.foreRidge] : [layout.lastRing, layout.aftRidge];
  const strips = faceStrips(counts, end);
  const ring = (k: number) => (station - layout.firstRing) * layout.ringSize + (k % layout.ringSize);
  const point = (level: number, column: number) => {
    if (level === 0 || level === counts.steps) return ring(level);
    if (column === strips) return ring(level);
    if (column === -strips) return ring(layout.ringSize - level);
    return facePoint(first, strips, level, column);
  };
  const triangle = (a: number, b: number, c: number) => {
    if (a === b || b === c || c === a) return;
    if (looksForward) index.push(a, c, b);
    else index.push(a, b, c);
  };
  for (let level = 0; level < counts.steps; level++) {
    for (let strip = 0; strip < strips; strip++) {
      const [low, high] = [point(level, strip), point(level + 1, strip)];
      const [lowOut, highOut] = [point(level, strip + 1), point(level + 1, strip + 1)];
      triangle(low, lowOut, highOut);
      triangle(low, highOut, high);
      // port mirrors starboard, as on the skin
      const [lowPort, highPort] = [point(level, -strip), point(level + 1, -strip)];
      const [lowPortOut, highPortOut] = [point(level, -strip - 1), point(level + 1, -strip - 1)];
      triangle(lowPort, highPortOut, lowPortOut);
      triangle(lowPort, highPort, highPortOut);
    }
  }
}

/** A prism, wound inside out: its water is taken off the link. Ends first, then the sides in turn, the floor last. */
function writeSlot(index: number[], first: number, strips: number): void {
  const half = slotCorners(strips) / 2;
  const low = (i: number) => first + (i % half);
  const high = (i: number) => first + half + (i % half);
  for (const [a, b, c] of slotEnd(strips)) {
    index.push(low(a), low(b), low(c));
    index.push(high(a), high(c), high(b));
  }
  for (let i = 0; i < half; i++) {
    index.push(low(i), high(i), high(i + 1), low(i), high(i + 1), low(i + 1));
  }
}

/** Triangles of a slot's end. Behind a round mouth each half has its own corner of the floor, for a hollow bends inwards. */
function slotEnd(strips: number): readonly (readonly [number, number, number])[] {
  const last = 2 * strips + 2;
  const fan = (apex: number, from: number, to: number) =>
    Array.from({ length: to - from }, (_, i) => [apex, from + i, from + i + 1] as const);
  if (strips === 1) return fan(0, 1, last);
  return [...fan(0, 1, strips + 1), [0, strips + 1, last], ...fan(last, strips + 1, last - 1)];
}
