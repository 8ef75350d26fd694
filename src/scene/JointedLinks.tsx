import { useFrame, useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import type { Matrix4 } from 'three';
import { Hooks } from './Hooks.tsx';
import { LinkAndParts } from './LinkAndParts.tsx';
import { Posed } from './Posed.tsx';
import type { ShownBait, ShownLink } from './shown.ts';
import { TubContext, useTub } from './tub.ts';
import { createTurning } from './turning.ts';

interface JointedLinksProps {
  readonly bait: ShownBait;
  /** World from link, of each link that is shown. */
  readonly places: readonly Matrix4[];
  readonly still: boolean;
}

/** The bait with its joints in play: every link stands for itself, and what hangs from it is plumb. */
export function JointedLinks({ bait, places, still }: JointedLinksProps) {
  return bait.links.map((link, i) => (
    <JointedLink key={link.index} link={link} bait={bait} place={places[i]} still={still} />
  ));
}

interface JointedLinkProps {
  readonly link: ShownLink;
  readonly bait: ShownBait;
  readonly place: Matrix4;
  readonly still: boolean;
}

function JointedLink({ link, bait, place, still }: JointedLinkProps) {
  const tub = useTub();
  const invalidate = useThree((state) => state.invalidate);
  const motion = useMemo(createTurning, []);
  useLayoutEffect(() => {
    motion.aim(place, performance.now(), still);
    invalidate();
  }, [motion, place, still, invalidate]);
  useFrame(() => {
    if (motion.step(performance.now())) invalidate();
  });
  const own = useMemo(() => ({ ...tub, motion }), [tub, motion]);
  return (
    <TubContext value={own}>
      <Posed>
        <LinkAndParts link={link} bait={bait} shift={0} />
      </Posed>
      <Hooks hung={bait.hung.filter((item) => item.link === link.index)} />
    </TubContext>
  );
}
