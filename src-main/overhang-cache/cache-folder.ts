/** Where a person's system keeps what a program may compute again. */
import { join } from 'node:path';

const OWN_FOLDER = 'ledgewright';

/**
 * Ledgewright's folder below the user's cache folder: XDG_CACHE_HOME or ~/.cache, ~/Library/Caches on macOS, LOCALAPPDATA on
 * Windows.
 */
export function cacheFolder(
  env: { readonly [name: string]: string | undefined },
  platform: string,
  home: string,
): string {
  const { XDG_CACHE_HOME: xdg, LOCALAPPDATA: local } = env;
  if (xdg !== undefined && xdg !== '') return join(xdg, OWN_FOLDER);
  if (platform === 'darwin') return join(home, 'Library', 'Caches', OWN_FOLDER);
  if (platform === 'win32' && local !== undefined && local !== '') return join(local, OWN_FOLDER);
  return join(home, '.cache', OWN_FOLDER);
}
