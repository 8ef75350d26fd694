/** Draws that a seed decides. */
export interface Dice {
  /** From 0 up to 1, without it. */
  readonly share: () => number;
  /** A whole number from 0 up to `end`, without it. */
  readonly below: (end: number) => number;
  readonly pick: <Item>(items: readonly Item[]) => Item;
}

/** The generator called mulberry32 (T. Ettinger, from memory): 32 bits of state, even enough to pick mistakes by. */
export function diceOf(seed: number): Dice {
  let state = seed | 0;
  const share = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (end: number) => Math.floor(share() * end);
  return { share, below, pick: (items) => items[below(items.length)] };
}
