import { createContext, useContext } from 'react';
import type { Spread } from './apart.ts';
import type { Looks } from './looks.ts';
import type { Shared } from './materials.ts';
import type { Moving } from './motion.ts';

/** What everything in one tub shares. */
export interface Tub {
  readonly shared: Shared;
  readonly looks: Looks;
  /** Of the body that a part of the scene stands on: the bait in one piece, or one of its links. */
  readonly motion: Moving;
  readonly spread: Spread;
}

export const TubContext = createContext<Tub | null>(null);

/** The tub that a component stands in. */
export function useTub(): Tub {
  const tub = useContext(TubContext);
  if (tub === null) throw new Error('a part of the scene is used outside its tub');
  return tub;
}
