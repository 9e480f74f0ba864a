import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { recallSize } from '../../../src-main/desktop/window-size';
import type { BrowserWindowDouble } from '../../support/electron-double/browser-window';
import type { AskedDialog } from '../../support/electron-double/dialogs';
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
      const { window, page } = await shown();
      const path = join(documents, 'galley.json');
      const saving = askFrom(page, 'saveJob', { path: null, suggestedName: 'galley', text: HEARTH });
      const save = await dialogs.next();
      expect(save).toMatchObject({
        kind: 'showSaveDialog',
        // Some systems replace a file without a word unless they are told to ask.
        options: { defaultPath: path, properties: ['createDirectory', 'showOverwriteConfirmation'] },
      });
      expect(save.over).toBe(window);
      save.answer({ canceled: false, filePath: path });
      expect(await saving).toEqual({ outcome: 'saved', path, name: 'galley.json' });
      expect(readFileSync(path, 'utf8')).toBe(HEARTH);

      const opening = askFrom(page, 'openJob', { path: null });
      const open = await dialogs.next();
      expect(open).toMatchObject({
        kind: 'showOpenDialog',
        options: {
          defaultPath: documents,
          filters: [{ name: 'Job', extensions: ['json'] }],
          properties: ['openFile'],
        },
      });
      expect(open.over).toBe(window);
      open.answer({ canceled: false, filePaths: [path] });
      expect(await opening).toEqual({ outcome: 'opened', path, name: 'galley.json', text: HEARTH });
      expect(app.recentDocuments).toEqual([path, path]);
    });
  });

  test('may be cancelled', async () => {
    await withDesktop(browser(), async ({ shown, dialogs, documents, app }) => {
      const { page } = await shown();
      const saving = askFrom(page, 'saveJob', { path: null, suggestedName: 'galley', text: HEARTH });
      const left = join(documents, 'left-in-the-field.json');
      (await dialogs.next()).answer({ canceled: true, filePath: left });
      expect(await saving).toEqual({ outcome: 'cancelled' });
      const opening = askFrom(page, 'openJob', { path: null });
      (await dialogs.next()).answer({ canceled: true, filePaths: [left] });
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

/** A window that is about to go has gone by then. */
const stays = async (window: BrowserWindowDouble) => {
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(window.isDestroyed()).toBe(false);
};

/** The next dialog of a kind: the page itself may ask too, since it hears the same commands. */
async function nextOf({ dialogs }: Desktop, kind: AskedDialog['kind']): Promise<AskedDialog> {
  let dialog = await dialogs.next();
  while (dialog.kind !== kind) dialog = await dialogs.next();
  return dialog;
}

const draftsIn = ({ userFolder }: Desktop) => readdirSync(join(userFolder, 'drafts')).length;

describe('closing the window', () => {
  test('asks nothing where all is saved: its draft goes, and the app ends with its last window', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await desktop.shown();
      await askFrom(page, 'keepDraft', { path: null, name: 'galley.json', text: HEARTH });
      expect(draftsIn(desktop)).toBe(1);
      window.close();
      await soon(() => expect(desktop.app.hasQuit).toBe(true));
      expect(window.isDestroyed()).toBe(true);
      expect(draftsIn(desktop)).toBe(0);
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
      await stays(window);
      expect(draftsIn(desktop)).toBe(1);
      window.close();
      expect(await nextOf(desktop, 'showMessageBox')).toMatchObject({ over: window });
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
      (await nextOf(desktop, 'showSaveDialog')).answer({ canceled: true, filePath: '' });
      expect(await saving).toEqual({ outcome: 'cancelled' });
      await askFrom(page, 'setUnsaved', { isUnsaved: false, name: 'galley.json' });
      await stays(window);
    });
  });

  test('at Save stays where more was changed before the save was done', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 0 });
      await nextOf(desktop, 'showSaveDialog');
      await askFrom(page, 'setUnsaved', { isUnsaved: true, name: 'galley.json' });
      await stays(window);
      await askFrom(page, 'setUnsaved', { isUnsaved: false, name: 'galley.json' });
      await stays(window);
    });
  });

  test('asked again at its cross and cancelled, it does not go with the save that was asked for first', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window, page } = await withUnsaved(desktop);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 0 });
      await nextOf(desktop, 'showSaveDialog');
      window.close();
      (await nextOf(desktop, 'showMessageBox')).answer({ response: 2 });
      await askFrom(page, 'setUnsaved', { isUnsaved: false, name: 'galley.json' });
      await stays(window);
    });
  });

  test('goes at Don’t save even where the draft cannot be removed', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window } = await withUnsaved(desktop);
      const folder = join(desktop.userFolder, 'drafts');
      const draft = join(folder, readdirSync(folder)[0]!);
      rmSync(draft);
      mkdirSync(draft);
      window.close();
      (await desktop.dialogs.next()).answer({ response: 1 });
      await soon(() => expect(window.isDestroyed()).toBe(true));
    });
  });

  test('goes even where its size cannot be kept', async () => {
    const complaints = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    await withDesktop(browser(), async ({ shown, userFolder }) => {
      const { window } = await shown();
      mkdirSync(join(userFolder, 'window-size.json'), { recursive: true });
      window.close();
      await soon(() => expect(window.isDestroyed()).toBe(true));
    });
    expect(complaints.mock.calls.flat().join()).toContain('size is not remembered');
    complaints.mockRestore();
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

  test('offers a page that crashed to start again; one that ended well, or whose window is gone, is let go', async () => {
    await withDesktop(browser(), async (desktop) => {
      const { window } = await desktop.shown();
      window.webContents.emit('render-process-gone', {}, { reason: 'clean-exit' });
      window.webContents.emit('render-process-gone', {}, { reason: 'oom' });
      const first = await desktop.dialogs.next();
      first.answer({ response: 0 });
      await soon(() => expect(window.done.filter((what) => what === 'reload')).toHaveLength(1));
      const following = desktop.dialogs.next();
      const none = new Promise((resolve) => setTimeout(() => resolve('none'), 300));
      expect(await Promise.race([following, none])).toBe('none');
      window.webContents.emit('render-process-gone', {}, { reason: 'oom' });
      const second = await following;
      window.destroy();
      second.answer({ response: 0 });
      await new Promise((resolve) => setTimeout(resolve, 100));
      expect(window.done.filter((what) => what === 'reload')).toHaveLength(1);
    });
  });

  test('takes up no remembered size that no window can have', async () => {
    await withFolder(async (userFolder) => {
      const size = { widthPx: 1200, heightPx: 700, xPx: 40, yPx: 30, isMaximized: false };
      for (const wrong of [{ widthPx: 10 }, { heightPx: 10 }, { widthPx: 90_000 }, { widthPx: '1200' }]) {
        writeFileSync(join(userFolder, 'window-size.json'), JSON.stringify({ ...size, ...wrong }));
        const { bounds } = await recallSize(userFolder, [{ x: 0, y: 0, width: 1920, height: 1080 }]);
        expect(bounds).toEqual({ width: 1360, height: 860 });
      }
    });
  });

  test('remembers the size, which the next run takes up, but not a place that is on no screen any more', async () => {
    await withFolder(async (folder) => {
      const own = join(folder, 'own');
      const closeAt = (bounds: { x: number; y: number; width: number; height: number }) =>
        withDesktop(
          browser(),
          async ({ shown }) => {
            const { window } = await shown();
            window.bounds = bounds;
            window.close();
            await soon(() => expect(window.isDestroyed()).toBe(true));
          },
          { userFolder: own },
        );
      await closeAt({ x: 40, y: 30, width: 1200, height: 700 });
      if (process.platform !== 'win32') expect(statSync(own).mode & 0o077).toBe(0);
      await withDesktop(
        browser(),
        async ({ shown }) => {
          expect((await shown()).window.options).toMatchObject({ x: 40, y: 30, width: 1200, height: 700 });
        },
        { userFolder: own },
      );
      await closeAt({ x: 5000, y: 30, width: 1200, height: 700 });
      await withDesktop(
        browser(),
        async ({ shown }) => {
          const { options } = (await shown()).window;
          expect(options).toMatchObject({ width: 1200, height: 700 });
          expect(options).not.toHaveProperty('x');
        },
        { userFolder: own },
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
