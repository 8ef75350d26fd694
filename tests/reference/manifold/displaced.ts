import type { LinkOfBait } from './baits.ts';
import { type Block, blockOf, middleOf, release, sawCut, without } from './solids.ts';

/** How far a saw cut runs out of the wood, so that it and the face cross cleanly (mm). */
const PAST_THE_FACE = 3;

/** The cuts that open a link's slots, each from its floor out past the ridge of its face. */
export function cutsOf({ spec, wetted }: LinkOfBait, origin: Block['origin']): readonly Block[] {
  return wetted.slots.map((slot) => {
    const face = slot.opens === 'aft' ? spec.aftFace : spec.foreFace;
    if (!face) throw new Error(`a slot of ${spec.name} opens to no face`);
    return sawCut(slot, slot.opens === 'aft' ? face.at + PAST_THE_FACE : face.at - PAST_THE_FACE, origin);
  });
}

/** What of a link displaces water, slots sawn out, as a solid of the library's own. */
export function displacedBlock(link: LinkOfBait): Block {
  const origin = middleOf(link.wetted.mesh);
  const whole = blockOf(link.wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
  const cuts = cutsOf(link, origin);
  const left = without(whole, cuts);
  release(whole, ...cuts);
  return left;
}
