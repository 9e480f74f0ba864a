import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, test } from 'vitest';
import { MENUS } from '../../../src-core/host-contract';
import { menuTemplate } from '../../../src-main/desktop/menu';
import { withDesktop } from '../../support/electron-double/run-desktop';
import { soon } from '../../support/soon';
import { noteEvents } from './ask-page';
import { chromiumHere } from './chromium-here';

const browser = chromiumHere();

const itemsOf = (menu: MenuItemConstructorOptions | undefined) =>
  (menu?.submenu ?? []) as readonly MenuItemConstructorOptions[];
const allItems = (template: readonly MenuItemConstructorOptions[]) => template.flatMap(itemsOf);

describe('the system’s menu', () => {
  test.each([true, false])('has every command of the contract, in order (on a Mac: %s)', (isMac) => {
    const chosen: string[] = [];
    const template = menuTemplate(isMac, (command) => chosen.push(command));
    for (const { click } of allItems(template)) (click as (() => void) | undefined)?.();
    expect(chosen).toEqual(MENUS.flatMap(({ items }) => items.map(({ command }) => command)));
  });

  test('begins with the app’s own menu on a Mac and ends File with quit elsewhere', () => {
    const mac = menuTemplate(true, () => undefined);
    expect(mac.map(({ role, label }) => label ?? role)).toEqual([
      'appMenu',
      'File',
      'Edit',
      'View',
      'windowMenu',
      'Help',
    ]);
    expect(itemsOf(mac[1]).at(-1)).toEqual({ role: 'close' });
    const other = menuTemplate(false, () => undefined);
    expect(other.map(({ label }) => label)).toEqual(['File', 'Edit', 'View', 'Help']);
    expect(itemsOf(other[0]).at(-1)).toEqual({ role: 'quit' });
    expect(itemsOf(other[1]).map(({ role }) => role)).toEqual(
      expect.arrayContaining(['cut', 'copy', 'paste', 'selectAll']),
    );
  });

  test('takes no key away from the page: it shows them, and on a Mac only those that type nothing', () => {
    const keyed = (isMac: boolean) =>
      allItems(menuTemplate(isMac, () => undefined)).filter((item) => item.accelerator);
    const all = MENUS.flatMap(({ items }) => items).filter(({ keys }) => keys !== undefined);
    expect(keyed(false)).toHaveLength(all.length);
    expect(keyed(false).every((item) => item.registerAccelerator === false)).toBe(true);
    expect(keyed(false).map(({ accelerator }) => accelerator)).toContain('CmdOrCtrl+Shift+S');
    const onMac = keyed(true).map(({ accelerator }) => String(accelerator));
    expect(onMac.length).toBeGreaterThan(4);
    expect(onMac.every((keys) => /^CmdOrCtrl\+|^F\d+$/.test(keys))).toBe(true);
  });

  test('tells the page of the command that was chosen', async () => {
    await withDesktop(browser(), async ({ shown, menu }) => {
      const { page } = await shown();
      const noted = await noteEvents(page);
      const undo = allItems(menu()).find(({ label }) => label === 'Undo');
      expect(undo).toBeDefined();
      (undo!.click as () => void)();
      await soon(async () => expect(await noted()).toEqual([{ kind: 'menu', command: 'undo' }]));
    });
  });
});
