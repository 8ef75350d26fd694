import type { Mesh, PatchKind } from '../mesh/mesh.ts';
import { cross, length, scale, subtract, type Vec3 } from '../numerics/vec3.ts';

/** Three corners in millimetres, outward by the right-hand rule. */
export type Triangle = readonly [Vec3, Vec3, Vec3];

/** The triangles of those patches of a mesh. inside out: each one turned over. */
export function trianglesOf(mesh: Mesh, kinds: readonly PatchKind[], insideOut = false): readonly Triangle[] {
  const { index, patches } = mesh.topology;
  const corner = (i: number): Vec3 => {
    const at = 3 * index[i];
    return [mesh.positions[at], mesh.positions[at + 1], mesh.positions[at + 2]];
  };
  return patches
    .filter((patch) => kinds.includes(patch.kind))
    .flatMap((patch) =>
      Array.from({ length: patch.count }, (_, i): Triangle => {
        const first = 3 * (patch.from + i);
        const [a, b, c] = [corner(first), corner(first + 1), corner(first + 2)];
        return insideOut ? [a, c, b] : [a, b, c];
      }),
    );
}

const HEADER_BYTES = 80;
const FACET_BYTES = 50;

/**
 * Triangles as a binary STL file: 80 bytes of text, a 32-bit count, then for each facet a unit normal and three
 * corners as 32-bit floats and two unused bytes, all little-endian. The format has no units; ours are millimetres.
 *
 * Corners are rounded to 32 bits first and normals made from what is written. Two corners that fall together in
 * rounding leave a sliver without area: it is dropped, and its two neighbours then meet edge to edge, so a closed
 * surface stays closed.
 */
export function binaryStl(triangles: readonly Triangle[], title: string): Uint8Array {
  const facets = triangles.map(rounded).filter(hasThreeCorners);
  const bytes = new Uint8Array(HEADER_BYTES + 4 + FACET_BYTES * facets.length);
  bytes.set(headerText(title));
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER_BYTES, facets.length, true);
  let at = HEADER_BYTES + 4;
  for (const facet of facets) {
    for (const vector of [normalOf(facet), ...facet]) {
      for (const coordinate of vector) {
        view.setFloat32(at, coordinate, true);
        at += 4;
      }
    }
    at += 2;
  }
  return bytes;
}

/** Printable ASCII, padded with spaces. It must not begin with "solid", by which readers tell the text form. */
function headerText(title: string): Uint8Array {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/gu, '?');
  return new TextEncoder().encode(`Floatwright: ${plain}`.slice(0, HEADER_BYTES).padEnd(HEADER_BYTES));
}

function rounded(triangle: Triangle): Triangle {
  const [a, b, c] = triangle;
  return [roundedPoint(a), roundedPoint(b), roundedPoint(c)];
}

function roundedPoint(point: Vec3): Vec3 {
  // + 0 makes one zero of the two, so that equal corners are equal bytes
  return [Math.fround(point[0]) + 0, Math.fround(point[1]) + 0, Math.fround(point[2]) + 0];
}

function hasThreeCorners([a, b, c]: Triangle): boolean {
  return !(isSame(a, b) || isSame(b, c) || isSame(c, a));
}

function isSame(a: Vec3, b: Vec3): boolean {
  return a[0] === b[0] && a[1] === b[1] && a[2] === b[2];
}

/** Unit normal by the right-hand rule; zero for three corners in a line, which is how the format says "work it out". */
function normalOf([a, b, c]: Triangle): Vec3 {
  const normal = cross(subtract(b, a), subtract(c, a));
  const size = length(normal);
  return size > 0 ? scale(normal, 1 / size) : [0, 0, 0];
}
