import createModule, { type Manifold } from 'manifold-3d';
import type { Mesh, PatchKind } from '../../../sim/mesh/mesh.ts';
import type { WettedSlot } from '../../../sim/mesh/wetted.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';

const library = await createModule();
library.setup();

/** A solid of the library's own. Its numbers are measured from `origin`, so that single precision bites least. */
export interface Block {
  readonly solid: Manifold;
  readonly origin: Vec3;
}

export interface Measured {
  readonly volume: number;
  /** Body frame. */
  readonly centre: Vec3;
}

/** Middle of the box round a mesh. */
export function middleOf({ positions }: Mesh): Vec3 {
  const along = (axis: number) => {
    const values = positions.filter((_, i) => i % 3 === axis);
    return (values.reduce((a, b) => Math.min(a, b)) + values.reduce((a, b) => Math.max(a, b))) / 2;
  };
  return [along(0), along(1), along(2)];
}

/** Hands some patches of a mesh to the library. Throws when it finds them open, crossed or turned inside out. */
export function blockOf(mesh: Mesh, kinds: readonly PatchKind[], origin: Vec3): Block {
  const { index, patches } = mesh.topology;
  const triVerts = Uint32Array.from(
    patches
      .filter((patch) => kinds.includes(patch.kind))
      .flatMap((patch) => [...index.subarray(3 * patch.from, 3 * (patch.from + patch.count))]),
  );
  return { solid: fromTriangles(mesh.positions, triVerts, origin), origin };
}

/** Each slot of a mesh as a solid of its own, turned outside out. */
export function slotBlocks(mesh: Mesh, origin: Vec3): readonly Block[] {
  const { index, patches } = mesh.topology;
  return patches
    .filter((patch) => patch.kind === 'slot')
    .map((patch) => {
      const inward = index.subarray(3 * patch.from, 3 * (patch.from + patch.count));
      return { solid: fromTriangles(mesh.positions, Uint32Array.from(inward).reverse(), origin), origin };
    });
}

function fromTriangles(positions: Float64Array, triVerts: Uint32Array, origin: Vec3): Manifold {
  const vertProperties = Float32Array.from(positions, (value, i) => value - origin[i % 3]);
  const solid = new library.Manifold(new library.Mesh({ numProp: 3, vertProperties, triVerts }));
  if (solid.status() !== 'NoError') throw new Error(`the library refuses the mesh: ${solid.status()}`);
  return solid;
}

/** A saw cut as wide and high as a slot, from the slot's floor straight out past the face it opens to. */
export function sawCut(slot: WettedSlot, past: number, origin: Vec3): Block {
  const [from, to] = slot.opens === 'aft' ? [slot.floor, past] : [past, slot.floor];
  const size: [number, number, number] = [to - from, slot.width, slot.z[1] - slot.z[0]];
  const cube = library.Manifold.cube(size);
  const solid = cube.translate([from - origin[0], -slot.width / 2 - origin[1], slot.z[0] - origin[2]]);
  cube.delete();
  return { solid, origin };
}

/** What is left of a block when saw cuts are taken out of it. */
export function without(block: Block, cuts: readonly Block[]): Block {
  return { solid: library.Manifold.difference([block.solid, ...cuts.map((cut) => cut.solid)]), origin: block.origin };
}

/** What a cut takes out of a block. */
export function common(block: Block, cut: Block): Block {
  return { solid: block.solid.intersect(cut.solid), origin: block.origin };
}

/** The part of a block under the water surface up·p = offset. */
export function wetPart(block: Block, up: Vec3, offset: number): Block {
  const level = offset - (up[0] * block.origin[0] + up[1] * block.origin[1] + up[2] * block.origin[2]);
  return { solid: block.solid.trimByPlane([-up[0], -up[1], -up[2]], -level), origin: block.origin };
}

/** The library's volume, and the centre from tetrahedra over the triangles it gives back. */
export function measure({ solid, origin }: Block): Measured {
  const volume = solid.volume();
  const { vertProperties: p, triVerts, numProp } = solid.getMesh();
  const moment = [0, 0, 0];
  for (let t = 0; t < triVerts.length; t += 3) {
    const [a, b, c] = [numProp * triVerts[t], numProp * triVerts[t + 1], numProp * triVerts[t + 2]];
    const tetrahedron =
      (p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]) +
        p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]) +
        p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c])) /
      6;
    for (let axis = 0; axis < 3; axis++) moment[axis] += (tetrahedron * (p[a + axis] + p[b + axis] + p[c + axis])) / 4;
  }
  const at = (axis: 0 | 1 | 2) => origin[axis] + moment[axis] / volume;
  return { volume, centre: volume > 0 ? [at(0), at(1), at(2)] : origin };
}

