import { useSyncExternalStore } from 'react';

const wish = window.matchMedia('(prefers-reduced-motion: reduce)');

/** Whether the reader has asked for no motion; follows the setting while the page is open. */
export function useStillness(): boolean {
  return useSyncExternalStore(
    (changed) => {
      wish.addEventListener('change', changed);
      return () => wish.removeEventListener('change', changed);
    },
    () => wish.matches,
  );
}
