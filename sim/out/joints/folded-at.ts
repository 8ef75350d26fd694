import { type Assembly, assemblyOf } from '../../chain/assemble.ts';
import { holdAt } from '../../chain/fold.ts';
import { jointedBait } from '../../chain/jointed-bait.ts';
import { linkTrees } from '../../hydro/link-tree.ts';
import type { Radian } from '../../units/brand.ts';
import { radianFromDegree } from '../../units/convert.ts';
import { counted, formatAngle } from '../../units/format.ts';
import { trimWords } from '../ballast/words.ts';
import type { CheckedBait } from '../checked-bait.ts';
import { listed } from '../warn/cure.ts';
import { jointWords } from './words.ts';

/** A yaw is said to this: one that reads as the reach is within it. */
const SAID_TO: Radian = radianFromDegree(0.05);

/** Why a bait cannot be folded by these yaws, one for each joint, starboard positive: with what is allowed; null: it can. */
export function foldFault({ reach }: CheckedBait, yaws: readonly Radian[]): string | null {
  const { joints } = reach;
  if (yaws.length !== joints.length) {
    return `the bait has ${counted(joints.length, 'joint')}, and ${counted(yaws.length, 'angle')} ${yaws.length === 1 ? 'was' : 'were'} given`;
  }
  for (const [j, yaw] of yaws.entries()) {
    const [side, { angle }] =
      yaw < 0 ? (['port', joints[j].port] as const) : (['starboard', joints[j].starboard] as const);
    if (Math.abs(yaw) > angle + SAID_TO) {
      return `joint ${j + 1} turns ${formatAngle(angle)} to ${side} at most, ${formatAngle(Math.abs(yaw))} was given`;
    }
  }
  return null;
}

/** How a bait rests with its joints held at yaws that it reaches. */
export function foldedAt(bait: CheckedBait, yaws: readonly Radian[]): Assembly {
  const { hardware, links, water, design, assembled, assembledSinking } = bait;
  const { chain, start } = jointedBait({
    trees: links.map(({ wetted }, i) =>
      linkTrees(
        wetted.mesh,
        hardware.fins.filter(({ link }) => link === i),
      ),
    ),
    ...{ ledgers: links.map(({ ledger }) => ledger), hung: hardware.hung, water },
    ...{ links: links.map(({ spec }) => spec), joints: design.joints, float: assembled, fall: assembledSinking },
  });
  return assemblyOf(chain, holdAt(chain, start, yaws, null), 'held', start);
}

/** The same in words: each joint, how each link then lies, and what its pins carry. */
export function foldedAtLines({ links }: CheckedBait, folded: Assembly): readonly string[] {
  const turned = folded.joints.map(({ yaw }, j) => `joint ${j + 1} ${turnWords(yaw)}`);
  return [
    `Held at ${listed(turned)}:`,
    ...links.map(({ spec }, i) => {
      const { trim, heel } = folded.links[i];
      const heels = Math.abs(heel) < SAID_TO ? 'upright' : `heels ${turnWords(heel)}`;
      return `  ${spec.name}: ${trimWords(trim)}, ${heels}`;
    }),
    ...folded.joints.map((joint, j) => `  joint ${j + 1} ${jointWords(joint)}`),
  ];
}

function turnWords(angle: Radian): string {
  return `${formatAngle(Math.abs(angle), { digits: 1 })} to ${angle < 0 ? 'port' : 'starboard'}`;
}
