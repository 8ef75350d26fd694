import type { Answers } from '../../engine/answers.ts';

/**
 * current: the plan belongs to the design as it stands; awaited: a newer one is being worked out; blocked: there is none
 * for this design, because something stands against it.
 */
export type PlanState = 'current' | 'awaited' | 'blocked';

type Known = Pick<Answers, 'fresh' | 'detail' | 'done' | 'bait' | 'fault'>;

export function planState({ fresh, detail, done, bait, fault }: Known): PlanState {
  if (fault !== null) return 'blocked';
  if (!fresh || detail !== 'full') return 'awaited';
  if (bait.ballast?.status === 'ok' && bait.planned?.status === 'ok') return 'current';
  return done ? 'blocked' : 'awaited';
}

/** Whether nothing more will come of the design as it stands. */
export function isComplete({ fresh, detail, done }: Pick<Answers, 'fresh' | 'detail' | 'done'>): boolean {
  return fresh && detail === 'full' && done;
}
