/**
 * A double of the `electron` module for tests on a machine without its runtime. It runs the built shell and the built preload as they
 * are, and carries what passes between them and the page: requests of the app's scheme, IPC, navigation, new windows, permissions,
 * dialogs. It only carries. Every refusal that a test sees was decided by the shell: where the shell sets no handler, the double does
 * what Electron does without one.
 */
import type { Browser, BrowserContext } from '@playwright/test';
import type { BrowserWindowConstructorOptions, MenuItemConstructorOptions } from 'electron';
import { AppDouble } from './app';
import type { Surroundings } from './browser-window';
import { BrowserWindowDouble } from './browser-window';
import type { DialogsDouble } from './dialogs';
import { dialogsDouble } from './dialogs';
import { PartitionDouble } from './partition';
import { CHECK_PERMISSION, INVOKE } from './preload-shim';
import type { SchemeHandler, Wire } from './wire';
import { openWire } from './wire';

type IpcListener = (event: object, ...args: readonly unknown[]) => unknown;
type RequestHandler = (contents: unknown, permission: string, decide: (isGranted: boolean) => void) => void;
type CheckHandler = (contents: unknown, permission: string) => boolean;

export interface SessionDouble {
  request: RequestHandler | null;
  check: CheckHandler | null;
  device: ((details: object) => boolean) | null;
}

export interface ElectronDouble {
  /** What `import ... from 'electron'` gives to the shell. */
  readonly module: object;
  readonly app: AppDouble;
  readonly wire: Wire;
  readonly context: BrowserContext;
  readonly windows: readonly BrowserWindowDouble[];
  /** Every window that there was, those that are gone too. */
  readonly allWindows: readonly BrowserWindowDouble[];
  readonly partitions: ReadonlyMap<string, PartitionDouble>;
  readonly dialogs: DialogsDouble;
  readonly session: SessionDouble;
  readonly schemes: readonly { readonly scheme: string; readonly privileges?: object }[];
  /** Channels on which the shell answers. */
  readonly channels: () => readonly string[];
  /** The menu that was set last. */
  readonly menu: () => readonly MenuItemConstructorOptions[];
  readonly stop: () => Promise<void>;
}

export interface DoubleOptions {
  readonly browser: Browser;
  readonly documents: string;
  /** False where another instance of the app is already running. */
  readonly isFirst: boolean;
}

export async function electronDouble({
  browser,
  documents,
  isFirst,
}: DoubleOptions): Promise<ElectronDouble> {
  const handlers = new Map<string, SchemeHandler>();
  const listeners = new Map<string, IpcListener>();
  const windows: BrowserWindowDouble[] = [];
  const allWindows: BrowserWindowDouble[] = [];
  const partitions = new Map<string, PartitionDouble>();
  const ownContexts: BrowserContext[] = [];
  const schemes: { readonly scheme: string; readonly privileges?: object }[] = [];
  const session: SessionDouble = { request: null, check: null, device: null };
  let menu: readonly MenuItemConstructorOptions[] = [];

  const wire = await openWire((scheme) => handlers.get(scheme));
  const context = await browser.newContext();
  const dialogs = dialogsDouble();
  const app = new AppDouble(isFirst, documents, () => {
    for (const window of [...windows]) window.close();
    return windows.length === 0;
  });

  await context.exposeBinding(INVOKE, async ({ page, frame }, channel: string, args: readonly unknown[]) => {
    const contents = windows.map(({ webContents }) => webContents);
    const pages = await Promise.all(contents.map((one) => one.page));
    const sender = contents[pages.indexOf(page)] ?? contents[0];
    const listener = listeners.get(channel);
    if (listener === undefined) return { ok: false, message: `No handler registered for '${channel}'` };
    try {
      return {
        ok: true,
        value: await listener({ sender, senderFrame: sender?.frameSeen(frame) ?? null }, ...args),
      };
    } catch (error) {
      return { ok: false, message: String(error) };
    }
  });
  await context.exposeBinding(
    CHECK_PERMISSION,
    (_source, name: string) => session.check?.(null, name) ?? true,
  );

  /** Gives Chromium the permissions that the shell would grant: all of them where it sets no handler, as Electron does. */
  async function permitted(): Promise<BrowserContext> {
    const names = ['geolocation', 'notifications', 'camera', 'microphone', 'clipboard-read'];
    const granted = names.filter((name) => {
      let isGranted = session.request === null;
      session.request?.(null, name, (decided) => {
        isGranted = decided;
      });
      return isGranted;
    });
    await context.setGeolocation({ latitude: 1, longitude: 1 });
    await context.grantPermissions(granted);
    return context;
  }

  /** A session of its own shares nothing with the window's. */
  async function apart(isScripted: boolean): Promise<BrowserContext> {
    const own = await browser.newContext({ javaScriptEnabled: isScripted });
    ownContexts.push(own);
    return own;
  }

  const around = ({ webPreferences = {} }: BrowserWindowConstructorOptions): Surroundings => ({
    context: webPreferences.session === undefined ? permitted() : apart(webPreferences.javascript !== false),
    wire,
    onCreated: (window) => {
      windows.push(window);
      allWindows.push(window);
      app.emit('web-contents-created', {}, window.webContents);
    },
    onGone: (window) => {
      windows.splice(windows.indexOf(window), 1);
      if (windows.length === 0) app.emit('window-all-closed');
    },
  });

  const module = {
    app,
    BrowserWindow: class extends BrowserWindowDouble {
      constructor(options: BrowserWindowConstructorOptions) {
        super(options, around(options));
      }
    },
    dialog: dialogs.module,
    ipcMain: { handle: (channel: string, listener: IpcListener) => listeners.set(channel, listener) },
    Menu: {
      buildFromTemplate: (template: readonly MenuItemConstructorOptions[]) => template,
      setApplicationMenu: (built: readonly MenuItemConstructorOptions[]) => {
        menu = built;
      },
    },
    nativeTheme: { shouldUseDarkColors: false },
    protocol: {
      registerSchemesAsPrivileged: (list: typeof schemes) => {
        if (app.isReady) throw new Error('schemes are registered before the app is ready');
        schemes.push(...list);
      },
      handle: (scheme: string, handler: SchemeHandler) => handlers.set(scheme, handler),
    },
    screen: { getAllDisplays: () => [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }] },
    session: {
      fromPartition: (name: string, options?: object) => {
        const found = partitions.get(name) ?? new PartitionDouble(name, options);
        partitions.set(name, found);
        return found;
      },
      defaultSession: {
        setPermissionRequestHandler: (handler: RequestHandler) => {
          session.request = handler;
        },
        setPermissionCheckHandler: (handler: CheckHandler) => {
          session.check = handler;
        },
        setDevicePermissionHandler: (handler: (details: object) => boolean) => {
          session.device = handler;
        },
      },
    },
  };

  return {
    module,
    app,
    wire,
    context,
    windows,
    allWindows,
    partitions,
    dialogs,
    session,
    schemes,
    channels: () => [...listeners.keys()],
    menu: () => menu,
    stop: async () => {
      await context.close();
      for (const own of ownContexts) await own.close();
      await wire.stop();
    },
  };
}
