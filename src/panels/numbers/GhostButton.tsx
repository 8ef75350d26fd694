import { showGhost, useView, type View } from '../../view/view.ts';

interface GhostButtonProps {
  readonly of: View['shown'];
  /** Its number among the other rests. */
  readonly rest: number;
  readonly label: string;
  /** What the button says while the rest is not drawn, and while it is. */
  readonly words: readonly [off: string, on: string];
}

/** Draws another rest in the tub, pale, beside the first, or no longer. */
export function GhostButton({ of, rest, label, words }: GhostButtonProps) {
  const isDrawn = useView((view) => view.shown === of && view.ghost === rest);
  return (
    <button
      type="button"
      className="ghost"
      aria-pressed={isDrawn}
      aria-label={label}
      onClick={() => showGhost(of, isDrawn ? null : rest)}
    >
      {words[isDrawn ? 1 : 0]}
    </button>
  );
}
