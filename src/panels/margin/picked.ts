import { useEffect, useState } from 'react';
import { pick, useView } from '../../view/view.ts';

/**
 * The part of one kind that the margin shows: the last one of that kind that was picked anywhere, else the first.
 * Gives its number in the list (-1 when there is none) and how to pick another.
 */
export function usePicked(kind: 'hung' | 'hole', names: readonly string[]): readonly [number, (name: string) => void] {
  const selected = useView((view) => view.selected);
  const [last, setLast] = useState<string | null>(null);
  useEffect(() => {
    if (selected?.startsWith(`${kind}:`)) setLast(selected.slice(kind.length + 1));
  }, [kind, selected]);
  const index = last === null ? -1 : names.indexOf(last);
  const shown = index === -1 && names.length > 0 ? 0 : index;
  return [shown, (name) => pick(`${kind}:${name}`)];
}
