/** Whether this browser can draw in three dimensions at all. Asked once, because each asking takes a context. */
export const hasWebGl2: boolean = (() => {
  const context = document.createElement('canvas').getContext('webgl2');
  // contexts are few: give this one back at once
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
})();
