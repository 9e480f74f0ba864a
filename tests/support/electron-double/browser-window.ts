/** Electron's BrowserWindow over a page of Chromium. It shows nothing; what is asked of it is kept for a test to look at. */
import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import type { BrowserContext } from '@playwright/test';
import type { BrowserWindowConstructorOptions } from 'electron';
import { PartitionDouble } from './partition';
import { WebContentsDouble } from './web-contents';
import type { Wire } from './wire';

export interface Surroundings {
  readonly context: Promise<BrowserContext>;
  readonly wire: Wire;
  readonly onCreated: (window: BrowserWindowDouble) => void;
  readonly onGone: (window: BrowserWindowDouble) => void;
}

export class BrowserWindowDouble extends EventEmitter {
  readonly options: BrowserWindowConstructorOptions;
  readonly webContents: WebContentsDouble;
  readonly done: string[] = [];
  bounds: { x: number; y: number; width: number; height: number };
  private isGone = false;
  private readonly around: Surroundings;

  constructor(options: BrowserWindowConstructorOptions, around: Surroundings) {
    super();
    this.options = options;
    this.around = around;
    const { x = 0, y = 0, width = 800, height = 600 } = options;
    this.bounds = { x, y, width, height };
    const { preload, session } = options.webPreferences ?? {};
    const script = preload === undefined ? null : readFileSync(preload, 'utf8');
    this.webContents = new WebContentsDouble(around.context, around.wire, {
      preload: script,
      size: { width, height },
      partition: session instanceof PartitionDouble ? session : null,
    });
    this.webContents.once('did-finish-load', () => this.emit('ready-to-show'));
    around.onCreated(this);
  }

  async loadURL(address: string): Promise<void> {
    await this.webContents.load(address);
  }

  reload(): void {
    this.done.push('reload');
  }

  show(): void {
    this.done.push('show');
  }

  focus(): void {
    this.done.push('focus');
  }

  restore(): void {
    this.done.push('restore');
  }

  maximize(): void {
    this.done.push('maximize');
  }

  isMinimized(): boolean {
    return false;
  }

  isMaximized(): boolean {
    return this.done.includes('maximize');
  }

  setDocumentEdited(isEdited: boolean): void {
    this.done.push(isEdited ? 'edited' : 'not edited');
  }

  getNormalBounds(): { x: number; y: number; width: number; height: number } {
    return this.bounds;
  }

  isDestroyed(): boolean {
    return this.isGone;
  }

  /** Asks the shell first, as a click on the window's cross does. */
  close(): void {
    let isPrevented = false;
    this.emit('close', {
      preventDefault: () => {
        isPrevented = true;
      },
    });
    if (!isPrevented) this.destroy();
  }

  destroy(): void {
    if (this.isGone) return;
    this.isGone = true;
    void this.webContents.page.then((page) => page.close());
    this.emit('closed');
    this.around.onGone(this);
  }
}
