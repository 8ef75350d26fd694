/** Whether this browser can draw in three dimensions at all. Asking takes a moment and a context: ask once, late. */
export function canDrawIn3d(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  // contexts are few: give this one back at once
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
