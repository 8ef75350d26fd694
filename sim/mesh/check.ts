import type { Issue } from '../flow/outcome.ts';
import { measureVolume } from './measure.ts';
import type { Mesh, Topology } from './mesh.ts';

/**
 * What is wrong with a topology: each edge must be shared by exactly two triangles that run along it in opposite
 * directions. Empty when closed.
 */
export function openEdges(topology: Topology): readonly string[] {
  const { index, vertexCount } = topology;
  const seen = new Map<number, number>();
  for (let i = 0; i < index.length; i += 3) {
    for (let side = 0; side < 3; side++) {
      const a = index[i + side];
      const b = index[i + ((side + 1) % 3)];
      const key = Math.min(a, b) * vertexCount + Math.max(a, b);
      // one triangle counts up, its neighbour down; a third would not come out at zero uses of both
      seen.set(key, (seen.get(key) ?? 0) + (a < b ? 1 : 1 << 8));
    }
  }
  const balanced = 1 + (1 << 8);
  return [...seen].flatMap(([key, uses]) =>
    uses === balanced ? [] : [`edge ${Math.floor(key / vertexCount)}–${key % vertexCount}`],
  );
}

/** Issues that make a mesh unfit to float: numbers that are not finite, no volume, or wound inside out. */
export function checkMesh(mesh: Mesh, path: string): readonly Issue[] {
  if (!mesh.positions.every(Number.isFinite)) {
    return [{ code: 'mesh/not-finite', path, message: 'the shape has points that are not finite numbers' }];
  }
  const { volume } = measureVolume(mesh);
  if (!(volume > 0)) {
    return [
      { code: 'mesh/no-volume', path, message: `the link encloses ${volume.toFixed(1)} mm³; more than 0 is needed` },
    ];
  }
  return [];
}
