import { assemble, mostHeel } from '../chain/assemble.ts';
import { jointedBait } from '../chain/jointed-bait.ts';
import type { Design } from '../design/design.ts';
import { type Reach, yawRanges } from '../reach/reach.ts';
import type { Radian } from '../units/brand.ts';
import { type BaitWithLinks, floatWith } from './refloat.ts';
import type { SettledPlan } from './settle.ts';

/** What a bait whose pins are loaded does when it is let go. */
export interface Curl {
  /** All joints together; to starboard is positive. */
  readonly yaw: Radian;
  /** Of the link that then heels most. */
  readonly heel: Radian;
}

/** How a bait with a plan in it curls by itself; null: it stays straight. */
export function curlWith(
  parts: BaitWithLinks,
  { holes, assembled, assembledSinking }: Pick<SettledPlan, 'holes' | 'assembled' | 'assembledSinking'>,
  joints: Design['joints'],
  reach: Reach,
): Curl | null {
  const { links, water } = parts;
  const { ledgers, hung } = floatWith(parts, { holes: holes.map(({ hole }) => hole) });
  const { chain, start } = jointedBait({
    ...{ trees: links.map(({ trees }) => trees), ledgers, hung, water, joints },
    ...{ links: links.map(({ spec }) => spec), float: assembled, fall: assembledSinking },
  });
  const { loose } = assemble(chain, start, yawRanges(reach));
  if (!loose) return null;
  return { yaw: loose.joints.reduce((sum, joint) => sum + joint.yaw, 0), heel: mostHeel(loose) };
}
