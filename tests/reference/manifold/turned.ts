import type { PlacedEye } from '../../../sim/mass/placed.ts';
import { meshLink, type Wetted, wetLink } from '../../../sim/mesh/wetted.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import type { BaitParts } from '../../support/worked-bait.ts';
import { cutsOf } from './displaced.ts';
import { type Block, barBlock, blockOf, common, joined, release, ringBlock, turnedAft, without } from './solids.ts';

/** A joint as the library sees it: both links about the line they turn about, wood with fins, and wire. */
export interface TurnedJoint {
  readonly fore: LinkBlocks;
  readonly aft: LinkBlocks;
}

interface LinkBlocks {
  readonly wood: Block;
  readonly steel: Block | null;
}

/** The two links at a joint with their coats, or bare; pivot: x of the line they turn about. */
export function jointBlocks(parts: BaitParts, j: number, pivot: number, coated = true): TurnedJoint {
  const origin: Vec3 = [pivot, 0, 0];
  const [fore, aft] = [j, j + 1].map((index): LinkBlocks => {
    const spec = parts.links[index];
    const bare = meshLink(parts.hull, spec, 'full');
    const wetted: Wetted = wetLink(parts.hull, spec, 'full', bare, coated ? parts.setup.coats : []);
    const whole = blockOf(wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
    const cuts = cutsOf({ spec, wetted }, origin);
    const sawn = without(whole, cuts);
    const fins = parts.hardware.fins
      .filter(({ link }) => link === index)
      .map(({ mesh }) => blockOf(mesh, ['skin'], origin));
    const wires = parts.hardware.eyes
      .filter(({ link }) => link === index)
      .flatMap((eye) => wireBlocks(eye, isOnPin(parts, eye), origin));
    const wood = joined([sawn, ...fins]);
    const steel = wires.length === 0 ? null : joined(wires);
    release(whole, ...cuts, sawn, ...fins, ...wires);
    return { wood, steel };
  });
  return { fore, aft };
}

function isOnPin({ hardware }: BaitParts, eye: PlacedEye): boolean {
  return eye.kind === 'hinge' && hardware.pins.some(({ x }) => x === eye.loop[0]);
}

/** The neck from the middle of the loop to the wood, and the loop where nothing holds its middle in place. */
function wireBlocks(eye: PlacedEye, onPin: boolean, origin: Vec3): readonly Block[] {
  const neck = barBlock(eye.loop, eye.entry, eye.wire / 2, origin);
  if (onPin) return [neck];
  const axis = eye.axis[2] === 0 ? 'y' : 'z';
  return [neck, ringBlock(eye.loop, axis, eye.bore / 2 + eye.wire, eye.wire, origin)];
}

/** What the two have in common, in mm³, with the aft link turned so many degrees to starboard. Eyes may hold each other. */
export function overlapAt({ fore, aft }: TurnedJoint, degrees: number): number {
  const pairs: readonly (readonly [Block | null, Block | null])[] = [
    [aft.wood, fore.wood],
    [aft.steel, fore.wood],
    [aft.wood, fore.steel],
  ];
  return pairs.reduce((sum, [turns, stands]) => {
    if (!turns || !stands) return sum;
    const turned = turnedAft(turns, degrees);
    const both = common(stands, turned);
    const volume = both.solid.volume();
    release(turned, both);
    return sum + volume;
  }, 0);
}

/** The least angle at which they have something in common, by halving, to a hundredth of a degree. */
export function reachByHalving(joint: TurnedJoint, side: 1 | -1, least: number): number {
  // what is free at one angle is not free at all beyond the first contact: look up in steps first
  let free = 0;
  let met = 2;
  while (met < 180 && overlapAt(joint, side * met) <= least) {
    free = met;
    met += 2;
  }
  while (met - free > 0.01) {
    const middle = (free + met) / 2;
    if (overlapAt(joint, side * middle) > least) met = middle;
    else free = middle;
  }
  return met;
}

export function releaseJoint({ fore, aft }: TurnedJoint): void {
  release(...[fore.wood, fore.steel, aft.wood, aft.steel].flatMap((block) => (block ? [block] : [])));
}
