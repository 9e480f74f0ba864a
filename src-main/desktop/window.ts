/** The one window: a sandboxed page of the app's own scheme, with a menu, a size that is remembered, and a question before it goes. */
import { join } from 'node:path';
import { BrowserWindow, Menu, nativeTheme, screen } from 'electron';
import type { Host } from '../host/host';
import type { Closing } from './closing';
import { askBeforeClosing } from './closing';
import { menuTemplate } from './menu';
import { offerRestart } from './page-crash';
import { PAGE_ADDRESS } from './scheme';
import type { Teller } from './tell-page';
import { tellerOf } from './tell-page';
import { LEAST_HEIGHT_PX, LEAST_WIDTH_PX, recallSize, rememberSize } from './window-size';

/** What shows before the page has painted: the paper of the light and of the dark theme. */
const LIGHT_PAPER = '#f5f2ea';
const DARK_PAPER = '#1b1d20';

export interface JobWindow extends Teller, Closing {
  readonly window: BrowserWindow;
}

export interface WindowParts {
  readonly host: Host;
  readonly userFolder: string;
  readonly isMac: boolean;
}

/** Opens the window. */
export async function openWindow({ host, userFolder, isMac }: WindowParts): Promise<JobWindow> {
  const screens = screen.getAllDisplays().map(({ workArea }) => workArea);
  const { bounds, isMaximized } = await recallSize(userFolder, screens);
  const window = new BrowserWindow({
    ...bounds,
    minWidth: LEAST_WIDTH_PX,
    minHeight: LEAST_HEIGHT_PX,
    show: false,
    title: 'Ledgewright',
    backgroundColor: nativeTheme.shouldUseDarkColors ? DARK_PAPER : LIGHT_PAPER,
    webPreferences: {
      preload: join(import.meta.dirname, '..', 'preload', 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
    },
  });
  if (isMaximized) window.maximize();
  window.once('ready-to-show', () => window.show());
  const { tell } = tellerOf(window.webContents);
  const onCommand = (command: string) => tell({ kind: 'menu', command });
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(isMac, onCommand)));
  const { onAnswered } = askBeforeClosing({
    window,
    host,
    askPageToSave: () => onCommand('save-job'),
    beforeGone: () => rememberSize(userFolder, window),
  });
  offerRestart(window);
  void window.loadURL(PAGE_ADDRESS);
  return { window, tell, onAnswered };
}
