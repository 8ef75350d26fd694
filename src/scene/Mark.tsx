import { Html } from '@react-three/drei';
import { useFrame, useThree } from '@react-three/fiber';
import { createContext, type ReactNode, useCallback, useContext, useLayoutEffect, useMemo, useRef } from 'react';
import type { BufferGeometry, Group } from 'three';
import type { Vec3 } from '../../sim/index.ts';
import { createLabelBoard, type LabelBoard } from './label-board.ts';
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

interface LabelProps {
  readonly className: string;
  /** The lower, the sooner it gets the place it wants. */
  readonly rank: number;
  /** What stands at the very point, with the words beside it; left out where the words stand there. */
  readonly sign?: { readonly drawn: ReactNode; readonly wordsOn: 'left' | 'right' };
  /** How far over the point the words want to be, CSS pixels. */
  readonly rise?: number;
  readonly children: ReactNode;
}

const SIDES = { left: -1, right: 1 } as const;

/** Words at a point, moved aside where others stand. */
export function Label({ className, rank, sign, rise = 0, children }: LabelProps) {
  const board = useContext(BoardContext);
  const anchor = useRef<Group>(null);
  const side = sign === undefined ? 0 : SIDES[sign.wordsOn];
  const join = useCallback(
    (words: HTMLElement) =>
      anchor.current === null ? undefined : board?.join(anchor.current, words, rank, side, rise),
    [board, rank, side, rise],
  );
  return (
    <group ref={anchor}>
      <Html center zIndexRange={LAYERS} className={`mark ${className}`} pointerEvents="none">
        {sign?.drawn}
        <span ref={join}>{children}</span>
      </Html>
    </group>
  );
}

/** Drafting sign of a centre: a circle, and what tells one centre from another in it. */
export function CentreSign({ children }: { readonly children: ReactNode }) {
  return (
    <svg viewBox="-8 -8 16 16" aria-hidden="true">
      <circle r="7" />
      {children}
    </svg>
  );
}

const BoardContext = createContext<LabelBoard | null>(null);

/** Keeps the labels in it from covering each other. */
export function Labels({ children }: { readonly children: ReactNode }) {
  const invalidate = useThree((state) => state.invalidate);
  const board = useMemo(() => createLabelBoard(() => invalidate()), [invalidate]);
  useFrame(({ camera, size }) => board.place(camera, size.width, size.height));
  return <BoardContext value={board}>{children}</BoardContext>;
}
