import { describe, expect, test } from 'vitest';
import { hostEvent, MENUS } from '../../../src-core/host-contract';

const items = MENUS.flatMap((menu) => menu.items);

describe('the menu', () => {
  test('has every command once, and no keys twice', () => {
    const commands = items.map(({ command }) => command);
    expect(new Set(commands).size).toBe(commands.length);
    const keys = items.flatMap((item) => item.keys ?? []);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('has the build book and the export in the first menu', () => {
    expect(MENUS[0]!.items.map(({ command }) => command)).toEqual(
      expect.arrayContaining(['build-book', 'export']),
    );
  });

  test('is told to the window as a plain word and as nothing else', () => {
    const isTold = (event: object) => hostEvent.safeParse(event).success;
    expect(items.every(({ command }) => isTold({ kind: 'menu', command }))).toBe(true);
    for (const command of ['', 'Undo', 'undo()', 'a'.repeat(41), 7]) {
      expect(isTold({ kind: 'menu', command }), `${command}`).toBe(false);
    }
    expect(isTold({ kind: 'menu', command: 'undo', path: '/a.json' })).toBe(false);
    expect(isTold({ kind: 'open-path', path: '' })).toBe(false);
  });
});
