import type { Coat, FilmCoat } from '../design/design.ts';
import type { Hull } from '../hull/hull.ts';
import type { Face, LinkSpec } from '../links/cut.ts';
import { loopReach } from '../mass/place.ts';
import type { FixedHardware, PlacedEye, PlacedFin } from '../mass/placed.ts';
import { type Growth, grownFace } from '../mesh/loft.ts';
import type { Mesh } from '../mesh/mesh.ts';
import { countsOf, type LinkCounts, layOutVertices, type VertexLayout } from '../mesh/topology.ts';
import { growLink, type SlotSpace, slotSpace } from '../mesh/wetted.ts';
import type { Mm } from '../units/brand.ts';

/** All that can touch a neighbour when a link turns about an upright line: coated wood, fins, steel. Body frame, mm. */
export interface ReachLink {
  readonly skin: Mesh;
  readonly counts: LinkCounts;
  readonly layout: VertexLayout;
  /** Coated. */
  readonly foreFace: Face | null;
  readonly aftFace: Face | null;
  readonly slots: readonly SlotSpace[];
  readonly fins: readonly Plate[];
  readonly steel: readonly Steel[];
  /** Lowest and highest point of any of it. */
  readonly z: readonly [Mm, Mm];
}

/** One flank of a fin, in triangles of x and z: six numbers each. */
export interface Plate {
  readonly triangles: Float64Array;
  readonly thickness: Mm;
  readonly z: readonly [Mm, Mm];
}

/** Wire: a straight piece along x, one upright, or a ring that lies flat (axis z) or stands along the body (axis y). */
export type Steel = {
  readonly surface: 'eye' | 'hanger';
  /** Where on the link it stands out: of a hinge eye, the end at which its joint is. */
  readonly end: 'fore' | 'aft';
  readonly y: Mm;
  readonly radius: Mm;
} & (
  | { readonly shape: 'bar'; readonly from: Mm; readonly to: Mm; readonly z: Mm }
  | { readonly shape: 'post'; readonly x: Mm; readonly z: readonly [Mm, Mm] }
  // outer: from its middle
  | { readonly shape: 'ring'; readonly axis: 'y' | 'z'; readonly x: Mm; readonly z: Mm; readonly outer: Mm }
);

/** How far film coats grow outside and joint faces. Soaked coats add nothing. */
export function growthOf(coats: readonly Coat[]): Growth {
  const films = coats.filter((coat): coat is FilmCoat => coat.kind === 'film');
  const skin = films.reduce((sum, { thickness }) => sum + thickness, 0);
  const face = films.reduce((sum, { covers, thickness }) => sum + (covers === 'all' ? thickness : 0), 0);
  return { skin, face };
}

/** Gathers what of a link can touch: the mesh that floats, its grown faces and slots, and the hardware it holds. */
export function reachLink(hull: Hull, spec: LinkSpec, hardware: ReachHardware, growth: Growth): ReachLink {
  const skin = growLink(hull, spec, 'full', growth);
  const counts = countsOf(skin.topology) as LinkCounts;
  const fins = hardware.fins.filter(({ link }) => link === spec.index).map(plateOf);
  const steel = hardware.eyes.filter(({ link }) => link === spec.index).flatMap((eye) => steelOf(eye, hardware));
  return {
    skin,
    counts,
    layout: layOutVertices(counts),
    foreFace: spec.foreFace && grownFace(spec.foreFace, growth.face),
    aftFace: spec.aftFace && grownFace(spec.aftFace, growth.face),
    slots: spec.slots.map((slot) => slotSpace(spec, slot, growth.face)),
    fins,
    steel,
    z: heightsOf(skin, fins, steel),
  };
}

/** What of the hardware can touch when links turn. */
export type ReachHardware = Pick<FixedHardware, 'eyes' | 'pins' | 'fins'>;

/** Lowest and highest point of one piece of steel. */
export function steelHeights(steel: Steel): readonly [Mm, Mm] {
  if (steel.shape === 'post') return steel.z;
  const half = steel.shape === 'ring' && steel.axis === 'y' ? steel.outer : steel.radius;
  return [steel.z - half, steel.z + half];
}

function plateOf({ mesh: { positions, topology }, thickness }: PlacedFin): Plate {
  const triangles: number[] = [];
  const z: [Mm, Mm] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < topology.index.length; i += 3) {
    const corners = topology.index.subarray(i, i + 3);
    // both flanks are alike: one is enough, and the rim stands between them
    if (corners.some((corner) => positions[3 * corner + 1] > 0)) continue;
    for (const corner of corners) {
      const height = positions[3 * corner + 2];
      triangles.push(positions[3 * corner], height);
      z[0] = Math.min(z[0], height);
      z[1] = Math.max(z[1], height);
    }
  }
  return { triangles: Float64Array.from(triangles), thickness, z };
}

/**
 * The loop of an eye on a pin is left out: it is round about the pin, so that turning moves it nowhere, and where it has
 * play it gives way sideways. Its wire to the wood stays.
 */
function steelOf(eye: PlacedEye, { pins }: ReachHardware): readonly Steel[] {
  const [x, y, z] = eye.loop;
  const radius = eye.wire / 2;
  const surface = eye.kind === 'hinge' ? 'eye' : 'hanger';
  const common = { surface, end: eye.inward[0] > 0 ? 'fore' : 'aft', y, radius } as const;
  const neck: Steel =
    eye.inward[2] === 0
      ? { ...common, shape: 'bar', from: Math.min(x, eye.entry[0]), to: Math.max(x, eye.entry[0]), z }
      : { ...common, shape: 'post', x, z: [Math.min(z, eye.entry[2]), Math.max(z, eye.entry[2])] };
  const axis = eye.axis[2] === 0 ? 'y' : 'z';
  const ring: Steel = { ...common, shape: 'ring', axis, x, z, outer: loopReach(eye) };
  const onPin = eye.kind === 'hinge' && pins.some((pin) => pin.x === x);
  return onPin ? [neck] : [neck, ring];
}

function heightsOf({ positions }: Mesh, fins: readonly Plate[], steel: readonly Steel[]): readonly [Mm, Mm] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 2; i < positions.length; i += 3) {
    low = Math.min(low, positions[i]);
    high = Math.max(high, positions[i]);
  }
  const more = [...fins.map(({ z }) => z), ...steel.map(steelHeights)];
  return [Math.min(low, ...more.map(([from]) => from)), Math.max(high, ...more.map(([, to]) => to))];
}
