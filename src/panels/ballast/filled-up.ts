import { useState } from 'react';

/** One entry of a list that grows: as it is now, or as it was in the list before. */
export interface Filled<Item> {
  readonly item: Item;
  readonly isOld: boolean;
}

/**
 * A list that is still growing, filled up with what the last complete one had further on, so that nothing under it jumps
 * up and down. isNow: the list is of the design as it stands, and not of one before.
 */
export function filledUp<Item>(now: readonly Item[], isNow: boolean, before: readonly Item[]): readonly Filled<Item>[] {
  return [
    ...now.map((item) => ({ item, isOld: !isNow })),
    ...before.slice(now.length).map((item) => ({ item, isOld: true })),
  ];
}

/** Keeps the last complete list for that. now: undefined where there is none, of this bait or of the one before. */
export function useFilledUp<Item>(
  now: readonly Item[] | undefined,
  isNow: boolean,
  isComplete: boolean,
): readonly Filled<Item>[] {
  const [before, setBefore] = useState<readonly Item[]>(NONE);
  const kept = now === undefined ? NONE : isNow && !isComplete ? before : now;
  if (kept !== before) setBefore(kept);
  return filledUp(now ?? NONE, isNow, kept);
}

const NONE: readonly never[] = [];
