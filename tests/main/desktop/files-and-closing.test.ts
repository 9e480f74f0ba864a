import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import type { Desktop } from '../../support/electron-double/run-desktop';
import { withDesktop } from '../../support/electron-double/run-desktop';
import { soon } from '../../support/soon';
import { exampleText } from '../host/place-here';
import { askFrom, noteEvents } from './ask-page';
import { chromiumHere } from './chromium-here';

const browser = chromiumHere();
const HEARTH = exampleText('hearth');

async function withFolder(use: (folder: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-files-'));
  try {
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('the system’s dialogs', () => {
  test('ask where to save and what to open, and the system remembers the document', async () => {
    await withDesktop(browser(), async ({ shown, dialogs, documents, app }) => {
      const { page } = await shown();
      const path = join(documents, 'galley.json');
      const saving = askFrom(page, 'saveJob', { path: null, suggestedName: 'galley', text: HEARTH });
      const save = await dialogs.next();
      expect(save).toMatchObject({ kind: 'showSaveDialog', options: { defaultPath: path } });
      save.answer({ canceled: false, filePath: path });
      expect(await saving).toEqual({ outcome: 'saved', path, name: 'galley.json' });
      expect(readFileSync(path, 'utf8')).toBe(HEARTH);

      const opening = askFrom(page, 'openJob', { path: null });
      const open = await dialogs.next();
      expect(open).toMatchObject({
        kind: 'showOpenDialog',
        options: { defaultPath: documents, filters: [{ name: 'Job', extensions: ['json'] }] },
      });
      open.answer({ canceled: false, filePaths: [path] });
      expect(await opening).toEqual({ outcome: 'opened', path, name: 'galley.json', text: HEARTH });
      expect(app.recentDocuments).toEqual([path, path]);
    });
  });

  test('may be cancelled', async () => {
    await withDesktop(browser(), async ({ shown, dialogs, app }) => {
      const { page } = await shown();
      const saving = askFrom(page, 'saveJob', { path: null, suggestedName: 'galley', text: HEARTH });
      (await dialogs.next()).answer({ canceled: true, filePath: '' });
      expect(await saving).toEqual({ outcome: 'cancelled' });
      const opening = askFrom(page, 'openJob', { path: null });
      (await dialogs.next()).answer({ canceled: true, filePaths: [] });
      expect(await opening).toEqual({ outcome: 'cancelled' });
      expect(app.recentDocuments).toEqual([]);
    });
  });
});

/** A window with unsaved work in a draft. */
async function withUnsaved({ shown }: Desktop) {
  const { window, page } = await shown();
  await askFrom(page, 'keepDraft', { path: null, name: 'galley.json', text: HEARTH });
  await askFrom(page, 'setUnsaved', { isUnsaved: true, name: 'galley.json' });
  return { window, page };
}

const draftsIn = ({ userFolder }: Desktop) => readdirSync(join(userFolder, 'drafts')).length;

describe('closing the window', () => {
  test('asks nothing where all is saved, and the app ends with its last window', async () => {
    await withDesktop(browser(), async ({ shown, app }) => {
      const { window } = await shown();
      window.close();
      await soon(() => expect(app.hasQuit).toBe(true));
      expect(window.isDestroyed()).toBe(true);
    });
  });

  test('asks with three buttons where changes are unsaved, and Cancel keeps the window and the draft', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      expect(window.done).toContain('edited');
      window.close();
      const dialog = await desktop.dialogs.next();
      expect(dialog).toMatchObject({
        kind: 'showMessageBox',
        options: {
          buttons: ['Save', "Don't save", 'Cancel'],
          defaultId: 0,
          cancelId: 2,
          message: 'Save the changes to galley.json?',
        },
      });
      dialog.answer({ response: 2 });
      expect(await askFrom(page, 'about')).toMatchObject({ host: 'desktop' });
      expect(window.isDestroyed()).toBe(false);
      expect(draftsIn(desktop)).toBe(1);
    });
  });

  test('asks once, however often the cross is clicked', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window } = await withUnsaved(desktop);
      window.close();
      window.close();
      (await desktop.dialogs.next()).answer({ response: 2 });
      const another = await Promise.race([
        desktop.dialogs.next(),
        new Promise((resolve) => setTimeout(() => resolve('none'), 300)),
      ]);
      expect(another).toBe('none');
    });
  });

  test('gives up the changes and their draft at Don’t save', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window } = await withUnsaved(desktop);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 1 });
      await soon(() => expect(desktop.app.hasQuit).toBe(true));
      expect(draftsIn(desktop)).toBe(0);
    });
  });

  test('at Save tells the page to save, and goes once the page has', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      const noted = await noteEvents(page);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 0 });
      await soon(async () => expect(await noted()).toEqual([{ kind: 'menu', command: 'save-job' }]));
      expect(window.isDestroyed()).toBe(false);
      const path = join(desktop.documents, 'galley.json');
      await askFrom(page, 'saveJob', { path, suggestedName: 'galley.json', text: HEARTH });
      await askFrom(page, 'setUnsaved', { isUnsaved: false, name: 'galley.json' }).catch(() => undefined);
      await soon(() => expect(window.isDestroyed()).toBe(true));
      expect(draftsIn(desktop)).toBe(0);
    });
  });

  test('at Save stays where the save is cancelled, and a later save does not close it', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 0 });
      const saving = askFrom(page, 'saveJob', { path: null, suggestedName: 'galley', text: HEARTH });
      let dialog = await desktop.dialogs.next();
      // The page itself may have asked first, since it heard the same command.
      while (dialog.kind !== 'showSaveDialog') dialog = await desktop.dialogs.next();
      dialog.answer({ canceled: true, filePath: '' });
      expect(await saving).toEqual({ outcome: 'cancelled' });
      await askFrom(page, 'setUnsaved', { isUnsaved: false, name: 'galley.json' });
      expect(window.isDestroyed()).toBe(false);
    });
  });

  test('leaves the draft of a page that crashed, and the window may go', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      await page.goto('chrome://crash').catch(() => undefined);
      const dialog = await desktop.dialogs.next();
      expect(dialog.options).toMatchObject({ buttons: ['Start it again', 'Close'] });
      dialog.answer({ response: 1 });
      await soon(() => expect(window.isDestroyed()).toBe(true));
      expect(draftsIn(desktop)).toBe(1);
    });
  });

  test('remembers the size, which the next run takes up, but not a place that is on no screen any more', async () => {
    await withFolder(async (userFolder) => {
      const closeAt = (bounds: { x: number; y: number; width: number; height: number }) =>
        withDesktop(
          browser(),
          async ({ shown }) => {
            const { window } = await shown();
            window.bounds = bounds;
            window.close();
            await soon(() => expect(window.isDestroyed()).toBe(true));
          },
          { userFolder },
        );
      await closeAt({ x: 40, y: 30, width: 1200, height: 700 });
      await withDesktop(
        browser(),
        async ({ shown }) => {
          expect((await shown()).window.options).toMatchObject({ x: 40, y: 30, width: 1200, height: 700 });
        },
        { userFolder },
      );
      await closeAt({ x: 5000, y: 30, width: 1200, height: 700 });
      await withDesktop(
        browser(),
        async ({ shown }) => {
          const { options } = (await shown()).window;
          expect(options).toMatchObject({ width: 1200, height: 700 });
          expect(options).not.toHaveProperty('x');
        },
        { userFolder },
      );
    });
  });
});

