import type { Mm } from '../../sim/index.ts';

/** Walls are said to this: one that reads as enough is not thin. */
const SAID_TO_MM = 0.1;

/** Whether a wall is under what is wanted, as it is said. */
export function isThin(thickness: Mm, wanted: Mm): boolean {
  return thickness < wanted - SAID_TO_MM / 2;
}
