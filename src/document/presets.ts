import type { DesignFile } from '../../sim/index.ts';

/** A demo bait that comes with the page. */
export interface Preset {
  /** Its file name in presets/, without the ending. */
  readonly key: string;
  readonly title: string;
  load(): Promise<DesignFile>;
}

/** Shown when the page opens. */
export const FIRST_PRESET = 'slate-shad-140';

// each becomes a small file of its own, fetched when it is chosen
const files = import.meta.glob<DesignFile>('../../presets/*.json', { import: 'default' });

/** The demo baits, shortest first: their names end in their length. */
export const presets: readonly Preset[] = Object.entries(files)
  .map(([path, load]) => {
    const key = path.replace(/^.*\/(.*)\.json$/, '$1');
    return { key, title: titleFromKey(key), load };
  })
  .sort((a, b) => lengthIn(a.key) - lengthIn(b.key) || a.key.localeCompare(b.key));

/** `slate-shad-140` as a bait is called: `Slate Shad 140`. */
export function titleFromKey(key: string): string {
  return key
    .split('-')
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join(' ');
}

function lengthIn(key: string): number {
  return Number(/\d+$/.exec(key)?.[0] ?? 0);
}
