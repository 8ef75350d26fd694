import type { BoardSection } from '../design/design.ts';
import type { Mm, Mm2 } from '../units/brand.ts';

/*
 * Sections of a bait cut from a board: a rectangle 2w by 2h with a round of its own radius at back and belly,
 * r = min(edge, w, h). Measured in the section, so it differs from what a router leaves only where an outline is steep.
 */

/** Half the sizes of a section and its radii. */
interface BoardSize {
  readonly half: Mm;
  /** Half the height. */
  readonly rise: Mm;
  readonly middle: Mm;
  readonly backEdge: Mm;
  readonly bellyEdge: Mm;
}

function sizeOf(section: BoardSection, back: Mm, belly: Mm, half: Mm): BoardSize {
  const rise = (back - belly) / 2;
  const most = Math.min(half, rise);
  return {
    half,
    rise,
    middle: belly + rise,
    backEdge: Math.min(section.backEdge, most),
    bellyEdge: Math.min(section.bellyEdge, most),
  };
}

/** What a square corner has more than a round of radius 1: 1 - pi/4. */
const CORNER = 1 - Math.PI / 4;

/** Area 4 w h - (2 - pi/2)(r_back² + r_belly²). */
export function boardArea(section: BoardSection, back: Mm, belly: Mm, half: Mm): Mm2 {
  const { rise, backEdge, bellyEdge } = sizeOf(section, back, belly, half);
  return 4 * half * rise - 2 * CORNER * (backEdge * backEdge + bellyEdge * bellyEdge);
}

/** 1 + (distance of the point outside the skin) / (the smaller half size): 1 on the skin, less inside, more outside. */
export function boardMeasure(section: BoardSection, back: Mm, belly: Mm, half: Mm, y: Mm, z: Mm): number {
  const { rise, middle, backEdge, bellyEdge } = sizeOf(section, back, belly, half);
  const radius = z >= middle ? backEdge : bellyEdge;
  const across = Math.abs(y) - half + radius;
  const upright = Math.abs(z - middle) - rise + radius;
  const distance =
    Math.min(0, Math.max(across, upright)) + Math.hypot(Math.max(0, across), Math.max(0, upright)) - radius;
  return 1 + distance / Math.min(half, rise);
}

/** How far above the middle (below it, on the belly) the skin lies at |y| < half. */
export function boardReach(section: BoardSection, on: 'back' | 'belly', back: Mm, belly: Mm, half: Mm, y: Mm): Mm {
  const { rise, backEdge, bellyEdge } = sizeOf(section, back, belly, half);
  const radius = on === 'back' ? backEdge : bellyEdge;
  return rise - fallBack(radius, Math.abs(y) - half + radius);
}

/** Half width at a height between belly and back. */
export function boardHalfWidth(section: BoardSection, back: Mm, belly: Mm, half: Mm, z: Mm): Mm {
  const { rise, middle, backEdge, bellyEdge } = sizeOf(section, back, belly, half);
  const radius = z >= middle ? backEdge : bellyEdge;
  return half - fallBack(radius, Math.abs(z - middle) - rise + radius);
}

/** How far a round falls back behind its flat, `past` the line where it begins. */
function fallBack(radius: Mm, past: Mm): Mm {
  return past > 0 ? radius - Math.sqrt(Math.max(0, radius * radius - past * past)) : 0;
}

/** A ring of a board: nothing about it is the same at every station but how many steps it has. */
export interface BoardRing {
  readonly kind: 'board';
  /** Steps from keel to back; a multiple of four. */
  readonly steps: number;
  readonly section: BoardSection;
}

/** A millimetre of a round gets as many points as this many of a flat: it bends, and a flat does not. */
const ROUND_WEIGHT = 3;

/**
 * Point k of the ring of a station ([back, back', belly, belly', half width, half width'], see `stationAt`), grown
 * along the skin's normal, into point[1] and point[2]; x is moved in point[0].
 *
 * The half ring is four stretches of equal counts that meet at the middle of the lower round, of the flank and of the
 * upper round. Each is a flat and half a round, its points at equal steps of arc length with rounds counted
 * `ROUND_WEIGHT` times: a line of the mesh follows each edge, and no step is ever 0. The ring is blown up to the area
 * of the smooth section about its middle, so that meshes close in on the volume by the square of their step.
 */
