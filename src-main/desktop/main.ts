/** Entry of the desktop host: one instance, one window, the app's own scheme. */
import { homedir } from 'node:os';
import { join } from 'node:path';
import { app, session } from 'electron';
import { createHost } from '../host/host';
import { ownFiles } from '../host/own-files';
import { platformOf } from '../host/place';
import { userFolder } from '../host/user-folder';
import { fileDialogs } from './file-dialogs';
import { denyPermissions, guardContents } from './guards';
import { answerPage } from './ipc';
import { jobPathIn } from './job-arguments';
import { printHidden } from './print-hidden';
import { registerScheme, serveScheme } from './scheme';
import type { JobWindow } from './window';
import { openWindow } from './window';

/** The built shell lies in dist/main. */
const files = ownFiles(join(import.meta.dirname, '..', '..'));
const folder = userFolder(process.env, process.platform, homedir());
const isMac = process.platform === 'darwin';

let current: JobWindow | null = null;
/** A file that the system asked to open before there was a window. */
let toOpen = jobPathIn(process.argv, process.cwd());

app.setName('Ledgewright');
app.setPath('userData', join(folder, 'window'));

if (app.requestSingleInstanceLock()) run();
else app.quit();

function run(): void {
  registerScheme();
  app.enableSandbox();
  app.on('web-contents-created', (_event, contents) => guardContents(contents));
  app.on('open-file', (event, path) => {
    event.preventDefault();
    openPath(path);
  });
  app.on('second-instance', (_event, words, workingFolder) => {
    const path = jobPathIn(words, workingFolder);
    if (path !== null) openPath(path);
    bringForward();
  });
  app.on('window-all-closed', () => app.quit());
  void app.whenReady().then(start);
}

async function start(): Promise<void> {
  denyPermissions(session.defaultSession);
  serveScheme(files.pageFolder);
  const host = createHost({
    host: 'desktop',
    version: files.version,
    platform: platformOf(process.platform),
    userFolder: folder,
    jobFolder: app.getPath('documents'),
    exampleFolder: files.exampleFolder,
    manualFolder: files.manualFolder,
    dialogs: fileDialogs(() => current?.window ?? null),
    printPdf: printHidden,
    clock: () => new Date(),
  });
  answerPage(host, (name, reply) => {
    noteRecent(name, reply);
    current?.onAnswered(name, reply);
  });
  const opened = await openWindow({ host, userFolder: folder, isMac });
  current = opened;
  opened.window.on('closed', () => {
    current = null;
  });
  if (toOpen !== null) openPath(toOpen);
}

function openPath(path: string): void {
  toOpen = current === null ? path : null;
  current?.tell({ kind: 'open-path', path });
}

function bringForward(): void {
  if (current === null) return;
  if (current.window.isMinimized()) current.window.restore();
  current.window.focus();
}

/** The system keeps its own list of documents, beside the one in the window. */
function noteRecent(name: string, reply: unknown): void {
  if (name !== 'openJob' && name !== 'saveJob') return;
  if (typeof reply === 'object' && reply !== null && 'path' in reply && typeof reply.path === 'string') {
    app.addRecentDocument(reply.path);
  }
}
