import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useState } from 'react';
import type { Mesh } from '../../sim/index.ts';
import { createDrawnMeshes, type DrawnMesh, fillDrawnMesh } from './drawn-mesh.ts';

/**
 * The geometries of a link's mesh. Buffers are rewritten in place, one set for each of the topologies that take turns;
 * what was made here is disposed of here.
 */
export function useAnswerGeometry(mesh: Mesh): DrawnMesh {
  const invalidate = useThree((state) => state.invalidate);
  const [meshes] = useState(createDrawnMeshes);
  const drawn = meshes.of(mesh.topology);

  useLayoutEffect(() => {
    fillDrawnMesh(drawn, mesh);
    invalidate();
  }, [drawn, mesh, invalidate]);

  useEffect(() => meshes.dispose, [meshes]);
  return drawn;
}
