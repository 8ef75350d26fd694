import type { Aim } from '../../ballast/target.ts';
import type { Amount } from '../../equations/worked.ts';
import type { Float } from '../../hydro/float.ts';
import type { PlacedHole, PlacedHung } from '../../mass/placed.ts';
import type { GramPerMm3 } from '../../units/brand.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import type { WetParts } from './wet-at.ts';

/** What floats as one: a link alone, or the whole bait held straight. */
export interface Piece {
  readonly links: readonly CheckedLink[];
  readonly hung: readonly PlacedHung[];
  readonly holes: readonly PlacedHole[];
  readonly float: Float;
  readonly aim: Aim | undefined;
  readonly wet: WetParts;
  readonly water: Amount;
  /** Density of each link's wood, by its number. */
  readonly wood: readonly GramPerMm3[];
}

/** One link alone. */
export function linkPiece(bait: CheckedBait, link: CheckedLink, water: Amount): Piece {
  return pieceOf(bait, [link], link.float, bait.target.links[link.spec.index], water);
}

/** All links, held straight. */
export function wholePiece(bait: CheckedBait, water: Amount): Piece {
  return pieceOf(bait, bait.links, bait.assembled, bait.target.assembled, water);
}

function pieceOf(
  bait: CheckedBait,
  links: readonly CheckedLink[],
  float: Float,
  aim: Aim | undefined,
  water: Amount,
): Piece {
  const indices = new Set(links.map(({ spec }) => spec.index));
  const own = <Item extends { readonly link: number }>(items: readonly Item[]) =>
    items.filter((item) => indices.has(item.link));
  const hung = own(bait.hardware.hung);
  const outside = links.flatMap(({ ledger }) =>
    ledger.lines.flatMap((line) =>
      line.outsideVolume > 0 ? [{ volume: line.outsideVolume, at: line.outsideAt }] : [],
    ),
  );
  return {
    links,
    hung,
    holes: own(bait.hardware.holes),
    float,
    aim,
    wet: {
      meshes: [...links.map(({ wetted }) => wetted.mesh), ...own(bait.hardware.fins).map(({ mesh }) => mesh)],
      outside,
      hung,
    },
    water,
    wood: bait.design.links.map((link) => link.density ?? bait.design.wood.density),
  };
}