describe('a file from outside', () => {
  test('on the command line, by a double click and from a second instance is told to the page', async () => {
    await withFolder(async (folder) => {
      const [first, second, third] = ['a.json', 'b.json', 'c.json'].map((name) => join(folder, name));
      for (const path of [first!, second!, third!]) writeFileSync(path, HEARTH);
      mkdirSync(join(folder, 'folder.json'));
      await withDesktop(
        browser(),
        async ({ shown, app }) => {
          const { window, page } = await shown();
          await soon(async () =>
            expect(await page.evaluate(() => document.body.textContent)).toContain('Hearth on two piers'),
          );
          const noted = await noteEvents(page);
          const preventDefault = vi.fn();
          app.emit('open-file', { preventDefault }, second);
          app.emit(
            'second-instance',
            {},
            ['electron', '--flag', 'c.json', 'folder.json', 'none.json'],
            folder,
          );
          await soon(async () =>
            expect(await noted()).toEqual([
              { kind: 'open-path', path: second },
              { kind: 'open-path', path: third },
            ]),
          );
          expect(preventDefault).toHaveBeenCalledOnce();
          expect(window.done).toContain('focus');
        },
        { words: ['main.js', first!] },
      );
    });
  });

  test('a second instance opens no window and ends at once', async () => {
    await withDesktop(
      browser(),
      async ({ app, windows, schemes }) => {
        expect(app.hasQuit).toBe(true);
        expect(windows).toEqual([]);
        expect(schemes).toEqual([]);
      },
      { isFirst: false },
    );
  });
});
