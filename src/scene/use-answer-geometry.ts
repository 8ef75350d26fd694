import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import type { Mesh } from '../../sim/index.ts';
import { type DrawnMesh, fillDrawnMesh, makeDrawnMesh } from './drawn-mesh.ts';

/**
 * The geometries of a link's mesh. Buffers are rewritten in place as long as the topology is the same one; what was
 * made here is disposed of here.
 */
export function useAnswerGeometry(mesh: Mesh): DrawnMesh {
  const { topology } = mesh;
  const invalidate = useThree((state) => state.invalidate);
  const drawn = useMemo(() => makeDrawnMesh(topology), [topology]);

  useLayoutEffect(() => {
    fillDrawnMesh(drawn, mesh);
    invalidate();
  }, [drawn, mesh, invalidate]);

  useEffect(
    () => () => {
      drawn.whole.dispose();
      drawn.skin.dispose();
      drawn.edges.dispose();
    },
    [drawn],
  );
  return drawn;
}
