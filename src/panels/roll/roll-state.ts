import type { Answers } from '../../engine/answers.ts';

/**
 * current: what is said of roll belongs to the design as it stands; awaited: a newer one is being worked out; blocked: there
 * is none for this design.
 */
export type RollState = 'current' | 'awaited' | 'blocked';

type Known = Pick<Answers, 'fresh' | 'detail' | 'done' | 'bait' | 'fault'>;

export function rollState({ fresh, detail, done, bait, fault }: Known): RollState {
  if (fault !== null) return 'blocked';
  if (!fresh || detail !== 'full') return 'awaited';
  if (bait.assembledRoll?.status === 'ok') return 'current';
  return done ? 'blocked' : 'awaited';
}
