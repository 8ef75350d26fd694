import { useFrame, useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import type { Pose } from './motion.ts';
import { useTub } from './tub.ts';

interface MotionDriverProps {
  readonly pose: Pose;
  readonly still: boolean;
}

/** Sets the bait out for each pose that is found and moves it there. Stands first in the tub: all else follows it. */
export function MotionDriver({ pose, still }: MotionDriverProps) {
  const { motion } = useTub();
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
