import { useCallback, useEffect, useRef } from 'react';

/** One and the same callback through all drawings of a component, which does what the newest one of them does. */
export function useNewest<Args extends readonly unknown[]>(newest: (...args: Args) => void): (...args: Args) => void {
  const held = useRef(newest);
  useEffect(() => {
    held.current = newest;
  });
  return useCallback((...args: Args) => held.current(...args), []);
}
