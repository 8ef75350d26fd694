import type { Answers } from '../../engine/answers.ts';

/** current: what is shown belongs to the design as it stands; awaited: a newer one is being worked out; blocked: it cannot be. */
export type JointsState = 'current' | 'awaited' | 'blocked';

type Known = Pick<Answers, 'fresh' | 'detail' | 'done' | 'bait' | 'fault'>;

export function jointsState({ fresh, detail, done, bait, fault }: Known): JointsState {
  if (fault !== null) return 'blocked';
  if (!fresh || detail !== 'full') return 'awaited';
  if (bait.reach?.status === 'ok') return 'current';
  return done || bait.reach !== undefined ? 'blocked' : 'awaited';
}
