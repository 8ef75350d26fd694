import {
  type Camera,
  lookFrom,
  pullApart,
  show,
  toggleCut,
  toggleFold,
  toggleKeepOuts,
  toggleLetGo,
  toggleMetacentre,
  viewStore,
} from './view.ts';

/** The key that looks from there. */
export const CAMERA_KEYS: Readonly<Record<Exclude<Camera, 'free'>, string>> = {
  side: 's',
  top: 't',
  front: 'f',
  waterline: 'w',
  below: 'b',
};

/** The keys that pull links apart, mark the metacentre, cut away, draw keep-outs, fold and let go; the same keys undo it. */
export const APART_KEY = 'a';
export const METACENTRE_KEY = 'm';
export const CUT_KEY = 'c';
export const KEEP_OUTS_KEY = 'k';
export const FOLD_KEY = 'j';
export const LET_GO_KEY = 'l';

const CAMERAS = new Map(Object.entries(CAMERA_KEYS).map(([camera, key]) => [key, camera as Camera]));

/** Where a letter or a digit already means something: text being typed, and lists that jump to what is typed. */
const TAKES_TYPING =
  'input:not([type=range]), textarea, select, [contenteditable], [role=listbox], [aria-haspopup=listbox]';

/**
 * Single keys: 1 to 9 show one link, 0 or Escape the whole bait, letters look from where CAMERA_KEYS says, M marks the
 * metacentre, C cuts away, K draws where no lead may go, A pulls apart, J folds the joints, L lets them go.
 */
export function keyShortcut(event: KeyboardEvent, linkCount: number): void {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  const key = event.key.toLowerCase();
  const camera = CAMERAS.get(key);
  if (camera !== undefined) lookFrom(camera);
  if (event.key === '0' || event.key === 'Escape') show('whole');
  // a key held down would make it flicker
  const pressed = event.repeat ? null : key;
  if (pressed === METACENTRE_KEY) toggleMetacentre();
  if (pressed === CUT_KEY) toggleCut();
  if (pressed === KEEP_OUTS_KEY) toggleKeepOuts();
  const { shown, apart } = viewStore.getState();
  if (pressed === APART_KEY && shown === 'whole' && linkCount > 1) pullApart(!apart);
  if (shown === 'whole' && linkCount > 1) {
    if (pressed === FOLD_KEY) toggleFold();
    if (pressed === LET_GO_KEY) toggleLetGo();
  }
  const link = /^[1-9]$/.test(event.key) ? Number(event.key) - 1 : null;
  if (link !== null && link < linkCount) show(link);
}

/** Whether a key pressed here is meant for what is written there. */
function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest(TAKES_TYPING) !== null;
}
