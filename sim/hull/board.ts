import type { BoardSection } from '../design/design.ts';
import type { Mm, Mm2 } from '../units/brand.ts';

/*
 * The board section: a rectangle whose four edges are rounded, above and below by radii of their own, as a router bit
 * leaves them. Everything is measured in the section, y across and z up.
 */

/** A board section at one station. Radii are the bits', or what the section has room for. */
export interface BoardStation {
  readonly half: Mm;
  readonly top: Mm;
  readonly bottom: Mm;
  readonly backRadius: Mm;
  readonly bellyRadius: Mm;
}

/** The section of a board that is `half` wide to each side and reaches from `bottom` to `top`. */
export function boardStation(section: BoardSection, half: Mm, top: Mm, bottom: Mm): BoardStation {
  const room = Math.min(half, (top - bottom) / 2);
  return {
    half,
    top,
    bottom,
    backRadius: Math.min(section.backEdge, room),
    bellyRadius: Math.min(section.bellyEdge, room),
  };
}

/** Area: the rectangle less what each of the four edges loses, (1 - π/4) r². */
export function boardArea({ half, top, bottom, backRadius, bellyRadius }: BoardStation): Mm2 {
  return 2 * half * (top - bottom) - (2 - Math.PI / 2) * (backRadius ** 2 + bellyRadius ** 2);
}

/** Height of the skin at y, above or below; null beyond the flanks. */
export function boardHeight(at: BoardStation, on: 'back' | 'belly', y: Mm): Mm | null {
  const across = Math.abs(y);
  if (!(across < at.half)) return null;
  const radius = on === 'back' ? at.backRadius : at.bellyRadius;
  const drop = edgeDrop(radius, across - (at.half - radius));
  return on === 'back' ? at.top - drop : at.bottom + drop;
}

/** Half width at height z; null above the back and below the belly. */
export function boardHalfWidth(at: BoardStation, z: Mm): Mm | null {
  if (!(z < at.top && z > at.bottom)) return null;
  const over = z - (at.top - at.backRadius);
  const under = at.bottom + at.bellyRadius - z;
  return at.half - Math.max(edgeDrop(at.backRadius, over), edgeDrop(at.bellyRadius, under));
}

/** How far a rounded edge falls back, `past` beyond where its arc begins. */
function edgeDrop(radius: Mm, past: Mm): Mm {
  return past > 0 ? radius - Math.sqrt(Math.max(0, radius * radius - past * past)) : 0;
}

/**
 * How far a point lies from the skin in the section's own measure: 1 on the skin, less inside, more outside; infinite
 * where the section has no size.
 */
export function boardMeasure(at: BoardStation, y: Mm, z: Mm): number {
  const tall = (at.top - at.bottom) / 2;
  if (!(at.half > 0 && tall > 0)) return Number.POSITIVE_INFINITY;
  const upper = z >= (at.top + at.bottom) / 2;
  const radius = upper ? at.backRadius : at.bellyRadius;
  const out = Math.abs(y) - (at.half - radius);
  const up = upper ? z - (at.top - radius) : at.bottom + radius - z;
  if (out > 0 && up > 0) return 1 + (Math.hypot(out, up) - radius) / Math.min(at.half, tall);
  return Math.max(Math.abs(y) / at.half, Math.abs(z - (at.top + at.bottom) / 2) / tall);
}

/** Half a ring of a board, keel to back over the starboard flank. `across`, `upright` and normals: one for each point. */
export interface BoardRing {
  readonly across: Float64Array;
  readonly upright: Float64Array;
  readonly normalAcross: Float64Array;
  readonly normalUpright: Float64Array;
}

export function emptyBoardRing(steps: number): BoardRing {
  const points = () => new Float64Array(steps + 1);
  return { across: points(), upright: points(), normalAcross: points(), normalUpright: points() };
}

/**
 * Points evenly along the half outline, keel to back, so that no step is ever without length; then all blown up about
 * the section's middle, so that the polygon has the area of the section. Normals are those of the smooth outline.
 */
export function fillBoardRing(at: BoardStation, ring: BoardRing): void {
  const { half, top, bottom, backRadius, bellyRadius } = at;
  const steps = ring.across.length - 1;
  const keel = half - bellyRadius;
  const bilge = (Math.PI / 2) * bellyRadius;
  const flank = top - bottom - bellyRadius - backRadius;
  const shoulder = (Math.PI / 2) * backRadius;
  const long = keel + bilge + flank + shoulder + (half - backRadius);
  const put = (i: number, y: Mm, z: Mm, ny: number, nz: number) => {
    ring.across[i] = y;
    ring.upright[i] = z;
    ring.normalAcross[i] = ny;
    ring.normalUpright[i] = nz;
  };
  put(0, 0, bottom, 0, -1);
  for (let i = 1; i < steps; i++) {
    const way = (long * i) / steps;
    const left = long - way;
    if (way <= keel) put(i, way, bottom, 0, -1);
    else if (way <= keel + bilge) {
      const turn = (way - keel) / bellyRadius;
      put(
        i,
        keel + bellyRadius * Math.sin(turn),
        bottom + bellyRadius * (1 - Math.cos(turn)),
        Math.sin(turn),
        -Math.cos(turn),
      );
    } else if (left <= half - backRadius) put(i, left, top, 0, 1);
    else if (left <= half - backRadius + shoulder) {
      const turn = (left - (half - backRadius)) / backRadius;
      put(
        i,
        half - backRadius + backRadius * Math.sin(turn),
        top - backRadius * (1 - Math.cos(turn)),
        Math.sin(turn),
        Math.cos(turn),
      );
    } else put(i, half, bottom + bellyRadius + (way - keel - bilge), 1, 0);
  }
  put(steps, 0, top, 0, 1);
  const middle = (top + bottom) / 2;
  let polygon = 0;
  for (let i = 0; i < steps; i++) {
    polygon += (ring.across[i] + ring.across[i + 1]) * (ring.upright[i + 1] - ring.upright[i]);
  }
  const growth = polygon > 0 ? Math.sqrt(boardArea(at) / polygon) : 1;
  for (let i = 0; i <= steps; i++) {
    ring.across[i] *= growth;
    ring.upright[i] = middle + (ring.upright[i] - middle) * growth;
  }
}
