import { describe, expect, it } from 'vitest';
import { MENUS } from '../../../src-core/host-contract';
import { stepOfKey } from '../../../src-renderer/model/camera-step';
import { keyGroups, printKeys } from '../../../src-renderer/sheets/key-table';

describe('printKeys', () => {
  it('says Command and Option on a Mac, Ctrl and Alt elsewhere', () => {
    expect(printKeys('Mod+Shift+S', 'mac')).toBe('Command + Shift + S');
    expect(printKeys('Mod+Shift+S', 'windows')).toBe('Ctrl + Shift + S');
    expect(printKeys('Alt+Q', 'mac')).toBe('Option + Q');
    expect(printKeys('Alt+Q', 'linux')).toBe('Alt + Q');
    expect(printKeys('Delete', 'mac')).toBe('Delete');
    expect(printKeys('+ and -', 'mac')).toBe('+ and -');
  });
});

describe('keyGroups', () => {
  it('lists every menu item that has keys once, without its dots', () => {
    const groups = keyGroups('linux', 'imperial');
    const withKeys = MENUS.flatMap(({ items }) => items).filter(({ keys }) => keys !== undefined);
    const listed = groups.slice(0, MENUS.length).flatMap(({ rows }) => rows);
    expect(listed).toHaveLength(withKeys.length);
    expect(listed).toContainEqual({ does: 'Open', keys: 'Ctrl + O' });
  });

  it('leaves out a menu without keys and ends with the views', () => {
    const groups = keyGroups('mac', 'metric', [
      { label: 'Help', items: [{ command: 'about', label: 'About' }] },
    ]);
    expect(groups.map(({ title }) => title)).toEqual([
      'In the plan',
      'While a piece is drawn',
      'In the model',
      'In a field',
    ]);
  });

  it('gives the keys of the model as the model takes them', () => {
    const rows = keyGroups('linux', 'imperial').find(({ title }) => title === 'In the model')!.rows;
    for (const { keys } of rows.filter((row) => row.keys.length === 1)) {
      expect(stepOfKey(keys, false), keys).not.toBeNull();
    }
    expect(rows).toContainEqual({ does: 'Front', keys: '1' });
  });

  it('gives the steps of the plan as its arrow keys take them: 1/8 in, 1-1/4 in and 1/16 in, or 5, 50 and 1 mm', () => {
    const inPlan = (platform: 'mac' | 'windows', system: 'imperial' | 'metric') =>
      keyGroups(platform, system).find(({ title }) => title === 'In the plan')!.rows;
    expect(inPlan('windows', 'imperial')).toEqual(
      expect.arrayContaining([
        { does: 'Move the handle 1/8 in', keys: 'Arrows' },
        { does: 'Move the handle 1-1/4 in', keys: 'Shift + Arrows' },
        { does: 'Move the handle 1/16 in', keys: 'Alt + Arrows' },
      ]),
    );
    expect(inPlan('mac', 'metric')).toEqual(
      expect.arrayContaining([
        { does: 'Move the handle 5 mm', keys: 'Arrows' },
        { does: 'Move the handle 50 mm', keys: 'Shift + Arrows' },
        { does: 'Move the handle 1 mm', keys: 'Option + Arrows' },
      ]),
    );
  });

  it('gives no two groups one title and no two rows of a group the same words', () => {
    const groups = keyGroups('windows', 'metric');
    expect(new Set(groups.map(({ title }) => title)).size).toBe(groups.length);
    for (const { rows } of groups) expect(new Set(rows.map(({ does }) => does)).size).toBe(rows.length);
  });
});
