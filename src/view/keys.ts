import { type Camera, lookFrom, show, toggleCut } from './view.ts';

const CAMERAS: Readonly<Record<string, Camera>> = { s: 'side', t: 'top', f: 'front' };

/** Where a letter or a digit already means something: text being typed, and lists that jump to what is typed. */
const TAKES_TYPING =
  'input:not([type=range]), textarea, select, [contenteditable], [role=listbox], [aria-haspopup=listbox]';

/** Single keys: 1 to 9 show one link, 0 or Escape the whole bait, S, T and F look from the side, the top and the front, C cuts away. */
export function keyShortcut(event: KeyboardEvent, linkCount: number): void {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  const camera = CAMERAS[event.key.toLowerCase()];
  if (camera !== undefined) lookFrom(camera);
  if (event.key.toLowerCase() === 'c' && !event.repeat) toggleCut();
  if (event.key === '0' || event.key === 'Escape') show('whole');
  const link = /^[1-9]$/.test(event.key) ? Number(event.key) - 1 : null;
  if (link !== null && link < linkCount) show(link);
}

/** Whether a key pressed here is meant for what is written there. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest(TAKES_TYPING) !== null;
}
