import type { Design, Setup } from '../design/design.ts';
import { type Issue, SimError } from '../flow/outcome.ts';
import type { Hull } from '../hull/hull.ts';
import type { LinkSpec } from '../links/cut.ts';
import { clearanceIssues, type PathOf } from './checks/clearance.ts';
import { hangerIssues, tabIssues, tabsMeeting } from './checks/fins.ts';
import { hingeIssues } from './checks/hinges.ts';
import { gapIssues, jointIssues } from './checks/joints.ts';
import { knuckleIssues } from './checks/knuckles.ts';
import { fittingIssue, holeIssues, shankIssue } from './checks/parts.ts';
import { slotIssues } from './checks/slots.ts';
import type { FixedHardware } from './placed.ts';

/** Whether the bait can be made at all. Throws SimError with every problem. */
export function checkSound(...parts: Parameters<typeof soundIssues>): true {
  const issues = soundIssues(...parts);
  if (issues.length > 0) throw new SimError(issues);
  return true;
}

/**
 * What stands against making the bait: joints in order, slots inside the skin, hinges that turn, shanks and holes in
 * wood and clear of each other, lead that fits its hole. Where joints are out of order, or a knuckle is slimmer than the
 * body, only those are told, since nothing else has a place then.
 */
export function soundIssues(
  hull: Hull,
  links: readonly LinkSpec[],
  joints: Design['joints'],
  hardware: FixedHardware,
  coats: Setup['coats'],
  setupIndex: number,
): readonly Issue[] {
  const films = coats.filter((coat) => coat.kind === 'film');
  const skinGrowth = films.reduce((sum, { thickness }) => sum + thickness, 0);
  const misplaced = [...jointIssues(hull, links, joints), ...knuckleIssues(hull, joints, skinGrowth)];
  if (misplaced.length > 0) return misplaced;
  const growth = films.reduce((sum, { covers, thickness }) => sum + (covers === 'all' ? thickness : 0), 0);
  const paths = pathsOf(joints, setupIndex);
  return [
    ...gapIssues(joints, growth),
    ...links.flatMap((spec) => slotIssues(hull, spec, growth)),
    ...joints.flatMap((joint, j) => hingeIssues(hull, links, joint, j, growth)),
    ...hardware.eyes.flatMap((eye, i) => shankIssue(hull, links[eye.link], eye, paths.eye(i))),
    ...hardware.fittings.flatMap((fitting) => fittingIssue(links[fitting.link], fitting)),
    ...hardware.holes.flatMap((hole, i) => holeIssues(hull, links[hole.link], hole, paths.hole(i))),
    ...links.flatMap((spec) => clearanceIssues(spec, hardware, paths)),
    ...hardware.finFaults,
    ...hardware.fins.flatMap((fin) => [
      ...tabIssues(hull, links[fin.link], fin, hardware, paths),
      ...hangerIssues(fin, hardware, paths),
    ]),
    ...tabsMeeting(hardware.fins),
  ];
}

/** Hardware lists hinge eyes first, joint by joint, then hangers; holes as the setup has them. */
function pathsOf(joints: Design['joints'], setupIndex: number): PathOf {
  const hingeEyes = joints.flatMap(({ hinge }, j) =>
    hinge.kind === 'pin'
      ? hinge.eyes.map((_, i) => `joints.${j}.hinge.eyes.${i}`)
      : // of each pair the file has the height alone, so what is wrong with either stands with the hinge
        hinge.z.flatMap(() => [`joints.${j}.hinge`, `joints.${j}.hinge`]),
  );
  return {
    eye: (i) => hingeEyes[i] ?? `hangers.${i - hingeEyes.length}`,
    hole: (i) => `setups.${setupIndex}.holes.${i}`,
  };
}
