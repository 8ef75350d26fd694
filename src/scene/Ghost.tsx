import { useMemo } from 'react';
import { Matrix4, Vector3 } from 'three';
import type { Float, Mm } from '../../sim/index.ts';
import { Pulled } from './Apart.tsx';
import { worldFromBody } from './frame.ts';
import { ORDER } from './order.ts';
import { poseOf, type ShownBait, type ShownLink } from './shown.ts';
import { useTub } from './tub.ts';
import { useAnswerGeometry } from './use-answer-geometry.ts';

interface GhostProps {
  readonly bait: ShownBait;
  readonly float: Float;
  /** How far each link goes when links are pulled apart. */
  readonly shifts: readonly Mm[];
}

/** Another way in which the same bait can rest in the same water: a pale shape with its rims, no hardware. */
export function Ghost({ bait, float, shifts }: GhostProps) {
  const matrix = useMemo(() => {
    const { up, offset } = poseOf(float, bait.links, bait.fins);
    return worldFromBody(new Vector3(...up), offset, new Matrix4());
  }, [bait, float]);
  return (
    <group matrix={matrix} matrixAutoUpdate={false}>
      {bait.links.map((link, i) => (
        <Pulled key={link.index} by={shifts[i] ?? 0}>
          <GhostLink link={link} />
        </Pulled>
      ))}
    </group>
  );
}

function GhostLink({ link }: { readonly link: ShownLink }) {
  const { looks } = useTub();
  const geometry = useAnswerGeometry(link.wetted.mesh);
  return (
    <>
      <mesh geometry={geometry.whole} material={looks.ghost} renderOrder={ORDER.marks} frustumCulled={false} />
      <lineSegments geometry={geometry.edges} material={looks.edge} renderOrder={ORDER.marks} frustumCulled={false} />
    </>
  );
}
