import type { Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type Assembly, assemblyOf, type ChainStart, SOFT_AGAIN, startOf } from './assemble.ts';
import type { YawRange } from './hinge.ts';
import { loosened, type Settled, settle } from './settle.ts';
import type { Chain } from './system.ts';

/** A bait folded one way, all joints by the same share of what they reach. */
export interface FoldPoint {
  readonly share: number;
  /** All joints together. */
  readonly fold: Radian;
  readonly bait: Assembly;
  /** Of the link that heels most. */
  readonly heel: Radian;
}

export interface FoldWay {
  /** From straight to as far as the joints reach. */
  readonly points: readonly FoldPoint[];
  /** Where some link heels most. */
  readonly most: Pick<FoldPoint, 'fold' | 'heel'>;
  /** The fold at which some link has gone over past `ROLLED_RAD`; null: it stays up. */
  readonly rollsFrom: Radian | null;
}

/** A bait turned right round, held at each fold. */
export interface Folded {
  readonly port: FoldWay;
  readonly starboard: FoldWay;
}

/** A link that heels so far shows its flank and not its back. Common practice. */
export const ROLLED_RAD: Radian = radianFromDegree(30);
/** Folds that are looked at, straight left out. */
const FOLDS = 10;

/** A bait at rest with its joints held at yaws within reach; `from`: how it rests at yaws close by. */
export function holdAt(chain: Chain, start: ChainStart, yaws: readonly Radian[], from: Settled | null): Settled {
  const begun = from ? loosened(chain.hinges, from.state) : startOf(chain, start);
  const joints = begun.joints.map((joint, j) => ({ ...joint, yaw: yaws[j] }));
  const softest = from ? SOFT_AGAIN : undefined;
  return settle(chain, { ...begun, joints }, 'held', start.offset !== null, softest);
}

/** How a bait rests while it is folded further and further to either side, with no swimming and no way on. */
export function foldBait(chain: Chain, start: ChainStart, reach: readonly YawRange[]): Folded {
  const straight = holdAt(
    chain,
    start,
    chain.hinges.map(() => 0),
    null,
  );
  const way = (sign: 1 | -1): FoldWay => {
    let last = straight;
    const points = Array.from({ length: FOLDS + 1 }, (_, k): FoldPoint => {
      const share = k / FOLDS;
      const yaws = reach.map(({ port, starboard }) => share * (sign === 1 ? starboard : -port));
      if (k > 0) last = holdAt(chain, start, yaws, last);
      const bait = assemblyOf(chain, last, 'held', start);
      const heel = bait.links.reduce((most, link) => (Math.abs(link.heel) > Math.abs(most) ? link.heel : most), 0);
      return { share, fold: yaws.reduce((sum, yaw) => sum + Math.abs(yaw), 0), bait, heel };
    });
    const most = points.reduce((worst, point) => (Math.abs(point.heel) > Math.abs(worst.heel) ? point : worst));
    const rolled = points.find(({ heel }) => Math.abs(heel) > ROLLED_RAD);
    return { points, most: { fold: most.fold, heel: most.heel }, rollsFrom: rolled?.fold ?? null };
  };
  return { starboard: way(1), port: way(-1) };
}
