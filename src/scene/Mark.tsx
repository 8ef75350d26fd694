import { Html } from '@react-three/drei';
import { type ReactNode, useLayoutEffect, useRef } from 'react';
import type { BufferGeometry, Group } from 'three';
import type { Vec3 } from '../../sim/index.ts';
import { ORDER } from './order.ts';
import { useTub } from './tub.ts';

/** Under the page's own lists and messages. */
const LAYERS: [number, number] = [10, 0];

interface FollowProps {
  /** In the body frame. */
  readonly point: Vec3;
  readonly line?: BufferGeometry;
  readonly children: ReactNode;
}

/** Stands upright in the world at a point of the body, wherever the body goes. */
export function Follow({ point, line, children }: FollowProps) {
  const { looks, motion } = useTub();
  const group = useRef<Group>(null);
  const [x, y, z] = point;
  useLayoutEffect(
    () => motion.listen((worldFromBody) => group.current?.position.set(x, y, z).applyMatrix4(worldFromBody)),
    [motion, x, y, z],
  );
  return (
    <group ref={group}>
      {line && <lineSegments geometry={line} material={looks.mark} renderOrder={ORDER.marks} frustumCulled={false} />}
      {children}
    </group>
  );
}

export function Label({ className, children }: { readonly className: string; readonly children: ReactNode }) {
  return (
    <Html center zIndexRange={LAYERS} className={`mark ${className}`} pointerEvents="none">
      {children}
    </Html>
  );
}
