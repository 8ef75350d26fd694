import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { PlaneGeometry } from 'three';
import type { Mm } from '../../sim/index.ts';
import { setSurface, setWash, setWaves } from './materials.ts';
import { ORDER } from './order.ts';
import { useTub } from './tub.ts';

interface WaterProps {
  /** x of the middle of the bait, and its length. */
  readonly middle: Mm;
  readonly length: Mm;
  /** What the tub shows to both sides of the middle, and downwards. */
  readonly halfView: readonly [Mm, Mm];
  readonly still: boolean;
}

/** Ripples die down to a third in this time, and are taken for gone when they no longer show. */
const CALMING_S = 0.8;
const CALM = 0.02;
/** A tub that was not drawn for a while goes on where it was. */
const LONGEST_FRAME_S = 0.2;

/** How far the surface reaches: as many baits' lengths all round, and in half widths of the tub. */
const BAITS_ROUND = 1.6;
const PAST_THE_RIM = 1.6;

/** Still water at world z = 0: the surface, seen from above or below, and the wash that stands for it in level views. */
export function Water({ middle, length, halfView, still }: WaterProps) {
  const { shared, looks, motion } = useTub();
  const invalidate = useThree((state) => state.invalidate);
  const ripple = useRef({ height: 0, time_s: 0 });
  const [sheet, wall] = useMemo(
    () => [new PlaneGeometry(2, 2), new PlaneGeometry(2, 1).translate(0, -0.5, 0)] as const,
    [],
  );
  useEffect(
    () => () => {
      sheet.dispose();
      wall.dispose();
    },
    [sheet, wall],
  );

  const [across, down] = halfView;
  const reach = Math.max(BAITS_ROUND * length, PAST_THE_RIM * across);
  useLayoutEffect(() => {
    setSurface(looks.surface, reach);
    // a link alone stands off the tub's middle: the wash reaches past both sides all the same
    setWash(looks.wash, middle, 2.4 * across, 2 * down);
    invalidate();
  }, [looks, middle, reach, across, down, invalidate]);

  // a bait that moves stirs the water
  useLayoutEffect(
    () =>
      motion.listen(() => {
        ripple.current.height = still ? 0 : 1;
        setWaves(shared, ripple.current.height, ripple.current.time_s);
        invalidate();
      }),
    [motion, shared, still, invalidate],
  );

  useFrame((_, delta) => {
    const { current } = ripple;
    if (current.height === 0) return;
    const seconds = Math.min(delta, LONGEST_FRAME_S);
    current.height *= Math.exp(-seconds / CALMING_S);
    if (current.height < CALM) current.height = 0;
    current.time_s += seconds;
    setWaves(shared, current.height, current.time_s);
    invalidate();
  });

  return (
    <>
      <mesh geometry={wall} material={looks.wash} renderOrder={ORDER.wash} frustumCulled={false} />
      <mesh
        geometry={sheet}
        material={looks.surface}
        position={[middle, 0, 0]}
        renderOrder={ORDER.surface}
        frustumCulled={false}
      />
    </>
  );
}
