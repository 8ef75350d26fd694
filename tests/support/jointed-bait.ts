import { type JointedBait, jointedBait } from '../../sim/chain/jointed-bait.ts';
import { linkTrees } from '../../sim/hydro/link-tree.ts';
import type { AllAnswers } from './worked-bait.ts';

/** The chain that the recipe makes of a bait, gathered from its answers. */
export function jointedOf({ bait, links }: AllAnswers): JointedBait {
  const { hardware, water, design, assembled } = bait;
  return jointedBait({
    trees: links.map(({ wetted }, i) =>
      linkTrees(
        wetted.mesh,
        hardware.fins.filter(({ link }) => link === i),
      ),
    ),
    ledgers: links.map(({ ledger }) => ledger),
    hung: hardware.hung,
    water,
    links: bait.links,
    joints: design.joints,
    float: assembled,
    fall: bait.assembledSinking,
  });
}
