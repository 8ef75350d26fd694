import type { Design } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import type { Float } from '../hydro/float.ts';
import type { LinkTrees } from '../hydro/link-tree.ts';
import type { LinkSpec } from '../links/cut.ts';
import type { Ledger } from '../mass/ledger.ts';
import type { PlacedHung } from '../mass/placed.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import { type ChainStart, chainOf, type Drag } from './assemble.ts';
import { hingesOf } from './hinge.ts';
import type { Chain } from './system.ts';

/** What a jointed bait is made of; trees, ledgers and links from nose to tail. */
export interface JointedParts {
  readonly trees: readonly LinkTrees[];
  readonly ledgers: readonly Ledger[];
  readonly hung: readonly PlacedHung[];
  readonly water: WaterAnswer;
  readonly links: readonly LinkSpec[];
  readonly joints: Design['joints'];
  /** How it rests in one piece. */
  readonly float: Pick<Float, 'up' | 'offset'>;
  /** How it falls in one piece, if it sinks: its way up, and each link's share of the drag; null: it floats or hangs. */
  readonly fall: { readonly up: Vec3; readonly shares: readonly Drag[] } | null;
}

/** A bait as a chain of links, and where to begin to look for how it rests. */
export interface JointedBait {
  readonly chain: Chain;
  readonly start: ChainStart;
}

export function jointedBait({ trees, ledgers, hung, water, links, joints, float, fall }: JointedParts): JointedBait {
  const bodies = trees.map((tree, i) =>
    bodyOf(
      [tree],
      [ledgers[i]],
      hung.filter(({ link }) => link === i),
      water,
    ),
  );
  return {
    chain: chainOf(bodies, hingesOf(joints, links), float.offset === null, fall?.shares ?? null),
    start: { up: fall ? fall.up : float.up, offset: float.offset },
  };
}
