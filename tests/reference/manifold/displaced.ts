import { isRound } from '../../../sim/links/cut.ts';
import type { LinkOfBait } from './baits.ts';
import { type Block, blockOf, middleOf, release, sawCut, without } from './solids.ts';

/** How far a saw cut runs out of the wood, so that it and the face cross cleanly (mm). */
const PAST_THE_FACE = 3;

/** The wood of a link as it lies in water. */
export type WettedLink = Pick<LinkOfBait, 'spec' | 'wetted'>;

/** The cuts that open a link's slots, each from its floor out past the ridge of its face. */
export function cutsOf({ spec, wetted }: WettedLink, origin: Block['origin']): readonly Block[] {
  return wetted.slots.map((slot) => {
    const face = slot.opens === 'aft' ? spec.aftFace : spec.foreFace;
    if (!face) throw new Error(`a slot of ${spec.name} opens to no face`);
    return sawCut(slot, slot.opens === 'aft' ? face.at + PAST_THE_FACE : face.at - PAST_THE_FACE, origin);
  });
}

/** What of a link displaces water, slots sawn out, as a solid of the library's own. */
export function displacedBlock(link: WettedLink): Block {
  const origin = middleOf(link.wetted.mesh);
  const whole = blockOf(link.wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
  const cuts = cutsOf(link, origin);
  const left = without(whole, cuts);
  release(whole, ...cuts);
  return left;
}

/** What mouths may part from the facets of a round face, on either side of the cylinder: sim/mesh/topology.ts. */
const FACET_SHARE = 0.005;

/** Volume by which slots may differ from what is sawn out of the facets of a round face; 0 where no face is round. */
export function mouthSlack({ spec, wetted }: WettedLink): number {
  const faces = [spec.foreFace, spec.aftFace];
  const radius = Math.max(0, ...faces.map((face) => (face && isRound(face) ? face.radius : 0)));
  return wetted.slots.reduce((sum, slot) => sum + slot.width * (slot.z[1] - slot.z[0]), 0) * radius * FACET_SHARE;
}
