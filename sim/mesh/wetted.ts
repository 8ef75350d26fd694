import type { Coat } from '../design/design.ts';
import { SimError } from '../flow/outcome.ts';
import type { Hull } from '../hull/hull.ts';
import { buildRing } from '../hull/section.ts';
import { type Face, isRound, type LinkSlot, type LinkSpec, meanFallBack, slotFloor } from '../links/cut.ts';
import { scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm2, Mm3 } from '../units/brand.ts';
import { checkMesh } from './check.ts';
import { type Growth, grownFace, loftLink } from './loft.ts';
import { END_GRAIN, measureArea, measureVolume, type VolumeMeasure } from './measure.ts';
import type { Mesh } from './mesh.ts';
import { type LinkCounts, linkTopology } from './topology.ts';

/** What displaces water: the coated solid, less the slots that flood. */
export interface Wetted {
  /** Coated outside, coated faces, and the slots as coated inside. */
  readonly mesh: Mesh;
  /** Net of slots. */
  readonly volume: Mm3;
  readonly centre: Vec3;
  readonly slots: readonly WettedSlot[];
  /** Growth of the outside and of the joint faces by all film coats. */
  readonly skinGrowth: Mm;
  readonly faceGrowth: Mm;
  /** What each film coat adds, in the order they go on. */
  readonly films: readonly { readonly name: string; readonly volume: Mm3; readonly centre: Vec3 }[];
}

/** A slot as it is under its coats: |y| <= width/2, z from–to, from its floor to the coated face. */
export interface SlotSpace {
  readonly opens: 'fore' | 'aft';
  readonly width: Mm;
  readonly z: readonly [Mm, Mm];
  /** x of the slot's square end inside the wood. */
  readonly floor: Mm;
}

export interface WettedSlot extends SlotSpace {
  readonly volume: Mm3;
}

/** Bare wood before anything is drilled into it. */
export interface BareSolid {
  /** Net of slots. */
  readonly volume: Mm3;
  readonly centre: Vec3;
  /** All bare surfaces: outside, faces and slots. */
  readonly area: Mm2;
  readonly areaCentre: Vec3;
  /** Where what soaks into it lies: more of it in end grain. */
  readonly soakCentre: Vec3;
}

/** Mesh fineness: about 8k triangles a link, and a quarter of that while a value is dragged. */
export type Detail = 'full' | 'drag';

const FINENESS = { full: { bands: 60, steps: 32 }, drag: { bands: 30, steps: 16 } } as const;

/** A link's skin, faces and slots, grown by its coats so far. Not checked: that is for who makes it first. */
export function growLink(hull: Hull, spec: LinkSpec, detail: Detail, growth: Growth): Mesh {
  const counts = {
    ...FINENESS[detail],
    foreTip: spec.foreFace === null,
    aftTip: spec.aftFace === null,
    slots: spec.slots.length,
    ...roundCounts(spec),
  };
  const ring = buildRing(hull.section, counts.steps);
  return { topology: linkTopology(counts), positions: loftLink(hull, ring, spec, counts, growth) };
}

/** Which faces of a link are round, for its counts; nothing where none is. */
export function roundCounts({ foreFace, aftFace, slots }: LinkSpec): Pick<LinkCounts, 'round'> {
  const fore = foreFace !== null && isRound(foreFace);
  const aft = aftFace !== null && isRound(aftFace);
  if (!fore && !aft) return {};
  return { round: { fore, aft, slots: slots.map(({ opens }) => (opens === 'fore' ? fore : aft)) } };
}

/** Meshes the bare wood of one link. Throws SimError if it comes out unfit. */
export function meshLink(hull: Hull, spec: LinkSpec, detail: Detail): Mesh {
  const mesh = growLink(hull, spec, detail, { skin: 0, face: 0 });
  const issues = checkMesh(mesh, `links.${spec.index}`);
  if (issues.length > 0) throw new SimError(issues);
  return mesh;
}

/** Measures the bare wood of one link. */
export function measureSolid(mesh: Mesh): BareSolid {
  const { volume, centre } = measureVolume(mesh);
  const { area, centre: areaCentre } = measureArea(mesh);
  return { volume, centre, area, areaCentre, soakCentre: measureArea(mesh, END_GRAIN).centre };
}

/** Grows one link coat by coat, from the bare mesh outwards. Throws SimError if a coat leaves no sound mesh. */
export function wetLink(hull: Hull, spec: LinkSpec, detail: Detail, bare: Mesh, coats: readonly Coat[]): Wetted {
  const growth = { skin: 0, face: 0 };
  let mesh = bare;
  let measure = measureVolume(bare);
  const films: { name: string; volume: Mm3; centre: Vec3 }[] = [];
  for (const coat of coats) {
    if (coat.kind !== 'film') continue;
    growth.skin += coat.thickness;
    if (coat.covers === 'all') growth.face += coat.thickness;
    mesh = growLink(hull, spec, detail, growth);
    const grown = measureVolume(mesh);
    films.push({ name: coat.name, ...shell(measure, grown) });
    measure = grown;
  }
  const issues = checkMesh(mesh, `links.${spec.index}`);
  if (issues.length > 0) throw new SimError(issues);
  return {
    mesh,
    volume: measure.volume,
    centre: measure.centre,
    slots: spec.slots.map((slot) => wetSlot(spec, slot, growth.face)),
    skinGrowth: growth.skin,
    faceGrowth: growth.face,
    films,
  };
}

/** Volume of all slots, which may hold air until the bait is shaken under water. */
export function slotVolume({ slots }: Wetted): Mm3 {
  return slots.reduce((sum, slot) => sum + slot.volume, 0);
}

/** What lies between a solid and the one grown from it. */
function shell(inner: VolumeMeasure, outer: VolumeMeasure): VolumeMeasure {
  const volume = outer.volume - inner.volume;
  if (!(volume > 0)) return { volume: 0, centre: outer.centre };
  const moment = subtract(scale(outer.centre, outer.volume), scale(inner.centre, inner.volume));
  return { volume, centre: scale(moment, 1 / volume) };
}

/** What a slot leaves open under coats that have grown its faces. */
export function slotSpace(spec: LinkSpec, slot: LinkSlot, growth: Mm): SlotSpace {
  return {
    opens: slot.opens,
    width: slot.width - 2 * growth,
    z: [slot.z[0] + growth, slot.z[1] - growth],
    floor: slotFloor(slot, bareFace(spec, slot)) + (slot.opens === 'aft' ? growth : -growth),
  };
}

function wetSlot(spec: LinkSpec, slot: LinkSlot, growth: Mm): WettedSlot {
  const space = slotSpace(spec, slot, growth);
  const { width, z } = space;
  const bare = bareFace(spec, slot);
  const face = grownFace(bare, growth);
  const depth = slot.depth - growth + Math.abs(face.at - bare.at);
  const volume = width * (z[1] - z[0]) * (depth - meanFallBack(face, width / 2));
  return { ...space, volume };
}

function bareFace(spec: LinkSpec, { opens }: LinkSlot): Face {
  return (opens === 'fore' ? spec.foreFace : spec.aftFace) as Face;
}
