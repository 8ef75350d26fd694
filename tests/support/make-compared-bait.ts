import type { Hole } from '../../sim/design/design.ts';
import { buildHull } from '../../sim/hull/hull.ts';
import { placeHole } from '../../sim/mass/hole.ts';
import type { CheckedBait } from '../../sim/out/checked-bait.ts';
import { makeCheckedBait } from './make-checked-bait.ts';

/** The plain bait in a setup of this name with these holes of its two links; its floats are written down by hand. */
export function makeComparedBait(
  name: string,
  head: readonly Hole[],
  tail: readonly Hole[] = [],
  changes: Partial<CheckedBait> = {},
): CheckedBait {
  const bait = makeCheckedBait(changes);
  const hull = buildHull(bait.design.body);
  const holes = [head, tail].flatMap((of, link) => of.map((hole) => placeHole(hull, hole, link)));
  return { ...bait, setup: { ...bait.setup, name }, hardware: { ...bait.hardware, holes } };
}
