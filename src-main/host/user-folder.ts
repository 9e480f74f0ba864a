/** Where a person's system keeps a program's own data, and where it keeps documents. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';

type Env = { readonly [name: string]: string | undefined };

/**
 * Ledgewright's folder of this user: LEDGEWRIGHT_USER_FOLDER where that is set, else XDG_STATE_HOME or ~/.local/state,
 * ~/Library/Application Support on macOS, APPDATA on Windows. Both hosts share it, so that work lost in one is found in the other.
 */
export function userFolder(env: Env, platform: string, home: string): string {
  const { LEDGEWRIGHT_USER_FOLDER: own, XDG_STATE_HOME: xdg, APPDATA: roaming } = env;
  if (own !== undefined && own !== '') return own;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Ledgewright');
  if (platform === 'win32') {
    const kept = roaming !== undefined && roaming !== '' ? roaming : join(home, 'AppData', 'Roaming');
    return join(kept, 'Ledgewright');
  }
  return join(xdg !== undefined && xdg !== '' ? xdg : join(home, '.local', 'state'), 'ledgewright');
}

/** The user's documents where there is such a folder, else the home folder. */
export function documentFolder(home: string): string {
  const documents = join(home, 'Documents');
  return existsSync(documents) ? documents : home;
}
