import { memo } from 'react';
import type { Mm } from '../../sim/index.ts';
import { Pulled } from './Apart.tsx';
import { Ballast } from './Ballast.tsx';
import { Fins } from './Fins.tsx';
import { Fittings } from './Fittings.tsx';
import { Hardware } from './Hardware.tsx';
import { KeepOuts } from './KeepOuts.tsx';
import { LinkMesh } from './LinkMesh.tsx';
import type { ShownBait, ShownLink } from './shown.ts';

interface LinkAndPartsProps {
  readonly link: ShownLink;
  readonly bait: ShownBait;
  /** How far the link goes when links are pulled apart. */
  readonly shift: Mm;
}

/**
 * One link with all that is fixed in it, in the body frame. What hangs from it is in the world's. The sheet's scale may
 * change with the bait, and then the view is drawn twice: the parts only once.
 */
export const LinkAndParts = memo(({ link, bait, shift }: LinkAndPartsProps) => {
  const isOn = (item: { readonly link: number }) => item.link === link.index;
  const holes = bait.holes.filter(isOn);
  return (
    <Pulled by={shift}>
      <LinkMesh link={link} />
      <Fins fins={bait.fins.filter(isOn)} />
      <Fittings fittings={bait.fittings.filter(isOn)} links={[link]} />
      <Hardware eyes={bait.eyes.filter(isOn)} pins={bait.pins.filter(isOn)} />
      <Ballast link={link} holes={holes} />
      <KeepOuts link={link} keepOuts={bait.keepOuts[bait.links.indexOf(link)] ?? []} holes={holes} />
    </Pulled>
  );
});
