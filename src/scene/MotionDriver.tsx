import { useFrame, useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import type { Motion, Pose } from './motion.ts';

interface MotionDriverProps {
  readonly motion: Motion;
  readonly pose: Pose;
  readonly still: boolean;
}

/** Sets the bait out for each pose that is found and moves it there. Stands first in the tub: all else follows it. */
export function MotionDriver({ motion, pose, still }: MotionDriverProps) {
  const invalidate = useThree((state) => state.invalidate);

  useLayoutEffect(() => {
    motion.aim(pose, performance.now(), still);
    invalidate();
  }, [motion, pose, still, invalidate]);

  useFrame(() => {
    if (motion.step(performance.now())) invalidate();
  });
  return null;
}
