import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { PlaneGeometry } from 'three';
import type { Mm } from '../../sim/index.ts';
import { openLooks } from './looks.ts';
import { setCutPlane } from './materials.ts';
import { ORDER } from './order.ts';
import { useTub } from './tub.ts';

/** Past the ends of any bait. */
const REACH_MM = 4000;

/** Cuts the bait away at a plane of the body frame, or leaves it whole. kept: 1 to starboard of it, -1 to port. */
export function CutPlane({ cut, kept }: { readonly cut: Mm | null; readonly kept: 1 | -1 }) {
  const { shared, looks } = useTub();
  const invalidate = useThree((state) => state.invalidate);
  const plane = useMemo(() => new PlaneGeometry(REACH_MM, REACH_MM).rotateX(Math.PI / 2), []);
  useEffect(() => () => plane.dispose(), [plane]);
  useLayoutEffect(() => {
    setCutPlane(shared, cut, kept);
    openLooks(looks, cut !== null);
    invalidate();
  }, [shared, looks, cut, kept, invalidate]);
  if (cut === null) return null;
  return <mesh geometry={plane} material={looks.cutDepth} position={[0, cut, 0]} renderOrder={ORDER.cutDepth} />;
}
