/** The shortcuts of the window, as a table to read. */
import type { Menu } from '../../src-core/host-contract';
import { MENUS } from '../../src-core/host-contract';
import { NAMED_STEPS } from '../model/camera-step';
import type { Platform } from './folder-view';

export interface KeyRow {
  readonly does: string;
  readonly keys: string;
}

export interface KeyGroup {
  readonly title: string;
  readonly rows: readonly KeyRow[];
}

/** Keys that a view takes while the focus is in it. */
function viewKeys(platform: Platform): KeyGroup[] {
  return [
    {
      title: 'In the plan',
      rows: [
        { does: 'Move the plan, or the part in focus', keys: 'Arrows' },
        { does: 'Move a part ten steps', keys: printKeys('Shift+Arrows', platform) },
        { does: 'Move a part the smallest step', keys: printKeys('Alt+Arrows', platform) },
        { does: 'Corner in the middle of an edge', keys: 'Insert' },
        { does: 'Nearer, farther', keys: '+ and -' },
        { does: 'Show the whole plan', keys: '0' },
      ],
    },
    {
      title: 'While a piece is drawn',
      rows: [
        { does: 'Set a corner', keys: 'Space' },
        { does: 'Set a corner at the length typed', keys: 'Enter' },
        { does: 'Take the last corner back', keys: 'Backspace' },
        { does: 'Leave off drawing', keys: 'Escape' },
      ],
    },
    {
      title: 'In the model',
      rows: [
        ...NAMED_STEPS.map(({ key, words }) => ({ does: words, keys: key })),
        { does: 'Turn', keys: 'Arrows' },
        { does: 'Move across', keys: printKeys('Shift+Arrows', platform) },
        { does: 'Nearer, farther', keys: '+ and -' },
      ],
    },
    {
      title: 'In a field',
      rows: [
        { does: 'Take what is typed', keys: 'Enter' },
        { does: 'Bring the old value back', keys: 'Escape' },
        { does: 'One step more or less', keys: 'Up and Down' },
      ],
    },
  ];
}

/** Every group of shortcuts: the menus, then the views. Menu items without keys are left out. */
export function keyGroups(platform: Platform, menus: readonly Menu[] = MENUS): KeyGroup[] {
  const fromMenus = menus.map(({ label, items }) => ({
    title: label,
    rows: items.flatMap(({ label: does, keys }) =>
      keys === undefined ? [] : [{ does: does.replace(/\.\.\.$/, ''), keys: printKeys(keys, platform) }],
    ),
  }));
  return [...fromMenus.filter(({ rows }) => rows.length > 0), ...viewKeys(platform)];
}

/** "Mod+Shift+S" as the keyboard of a platform has it: Ctrl + Shift + S, or Command + Shift + S. */
export function printKeys(keys: string, platform: Platform): string {
  const names: Readonly<Record<string, string>> =
    platform === 'mac' ? { Mod: 'Command', Alt: 'Option' } : { Mod: 'Ctrl' };
  return keys
    .split('+')
    .map((key) => names[key] ?? key)
    .join(' + ');
}
