import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { SEALED_HEADERS } from '../../../src-main/print/sealed-headers';
import { withDesktop } from '../../support/electron-double/run-desktop';
import { readPdf } from '../../support/read-pdf';
import { soon } from '../../support/soon';
import { withWitness } from '../../support/witness';
import { askFrom, sendFrom } from './ask-page';
import { chromiumHere, desktopHere } from './chromium-here';

const browser = chromiumHere();
const desktop = desktopHere();

const BOOK =
  '<!doctype html><html lang="en"><head><title>Book</title><style>@page { size: 8.5in 11in; margin: 0; }</style></head><body><h1>Legs</h1>Nineteen legs</body></html>';

describe('printing from the desktop window', () => {
  test('asks where, and saves a letter page of 612 by 792 pt with its headings as an outline', async () => {
    const { shown, dialogs, documents, windows, app } = desktop();
    const { page } = await shown();
    const path = join(documents, 'galley.pdf');
    const printing = askFrom(page, 'printBook', { suggestedName: 'galley.pdf', html: BOOK });
    const save = await dialogs.next();
    expect(save).toMatchObject({
      kind: 'showSaveDialog',
      options: { defaultPath: path, filters: [{ name: 'Print', extensions: ['pdf'] }] },
    });
    save.answer({ canceled: false, filePath: path });
    expect(await printing).toEqual({ outcome: 'saved', path, name: 'galley.pdf' });
    const { sizesPt, text, outline } = await readPdf(readFileSync(path));
    expect(sizesPt).toEqual([[612, 792]]);
    expect(text.replace(/\s+/g, ' ').trim()).toBe('Legs Nineteen legs');
    expect(outline).toEqual(['Legs']);
    expect(windows).toHaveLength(1);
    expect(app.hasQuit).toBe(false);
    // A print is no job of the recent documents.
    expect(app.recentDocuments).toEqual([]);
  });

  test('shows nobody the page it prints, which has no script, no preload, no Node and a session in memory apart', async () => {
    const { shown, dialogs, documents, allWindows, partitions } = desktop();
    const { page } = await shown();
    const printing = askFrom(page, 'printBook', { suggestedName: 'a.pdf', html: BOOK });
    (await dialogs.next()).answer({ canceled: false, filePath: join(documents, 'a.pdf') });
    await printing;
    const hidden = allWindows.at(-1)!;
    expect(hidden.done).toEqual([]);
    expect(hidden.isDestroyed()).toBe(true);
    expect(hidden.options.show).toBe(false);
    const { session, ...asked } = hidden.options.webPreferences ?? {};
    // All of them: a preload, or one more that loosens the page, would be among them.
    expect(asked).toEqual({
      javascript: false,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    });
    const own = partitions.get('print')!;
    expect(session).toBe(own);
    expect(own.options).toEqual({ cache: false });
    expect(Object.fromEntries(own.answered.at(-1)!.headers)).toEqual(SEALED_HEADERS);
    // Electron keeps a partition on disk where its name begins with "persist:".
    expect(own.name).not.toMatch(/^persist:/);
    // What was printed is not served any longer.
    expect(own.handlers.size).toBe(0);
  });

  test('lets the session of the print fetch the document alone, and grants it nothing', async () => {
    const { partitions } = desktop();
    const own = partitions.get('print')!;
    expect(await own.lets('app://print/')).toBe(true);
    expect(await own.lets('data:font/woff2;base64,AAAA')).toBe(true);
    for (const url of [
      'https://ledge.example/',
      'http://127.0.0.1/',
      'file:///etc/hosts',
      'app://ledgewright/',
    ]) {
      expect(await own.lets(url), url).toBe(false);
    }
    const decided: boolean[] = [];
    own.permission?.(null, 'geolocation', (isGranted) => decided.push(isGranted));
    expect(decided).toEqual([false]);
    expect([own.check?.(), own.device?.()]).toEqual([false, false]);
  });

  test('runs no script of the document and asks nobody for anything', async () => {
    const { shown, dialogs, documents } = desktop();
    const { page } = await shown();
    await withWitness(async (address, asked) => {
      const html = BOOK.replace(
        '</body>',
        `<script>document.body.append('SCRIPTED')</script><img src="${address}/img"><iframe src="${address}/frame"></iframe></body>`,
      );
      const path = join(documents, 'sealed.pdf');
      const printing = askFrom(page, 'printBook', { suggestedName: 'sealed.pdf', html });
      (await dialogs.next()).answer({ canceled: false, filePath: path });
      expect(await printing).toMatchObject({ outcome: 'saved' });
      const { text } = await readPdf(readFileSync(path));
      expect(text).toContain('Nineteen legs');
      expect(text).not.toMatch(/SCRIPTED|WITNESS/);
      expect(asked).toEqual([]);
    });
  });

  test('gives the printed page no way to ask the shell', async () => {
    const { shown, wire, context } = desktop();
    await shown();
    const other = await context.newPage();
    await other.goto(wire.toWire('app://print/'));
    expect(await sendFrom(other, 'about')).toEqual({ ok: false, message: 'Error: This page may not ask.' });
    await other.close();
  });
});

describe('a file that leaves the desktop window', () => {
  test('is saved where the dialog says, which offers its own kind of file', async () => {
    const { shown, dialogs, documents } = desktop();
    const { page } = await shown();
    const path = join(documents, 'plan.dxf');
    const saving = askFrom(page, 'saveExport', { kind: 'text', suggestedName: 'plan.dxf', data: '0\nEOF\n' });
    const dialog = await dialogs.next();
    expect(dialog.options).toMatchObject({
      defaultPath: path,
      filters: [{ name: 'Drawing', extensions: ['dxf'] }],
    });
    dialog.answer({ canceled: false, filePath: path });
    expect(await saving).toEqual({ outcome: 'saved', path, name: 'plan.dxf' });
    expect(readFileSync(path, 'utf8')).toBe('0\nEOF\n');
  });

  test('does not close a window that waits for its job to be saved', async () => {
    await withDesktop(browser(), async ({ shown, dialogs, documents }) => {
      const { window, page } = await shown();
      await askFrom(page, 'setUnsaved', { isUnsaved: true, name: 'galley.json' });
      window.close();
      (await dialogs.next()).answer({ response: 0 });
      const path = join(documents, 'list.csv');
      const saving = askFrom(page, 'saveExport', { kind: 'text', suggestedName: 'list.csv', data: '' });
      let dialog = await dialogs.next();
      while (!String(dialog.options.defaultPath).endsWith('.csv')) dialog = await dialogs.next();
      dialog.answer({ canceled: false, filePath: path });
      await soon(async () => expect(await saving).toMatchObject({ outcome: 'saved' }));
      expect(window.isDestroyed()).toBe(false);
    });
  });
});