export function boardPoint(ring: BoardRing, k: number, station: Float64Array, growth: Mm, point: Float64Array): void {
  const [back, backSlope, belly, bellySlope, half, halfSlope] = station;
  const rise = (back - belly) / 2;
  const most = Math.min(half, rise);
  const backEdge = Math.min(ring.section.backEdge, most);
  const bellyEdge = Math.min(ring.section.bellyEdge, most);
  const steps = ring.steps / 4;
  const upper = 2 * k >= ring.steps;
  const radius = upper ? backEdge : bellyEdge;
  const edge = upper ? ring.section.backEdge : ring.section.bellyEdge;
  // counted from the middle of keel or back; `besides` is along the flank, from its middle towards the round
  const fromCrown = upper ? ring.steps - k : k;
  const besides = fromCrown > steps;
  const i = besides ? 2 * steps - fromCrown : fromCrown;
  const flat = (besides ? rise : half) - radius;
  const round = (ROUND_WEIGHT * Math.PI * radius) / 4;
  const along = ((flat + round) * i) / steps;
  // angle into the round from the end of its flat; its middle belongs to both stretches
  const turn = i === steps ? Math.PI / 4 : along > flat ? ((along - flat) / round) * (Math.PI / 4) : 0;
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
  const forth = i < steps && along <= flat ? along : flat + radius * sin;
  const away = (besides ? half : rise) - radius * (1 - cos);
  const sign = upper ? 1 : -1;
  const lost =
    2 *
    (chordLoss(half - backEdge, backEdge, steps) +
      chordLoss(rise - backEdge, backEdge, steps) +
      chordLoss(half - bellyEdge, bellyEdge, steps) +
      chordLoss(rise - bellyEdge, bellyEdge, steps));
  const area = 4 * half * rise - 2 * CORNER * (backEdge * backEdge + bellyEdge * bellyEdge);
  const blowUp = area > lost ? Math.sqrt(area / (area - lost)) : 1;
  point[1] = blowUp * (besides ? away : forth);
  point[2] = belly + rise + sign * blowUp * (besides ? forth : away);
  // the half ring ends on the centre plane itself
  if (fromCrown === 0) point[1] = 0;
  if (growth > 0) {
    const riseSlope = (backSlope - bellySlope) / 2;
    // the radius follows whichever size bounds it
    const radiusSlope = edge <= most ? 0 : half <= rise ? halfSlope : riseSlope;
    const ny = besides ? cos : sin;
    const nz = sign * (besides ? sin : cos);
    // on flats this is the outline's own slope: there ny or nz is 0 and the other 1
    const nx = -(
      ny * (halfSlope - radiusSlope) +
      nz * ((backSlope + bellySlope) / 2) +
      sign * nz * (riseSlope - radiusSlope) +
      radiusSlope
    );
    const long = Math.sqrt(nx * nx + 1);
    const sharp = i === steps ? sharpness(half + rise - 2 * radius, round, steps) : 0;
    const own = (growth * (1 - sharp)) / long;
    point[0] += own * nx;
    point[1] += own * ny;
    point[2] += own * nz;
    if (sharp > 0) {
      // the point that moves out as far from both flats: (n1 + n2)/(1 + n1·n2) of their normals
      const crownX = -(upper ? backSlope : -bellySlope);
      const [crown, flank] = [Math.sqrt(crownX * crownX + 1), Math.sqrt(halfSlope * halfSlope + 1)];
      const mitre = (growth * sharp) / (1 - (crownX * halfSlope) / (crown * flank));
      point[0] += mitre * (crownX / crown - halfSlope / flank);
      point[1] += mitre / flank;
      point[2] += (mitre * sign) / crown;
    }
  }
}

/**
 * 1 for a square edge, 0 once the mesh has a point within each half of its round. A square edge has no normal; grown
 * along the middle one it would pull the coat in on all of the flats' last steps. flats: of both stretches together.
 */
function sharpness(flats: Mm, round: Mm, steps: number): number {
  return Math.max(0, 1 - (round * steps) / (flats / 2 + round));
}

/** Area between a stretch (flat, then half a round of this radius) and the chords of its equal steps. */
function chordLoss(flat: Mm, radius: Mm, steps: number): Mm2 {
  if (radius === 0) return 0;
  const round = (ROUND_WEIGHT * Math.PI * radius) / 4;
  const step = (flat + round) / steps;
  const onFlat = Math.min(steps - 1, Math.floor(flat / step));
  const left = flat - onFlat * step;
  const perStep = Math.PI / (4 * round);
  const [first, each] = [(step - left) * perStep, step * perStep];
  const segment = (angle: number) => ((angle - Math.sin(angle)) * radius * radius) / 2;
  // the chord that leaves the flat cuts off a triangle over the flat's rest, and a segment of the round
  const triangle = (left * radius * (1 - Math.cos(first))) / 2;
  return triangle + segment(first) + (steps - 1 - onFlat) * segment(each);
}
