/** Ids under which the job file keeps what somebody has ticked off. */

/** The file takes ids of up to 60 letters, digits and hyphens; this much is left for words before the number. */
const MOST_WORDS = 50;

/**
 * Tick of a batch, a bucket or a step: its own id in letters, digits and hyphens, and a number made of the whole id
 * that keeps ids apart which read alike. The same item gives the same tick on every run.
 */
export function tickIdOf(item: { readonly id: string }): string {
  const words = item.id.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-/, '');
  return `${words.slice(0, MOST_WORDS).replace(/-$/, '')}-${hashOf(item.id).toString(36)}`;
}

/** Fowler-Noll-Vo hash, FNV-1a of 32 bits; constants from memory. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return hash >>> 0;
}
