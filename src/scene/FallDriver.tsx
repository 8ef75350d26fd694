import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Mm } from '../../sim/index.ts';
import { useAnswers } from '../engine/answers.ts';
import { letSink, useView } from '../view/view.ts';
import { fallingPose } from './fall.ts';
import type { Motion, Pose } from './motion.ts';

/** How often a reader who wants no motion is shown the next still. */
const STILL_MS = 250;

interface FallDriverProps {
  readonly motion: Motion;
  /** How the bait rests. */
  readonly pose: Pose;
  /** It is out of sight from there on. */
  readonly floor: Mm;
  readonly still: boolean;
}

/** Lets the bait sink when asked to, in its own time and at its own scale, and brings it back to where it was. */
export function FallDriver({ motion, pose, floor, still }: FallDriverProps) {
  const invalidate = useThree((state) => state.invalidate);
  const wanted = useView((view) => view.sinking);
  const shown = useView((view) => view.shown);
  const sinking = useAnswers(
    ({ lastGood }) => (shown === 'whole' ? lastGood.bait.assembledSinking : lastGood.links[shown]?.sinking) ?? null,
  );
  const began = useRef<number | null>(null);
  const falls = wanted && sinking !== null;

  useEffect(() => {
    if (!wanted) return;
    if (!falls) {
      letSink(false);
      return;
    }
    began.current = performance.now();
    invalidate();
    const beat = still ? window.setInterval(() => invalidate(), STILL_MS) : 0;
    return () => {
      window.clearInterval(beat);
      began.current = null;
      motion.aim(pose, performance.now(), still);
      invalidate();
    };
  }, [wanted, falls, still, pose, motion, invalidate]);

  useFrame(() => {
    if (began.current === null || sinking === null) return;
    const now = performance.now();
    const fallen = fallingPose(pose, sinking, (now - began.current) / 1000, floor, still);
    if (fallen === null) {
      // the effect's end brings it back
      letSink(false);
      return;
    }
    motion.aim(fallen, now, true);
    if (!still) invalidate();
  });
  return null;
}
