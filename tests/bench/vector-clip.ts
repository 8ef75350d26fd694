import { Plane, Vector3 } from 'three';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import type { Vec3 } from '../../sim/numerics/vec3.ts';

export interface ClippedWet {
  readonly volume: number;
  readonly centre: Vec3;
  readonly area: number;
}

/**
 * The wet part of a mesh the plain way, with a vector class: every triangle is clipped at the water surface in every
 * pass, and tetrahedra from a point of the surface are summed. From there the cap adds nothing to volume or moment; its
 * area comes from the edges in which the surface cuts triangles. As quick as such code is usually written: corners are
 * made once, vectors only where a triangle needs them.
 */
export function createVectorClip({ topology, positions }: Mesh): (up: Vec3, offset: number) => ClippedWet {
  const corners = Array.from({ length: topology.vertexCount }, (_, i) => new Vector3().fromArray(positions, 3 * i));
  const triangles = Array.from({ length: topology.index.length / 3 }, (_, t) =>
    [0, 1, 2].map((k) => corners[topology.index[3 * t + k]]),
  );
  return (up, offset) => {
    const plane = new Plane(new Vector3(...up), -offset);
    const foot = plane.coplanarPoint(new Vector3());
    const moment = new Vector3();
    let six = 0;
    let twiceArea = 0;
    for (const triangle of triangles) {
      const { polygon, edge } = clip(triangle, plane);
      if (edge.length === 2) twiceArea += edge[1].clone().sub(foot).cross(edge[0].clone().sub(foot)).dot(plane.normal);
      if (polygon.length < 3) continue;
      const [a, ...rest] = polygon.map((point) => point.clone().sub(foot));
      for (let k = 1; k < rest.length; k++) {
        const [b, c] = [rest[k - 1], rest[k]];
        const piece = a.dot(b.clone().cross(c));
        six += piece;
        moment.addScaledVector(a.clone().add(b).add(c), piece);
      }
    }
    const centre = moment.divideScalar(4 * six).add(foot);
    return { volume: six / 6, centre: [centre.x, centre.y, centre.z], area: twiceArea / 2 };
  };
}

/** The part of a triangle under a plane, and where its outline leaves the water and enters it again. */
function clip(triangle: readonly Vector3[], plane: Plane): { polygon: readonly Vector3[]; edge: readonly Vector3[] } {
  const heights = triangle.map((corner) => plane.distanceToPoint(corner));
  const polygon: Vector3[] = [];
  const edge: Vector3[] = [];
  for (let k = 0; k < 3; k++) {
    const next = (k + 1) % 3;
    const wet = heights[k] < 0;
    if (wet) polygon.push(triangle[k]);
    if (wet === heights[next] < 0) continue;
    const point = new Vector3().lerpVectors(triangle[k], triangle[next], heights[k] / (heights[k] - heights[next]));
    polygon.push(point);
    if (wet) edge.unshift(point);
    else edge.push(point);
  }
  return { polygon, edge };
}
