/** The page of a window: Electron's events and calls on one side, a page of Chromium on the other. */
import { EventEmitter } from 'node:events';
import type { BrowserContext, Frame, Page, Route } from '@playwright/test';
import { preloadScript } from './preload-shim';
import type { Wire } from './wire';

type OpenHandler = (details: { readonly url: string }) => { readonly action: 'allow' | 'deny' };

/** What the page tried, and what the shell made of it. */
export interface Tried {
  readonly what: 'navigate' | 'open';
  readonly url: string;
  readonly isRefused: boolean;
}

export class WebContentsDouble extends EventEmitter {
  readonly tried: Tried[] = [];
  /** Resolves when Chromium has a page for it. */
  readonly page: Promise<Page>;
  private isCrashedNow = false;
  /** A load that the shell asked for is not announced to it. */
  private loading: string | null = null;
  private openHandler: OpenHandler | null = null;
  private readonly wire: Wire;

  constructor(
    context: Promise<BrowserContext>,
    wire: Wire,
    preload: string | null,
    size: { width: number; height: number },
  ) {
    super();
    this.wire = wire;
    this.page = this.start(context, preload, size);
  }

  private async start(
    context: Promise<BrowserContext>,
    preload: string | null,
    size: { width: number; height: number },
  ): Promise<Page> {
    const page = await (await context).newPage();
    await page.setViewportSize(size);
    if (preload !== null) await page.addInitScript(preloadScript(preload));
    await page.route(
      () => true,
      (route) => this.carryRequest(route),
    );
    page.on('load', () => this.emit('did-finish-load'));
    page.on('popup', (popup) => void this.decideOpening(popup));
    page.on('crash', () => {
      this.isCrashedNow = true;
      this.emit('render-process-gone', {}, { reason: 'crashed' });
    });
    return page;
  }

  private async carryRequest(route: Route): Promise<void> {
    const request = route.request();
    if (!request.isNavigationRequest() || request.url() === this.loading) return route.continue();
    const url = this.wire.fromWire(request.url());
    const isMainFrame = request.frame().parentFrame() === null;
    const isRefused = this.announceNavigation(url, isMainFrame);
    return isRefused ? route.abort('aborted') : route.continue();
  }

  /** Tells the shell as Electron does; whether it prevented the navigation. */
  announceNavigation(url: string, isMainFrame: boolean): boolean {
    let isRefused = false;
    const preventDefault = () => {
      isRefused = true;
    };
    this.emit('will-frame-navigate', { url, isMainFrame, preventDefault });
    if (isMainFrame) this.emit('will-navigate', { url, isMainFrame, preventDefault });
    this.tried.push({ what: 'navigate', url, isRefused });
    return isRefused;
  }

  /** Playwright tells of a new page when it is there; what the shell denies is taken away again. */
  private async decideOpening(popup: Page): Promise<void> {
    const url = this.wire.fromWire(popup.url());
    const isRefused = this.openHandler !== null && this.openHandler({ url }).action === 'deny';
    if (isRefused) await popup.close();
    this.tried.push({ what: 'open', url, isRefused });
  }

  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler;
  }

  isCrashed(): boolean {
    return this.isCrashedNow;
  }

  send(channel: string, ...args: readonly unknown[]): void {
    void this.page.then((page) =>
      page.evaluate(
        ([to, given]) => {
          const { electronDoubleDeliver } = window as unknown as {
            electronDoubleDeliver: (channel: string, args: readonly unknown[]) => void;
          };
          electronDoubleDeliver(to, given);
        },
        [channel, args] as const,
      ),
    );
  }

  async load(address: string): Promise<void> {
    const page = await this.page;
    this.loading = this.wire.toWire(address);
    await page.goto(this.loading);
    this.loading = null;
  }

  /** The frame as the shell sees it in an event of IPC. */
  frameSeen(frame: Frame): { readonly url: string; readonly parent: object | null } {
    const parent = frame.parentFrame();
    return { url: this.wire.fromWire(frame.url()), parent: parent === null ? null : this.frameSeen(parent) };
  }
}
