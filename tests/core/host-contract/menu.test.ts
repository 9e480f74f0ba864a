import { describe, expect, test } from 'vitest';
import { MENUS } from '../../../src-core/host-contract';

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
});
