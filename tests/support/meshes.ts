import { checkMesh, openEdges } from '../../sim/mesh/check.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import { cross, dot, length, subtract, unit, type Vec3 } from '../../sim/numerics/vec3.ts';

/** A point of a section, seen from aft: y to the right, z up. */
export type Point = readonly [number, number];

/** Says what is wrong with a mesh: open edges, numbers that are not finite, no volume. Empty when it is sound. */
export function validateMesh(mesh: Mesh): readonly string[] {
  return [...openEdges(mesh.topology), ...checkMesh(mesh, 'mesh').map((issue) => issue.message)];
}

/** A closed mesh of triangles over points. Throws when it is not sound, so that no test floats a broken body. */
function soundMesh(positions: Float64Array, index: Uint32Array): Mesh {
  const vertexCount = positions.length / 3;
  const patches = [{ kind: 'skin', from: 0, count: index.length / 3 }] as const;
  const mesh: Mesh = {
    topology: { key: `test ${vertexCount} ${index.length}`, vertexCount, index, patches },
    positions,
  };
  const faults = validateMesh(mesh);
  if (faults.length > 0) throw new Error(`the test's own mesh is unsound: ${faults.slice(0, 3).join(', ')}`);
  return mesh;
}

/**
 * A tube through rings of equally many points, each turning from +y over +z (as seen from aft), closed at its ends by
 * fans about their middles.
 */
export function tubeMesh(rings: readonly (readonly Vec3[])[]): Mesh {
  const around = rings[0].length;
  const ends = [rings[0], rings[rings.length - 1]].map(middleOf);
  const positions = Float64Array.from([...rings.flat(), ...ends].flat());
  const [foreEnd, aftEnd] = [rings.length * around, rings.length * around + 1];
  const vertex = (ring: number, k: number) => ring * around + (k % around);
  const index: number[] = [];
  for (let k = 0; k < around; k++) {
    for (let ring = 0; ring < rings.length - 1; ring++) {
      const [a, b] = [vertex(ring, k), vertex(ring, k + 1)];
      const [c, d] = [vertex(ring + 1, k + 1), vertex(ring + 1, k)];
      index.push(a, b, c, a, c, d);
    }
    index.push(foreEnd, vertex(0, k + 1), vertex(0, k));
    index.push(aftEnd, vertex(rings.length - 1, k), vertex(rings.length - 1, k + 1));
  }
  return soundMesh(positions, Uint32Array.from(index));
}

function middleOf(ring: readonly Vec3[]): Vec3 {
  const sum = ring.reduce((a, b): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]);
  return [sum[0] / ring.length, sum[1] / ring.length, sum[2] / ring.length];
}

/** A section carried along x. */
export function prismMesh(section: readonly Point[], from: number, to: number): Mesh {
  return tubeMesh([from, to].map((x) => section.map(([y, z]): Vec3 => [x, y, z])));
}

/** A box with its middle on the x axis. */
export function barMesh(length: number, width: number, height: number): Mesh {
  const [y, z] = [width / 2, height / 2];
  return prismMesh(
    [
      [y, -z],
      [y, z],
      [-y, z],
      [-y, -z],
    ],
    -length / 2,
    length / 2,
  );
}

/** A regular polygon whose area is that of the circle it stands for. */
export function roundSection(radius: number, sides: number): readonly Point[] {
  const turn = (2 * Math.PI) / sides;
  const reach = radius * Math.sqrt(turn / Math.sin(turn));
  return Array.from({ length: sides }, (_, k) => [reach * Math.cos(turn * k), reach * Math.sin(turn * k)]);
}

/**
 * A body turned about the z axis, upwards along a profile of [radius, z]; each ring is a regular polygon with the area
 * of its circle. A tip is a ring of next to no radius.
 */
export function turnedMesh(profile: readonly Point[], sides: number): Mesh {
  return tubeMesh(profile.map(([radius, z]) => roundSection(radius, sides).map(([a, b]): Vec3 => [a, b, z])));
}

/** An ellipsoid about the origin, its poles on x; its points lie on the true surface. */
export function ellipsoidMesh([a, b, c]: Vec3, bands: number, around: number): Mesh {
  const rings = Array.from({ length: bands + 1 }, (_, i) => {
    // the ends are tiny rings instead of poles: a thousandth of a step, lost in the facets
    const turn = (Math.PI * Math.min(bands - 1e-3, Math.max(1e-3, i))) / bands;
    return Array.from({ length: around }, (_unused, k): Vec3 => {
      const angle = (2 * Math.PI * k) / around;
      return [-a * Math.cos(turn), b * Math.sin(turn) * Math.cos(angle), c * Math.sin(turn) * Math.sin(angle)];
    });
  });
  return tubeMesh(rings);
}

/** The convex hull of a handful of points, found by trying every three of them; faces of many corners are fans. */
export function hullMesh(points: readonly Vec3[]): Mesh {
  const near = 1e-9 * Math.max(...points.map(length));
  const faces = new Map<string, readonly number[]>();
  points.forEach((a, i) => {
    points.forEach((b, j) => {
      points.forEach((c, k) => {
        const normal = cross(subtract(b, a), subtract(c, a));
        if (!(i < j && j !== k && i < k) || length(normal) < near) return;
        const heights = points.map((p) => dot(unit(normal), subtract(p, a)));
        if (heights.some((height) => height > near)) return;
        const flat = heights.flatMap((height, corner) => (height > -near ? [corner] : []));
        faces.set(flat.join(' '), aroundNormal(flat, points, normal));
      });
    });
  });
  const index = [...faces.values()].flatMap(([first, ...rest]) =>
    rest.slice(1).flatMap((corner, i) => [first, rest[i], corner]),
  );
  return soundMesh(Float64Array.from(points.flat()), Uint32Array.from(index));
}

/** Corners of a face in their order about its outward normal. */
function aroundNormal(corners: readonly number[], points: readonly Vec3[], normal: Vec3): readonly number[] {
  const middle = middleOf(corners.map((corner) => points[corner]));
  const start = subtract(points[corners[0]], middle);
  const side = cross(unit(normal), start);
  const angle = (corner: number) => {
    const spoke = subtract(points[corner], middle);
    return Math.atan2(dot(spoke, side), dot(spoke, start));
  };
  return corners.toSorted((a, b) => angle(a) - angle(b));
}

/** The same mesh with each point sent elsewhere. A mirror must also turn the triangles over. */
export function mapMesh(mesh: Mesh, to: (point: Vec3) => Vec3, turnOver = false): Mesh {
  const { index } = mesh.topology;
  return soundMesh(Float64Array.from(pointsOf(mesh).flatMap(to)), turnOver ? index.toReversed() : index);
}

/** Two meshes as one: the second a hole in the first if it is turned over, else a body beside it. */
export function joinMeshes(first: Mesh, second: Mesh, asHole: boolean): Mesh {
  const shifted = second.topology.index.map((vertex) => vertex + first.topology.vertexCount);
  return soundMesh(
    Float64Array.from([...first.positions, ...second.positions]),
    Uint32Array.from([...first.topology.index, ...(asHole ? shifted.toReversed() : shifted)]),
  );
}

export function pointsOf(mesh: Mesh): readonly Vec3[] {
  return Array.from(
    { length: mesh.topology.vertexCount },
    (_, i): Vec3 => [mesh.positions[3 * i], mesh.positions[3 * i + 1], mesh.positions[3 * i + 2]],
  );
}
