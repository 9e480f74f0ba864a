let answer: boolean | null = null;

/**
 * Whether this computer can draw in three dimensions; asked before the scene is set up, which would fail as a whole. Asked once: a
 * context costs a noticeable time, and a page may hold only a few.
 */
export function canDraw(): boolean {
  answer ??= tryContext();
  return answer;
}

function tryContext(): boolean {
  const context = document.createElement('canvas').getContext('webgl2');
  // given back at once
  context?.getExtension('WEBGL_lose_context')?.loseContext();
  return context !== null;
}
