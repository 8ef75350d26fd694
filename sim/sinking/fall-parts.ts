import { bodyOf } from '../hydro/bait-body.ts';
import type { LinkTrees } from '../hydro/link-tree.ts';
import type { Ledger } from '../mass/ledger.ts';
import type { PlacedHung } from '../mass/placed.ts';
import { kinematicViscosity } from '../tables/viscosity.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import type { Timed } from './drag-law.ts';
import type { SinkParts } from './sink.ts';

/** What falls: the whole bait held straight, and each link alone. */
export interface FallParts {
  readonly whole: SinkParts;
  readonly links: readonly SinkParts[];
}

/**
 * A bait and its links as they fall. timed: what a timed drop of the whole bait makes of its drag, null without one. It
 * narrows the band of the bait that was dropped; its links' drag is stretched by as much, and stays as uncertain as their
 * shapes leave it.
 */
export function fallPartsOf(
  trees: readonly LinkTrees[],
  ledgers: readonly Ledger[],
  hung: readonly PlacedHung[],
  water: WaterAnswer,
  timed: Timed | null,
): FallParts {
  const viscosity = kinematicViscosity(water);
  const links = trees.map((tree, i) => {
    const own = hung.filter(({ link }) => link === i);
    return bodyOf([tree], [ledgers[i]], own, water);
  });
  const whole = {
    body: bodyOf(trees, ledgers, hung, water),
    links,
    viscosity,
    timed,
  };
  // a bait in one piece is its only link
  if (links.length === 1) return { whole, links: [whole] };
  return {
    whole,
    links: links.map((body) => ({ body, links: [body], viscosity, timed: timed && { ...timed, band: null } })),
  };
}
