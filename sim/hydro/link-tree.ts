import type { Mesh, Topology } from '../mesh/mesh.ts';
import { countsOf, facePoint, faceStrips, type LinkCounts, layOutVertices } from '../mesh/topology.ts';
import { buildTreeShape, fitTree, type Tree, type TreeShape } from './tree.ts';

/** The trees of all that a link displaces as meshes. */
export interface LinkTrees {
  /** The coated solid. */
  readonly skin: Tree;
  readonly fins: readonly Tree[];
}

/** The trees of a link's coated skin and of the fins that stand on it. */
export function linkTrees(skin: Mesh, fins: readonly { readonly mesh: Mesh }[]): LinkTrees {
  return { skin: linkTree(skin), fins: fins.map(({ mesh }) => linkTree(mesh)) };
}

const shapes = new WeakMap<Topology, TreeShape>();

/**
 * The tree of the mesh of a link, or of a fin. Its order is made once for each topology, from a plain spindle with the same vertices
 * rather than from the first link that happens by: so an answer never depends on what was asked before it.
 */
export function linkTree(mesh: Mesh): Tree {
  let shape = shapes.get(mesh.topology);
  if (!shape) {
    const counts = countsOf(mesh.topology);
    shape = buildTreeShape(mesh.topology, counts ? spindle(counts) : mesh.positions);
    shapes.set(mesh.topology, shape);
  }
  return fitTree(shape, mesh.positions);
}

/** Proportions of a usual link: what decides along which side the tree halves. */
const SPINDLE = { length: 60, halfWidth: 9, halfHeight: 20 } as const;

function spindle(counts: LinkCounts): Float64Array {
  const layout = layOutVertices(counts);
  const positions = new Float64Array(3 * layout.vertexCount);
  const put = (vertex: number, x: number, y: number, z: number) => positions.set([x, y, z], 3 * vertex);
  for (let station = layout.firstRing; station <= layout.lastRing; station++) {
    for (let k = 0; k < layout.ringSize; k++) {
      const angle = (2 * Math.PI * k) / layout.ringSize;
      const x = (SPINDLE.length * station) / counts.bands;
      const vertex = (station - layout.firstRing) * layout.ringSize + k;
      put(vertex, x, SPINDLE.halfWidth * Math.sin(angle), -SPINDLE.halfHeight * Math.cos(angle));
    }
  }
  const face = (end: 'fore' | 'aft', first: number, x: number) => {
    const strips = faceStrips(counts, end);
    for (let level = 1; level < counts.steps; level++) {
      const angle = (Math.PI * level) / counts.steps;
      const [rim, z] = [SPINDLE.halfWidth * Math.sin(angle), -SPINDLE.halfHeight * Math.cos(angle)];
      for (let column = 1 - strips; column < strips; column++) {
        put(facePoint(first, strips, level, column), x, (rim * column) / strips, z);
      }
    }
  };
  if (layout.forePole >= 0) put(layout.forePole, 0, 0, 0);
  else face('fore', layout.foreRidge, 0);
  if (layout.aftPole >= 0) put(layout.aftPole, SPINDLE.length, 0, 0);
  else face('aft', layout.aftRidge, SPINDLE.length);
  // slots far off, so that the first cuts set them apart from the skin they lie inside
  const firstSlot = layout.slots[0] ?? layout.vertexCount;
  for (let vertex = firstSlot; vertex < layout.vertexCount; vertex++) put(vertex, 1000 + vertex, 0, 0);
  return positions;
}
