/** The shortcuts of the window, as a table to read. */
import type { Menu } from '../../src-core/host-contract';
import { MENUS } from '../../src-core/host-contract';
import type { UnitSystem } from '../../src-core/units';
import type { Platform } from './folder-view';
import type { KeyGroup } from './view-keys';
import { viewKeys } from './view-keys';

/** Every group of shortcuts as the keyboard of a platform has them: the menus, then the views. Menu items without keys are left out. */
export function keyGroups(
  platform: Platform,
  system: UnitSystem,
  menus: readonly Menu[] = MENUS,
): KeyGroup[] {
  const fromMenus = menus.map(({ label, items }) => ({
    title: label,
    rows: items.flatMap(({ label: does, keys }) =>
      keys === undefined ? [] : [{ does: does.replace(/\.\.\.$/, ''), keys }],
    ),
  }));
  return [...fromMenus.filter(({ rows }) => rows.length > 0), ...viewKeys(system)].map(({ title, rows }) => ({
    title,
    rows: rows.map(({ does, keys }) => ({ does, keys: printKeys(keys, platform) })),
  }));
}

/** "Mod+Shift+S" as the keyboard of a platform has it: Ctrl + Shift + S, or Command + Shift + S. Words such as "+ and -" stay. */
export function printKeys(keys: string, platform: Platform): string {
  const names: Readonly<Record<string, string>> =
    platform === 'mac' ? { Mod: 'Command', Alt: 'Option' } : { Mod: 'Ctrl' };
  if (keys.includes(' ')) return keys;
  return keys
    .split('+')
    .map((key) => names[key] ?? key)
    .join(' + ');
}
