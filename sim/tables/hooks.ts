import type { Gram, Mm } from '../units/brand.ts';

/**
 * Treble hooks, round bend, and split rings by size, from small to large. Common practice: no standard exists, makers weigh
 * ten and divide.
 */
export const TREBLES: readonly { readonly size: string; readonly mass: Gram }[] = [
  { size: '#8', mass: 0.5 },
  { size: '#6', mass: 0.9 },
  { size: '#4', mass: 1.3 },
  { size: '#2', mass: 2.1 },
  { size: '#1', mass: 3 },
  { size: '1/0', mass: 3.9 },
  { size: '2/0', mass: 5.2 },
  { size: '3/0', mass: 6.8 },
  { size: '4/0', mass: 9.5 },
  { size: '5/0', mass: 12.5 },
];

/** A split ring of the middle of the range. Common practice. */
export const SPLIT_RING: { readonly size: string; readonly mass: Gram } = { size: '#4', mass: 0.25 };

/** A snap for a bait of middling size. Common practice, from memory. */
export const SNAP: { readonly mass: Gram; readonly hang: Mm } = { mass: 0.5, hang: 14 };

/** The mass of a hook one size larger (by 1) or smaller (by -1) than one that weighs so much; null past the end of the list. */
export function nextHook(mass: Gram, by: 1 | -1): Gram | null {
  const off = TREBLES.map((hook) => Math.abs(Math.log(hook.mass / mass)));
  const nearest = off.indexOf(Math.min(...off));
  const next = TREBLES[nearest + by];
  // a hook of stronger wire stays as much heavier than the list as it is
  return next ? mass * (next.mass / TREBLES[nearest].mass) : null;
}
