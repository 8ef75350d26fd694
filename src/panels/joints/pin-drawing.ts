import type { Assembly, Mm } from '../../../sim/index.ts';

/** A point of the bait's line as it hangs together: along the bait, and up, drawn many times as much; mm. */
export type LinePoint = readonly [x: Mm, up: Mm];

/** No more than that: a joint that hardly gives is not made to look as if it did. */
const MOST_TIMES = 20;
/** Below this, in mm at true size, the bait is as straight as it can be seen. */
const STRAIGHT_MM: Mm = 0.02;

/**
 * The line of a bait from the nose over its pins to the tail, each link at its own trim, drawn so many times as much that
 * it fills the height given. pins: x of each, from the nose.
 */
export function pinLine(
  { links }: Assembly,
  pins: readonly Mm[],
  length: Mm,
  height: Mm,
): { readonly points: readonly LinePoint[]; readonly times: number } {
  const xs = [0, ...pins, length];
  let up = 0;
  const ups = [0];
  links.forEach(({ trim }, i) => {
    // nose down: what is aft stands higher
    up += Math.tan(trim) * ((xs[i + 1] ?? length) - (xs[i] ?? 0));
    ups.push(up);
  });
  // about the line from nose to tail
  const tilt = (ups.at(-1) ?? 0) / length;
  const off = ups.map((each, i) => each - tilt * (xs[i] ?? 0));
  const most = Math.max(...off.map(Math.abs));
  const times = most < STRAIGHT_MM ? 1 : Math.min(MOST_TIMES, height / most);
  return { points: off.map((each, i): LinePoint => [xs[i] ?? 0, times * each]), times };
}
