/** Whether this computer can draw in three dimensions; asked before the scene is set up, which would fail as a whole. */
export function canDraw(): boolean {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('webgl2');
  // A page may hold only a few contexts; this one is given back at once.
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
