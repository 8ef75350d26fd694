import type { Vec3 } from '../numerics/vec3.ts';
import type { Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type Assembly, assemblyOf, type ChainStart, mostHeel, SOFT_AGAIN, type Stop, startOf } from './assemble.ts';
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
/** Folds that are looked at, straight left out; an even number. */
const FOLDS = 10;
/** Rests that differ by less are the same: a hundredth of a degree. */
const ALIKE_RAD: Radian = radianFromDegree(0.01);

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
  const yawsAt = (share: number, sign: 1 | -1) =>
    reach.map(({ port, starboard }) => share * (sign === 1 ? starboard : -port));
  const sweep = (sign: 1 | -1): readonly FoldPoint[] => {
    let last = straight;
    return Array.from({ length: FOLDS + 1 }, (_, k) => {
      const yaws = yawsAt(k / FOLDS, sign);
      if (k > 0) last = holdAt(chain, start, yaws, last);
      return pointOf(k / FOLDS, yaws, assemblyOf(chain, last, 'held', start));
    });
  };
  const starboard = sweep(1);
  // a bait alike to either side, as most are, folds to port as in a mirror: one fold on the way tells
  const middle = FOLDS / 2;
  const looked = assemblyOf(chain, holdAt(chain, start, yawsAt(middle / FOLDS, -1), straight), 'held', start);
  const image = starboard.map(({ share, bait }) => pointOf(share, yawsAt(share, -1), mirrored(bait)));
  const isAlike = reach.every(({ port, starboard: other }) => Math.abs(port - other) < ALIKE_RAD);
  const isImage = isAlike && image[middle].bait.links.every((link, i) => isSameRest(link, looked.links[i]));
  return { starboard: wayOf(starboard), port: wayOf(isImage ? image : sweep(-1)) };
}

function pointOf(share: number, yaws: readonly Radian[], bait: Assembly): FoldPoint {
  return { share, fold: yaws.reduce((sum, yaw) => sum + Math.abs(yaw), 0), bait, heel: mostHeel(bait) };
}

function wayOf(points: readonly FoldPoint[]): FoldWay {
  const most = points.reduce((worst, point) => (Math.abs(point.heel) > Math.abs(worst.heel) ? point : worst));
  const rolled = points.find(({ heel }) => Math.abs(heel) > ROLLED_RAD);
  return { points, most: { fold: most.fold, heel: most.heel }, rollsFrom: rolled?.fold ?? null };
}

function isSameRest(one: Assembly['links'][number], other: Assembly['links'][number]): boolean {
  return Math.abs(one.heel - other.heel) < ALIKE_RAD && Math.abs(one.trim - other.trim) < ALIKE_RAD;
}

/** The image of a resting bait in its centre plane. */
function mirrored({ links, joints, poses, ...rest }: Assembly): Assembly {
  // + 0 turns -0 into 0
  const flip = ([x, y, z]: Vec3): Vec3 => [x, -y + 0, z];
  const back = (v: Vec3): Vec3 => [-v[0] + 0, -v[1] + 0, -v[2] + 0];
  const SIDES: Partial<Record<Stop, Stop>> = { port: 'starboard', starboard: 'port' };
  return {
    ...rest,
    links: links.map(({ up, heel, ...link }) => ({ ...link, up: flip(up), heel: -heel + 0 })),
    joints: joints.map(({ yaw, lean, shift, load, stops, ...joint }) => ({
      ...joint,
      yaw: -yaw + 0,
      lean: -lean + 0,
      shift: [shift[0], -shift[1] + 0],
      load: { ...load, twist: -load.twist + 0 },
      stops: stops.map((stop) => SIDES[stop] ?? stop),
    })),
    poses: poses.map(({ x, y, z, origin }) => ({ x: flip(x), y: back(flip(y)), z: flip(z), origin: flip(origin) })),
  };
}
