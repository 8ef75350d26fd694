import { BufferAttribute, BufferGeometry } from 'three';
import type { Mesh, PatchKind, Topology } from '../../sim/index.ts';

/** What the shader calls each kind of patch: shaders/wood/link.frag.glsl. */
const KIND_NUMBER: Readonly<Record<PatchKind, number>> = { skin: 0, 'fore-face': 1, 'aft-face': 2, slot: 3 };

/**
 * How a link's mesh is laid out for drawing. Each patch has vertices of its own, so that the skin is shaded smooth up
 * to a sharp rim; depends on the topology alone.
 */
export interface DrawnLayout {
  /** Vertex of the mesh behind each drawn vertex. */
  readonly source: Uint32Array;
  readonly kind: Float32Array;
  readonly index: Uint32Array;
  /** Numbers in `index` that make the skin: the skin stands first. */
  readonly skinCount: number;
  /** Pairs of drawn vertices: where two patches meet. */
  readonly edges: Uint32Array;
}

/** Three geometries over one set of vertices. */
export interface DrawnMesh {
  readonly layout: DrawnLayout;
  readonly whole: BufferGeometry;
  readonly skin: BufferGeometry;
  readonly edges: BufferGeometry;
}

const layouts = new WeakMap<Topology, DrawnLayout>();

/** The layout of a topology, worked out once for each. */
export function layOut(topology: Topology): DrawnLayout {
  const known = layouts.get(topology);
  if (known !== undefined) return known;
  const layout = layOutAnew(topology);
  layouts.set(topology, layout);
  return layout;
}

function layOutAnew(topology: Topology): DrawnLayout {
  const source: number[] = [];
  const kind: number[] = [];
  const index = new Uint32Array(topology.index.length);
  const skinFirst = [...topology.patches].sort((a, b) => KIND_NUMBER[a.kind] - KIND_NUMBER[b.kind]);
  let written = 0;
  let skinCount = 0;
  for (const patch of skinFirst) {
    const drawn = new Map<number, number>();
    for (let i = 3 * patch.from; i < 3 * (patch.from + patch.count); i++) {
      const vertex = topology.index[i];
      let own = drawn.get(vertex);
      if (own === undefined) {
        own = source.length;
        drawn.set(vertex, own);
        source.push(vertex);
        kind.push(KIND_NUMBER[patch.kind]);
      }
      index[written++] = own;
    }
    if (patch.kind === 'skin') skinCount = written;
  }
  return {
    source: Uint32Array.from(source),
    kind: Float32Array.from(kind),
    index,
    skinCount,
    edges: rims(source, index, skinCount),
  };
}

/** The skin's edges that only one of its triangles has: there it meets a face. */
function rims(source: readonly number[], index: Uint32Array, skinCount: number): Uint32Array {
  const once = new Map<number, readonly [number, number]>();
  for (let i = 0; i < skinCount; i++) {
    const [a, b] = [index[i], index[i % 3 === 2 ? i - 2 : i + 1]];
    const [one, other] = [source[a], source[b]];
    const key = Math.min(one, other) * source.length + Math.max(one, other);
    if (!once.delete(key)) once.set(key, [a, b]);
  }
  return Uint32Array.from([...once.values()].flat());
}

/** The geometries of one link, whichever topology its mesh has at the moment. */
export interface DrawnMeshes {
  /** Those of a topology: made when it is first seen, the same ones as long as it keeps coming back. */
  of(topology: Topology): DrawnMesh;
  dispose(): void;
}

/** The coarse mesh and the full one take turns while a value is dragged: neither drives out the other. */
const KEPT = 2;

export function createDrawnMeshes(): DrawnMeshes {
  // the one asked for last stands last
  let kept: readonly (readonly [Topology, DrawnMesh])[] = [];
  return {
    of(topology) {
      const drawn = kept.find(([known]) => known === topology)?.[1] ?? makeDrawnMesh(topology);
      const others = kept.filter(([known]) => known !== topology);
      for (const [, old] of others.slice(0, -(KEPT - 1))) disposeDrawnMesh(old);
      kept = [...others.slice(-(KEPT - 1)), [topology, drawn]];
      return drawn;
    },
    dispose: () => {
      for (const [, drawn] of kept) disposeDrawnMesh(drawn);
    },
  };
}

function disposeDrawnMesh({ whole, skin, edges }: DrawnMesh): void {
  for (const geometry of [whole, skin, edges]) geometry.dispose();
}

/** Makes the geometries of a topology, without positions yet. Whoever calls disposes of them. */
export function makeDrawnMesh(topology: Topology): DrawnMesh {
  const layout = layOut(topology);
  const position = new BufferAttribute(new Float32Array(3 * layout.source.length), 3);
  const normal = new BufferAttribute(new Float32Array(3 * layout.source.length), 3);
  const kind = new BufferAttribute(layout.kind, 1);
  const over = (index: BufferAttribute) => {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', position);
    geometry.setAttribute('normal', normal);
    geometry.setAttribute('kind', kind);
    geometry.setIndex(index);
    return geometry;
  };
  const triangles = new BufferAttribute(layout.index, 1);
  const skin = over(triangles);
  skin.setDrawRange(0, layout.skinCount);
  return { layout, whole: over(triangles), skin, edges: over(new BufferAttribute(layout.edges, 1)) };
}

/**
 * Writes positions and smooth normals into the buffers in place. A vertex's normal is the sum of its triangles' cross
 * products, so that large triangles count for more. Faces and slots are shaded facet by facet, without normals.
 */
export function fillDrawnMesh(drawn: DrawnMesh, mesh: Mesh): void {
  const { source, index, skinCount } = drawn.layout;
  const position = drawn.whole.getAttribute('position') as BufferAttribute;
  const normal = drawn.whole.getAttribute('normal') as BufferAttribute;
  const place = position.array;
  for (let vertex = 0; vertex < source.length; vertex++) {
    const from = 3 * source[vertex];
    place[3 * vertex] = mesh.positions[from];
    place[3 * vertex + 1] = mesh.positions[from + 1];
    place[3 * vertex + 2] = mesh.positions[from + 2];
  }
  fillNormals(normal.array, place, index, skinCount);
  position.needsUpdate = true;
  normal.needsUpdate = true;
}

type Numbers = BufferAttribute['array'];

function fillNormals(normal: Numbers, place: Numbers, index: Uint32Array, count: number): void {
  normal.fill(0);
  for (let i = 0; i < count; i += 3) {
    const [a, b, c] = [3 * index[i], 3 * index[i + 1], 3 * index[i + 2]];
    const [ux, uy, uz] = [place[b] - place[a], place[b + 1] - place[a + 1], place[b + 2] - place[a + 2]];
    const [vx, vy, vz] = [place[c] - place[a], place[c + 1] - place[a + 1], place[c + 2] - place[a + 2]];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const corner of [a, b, c]) {
      normal[corner] += nx;
      normal[corner + 1] += ny;
      normal[corner + 2] += nz;
    }
  }
  for (let i = 0; i < normal.length; i += 3) {
    const long = Math.hypot(normal[i], normal[i + 1], normal[i + 2]);
    if (long === 0) continue;
    normal[i] /= long;
    normal[i + 1] /= long;
    normal[i + 2] /= long;
  }
}
