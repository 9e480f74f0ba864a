import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Machine } from '../../../src-main/print/installed-browser';
import { findBrowser } from '../../../src-main/print/installed-browser';

function machine(platform: string, env: Machine['env'], ...programs: readonly string[]): Machine {
  return { env, platform, home: '/people/ada', isProgram: async (path) => programs.includes(path) };
}

describe('the browser that prints', () => {
  test('is the first of the well-known names on the PATH, whatever the order of its folders', async () => {
    const env = { PATH: '/opt/bin:/usr/bin' };
    const both = machine('linux', env, '/opt/bin/microsoft-edge', '/usr/bin/chromium');
    expect(await findBrowser(both)).toEqual({ ok: true, program: '/usr/bin/chromium' });
    const one = machine('linux', env, '/opt/bin/microsoft-edge');
    expect(await findBrowser(one)).toEqual({ ok: true, program: '/opt/bin/microsoft-edge' });
  });

  test('is looked for among the applications of a Mac, of the machine and of the person', async () => {
    const program = '/people/ada/Applications/Chromium.app/Contents/MacOS/Chromium';
    expect(await findBrowser(machine('darwin', {}, program))).toEqual({ ok: true, program });
  });

  test('is looked for in the program folders of Windows', async () => {
    const program = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { ProgramFiles: 'C:\\Program Files', 'ProgramFiles(x86)': 'C:\\Program Files (x86)' };
    expect(await findBrowser(machine('win32', env, program))).toEqual({ ok: true, program });
  });

  test('is the one that LEDGEWRIGHT_BROWSER names, by its path or by its name, before any other', async () => {
    const env = { PATH: '/usr/bin' };
    const there = ['/usr/bin/chromium', '/opt/other/browser', '/usr/bin/own-browser'];
    for (const [named, program] of [
      ['/opt/other/browser', '/opt/other/browser'],
      ['own-browser', join('/usr/bin', 'own-browser')],
    ] as const) {
      const found = await findBrowser(machine('linux', { ...env, LEDGEWRIGHT_BROWSER: named }, ...there));
      expect(found).toEqual({ ok: true, program });
    }
  });

  test('that is named and not there is not replaced by another without a word', async () => {
    const env = { PATH: '/usr/bin', LEDGEWRIGHT_BROWSER: '/opt/gone' };
    expect(await findBrowser(machine('linux', env, '/usr/bin/chromium'))).toEqual({
      ok: false,
      sentence: 'LEDGEWRIGHT_BROWSER names /opt/gone, and no program is found there.',
    });
  });

  test('may be missing, which is said in a sentence with the way out', async () => {
    const found = await findBrowser(machine('linux', { PATH: '/usr/bin' }));
    expect(found).toMatchObject({ ok: false, sentence: expect.stringContaining('LEDGEWRIGHT_BROWSER') });
  });
});
