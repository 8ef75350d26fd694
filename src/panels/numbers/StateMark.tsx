import type { Float } from '../../../sim/index.ts';

/** A float as a shape: a disc at, on the way through, or under a waterline. The words beside it say the same. */
export function StateMark({ state }: { readonly state: Float['state'] }) {
  const y = { floats: 6.5, hangs: 12, sinks: 12 }[state];
  return (
    <svg className={`state-mark ${state}`} viewBox="0 0 18 18" width="18" height="18" aria-hidden="true">
      <path d="M0 7h18" />
      <circle cx="9" cy={y} r="4" />
      {state === 'sinks' && <path d="M9 9.5v5m-2-2 2 2 2-2" />}
    </svg>
  );
}