/**
 * How far a point of the library's surface may stand off the mesh it was given: coordinates are rounded to 24 binary
 * digits on the way in and again on the way out, and corners nearer to each other than its tolerance may be merged.
 */
export function slackOf({ solid }: Block): number {
  const { min, max } = solid.boundingBox();
  const reach = Math.max(...[...min, ...max].map(Math.abs));
  const halfStep = 2 ** (Math.ceil(Math.log2(reach)) - 25);
  return 2 * Math.sqrt(3) * halfStep + solid.tolerance();
}

/** Gives solids back: the library keeps them outside the reach of the garbage collector. */
export function release(...blocks: readonly Block[]): void {
  for (const { solid } of blocks) solid.delete();
}

/** Round as far as matters: a polygon of this many corners, of the circle's area. */
const CORNERS = 180;
const TURN = (2 * Math.PI) / CORNERS;
const OUT = Math.sqrt(TURN / Math.sin(TURN));

/**
 * What a drill is, from one distance along its axis to another: a cylinder, and beyond it a cone of a height, 0 for none.
 * Distances are from `mouth`, along an inward direction that lies along y or z.
 */
export function drillBlock(
  { mouth, inward }: { readonly mouth: Vec3; readonly inward: Vec3 },
  radius: number,
  [from, to]: readonly [number, number],
  cone: number,
  origin: Vec3,
): Block {
  const shaft = library.Manifold.cylinder(to - from, OUT * radius, OUT * radius, CORNERS).translate([0, 0, from]);
  const whole =
    cone > 0 ? shaft.add(library.Manifold.cylinder(cone, OUT * radius, 0, CORNERS).translate([0, 0, to])) : shaft;
  // z of the drill is its inward direction
  const turned =
    inward[2] !== 0 ? whole.rotate([inward[2] > 0 ? 0 : 180, 0, 0]) : whole.rotate([inward[1] > 0 ? -90 : 90, 0, 0]);
  const solid = turned.translate([mouth[0] - origin[0], mouth[1] - origin[1], mouth[2] - origin[2]]);
  return { solid, origin };
}

/** A box between two corners without what another block fills. */
export function boxAround(block: Block, low: Vec3, high: Vec3): Block {
  const { origin } = block;
  const cube = library.Manifold.cube([high[0] - low[0], high[1] - low[1], high[2] - low[2]]);
  const placed = cube.translate([low[0] - origin[0], low[1] - origin[1], low[2] - origin[2]]);
  const solid = placed.subtract(block.solid);
  cube.delete();
  placed.delete();
  return { solid, origin };
}

/** Least distance between two blocks with one origin, looked for up to `most`. */
export function gapBetween(a: Block, b: Block, most: number): number {
  return a.solid.minGap(b.solid, most);
}

/** All of some blocks with one origin. */
export function joined(blocks: readonly Block[]): Block {
  return { solid: library.Manifold.union(blocks.map((block) => block.solid)), origin: blocks[0].origin };
}

/** A block turned about the upright line through its origin, from aft to starboard, and moved aft. */
export function turnedAft({ solid, origin }: Block, degrees: number, aft = 0): Block {
  const moved = solid.translate([aft, 0, 0]);
  const turned = moved.rotate([0, 0, degrees]);
  moved.delete();
  return { solid: turned, origin };
}

/** A round bar between two points that differ along one axis, x or z. */
export function barBlock(from: Vec3, to: Vec3, radius: number, origin: Vec3): Block {
  const upright = from[0] === to[0];
  const long = Math.abs(upright ? to[2] - from[2] : to[0] - from[0]);
  const shaft = library.Manifold.cylinder(long, OUT * radius, OUT * radius, CORNERS);
  const laid = upright ? shaft : shaft.rotate([0, 90, 0]);
  const at = [0, 1, 2].map((axis) => Math.min(from[axis], to[axis]) - origin[axis]) as [number, number, number];
  return { solid: laid.translate(at), origin };
}

/** Of a ring of wire: its chords stand off by less than a hundredth of a millimetre. */
const RING_CORNERS = 60;
const WIRE_CORNERS = 24;

/** A wire bent to a ring about an axis along y or z through a point; outer: from there to its outside. */
export function ringBlock(at: Vec3, axis: 'y' | 'z', outer: number, wire: number, origin: Vec3): Block {
  const section = library.CrossSection.circle(wire / 2, WIRE_CORNERS).translate([outer - wire / 2, 0]);
  const flat = library.Manifold.revolve(section, RING_CORNERS);
  const ring = axis === 'z' ? flat : flat.rotate([90, 0, 0]);
  return { solid: ring.translate([at[0] - origin[0], at[1] - origin[1], at[2] - origin[2]]), origin };
}
