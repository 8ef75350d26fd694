import {
  acceptHoles,
  type BallastPlan,
  type Design,
  type DesignFile,
  type Hole,
  type ProposedEdit,
} from '../../../sim/index.ts';

/** Numbers of the file carry no dust of binary fractions, numbers that are worked out do. */
const DUST = 1e-6;

/** Whether two holes are drilled and filled alike; their names, and whether they are drilled yet, are not the wood's. */
export function isSameHole(one: Hole, other: Hole): boolean {
  const numbers = ({ x, across, diameter, depth, point, lead, air, plugDensity }: Hole) => [
    x,
    across,
    diameter,
    depth,
    point,
    lead?.mass ?? 0,
    air?.plug ?? 0,
    // g/mm³: a thousandth of what it is in the file
    plugDensity * 1000,
  ];
  const of = numbers(other);
  return (
    one.from === other.from &&
    one.lead?.stock.name === other.lead?.stock.name &&
    numbers(one).every((value, i) => Math.abs(value - of[i]) < DUST)
  );
}

/** Whether the holes are those of the plan already, in any order. */
export function isDrilled(own: readonly Hole[], planned: readonly Hole[]): boolean {
  const left = [...own];
  const isThere = (hole: Hole) => {
    const at = left.findIndex((each) => isSameHole(each, hole));
    if (at === -1) return false;
    left.splice(at, 1);
    return true;
  };
  return own.length === planned.length && planned.every(isThere);
}

/**
 * The edit that puts a plan into a setup. Answers reach the page in several messages, so that a hole of the plan that the
 * setup has is a copy of the setup's own: it is looked up again, and keeps what is written of it in the file.
 */
export function drillEdit(
  file: DesignFile,
  design: Design,
  setupName: string,
  { holes }: Pick<BallastPlan, 'holes'>,
): ProposedEdit | null {
  const setup = design.setups.find(({ name }) => name === setupName);
  if (setup === undefined || isDrilled(setup.holes, holes)) return null;
  const own = (hole: Hole) => setup.holes.find((each) => isSameHole(each, hole) && each.done === hole.done) ?? hole;
  return acceptHoles(file, design, setup, holes.map(own));
}

/** Lead in all of them together. */
export function leadIn(holes: readonly Hole[]): number {
  return holes.reduce((sum, { lead }) => sum + (lead?.mass ?? 0), 0);
}
