import { useFrame, useThree } from '@react-three/fiber';
import { type ReactNode, useLayoutEffect, useRef } from 'react';
import { type Group, type Matrix4, Vector3 } from 'three';
import type { Mm } from '../../sim/index.ts';
import { useTub } from './tub.ts';

/** Sets the links out for apart or together and moves them there. */
export function SpreadDriver({ apart, still }: { readonly apart: boolean; readonly still: boolean }) {
  const { spread } = useTub();
  const invalidate = useThree((state) => state.invalidate);
  useLayoutEffect(() => {
    spread.aim(apart, performance.now(), still);
    invalidate();
  }, [spread, apart, still, invalidate]);
  useFrame(() => {
    if (spread.step(performance.now())) invalidate();
  });
  return null;
}

interface PulledProps {
  /** How far this goes along the body's x when links are apart. */
  readonly by: Mm;
  readonly children: ReactNode;
}

interface PulledAlongProps extends PulledProps {
  /** World from body, for what is written in the world frame of a body that stands still. */
  readonly along?: Matrix4;
}

/** What is written in the body frame and goes with one link when links are pulled apart. */
export function Pulled({ by, along, children }: PulledAlongProps) {
  const { spread } = useTub();
  const group = useRef<Group>(null);
  useLayoutEffect(
    () =>
      spread.listen((share) => {
        const goes = group.current?.position;
        if (along === undefined) goes?.set(share * by, 0, 0);
        else goes?.setFromMatrixColumn(along, 0).multiplyScalar(share * by);
      }),
    [spread, by, along],
  );
  return <group ref={group}>{children}</group>;
}

/** The same for what is written in the world frame: it goes the way that the body's x points there. */
export function PulledInWorld({ by, children }: PulledProps) {
  const { spread, motion } = useTub();
  const group = useRef<Group>(null);
  useLayoutEffect(() => {
    const aft = new Vector3();
    let gone = 0;
    const place = () => group.current?.position.copy(aft).multiplyScalar(gone * by);
    const leaveMotion = motion.listen((worldFromBody) => {
      aft.setFromMatrixColumn(worldFromBody, 0);
      place();
    });
    const leaveSpread = spread.listen((share) => {
      gone = share;
      place();
    });
    return () => {
      leaveMotion();
      leaveSpread();
    };
  }, [spread, motion, by]);
  return <group ref={group}>{children}</group>;
}
