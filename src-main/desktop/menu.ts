/** The system's menu, built from the menu of the contract with what each system expects of a menu added. */
import type { MenuItemConstructorOptions } from 'electron';
import type { MenuItem } from '../../src-core/host-contract';
import { MENUS } from '../../src-core/host-contract';

const RULE: MenuItemConstructorOptions = { type: 'separator' };

/** Items of the system itself, by the menu that they are added to. */
const ADDED: Readonly<Record<string, readonly MenuItemConstructorOptions[]>> = {
  Edit: [RULE, { role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }],
  View: [
    RULE,
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    RULE,
    { role: 'togglefullscreen' },
  ],
};

/** The template of the menu. On a Mac the first menu is the app's own and there is one of windows; elsewhere File ends with quit. */
export function menuTemplate(
  isMac: boolean,
  onCommand: (command: string) => void,
): MenuItemConstructorOptions[] {
  const menus = MENUS.map(({ label, items }): MenuItemConstructorOptions => {
    const own = items.flatMap((item) => entries(item, isMac, onCommand));
    const added =
      label === 'File' ? [RULE, { role: isMac ? 'close' : 'quit' } as const] : (ADDED[label] ?? []);
    return { label, submenu: [...own, ...added], ...(label === 'Help' ? { role: 'help' as const } : {}) };
  });
  if (!isMac) return menus;
  return [{ role: 'appMenu' }, ...menus.slice(0, -1), { role: 'windowMenu' }, ...menus.slice(-1)];
}

function entries(
  { command, label, keys, startsGroup = false }: MenuItem,
  isMac: boolean,
  onCommand: (command: string) => void,
): MenuItemConstructorOptions[] {
  const item: MenuItemConstructorOptions = { label, click: () => onCommand(command), ...keysOf(keys, isMac) };
  return startsGroup ? [RULE, item] : [item];
}

/**
 * The window handles its keys itself, so that Delete in a field of text stays Delete: elsewhere than on a Mac the menu only shows
 * them. A Mac's menu always takes the keys it shows, so there it shows only those that type nothing.
 */
function keysOf(keys: string | undefined, isMac: boolean): MenuItemConstructorOptions {
  if (keys === undefined || (isMac && !/^Mod\+|^F\d+$/.test(keys))) return {};
  return { accelerator: keys.replace('Mod', 'CmdOrCtrl'), registerAccelerator: false };
}
