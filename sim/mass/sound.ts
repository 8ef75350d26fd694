import type { Design, Setup } from '../design/design.ts';
import { type Issue, SimError } from '../flow/outcome.ts';
import type { Hull } from '../hull/hull.ts';
import type { LinkSpec } from '../links/cut.ts';
import { clearanceIssues, type PathOf } from './checks/clearance.ts';
import { gapIssues, hingeIssues, jointIssues } from './checks/joints.ts';
import { holeIssues, shankIssue } from './checks/parts.ts';
import { slotIssues } from './checks/slots.ts';
import type { FixedHardware } from './placed.ts';

/**
 * Whether the bait can be made at all: joints in order, slots inside the skin, hinges that turn, shanks and holes in
 * wood and clear of each other, lead that fits its hole. Throws SimError with every problem; where joints are out of
 * order only those are told, since nothing else has a place then.
 */
export function checkSound(
  hull: Hull,
  links: readonly LinkSpec[],
  joints: Design['joints'],
  hardware: FixedHardware,
  coats: Setup['coats'],
  setupIndex: number,
): true {
  const misplaced = jointIssues(hull, links, joints);
  if (misplaced.length > 0) throw new SimError(misplaced);
  const growth = coats.reduce(
    (sum, coat) => sum + (coat.kind === 'film' && coat.covers === 'all' ? coat.thickness : 0),
    0,
  );
  const paths = pathsOf(joints, setupIndex);
  const issues: readonly Issue[] = [
    ...gapIssues(joints, growth),
    ...links.flatMap((spec) => slotIssues(hull, spec, growth)),
    ...joints.flatMap((joint, j) => hingeIssues(hull, links, joint, j, growth)),
    ...hardware.eyes.flatMap((eye, i) => shankIssue(hull, links[eye.link], eye, paths.eye(i))),
    ...hardware.holes.flatMap((hole, i) => holeIssues(hull, links[hole.link], hole, paths.hole(i))),
    ...links.flatMap((spec) => clearanceIssues(spec, hardware, paths)),
  ];
  if (issues.length > 0) throw new SimError(issues);
  return true;
}

/** Hardware lists hinge eyes first, joint by joint, then hangers; holes as the setup has them. */
function pathsOf(joints: Design['joints'], setupIndex: number): PathOf {
  const hingeEyes = joints.flatMap((joint, j) => joint.hinge.eyes.map((_, i) => `joints.${j}.hinge.eyes.${i}`));
  return {
    eye: (i) => hingeEyes[i] ?? `hangers.${i - hingeEyes.length}`,
    hole: (i) => `setups.${setupIndex}.holes.${i}`,
  };
}
