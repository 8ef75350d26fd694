import { type ReactNode, useLayoutEffect, useRef } from 'react';
import type { Group } from 'three';
import { useTub } from './tub.ts';

/** Whatever is written in the body frame, standing as the bait stands. */
export function Posed({ children }: { readonly children: ReactNode }) {
  const { motion } = useTub();
  const group = useRef<Group>(null);
  useLayoutEffect(
    () =>
      motion.listen((worldFromBody) => {
        if (!group.current) return;
        group.current.matrix.copy(worldFromBody);
        group.current.matrixWorldNeedsUpdate = true;
      }),
    [motion],
  );
  return (
    <group ref={group} matrixAutoUpdate={false}>
      {children}
    </group>
  );
}
